"""Report content: what stands in a report, in order, as plain records.

In    nothing
Out   `Report`: its title and its blocks: headings, paragraphs, tables, charts, pictures
Not   reading a book (`reading.py`), drawing (`gui/report`)

Every text is a `Sentence`, or text of a person or the book, which is data: whoever draws it escapes it.
"""

from dataclasses import dataclass
from pathlib import Path

from data.materials.table import Table as MaterialTable
from data.report.mediumgrowth import GrowthLine
from data.sentence import Sentence
from data.verdict.verdicts import CropVerdict

__all__ = [
    "Block", "Grid", "GrowthFigure", "Heading", "IntervalFigure", "Materials", "Paragraph", "Picture",
    "PictureRow", "Report", "VerdictGrid",
]  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Block:
    """A piece of a report. `spare`: the highest goes first where a report has to be short; 0 never goes."""

    spare: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class Heading(Block):
    """Of a section (1) or a part of it (2)."""

    text: str
    level: int = 1
    on_new_page: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Paragraph(Block):
    """One paragraph; `role` is "", "answer" (a verdict), "caution" or "small"."""

    text: str
    role: str = ""
    with_next: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Grid(Block):
    """A table of text; `wide` are the columns that hold words and take the room that is left."""

    name: str
    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    wide: tuple[int, ...] = (0,)


@dataclass(frozen=True, slots=True, kw_only=True)
class VerdictGrid(Block):
    """The table of one verdict: means, differences, intervals, answers, ranks."""

    found: CropVerdict


@dataclass(frozen=True, slots=True, kw_only=True)
class IntervalFigure(Block):
    """The chart of intervals of one verdict."""

    found: CropVerdict


@dataclass(frozen=True, slots=True, kw_only=True)
class GrowthFigure(Block):
    """The chart of growth by treatment."""

    lines: tuple[GrowthLine, ...]
    found: CropVerdict


@dataclass(frozen=True, slots=True, kw_only=True)
class Materials(Block):
    """The table of media."""

    table: MaterialTable


@dataclass(frozen=True, slots=True, kw_only=True)
class Picture:
    """One top view with its words; a file that is gone is drawn as an empty frame."""

    path: Path
    words: Sentence


@dataclass(frozen=True, slots=True, kw_only=True)
class PictureRow(Block):
    """Pictures side by side under the name of their medium."""

    name: str
    pictures: tuple[Picture, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Report:
    """A whole report. `short` is the one of two pages."""

    title: str
    subtitle: Sentence
    trial: str
    short: bool
    blocks: tuple[Block, ...]

    def texts(self) -> tuple[str, ...]:
        """All headings and paragraphs, in order."""
        return tuple(block.text for block in self.blocks if isinstance(block, (Heading, Paragraph)))
