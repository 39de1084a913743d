"""Catalogue: every text that the window says, found in the source, and what it is in another language.

In    the source of gui, data and vision; `translations/evenstand_de.ts`
Out   the .ts with what is new marked unfinished and what is gone left out; the .qm made from it; the
      templates by which sentences kept as text are known
Not   choosing the language (`language/language.py`), saying a sentence in it (`language/spoken.py`)

    python -m gui.catalogue

A tool for developers: run it after a text was added or changed, fill in what is unfinished in the .ts, run
it again. It is our own, for the usual tool sees neither `Sentence` nor the words of an enumeration.
"""

import argparse
import ast
import json
import subprocess
import sys
import xml.etree.ElementTree as ElementTree
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

__all__ = ["Found", "Text", "catalogue", "collect", "main", "templates"]

ROOT = Path(__file__).resolve().parent.parent
FOLDER = ROOT / "gui" / "translations"
TEMPLATES = FOLDER / "templates.json"
LANGUAGES = ("de",)
SENTENCE, KEPT = "Sentence", "Kept"
MARKED = ("translate", "QT_TRANSLATE_NOOP", "noop")
# enumerations whose words are read in the window; their context is their name
WORDS = frozenset(
    (
        "Became", "ClockFault", "CornersFrom", "Curve", "DateOrder", "DryFrom", "DryingForm",
        "ErrorFrom", "EventKind", "FactorGroup", "Field", "Group", "LookKind", "MeasureKind", "NoNumber",
        "PartName", "ReadingKind", "Reason", "RestsOn", "Role", "SheetKind", "Unit", "What", "Why",
        "WhyNoBlocks",
    )
)  # fmt: skip
NOT_READ = ("catalogue.py",)
# functions that make a sentence of one of their arguments: its place among them
INTO_SENTENCE = {"_kind": 3}


@dataclass(frozen=True, slots=True, order=True)
class Text:
    """One English text, and where it belongs; the same text may be two things in two contexts."""

    context: str
    source: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Found:
    """A text, or a call of which the text cannot be seen."""

    path: Path
    line: int
    text: Text | None
    code: str = ""


def collect(root: Path = ROOT) -> Iterator[Found]:
    """Every text in the source, file by file as they are read from top to bottom."""
    for room in ("gui", "data", "vision"):
        for path in sorted((root / room).rglob("*.py")):
            if path.name in NOT_READ or "training" in path.parts:
                continue
            yield from _Reader(path).found


class _Reader(ast.NodeVisitor):
    """Reads one file."""

    def __init__(self, path: Path) -> None:
        self.path = path
        self.found: list[Found] = []
        self._within: list[str] = []
        self._short: dict[str, str] = {}  # T = partial(translate, "Context")
        self.visit(ast.parse(path.read_text(encoding="utf-8")))

    def visit_ClassDef(self, node: ast.ClassDef) -> None:
        """Names the context of `tr`; holds the words of an enumeration, or what an error says."""
        self._within.append(node.name)
        for line in node.body:
            if not isinstance(line, ast.Assign) or not isinstance(line.value, ast.Constant):
                continue
            value = line.value.value
            names = [target.id for target in line.targets if isinstance(target, ast.Name)]
            if isinstance(value, str) and value:
                if node.name in WORDS and any("Enum" in ast.unparse(base) for base in node.bases):
                    self._add(line, Text(node.name, value))
                elif "says" in names:
                    self._add(line, Text(SENTENCE, value))
        self.generic_visit(node)
        self._within.pop()

    def visit_Assign(self, node: ast.Assign) -> None:
        """A short name for a context."""
        value, target = node.value, node.targets[0]
        if isinstance(value, ast.Call) and isinstance(target, ast.Name) and len(value.args) == 2:
            context = _words(value.args[1])
            if ast.unparse(value.func) == "partial" and ast.unparse(value.args[0]) in MARKED and context:
                self._short[target.id] = context
        self.generic_visit(node)

    def visit_Call(self, node: ast.Call) -> None:
        """`tr`, `translate` and the like, and sentences."""
        name = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
        words = [_words(argument) for argument in node.args]
        if name == "Sentence" and node.args:
            self._see(node, SENTENCE, words[0])
        elif name in INTO_SENTENCE and len(words) > INTO_SENTENCE[name]:
            self._see(node, SENTENCE, words[INTO_SENTENCE[name]])
        elif name == "tr" and len(words) == 1 and isinstance(node.func, ast.Attribute):
            own = isinstance(node.func.value, ast.Name) and node.func.value.id == "self" and self._within
            self._see(node, self._within[-1] if own else None, words[0])
        elif name in self._short and words:
            self._see(node, self._short[name], words[0])
        elif len(words) >= 2 and (name in MARKED or name == "tr"):
            self._see(node, words[0], words[1])
        self.generic_visit(node)

    def _see(self, node: ast.Call, context: str | None, source: str | None) -> None:
        if source == "":
            return
        seen = None if context is None or source is None else Text(context, source)
        self._add(node, seen)

    def _add(self, node: ast.stmt | ast.expr, text: Text | None) -> None:
        code = "" if text else ast.unparse(node)
        self.found.append(Found(path=self.path, line=node.lineno, text=text, code=code))


def _words(node: ast.expr) -> str | None:
    return node.value if isinstance(node, ast.Constant) and isinstance(node.value, str) else None


def texts(found: Iterable[Found]) -> tuple[Text, ...]:
    """Every text once, context by context."""
    once = dict.fromkeys(one.text for one in found if one.text is not None)
    order = {context: number for number, context in enumerate(sorted({text.context for text in once}))}
    return tuple(sorted(once, key=lambda text: order[text.context]))


def templates(wanted: Iterable[Text]) -> list[list[str]]:
    """Context and text of what a book keeps in English: sentences and reasons, the most literal first."""
    kept = [text for text in wanted if text.context in (SENTENCE, KEPT, *WORDS)]
    return [[text.context, text.source] for text in kept]


def catalogue(path: Path) -> dict[Text, str]:
    """What a .ts holds; "" where it is not finished."""
    held: dict[Text, str] = {}
    if not path.exists():
        return held
    for context in ElementTree.parse(path).getroot().iter("context"):
        for message in context.iter("message"):
            words = message.find("translation")
            finished = words is not None and words.get("type") is None
            text = Text(context.findtext("name") or "", message.findtext("source") or "")
            held[text] = (words.text or "") if words is not None and finished else ""
    return held


def write(path: Path, language: str, wanted: Sequence[Text], held: dict[Text, str]) -> None:
    """Write a .ts: a text that is new takes the words that the same text has elsewhere."""
    elsewhere = {text.source: words for text, words in held.items() if words}
    root = ElementTree.Element("TS", version="2.1", language=language, sourcelanguage="en")
    context = None
    for text in wanted:
        if context is None or context.findtext("name") != text.context:
            context = ElementTree.SubElement(root, "context")
            ElementTree.SubElement(context, "name").text = text.context
        message = ElementTree.SubElement(context, "message")
        ElementTree.SubElement(message, "source").text = text.source
        words = held.get(text) or elsewhere.get(text.source, "")
        told = ElementTree.SubElement(message, "translation")
        told.text = words
        if not words:
            told.set("type", "unfinished")
    ElementTree.indent(root, " " * 4)
    body = ElementTree.tostring(root, encoding="unicode")
    path.write_text(f'<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n{body}\n', encoding="utf-8")


def release(path: Path, target: Path) -> None:
    """Make the .qm that the window reads; a window that starts meanwhile finds the old one or the new one."""
    tool = Path(sys.executable).with_name("pyside6-lrelease")
    made = target.with_suffix(".new")
    done = subprocess.run([tool, path, "-qm", made], capture_output=True, text=True, check=False)
    if done.returncode:
        raise SystemExit(done.stdout + done.stderr)
    made.replace(target)


def main(arguments: Sequence[str] | None = None) -> int:
    """Bring every catalogue up to date; returns 1 while something is unfinished."""
    words = argparse.ArgumentParser(prog="python -m gui.catalogue", description=__doc__.split("\n", 1)[0])
    words.parse_args(arguments)
    wanted = texts(collect())
    unfinished = 0
    for language in LANGUAGES:
        path = FOLDER / f"evenstand_{language}.ts"
        write(path, language, wanted, catalogue(path))
        release(path, path.with_suffix(".qm"))
        left = [text for text, words in catalogue(path).items() if not words]
        for text in left:
            print(f"{language}: {text.context}: {text.source}")
        print(f"{path.name}: {len(wanted)} texts, {len(left)} unfinished")
        unfinished += len(left)
    TEMPLATES.write_text(json.dumps(templates(wanted), ensure_ascii=False, indent=0) + "\n", encoding="utf-8")
    return 1 if unfinished else 0


if __name__ == "__main__":
    sys.exit(main())
