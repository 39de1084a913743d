"""Catalogue: no text of the window is left untranslated, and no translation breaks what it stands for."""

import ast
import re
import shutil
from collections import Counter
from pathlib import Path

import pytest

from gui.catalogue import FOLDER, ROOT, Found, Text, catalogue, collect, release, templates, texts
from gui.frame.helpbook import ORDER
from gui.language.kepttexts import KEPT

GERMAN = FOLDER / "evenstand_de.ts"
FIELD = re.compile(r"\{(\w*)[^{}]*\}")
# calls whose words cannot be seen: their texts are marked where they are written
SEEN_ELSEWHERE = {
    ("catalogue.py", "translate"), ("keysheet.py", "tr"), ("marks.py", "QCoreApplication.translate"),
    ("moments.py", "translate"), ("printing.py", "QCoreApplication.translate"),
    ("words.py", "qt.QCoreApplication.translate"),
    ("stationsheet.py", "translate"), ("toprow.py", "QCoreApplication.translate"),
    ("keys.py", "QCoreApplication.translate"), ("view.py", "translate"), ("dayfield.py", "translate"),
    ("numberwords.py", "translate"), ("spoken.py", "translate"), ("places.py", "translate"),
    ("factors.py", "Sentence"),
}  # fmt: skip
SAYS = {
    "QAction", "QCheckBox", "QGroupBox", "QLabel", "QPushButton", "QRadioButton", "QToolButton", "addAction",
    "addItem", "addMenu", "addRow", "addTab", "setAccessibleDescription", "setAccessibleName",
    "setPlaceholderText", "setStatusTip", "setText", "setTitle", "setToolTip", "setWindowTitle",
}  # fmt: skip
NAMES = {"Evenstand"}  # the same in every language
# said otherwise, or with "Sie", where `words_de.md` has one word and one manner for all texts
NOT_OUR_GERMAN = re.compile(
    r"Behandlung|Gespinst|Fassung(en)? (des|der)|[Nn]icht gezeigt|(ist|sind|wird|werden|nicht) behalten|"
    r"\b(die|\w+en) Sie\b"
)
STRESSED = {
    "must",
    "muss",
    "bewährte",
    "coir",
    "coir (Kim)",
}  # words of the help that no part of the window says


def fields(text: str) -> Counter[str]:
    return Counter(FIELD.findall(text))


@pytest.fixture(scope="module")
def found() -> tuple[Found, ...]:
    return tuple(collect())


@pytest.fixture(scope="module")
def said(found: tuple[Found, ...]) -> tuple[Text, ...]:
    return texts(found)


@pytest.fixture(scope="module")
def german() -> dict[Text, str]:
    return catalogue(GERMAN)


def test_every_text_is_there_and_translated(german: dict[Text, str], said: tuple[Text, ...]) -> None:
    missing = [text for text in said if not german.get(text)]
    assert not missing, f"run python -m gui.catalogue and fill these in: {missing}"


def test_nothing_is_kept_that_is_no_longer_said(german: dict[Text, str], said: tuple[Text, ...]) -> None:
    assert set(german) == set(said)


def test_a_translation_has_the_fields_of_its_source(german: dict[Text, str]) -> None:
    wrong = [(text.source, words) for text, words in german.items() if fields(text.source) != fields(words)]
    assert not wrong


def test_a_translation_ends_as_its_source_does(german: dict[Text, str]) -> None:
    """A full stop too few or too many shows at once in a paragraph."""
    wrong = [
        (text.source, words)
        for text, words in german.items()
        if text.context != "Date" and text.source.endswith(".") != words.endswith(".")
    ]
    assert not wrong


def test_no_two_keys_of_a_dialog_are_the_same(german: dict[Text, str]) -> None:
    by_dialog: dict[str, list[str]] = {}
    for text, words in german.items():
        if re.search(r"&\w", text.source):
            key = re.search(r"&(\w)", words)
            by_dialog.setdefault(text.context, []).append(key[1].lower() if key else "")
    assert by_dialog
    assert all(len(set(keys)) == len(keys) for keys in by_dialog.values()), by_dialog


def test_every_text_can_be_found_by_reading_the_source(found: tuple[Found, ...]) -> None:
    unseen = [
        f"{one.path.name}:{one.line} {one.code}"
        for one in found
        if one.text is None
        and "painter.translate" not in one.code
        and (one.path.name, one.code.partition("(")[0]) not in SEEN_ELSEWHERE
    ]
    assert not unseen


def test_no_widget_says_words_that_nobody_can_translate() -> None:
    plain = []
    for path in sorted((ROOT / "gui").rglob("*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if not isinstance(node, ast.Call):
                continue
            name = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
            if name in SAYS:
                words = [one.value for one in node.args if isinstance(one, ast.Constant)]
                said = [
                    one
                    for one in words
                    if isinstance(one, str) and re.search("[A-Za-z]{2}", one) and one not in NAMES
                ]
                plain += [f"{path.name}:{node.lineno} {ast.unparse(node)}" for _ in said]
    assert not plain


def test_no_text_is_filled_in_before_it_is_looked_up() -> None:
    filled_in = re.compile(r"\b(?:tr|translate|noop|QT_TRANSLATE_NOOP)\((?:\"[^\"]*\", )?f[\"']")
    found = [
        path.name
        for path in (ROOT / "gui").rglob("*.py")
        if filled_in.search(path.read_text(encoding="utf-8"))
    ]
    assert not found


def test_one_and_many_are_two_texts(said: tuple[Text, ...]) -> None:
    assert not [text for text in said if "(s)" in text.source or "%n" in text.source]


def test_words_that_only_a_book_keeps_are_in_the_catalogue(german: dict[Text, str]) -> None:
    from data.looklist.mold import MOLD_CAUTION

    assert all(Text("Kept", words) in german for words in KEPT)
    assert MOLD_CAUTION in KEPT


def test_templates_are_those_of_the_source(said: tuple[Text, ...]) -> None:
    import json

    from gui.language.spoken import TEMPLATES

    assert json.loads(TEMPLATES.read_text(encoding="utf-8")) == templates(said)


def test_the_compiled_texts_are_those_of_the_catalogue(tmp_path: Path) -> None:
    copy = tmp_path / GERMAN.name
    shutil.copy(GERMAN, copy)
    release(copy, tmp_path / "made.qm")
    assert (tmp_path / "made.qm").read_bytes() == GERMAN.with_suffix(".qm").read_bytes()


@pytest.mark.parametrize("page", ORDER)
def test_every_page_of_help_is_there_in_german(page: str) -> None:
    english = (ROOT / "gui" / "help" / "en" / f"{page}.md").read_text(encoding="utf-8")
    german = (ROOT / "gui" / "help" / "de" / f"{page}.md").read_text(encoding="utf-8")
    assert german != english

    def shape(text: str) -> tuple[int, int, list[str]]:
        headings = len(re.findall("^#", text, re.MULTILINE))
        rows = len(re.findall(r"^\|", text, re.MULTILINE))
        return headings, rows, sorted(re.findall(r"\]\(([^)]*)\)", text))

    assert shape(german) == shape(english)


def test_german_keeps_to_one_word_for_a_thing(german: dict[Text, str]) -> None:
    pages = {
        page: (ROOT / "gui" / "help" / "de" / f"{page}.md").read_text(encoding="utf-8") for page in ORDER
    }
    assert not [words for words in (*german.values(), *pages.values()) if NOT_OUR_GERMAN.search(words)]


def test_the_scheme_is_bright_not_a_lamp(german: dict[Text, str]) -> None:
    """English has one word for both."""
    assert german[Text("ViewMenu", "Light")] == "Hell"
    assert german[Text("TrayForm", "Light")] == "Licht"


@pytest.mark.parametrize("language", ["en", "de"])
@pytest.mark.parametrize("page", ORDER)
def test_what_the_help_names_stands_in_the_window(page: str, language: str, german: dict[Text, str]) -> None:
    folder = ROOT / "gui" / "help" / language
    titles = {(folder / f"{name}.md").read_text(encoding="utf-8").partition("\n")[0][2:] for name in ORDER}
    said = [text.source for text in german] if language == "en" else list(german.values())
    plain = [re.sub(r"&|\{\w+\} ", "", words).casefold() for words in [*said, *titles]]
    named = re.findall(r"(?<![*\\])\*([^*\n]+?)\*(?!\*)", (folder / f"{page}.md").read_text(encoding="utf-8"))
    missing = [
        words for words in named if not any(known.startswith(words.casefold().rstrip(".")) for known in plain)
    ]
    assert not set(missing) - STRESSED
