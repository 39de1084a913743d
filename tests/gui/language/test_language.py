"""Language: which one is spoken, and what sentences, numbers and days look like in it."""

import subprocess
import sys
import time
from collections.abc import Iterator
from datetime import date, datetime
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QLocale
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QAbstractButton, QApplication, QDialogButtonBox, QLabel, QWidget
from pytestqt.qtbot import QtBot

from data.book import Book
from data.events import EventKind
from data.look import LookKind, day_name
from data.medium.benchtest import BenchKind
from data.medium.factors import KINDS
from data.plan.blocks import ShelfPlaces
from data.readings import ReadingKind
from data.report.content import Grid
from data.report.reading import read_report
from data.sentence import Sentence
from gui.controls.numberfield import NumberField
from gui.home import Memory
from gui.language.language import language_of, speak
from gui.language.spoken import DAY, DAY_SHORT, MOMENT, day_words, filled, in_figures, spoken
from tests.data.plans import a_plan
from tests.made.books import an_empty_book
from vision.reason import RETAKE, Reason


@pytest.fixture
def german(qapp: QApplication, memory: Memory) -> Iterator[QApplication]:
    memory.language = "de"
    before = QLocale()
    assert speak(qapp, memory) == "de"
    yield qapp
    memory.language = "en"
    speak(qapp, memory)
    QLocale.setDefault(before)


@pytest.mark.parametrize(
    ("chosen", "asked_for", "spoken_is"),
    [
        ("system", ["de-AT", "en"], "de"),
        ("system", ["fr-FR", "de"], "de"),
        ("system", ["fr-FR"], "en"),
        ("system", [], "en"),
        ("system", ["en_GB", "de"], "en"),
        ("en", ["de-DE"], "en"),
        ("de", ["en-GB"], "de"),
        ("xx", ["de-DE"], "de"),
    ],
)
def test_the_choice_goes_before_the_system(chosen: str, asked_for: list[str], spoken_is: str) -> None:
    assert language_of(chosen, asked_for) == spoken_is


@pytest.mark.parametrize(
    "change",
    [f"{kind}: A1" for kind in EventKind]
    + [f"{kind} of A1" for kind in ReadingKind]
    + [f"{kind} test of coir {done}" for kind in BenchKind for done in ("begun", "deleted")]
    + ["3 photos of the heap"]
    + [f"number of coir: {kind.about}" for kind in KINDS.values()],
)
def test_what_undo_takes_back_is_named_in_german(german: QApplication, change: str) -> None:
    assert spoken(change) != change


def test_a_number_of_a_medium_is_german_to_its_end_where_it_is_taken_back(german: QApplication) -> None:
    assert spoken("number of coir: price of the medium for a tray").startswith("Zahl von coir: ")
    for kind in KINDS.values():
        said = spoken(f"number of all media put back: {kind.about}")
        assert said == f"Zahl von allen Substraten zurückgestellt: {spoken(kind.about)}", said


def test_texts_outlive_their_file_being_written_anew(tmp_path: Path) -> None:
    # Qt maps a .qm that it opens itself: emptied in place, the process ended at the next text
    code = (
        "import sys; from pathlib import Path; from shutil import copy\n"
        "from PySide6.QtCore import QCoreApplication\n"
        "import gui.language.language as language; from gui.home import Memory\n"
        "folder = Path(sys.argv[1]); copy(language.FOLDER / 'evenstand_de.qm', folder)\n"
        "language.FOLDER = folder; app = QCoreApplication([])\n"
        "memory = Memory(folder / 'settings'); memory.language = 'de'; language.speak(app, memory)\n"
        "(folder / 'evenstand_de.qm').write_bytes(b'')\n"
        "print(app.translate('Place', 'Verdict'))"
    )
    done = subprocess.run(
        [sys.executable, "-c", code, tmp_path],
        cwd=Path(__file__).resolve().parents[3],
        capture_output=True,
        text=True,
        check=False,
        timeout=60,
    )
    assert (done.returncode, done.stdout.strip()) == (0, "Urteil"), done.stderr


def test_the_choice_is_remembered(memory: Memory) -> None:
    assert memory.language == "system"
    memory.language = "de"
    assert memory.language == "de"


def test_texts_of_ours_and_of_qt_are_german(german: QApplication) -> None:
    assert QCoreApplication.translate("Place", "Verdict") == "Urteil"
    box = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel)
    assert box.button(QDialogButtonBox.StandardButton.Cancel).text() == "Abbrechen"


def test_a_sentence_is_said_with_its_numbers(german: QApplication) -> None:
    said = Sentence("Coverage rose by {points:.1f} points.", points=4.25)
    assert str(said) == "Coverage rose by 4.2 points."
    assert spoken(said) == "Die Deckung stieg um 4,2 Punkte."


def test_a_sentence_within_a_sentence_is_said_too(german: QApplication) -> None:
    said = Sentence(
        "{place} is {now:.0f} points thinner than the middle ({before:.0f} on {day}).",
        place=Sentence("The near side"), now=12.0, before=9.0, day=day_name(date(2026, 3, 7)),
    )  # fmt: skip
    assert spoken(said) == "Die vordere Seite ist 12 Punkte dünner als die Mitte (am 7. März 9)."


def test_a_sentence_that_an_earlier_version_kept_is_known_again(german: QApplication) -> None:
    kept = "The near side is 12 points thinner than the middle (9 on the day before)."
    assert spoken(kept) == "Die vordere Seite ist 12 Punkte dünner als die Mitte (am Tag davor 9)."
    kept = (
        "Coverage 20 % on day 4; earlier trays of pea had 40 % at that age, and the day before it was behind "
        "them too."
    )
    assert spoken(kept).startswith("Deckung 20 % an Tag 4; frühere Schalen")


def test_words_of_enumerations_are_said(german: QApplication) -> None:
    assert spoken(LookKind.READY) == "schnittreif"
    assert spoken(Reason.NO_CANOPY) == "noch kein Bestand"


def test_what_a_book_kept_as_text_is_known_again(german: QApplication) -> None:
    assert spoken(str(Reason.NO_CANOPY)) == "noch kein Bestand"
    assert spoken("conditions of A1") == "Bedingungen von A1"
    assert spoken("mold on A1") == "Schimmel auf A1"
    assert spoken("not mold on A1") == "kein Schimmel auf A1"
    assert spoken("suspect open again on A1") == "Verdacht auf A1 wieder offen"
    assert spoken("shelf A, part 2") == "Etage A, Teil 2"
    assert spoken("shelf A, shelf B") == "Etage A, Etage B"
    assert spoken("A3, matched by its tag, coverage 61 %") == "A3, zugeordnet durch ihr Schild, Deckung 61 %"
    assert (
        spoken("No longer seen on 07 March, 1.5 cm² before. Root hairs fade, mold seldom does.")
        == "Seit 7. März nicht mehr zu sehen, vorher 1,5 cm². Wurzelhaare vergehen, Schimmel selten."
    )


def test_a_report_names_every_block_of_its_plan_in_german(german: QApplication, tmp_path: Path) -> None:
    with an_empty_book(tmp_path / "book") as book:
        book.draw_places(book.keep_plan(a_plan(shelves=(ShelfPlaces(name="A", places=18),))), seed=1)
        blocks = read_report(book, "Mat against peat").blocks
    grid = next(one for one in blocks if isinstance(one, Grid) and one.name == "What was fixed")
    told = next(spoken(row[1]) for row in grid.rows if row[0] == "Trays")

    assert told.endswith("in Blöcken: Etage A, Teil 1; Etage A, Teil 2; Etage A, Teil 3")


@pytest.mark.parametrize("doubt", sorted(RETAKE))
def test_the_fate_of_a_doubtful_photo_is_german_to_its_end(german: QApplication, doubt: Reason) -> None:
    said = spoken(f"A1, matched by its tag, coverage 61 %; {doubt}")

    assert said.endswith(f"; {spoken(doubt)}")
    assert str(doubt) not in said
    assert "matched" not in said


def test_reasons_of_a_suspect_are_said_part_by_part(german: QApplication) -> None:
    why = (
        "grey web 9 mm wide on the bare coir; greyer and darker than the coir around; "
        "not white fans along roots"
    )
    assert spoken(why) == (
        "graues Geflecht, 9 mm breit, auf bloßem Substrat (coir); "
        "grauer und dunkler als das Substrat ringsum (coir); keine weißen Fächer entlang von Wurzeln"
    )


def test_what_a_person_has_written_stays_as_it_is(german: QApplication) -> None:
    for text in ("Kresse auf Vlies", "moved to the left; smells odd", "a {b} c", "", "100 % coir. Really."):
        assert spoken(text) == text


def test_numbers_and_days_are_written_as_in_german(german: QApplication) -> None:
    at = datetime(2026, 3, 7, 9, 5)
    assert in_figures(0.5) == "0,5"
    assert in_figures(-1234.56, ".1f") == "−1234,6"
    assert filled("{day:.1f} von {n}", day=2.25, n=3) == "2,2 von 3"
    assert filled("{day:%d. %B %Y}, {day:%H:%M}", day=at) == "7. März 2026, 09:05"
    assert day_words(date(2026, 3, 7)) == "7. März 2026"
    assert day_words(at, DAY) == "7. März"
    assert day_words(date(2026, 11, 7), DAY_SHORT) == "7. Nov."
    assert day_words(at, MOMENT) == "7. März 2026, 09:05"


def test_english_stays_as_it_is_written(qapp: QApplication) -> None:
    at = datetime(2026, 3, 7, 9, 5)
    assert (
        spoken(Sentence("Coverage rose by {points:.1f} points.", points=4.25))
        == "Coverage rose by 4.2 points."
    )
    assert spoken(Reason.NO_CANOPY) == "no canopy yet"
    assert in_figures(0.5) == "0.5"
    assert day_words(at, MOMENT) == "7 Mar 2026, 09:05"
    assert filled("{day:.1f}", day=2.25) == "2.2"


def below_zero() -> Sentence:
    points = Sentence("{number} points", number="-6.5")
    return Sentence("{a:+.1f}, {b}, {c}, {d}, {e:.0e}", a=-9.7, b=points, c="-3", d="-4.0 °C", e=0.00002)


def test_a_number_below_zero_has_a_minus_and_no_hyphen_wherever_it_is_shown(qapp: QApplication) -> None:
    assert spoken(below_zero()) == "−9.7, −6.5 points, −3, −4.0 °C, 2e-05"
    assert (in_figures(-9.7, "+.1f"), filled("{x:.1f}", x=-0.5), spoken("-4.0 °C")) == (
        "−9.7",
        "−0.5",
        "−4.0 °C",
    )
    assert below_zero().startswith("-9.7, -6.5 points")  # as files and the command line have it


def test_a_number_below_zero_has_a_minus_in_german_too(german: QApplication) -> None:
    assert spoken(below_zero()) == "−9,7, −6,5 Punkte, −3, −4,0 °C, 2e-05"
    assert (in_figures(-9.7, "+.1f"), filled("{x:.1f}", x=-0.5), spoken("-4.0 °C")) == (
        "−9,7",
        "−0,5",
        "−4,0 °C",
    )


def test_hyphens_of_names_spans_and_dates_stay(qapp: QApplication) -> None:
    said = Sentence("{name}: {span}, {day}, {x:.0f}", name="mix -2 b", span="97-98 %", day="2026-03-07", x=-1)

    assert spoken(said) == "mix -2 b: 97-98 %, 2026-03-07, −1"


def test_a_german_number_can_be_typed(german: QApplication, qtbot: object) -> None:
    field = NumberField("Spielraum", most=100.0)
    field.set(1.5)
    assert field.field.text() == "1,5"
    field.field.setText("2,5")
    field.field.editingFinished.emit()
    assert field.value == 2.5


@pytest.mark.parametrize("typed", ["-4", "−4"])
def test_a_number_below_zero_is_shown_with_a_minus_and_typed_with_either(
    qapp: QApplication, qtbot: QtBot, typed: str
) -> None:
    field = NumberField("Zero", least=-10, most=10)
    qtbot.addWidget(field)
    field.set(-3)
    assert field.field.text() == "−3"
    field.field.setText(typed)
    field.field.editingFinished.emit()
    assert field.value == -4


def test_loading_the_language_takes_no_time_to_speak_of(german: QApplication, memory: Memory) -> None:
    began = time.perf_counter()
    speak(german, memory)
    assert time.perf_counter() - began < 0.03


def test_no_screen_says_an_english_text_of_the_catalogue(
    german: QApplication, memory: Memory, rack_book: Book, qtbot: QtBot
) -> None:
    """What a widget shows, its tooltip and what it says to a screen reader."""
    from gui.app import make_window
    from gui.catalogue import FOLDER, catalogue

    english = {
        text.source for text, words in catalogue(FOLDER / "evenstand_de.ts").items() if text.source != words
    }
    german_too = set(catalogue(FOLDER / "evenstand_de.ts").values())
    window = make_window(german, memory)
    qtbot.addWidget(window)
    window.show()
    window.desk.take(rack_book)
    said: set[str] = set()
    for place in window.screens:
        if place == "traysheet":
            window.open_tray(rack_book.trays()[0].id)
        else:
            window.go_to(place)
        qtbot.waitUntil(lambda: not window.work.jobs())
        for widget in window.findChildren(QWidget):
            said |= {widget.toolTip(), widget.accessibleName(), widget.accessibleDescription()}
            if isinstance(widget, QLabel | QAbstractButton):
                said.add(widget.text())
        for action in window.findChildren(QAction):
            said |= {action.text(), action.toolTip()}
    window.close()
    assert "Schalenblatt" in said
    leaked = sorted((said & english) - german_too)
    assert not leaked, leaked


def test_every_sentence_is_known_again_from_its_text(german: QApplication) -> None:
    """As a book keeps it, in English and filled in; none is taken for another."""
    import json

    from gui.language.spoken import FIELD, KEPT, LEAST_LETTERS, TEMPLATES, WRITTEN_AS_NUMBER

    wrong = []
    for context, source in json.loads(TEMPLATES.read_text(encoding="utf-8")):
        letters = sum(letter.isalpha() for letter in FIELD.sub("", source))
        if context != KEPT and letters < LEAST_LETTERS:
            continue
        values = {
            field[1]: str(11 + number) if WRITTEN_AS_NUMBER.fullmatch(field[0]) else f"Q{field[1]}"
            for number, field in enumerate(FIELD.finditer(source))
        }
        kept, said = (
            FIELD.sub(lambda field, values=values: values[field[1]], text)
            for text in (source, QCoreApplication.translate(context, source))
        )
        if spoken(kept) != said:
            wrong.append((kept, spoken(kept)))
    assert not wrong


def test_a_kept_sentence_is_not_taken_for_a_shorter_one_that_begins_like_it(german: QApplication) -> None:
    kept = (
        "Coverage of the growing bed 87 %, 9 points below the middle of its block mates (96 %); "
        "as much as on the day before (9 points)."
    )

    assert spoken(kept).startswith("Deckung der Substratfläche 87 %, 9 Punkte")
    assert "of" not in spoken(kept).split()
