"""No text from outside becomes a statement: what is run is written in the program, values are bound to it.

Every call that hands SQL to the database is looked at in the source. It may be given a literal, a constant of
`queries.py`, `schema.py` or a `*rows.py`, or come from one of the few builders named here with the reason why
they are safe. Names of tables come from a list of the program's own.
"""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
RUN = {"execute", "executemany", "executescript", "query", "rows_where", "delete_where"} | {
    "_rows",
    "_row",
    "_tuples",
}
KEEP_SQL = ("queries", "schema")

BUILDERS = {
    (
        "data/chapters/session.py",
        "__init__",
    ): "the pragmas of `queries.ON_CONNECTING`, filled with a whole number",
    ("data/chapters/store.py", "_rows"): "runs what it is given: its callers are looked at here",
    ("data/chapters/store.py", "_tuples"): "runs what it is given: its callers are looked at here",
    ("data/chapters/store.py", "_row"): "hands on to `_rows`: its callers are looked at here",
    ("data/tables/firststeps.py", "m001_first_tables"): "statements of the same module",
    ("data/tables/steps.py", "m003_book_and_trial"): "statements of the same module",
    ("data/tables/steps.py", "m004_share_of_bed"): "statements of the same module",
    ("data/tables/packingstep.py", "m006_packed_scores"): "statements of the same module",
    ("data/chapters/trayreader.py", "trays"): "one of two constants",
    ("data/chapters/trayreader.py", "comparable"): "two of four constants",
    ("data/chapters/changes.py", "_turn"): "one of two constants",
    ("data/chapters/changes.py", "_is_outdated"): "constants by name; of a name that is not there, KeyError",
}
OTHER_ROWS = {"data/tables/journal.py", "data/logs/cells.py"}  # their `_row` runs nothing
TABLES = {
    "data/tables/journal.py": (
        "tables that a Recorder was asked for by the program, kept in the book's own changes"
    ),
    "data/travel/newrows.py": "names of the same module",
    "data/travel/samenames.py": "literals of the same module",
    "data/chapters/sowing.py": "literals of the same module",
    "data/export.py": "the list of `openfiles/tables.py`",
    "data/travel/imported.py": "the list of `openfiles/tables.py`",
    "data/travel/readable.py": "literals of the same module",
}


def sources() -> Iterator[tuple[str, ast.Module]]:
    for room in ("vision", "data", "gui"):
        for path in sorted((ROOT / room).rglob("*.py")):
            yield str(path.relative_to(ROOT)), ast.parse(path.read_text(encoding="utf-8"))


def calls(tree: ast.Module) -> Iterator[tuple[str, ast.Call]]:
    """Each call of a method, with the name of the function it stands in."""

    def walk(node: ast.AST, inside: str) -> Iterator[tuple[str, ast.Call]]:
        if isinstance(node, ast.FunctionDef):
            inside = node.name
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute):
            yield inside, node
        for child in ast.iter_child_nodes(node):
            yield from walk(child, inside)

    yield from walk(tree, "")


def is_written_here(statement: ast.expr) -> bool:
    """A literal; a constant of a module of SQL; one of those filled with whole numbers alone."""
    match statement:
        case ast.Constant(value=str()):
            return True
        case ast.Attribute(value=ast.Name(id=module), attr=name):
            return name.isupper() and (module in KEEP_SQL or module.endswith("rows"))
        case ast.Subscript(value=value):
            return is_written_here(value)
        case ast.Call(func=ast.Attribute(value=value, attr="format")):
            return is_written_here(value)
        case ast.Name(id=name):
            return name.isupper()
    return False


def test_every_statement_is_written_in_the_program() -> None:
    strange, seen = [], 0
    for path, tree in sources():
        for inside, call in calls(tree):
            assert isinstance(call.func, ast.Attribute)
            if call.func.attr not in RUN or not call.args:
                continue
            if call.func.attr in ("_rows", "_row") and (path.startswith("gui/") or path in OTHER_ROWS):
                continue  # rows of a layout, or of a file
            seen += 1
            if not is_written_here(call.args[0]) and (path, inside) not in BUILDERS:
                strange.append(f"{path}:{call.lineno} in {inside}: {ast.unparse(call)[:80]}")
    assert strange == []
    assert seen > 60


def test_every_builder_is_still_there() -> None:
    found = {(path, inside) for path, tree in sources() for inside, call in calls(tree)}
    assert set(BUILDERS) <= found
    assert set(TABLES) | OTHER_ROWS <= {path for path, _ in found}


def test_names_of_tables_are_the_programs_own() -> None:
    strange = [
        f"{path}:{call.lineno}"
        for path, tree in sources()
        for _, call in calls(tree)
        if isinstance(call.func, ast.Attribute)
        and call.func.attr == "table"
        and call.args
        and not isinstance(call.args[0], ast.Constant)
        and path not in TABLES
    ]
    assert strange == []


def test_statements_are_put_together_only_from_constants_and_whole_numbers() -> None:
    """f-strings at the top of a module of SQL fill in names in capitals alone."""
    for path, tree in sources():
        stem = Path(path).stem
        if not path.startswith("data/") or not (stem in KEEP_SQL or stem.endswith("rows")):
            continue
        for node in tree.body:
            if not isinstance(node, ast.Assign | ast.AnnAssign) or node.value is None:
                continue
            for part in ast.walk(node.value):
                if isinstance(part, ast.FormattedValue):
                    name = ast.unparse(part.value).rpartition(".")[2]  # a constant, or a kind's own name
                    assert name.isupper(), f"{path}:{node.lineno}"


@pytest.mark.parametrize(
    "source",
    [
        'db.execute(f"SELECT {name}")', 'db.execute("SELECT " + name)', "db.execute(text)",
        'db.execute("SELECT %s" % name)', "self._rows(words.format(name))",
    ],
)  # fmt: skip
def test_a_statement_from_outside_would_be_noticed(source: str) -> None:
    ((_, call),) = [found for found in calls(ast.parse(source)) if found[1].func.attr in RUN]
    assert not is_written_here(call.args[0])
