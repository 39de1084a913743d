"""The rooms are entered one way: gui -> data -> vision, and Qt stays in gui."""

import ast
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
MAY_IMPORT: dict[str, set[str]] = {
    "vision": set(),
    "data": {"vision"},
    "gui": {"vision", "data", "PySide6"},
}
FULL = 30  # modules of one folder; those of vision stand in the order in which a photo meets them
WATCHED = {"vision", "data", "gui", "PySide6"}


def imported_by(path: Path) -> Iterator[str]:
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            yield from (alias.name.partition(".")[0] for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module and node.level == 0:
            yield node.module.partition(".")[0]


@pytest.mark.parametrize("room", MAY_IMPORT)
def test_imports_go_one_way(room: str) -> None:
    modules = sorted((ROOT / room).rglob("*.py"))
    assert modules, f"no module found in {room}"
    for path in modules:
        strangers = (WATCHED & set(imported_by(path))) - MAY_IMPORT[room] - {room}
        assert not strangers, f"{path.relative_to(ROOT)} imports {strangers}"


@pytest.mark.parametrize("room", MAY_IMPORT)
def test_every_module_opens_with_a_sentence_that_says_what_it_is(room: str) -> None:
    silent = [
        path.relative_to(ROOT)
        for path in (ROOT / room).rglob("*.py")
        if not ast.get_docstring(ast.parse(path.read_text(encoding="utf-8")))
    ]
    assert silent == []


def test_no_module_is_a_drawer_for_odds_and_ends() -> None:
    names = {path.stem for room in MAY_IMPORT for path in (ROOT / room).rglob("*.py")}
    assert not names & {"utils", "util", "helpers", "helper", "manager", "common", "misc"}


def test_no_folder_is_too_full_to_find_a_way_in() -> None:
    count = Counter(path.parent for room in ("gui", "data") for path in (ROOT / room).rglob("*.py"))
    full = {str(folder.relative_to(ROOT)): modules for folder, modules in count.items() if modules > FULL}
    assert full == {}


def test_sql_stays_with_the_book() -> None:
    """Statements begin with these words; they may stand only beside the book, and in its tables."""
    allowed = {"book.py", "schema.py", "queries.py"}
    statements = ("SELECT ", "INSERT ", "UPDATE ", "DELETE ", "CREATE TABLE", "PRAGMA ")
    for room in MAY_IMPORT:
        for path in (ROOT / room).rglob("*.py"):
            if path.parent == ROOT / "data" / "tables" or (
                path.parent == ROOT / "data" and path.name in allowed
            ):
                continue
            for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
                if isinstance(node, ast.Constant) and isinstance(node.value, str):
                    assert not node.value.lstrip().startswith(statements), f"SQL in {path.relative_to(ROOT)}"
