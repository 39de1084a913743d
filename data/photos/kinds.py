"""Kinds: which kind of tray carries a tag at a time, as scoring asks for it.

In    rows of trays whose type is not the nominal one
Out   `TraysByTag`, which travels to another process and answers there
Not   the measures themselves (`vision/traytype.py`), who asks (`vision/place.py`)

Scoring asks for measures, so two kinds that differ in name alone are one to it: it is answered without names.
"""

from dataclasses import dataclass, replace
from datetime import datetime

from vision.traytype import TrayType

__all__ = ["NOMINAL", "TagSpan", "TraysByTag", "measures", "one_kind"]

NOMINAL = TrayType(name="10 x 20 inch")


@dataclass(frozen=True, slots=True, kw_only=True)
class TagSpan:
    """From when to when a tag was on a tray of some kind."""

    tag: int
    since: datetime
    until: datetime | None  # None: it still is
    tray_type: TrayType

    def holds(self, tag: int | None, at: datetime | None) -> bool:
        """Whether the tag was on that tray at a time; at any time where it is not known."""
        if tag != self.tag:
            return False
        return at is None or (self.since.date() <= at.date() and (self.until is None or at <= self.until))


@dataclass(frozen=True, slots=True, kw_only=True)
class TraysByTag:
    """Answers with the measures of the tray that carries a tag."""

    usual: TrayType  # where no tag was read, or one that the book does not know
    spans: tuple[TagSpan, ...] = ()  # last sown first

    @property
    def kinds(self) -> tuple[TrayType, ...]:
        """All kinds that there are, each once, the usual one first."""
        every = (self.usual, *(span.tray_type for span in self.spans))
        return tuple(dict.fromkeys(measures(one) for one in every))

    def __call__(self, tag: int | None, at: datetime | None) -> TrayType:
        """The kind of tray under a tag at a time."""
        if at is not None and at.tzinfo is not None:
            at = at.astimezone().replace(tzinfo=None)
        found = (span.tray_type for span in self.spans if span.holds(tag, at))
        return measures(next(found, self.usual))


def one_kind(tray_type: TrayType) -> TraysByTag:
    """The same kind whatever the tag: of a photo whose tray is known."""
    return TraysByTag(usual=tray_type)


def measures(tray_type: TrayType) -> TrayType:
    """The same without its name."""
    return replace(tray_type, name="")
