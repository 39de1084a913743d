"""Help inside: one page a place, found by a word, true to the program."""

import re
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit, QListWidget, QTextBrowser
from pytestqt.qtbot import QtBot

from gui.commands.commandlist import COMMANDS
from gui.frame.actions import PLACES
from gui.frame.helpbook import FOLDER, ORDER, found, pages
from gui.frame.helpwindow import HelpWindow
from gui.style.palette import dress
from gui.style.tokens import TOKENS, Scheme, contrast


def test_there_is_a_page_for_each_place_and_every_file_is_a_page() -> None:
    assert {place.name for place in PLACES} <= set(ORDER)
    for language in FOLDER.iterdir():
        assert {path.stem for path in language.glob("*.md")} <= set(ORDER), language.name
    assert {path.stem for path in (FOLDER / "en").glob("*.md")} == set(ORDER)


@pytest.mark.parametrize("page", pages(), ids=lambda page: page.name)
def test_a_page_begins_with_its_title_and_has_one(page) -> None:
    headings = re.findall(r"^# (.+)$", page.text, re.MULTILINE)

    assert headings == [page.title]


def test_the_page_of_commands_names_all_commands() -> None:
    text = next(page.text for page in pages() if page.name == "commands")

    for command in COMMANDS:
        assert f"`evenstand {command.name} " in text or command.name == "demo", command.name


def test_the_cautions_stand_in_the_help() -> None:
    text = next(page.text for page in pages() if page.name == "safety").casefold()

    for word in (
        "no flag is no proof",
        "respirator",
        "asthma",
        "food-safety law",
        "manure",
        "electrical code",
    ):
        assert word in text


def test_words_are_found_whatever_their_case_and_titles_come_first() -> None:
    hits = found("MARGIN", pages())

    assert {hit.page for hit in hits} >= {"plan", "glossary", "verdict"}
    assert found("glossary", pages())[0].page == "glossary"
    assert found("margin sowing", pages())
    assert found("zeppelin", pages()) == ()
    assert found("  ", pages()) == ()


def test_a_language_that_lacks_a_page_shows_it_in_english() -> None:
    assert [page.title for page in pages("xx")] == [page.title for page in pages()]


@pytest.fixture
def window(qtbot: QtBot, dressed) -> HelpWindow:
    made = HelpWindow()
    qtbot.addWidget(made)
    made.show()
    return made


def shown(window: HelpWindow) -> str:
    return window.findChild(QTextBrowser).toPlainText()


def test_the_window_opens_at_the_page_that_is_wanted(window: HelpWindow) -> None:
    window.show_page("verdict")

    assert window.page.name == "verdict"
    assert shown(window).startswith("Verdict")


def test_a_search_lists_lines_and_shows_the_first(window: HelpWindow, qtbot: QtBot) -> None:
    qtbot.keyClicks(window.findChild(QLineEdit), "dunnett")

    assert window.findChild(QListWidget).count() >= 1
    assert "Dunnett" in shown(window)
    assert window.findChild(QTextBrowser).textCursor().selectedText()

    window.findChild(QLineEdit).clear()
    assert window.findChild(QListWidget).count() == len(ORDER)


def test_a_search_for_what_is_not_there_says_so(window: HelpWindow, qtbot: QtBot) -> None:
    qtbot.keyClicks(window.findChild(QLineEdit), "zeppelin")

    assert window.findChild(QListWidget).count() == 0
    assert window._none.isVisible()


def test_pages_are_turned_by_keyboard(window: HelpWindow, qtbot: QtBot) -> None:
    window.show_page(ORDER[0])

    qtbot.keyClick(window.findChild(QListWidget), Qt.Key.Key_Down)

    assert window.page.name == ORDER[1]


def test_help_is_in_the_package_of_the_program() -> None:
    assert FOLDER.is_relative_to(Path(__file__).parents[3] / "gui")


def test_links_are_read_in_the_dark_though_the_help_was_opened_in_the_light(
    qtbot: QtBot, qapp: QApplication
) -> None:
    """WCAG 2.2, 1.4.3: text stands out from its ground by 4.5 to 1 at least."""
    dress(qapp, Scheme.LIGHT)
    window = HelpWindow()
    qtbot.addWidget(window)
    window.show_page("bench")
    window.show()
    (text,) = window.findChildren(QTextBrowser)
    for scheme in (Scheme.DARK, Scheme.LIGHT):
        dress(qapp, scheme)
        qapp.processEvents()
        links = set()
        block = text.document().begin()
        while block.isValid():
            for piece in block:
                if piece.fragment().charFormat().isAnchor():
                    links.add(piece.fragment().charFormat().foreground().color().name())
            block = block.next()
        assert links
        assert all(contrast(link, TOKENS[scheme].sheet) >= 4.5 for link in links), links
