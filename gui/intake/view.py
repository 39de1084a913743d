"""Intake view: every photo's fate in a row, read from the book and from what is just coming in; no Qt.

In    what the book knows of its photos, the files of this session and their fates
Out   `IntakeState`, from which all that can be seen on the list follows
Not   scoring and storing (`data.intake`), the widgets (`screen.py`)
"""

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime
from enum import StrEnum
from pathlib import Path
from typing import assert_never

from data.records import (
    Fate,
    Known,
    NeedsCorners,
    NeedsTray,
    PhotoId,
    PhotoRow,
    PhotoState,
    Refused,
    Stored,
    TrayId,
)
from gui.language.spoken import DAY, day_words, filled, spoken
from gui.language.words import translate

__all__ = ["Batch", "IntakeRow", "IntakeState", "Kind", "intake_state"]


class Kind(StrEnum):
    """What can be done with a row."""

    WAITING = "waiting"
    STORED = "stored"
    PROPOSED = "proposed"  # by the order of the walk: a person has to confirm it
    NEEDS_TRAY = "needs a tray"
    NEEDS_CORNERS = "needs corners"
    REFUSED = "refused"
    KNOWN = "already in the book"
    LEFT_OUT = "left out"
    MISSING = "not brought in"  # the work broke off before: the disk was full, say


NEEDING = frozenset({Kind.PROPOSED, Kind.NEEDS_TRAY, Kind.NEEDS_CORNERS, Kind.MISSING})


@dataclass(frozen=True, slots=True, kw_only=True)
class IntakeRow:
    """One photo. `photo_id` is None while it waits, and where nothing of it could be kept."""

    key: Path | int
    name: str
    kind: Kind
    sentence: str
    taken_at: datetime | None = None
    photo_id: PhotoId | None = None
    photo: Path | None = None
    thumbnail: Path | None = None
    tray_id: TrayId | None = None
    tray_code: str | None = None
    proposal_id: TrayId | None = None
    proposal_code: str | None = None

    @property
    def needs_person(self) -> bool:
        """Whether a person has to do something before its numbers count."""
        return self.kind in NEEDING


@dataclass(frozen=True, slots=True, kw_only=True)
class IntakeState:
    """All that Intake shows, apart from the one photo that is looked at."""

    rows: tuple[IntakeRow, ...] = ()  # those shown
    total: int = 0
    waiting: int = 0
    needing: int = 0
    stored: int = 0
    known: int = 0
    refused: int = 0
    missing: tuple[Path, ...] = ()  # files that were to come in when the work broke off
    only_needing: bool = False
    proposals: tuple[tuple[PhotoId, TrayId], ...] = ()

    @property
    def headline(self) -> str:
        """What matters most, in one line."""
        if self.needing == 1:
            return translate("Intake", "1 photo needs you")
        if self.needing:
            return translate("Intake", "{count} photos need you").format(count=self.needing)
        if self.waiting:
            return translate("Intake", "Photos are being scored")
        return translate("Intake", "No photo needs you")

    @property
    def summary(self) -> str:
        """How many of each kind."""
        words = [
            translate("Intake", "1 photo")
            if self.total == 1
            else translate("Intake", "{count} photos").format(count=self.total)
        ]
        if self.stored or not self.known:
            words.append(translate("Intake", "{count} matched").format(count=self.stored))
        if self.known:
            words.append(translate("Intake", "{count} already in the book").format(count=self.known))
        if self.refused:
            words.append(translate("Intake", "{count} not used").format(count=self.refused))
        if self.missing:
            words.append(translate("Intake", "{count} not brought in").format(count=len(self.missing)))
        if self.waiting:
            words.append(translate("Intake", "{count} waiting").format(count=self.waiting))
        return ", ".join(words)


class Batch:
    """The files of this session in the order in which they came, each with its fate once it has one."""

    def __init__(self) -> None:
        self._fates: dict[Path, Fate | None] = {}
        self._missing: tuple[Path, ...] = ()

    @property
    def missing(self) -> tuple[Path, ...]:
        """Files and folders that were to come in when the work broke off."""
        return self._missing

    def asked_again(self, paths: Collection[Path]) -> None:
        """These are no longer missing: they are on their way."""
        self._missing = tuple(path for path in self._missing if path not in paths)

    def add(self, paths: Iterable[Path]) -> None:
        """Files that wait to be scored."""
        for path in paths:
            self._fates.pop(path, None)
            self._fates[path] = None
        self._missing = tuple(path for path in self._missing if path not in self._fates)

    def arrived(self, path: Path, fate: Fate) -> None:
        """The fate of one of them."""
        self._fates[path] = fate

    def drop_waiting(self) -> None:
        """The work was cancelled: what had no fate by then was not brought in."""
        self._fates = {path: fate for path, fate in self._fates.items() if fate is not None}

    def break_off(self, queue: Iterable[Path]) -> None:
        """The work ended early: what had no fate by then, and what was to come after it, is missing."""
        waiting = (path for path, fate in self._fates.items() if fate is None)
        self._missing = tuple(dict.fromkeys([*self._missing, *waiting, *queue]))
        self.drop_waiting()

    def items(self) -> tuple[tuple[Path, Fate | None], ...]:
        """File and fate."""
        return tuple(self._fates.items())


def intake_state(
    batch: Batch,
    photos: Sequence[PhotoRow],
    *,
    only_needing: bool = False,
    only: Collection[PhotoId] | None = None,
    ended: Mapping[TrayId, date] | None = None,
) -> IntakeState:
    """The rows: files that are missing, this session's in their order, other photos, last taken first.

    Parameters
    ----------
    only_needing : show those alone that need a person.
    only : show these alone; all are counted.
    ended : trays that grow no more, with their last day: another one may have their code by now.
    """
    by_day = sorted(photos, key=lambda photo: photo.taken_at, reverse=True)  # in whatever order they came in
    by_id = {photo.id: _row_of_photo(photo, ended or {}) for photo in by_day}
    items = batch.items()
    here = {fate.photo_id for _, fate in items if fate is not None and not isinstance(fate, Known)}
    session = [_row_of_missing(path) for path in batch.missing]
    session += [_row_of_file(path, fate, by_id, here) for path, fate in items]
    shown = {row.photo_id for row in session}
    rows = session + [row for photo, row in by_id.items() if photo not in shown]
    kinds = [row.kind for row in rows]
    return IntakeState(
        rows=tuple(
            row
            for row in rows
            if (row.photo_id in only if only is not None else row.needs_person or not only_needing)
        ),
        total=len(rows),
        waiting=kinds.count(Kind.WAITING),
        needing=sum(row.needs_person for row in rows),
        stored=kinds.count(Kind.STORED),
        known=kinds.count(Kind.KNOWN),
        refused=kinds.count(Kind.REFUSED),
        missing=batch.missing,
        only_needing=only_needing,
        proposals=tuple(
            (row.photo_id, row.proposal_id)
            for row in rows
            if row.kind is Kind.PROPOSED and row.photo_id is not None and row.proposal_id is not None
        ),
    )


def _row_of_missing(path: Path) -> IntakeRow:
    words = translate("Intake", "not brought in: the work broke off before it was this file's turn")
    return IntakeRow(key=path, name=path.name, kind=Kind.MISSING, photo=path, sentence=words)


def _row_of_file(
    path: Path, fate: Fate | None, by_id: Mapping[PhotoId, IntakeRow], here: Collection[PhotoId | None]
) -> IntakeRow:
    """The row of a file; `here` are the photos that have a row of their own in this session."""
    if fate is None:
        return IntakeRow(
            key=path, name=path.name, kind=Kind.WAITING, photo=path, sentence=translate("Intake", "waiting")
        )
    row = None if fate.photo_id is None else by_id.get(fate.photo_id)
    if row is None:  # nothing of it could be kept, or it is not among the photos that were read
        return IntakeRow(
            key=path,
            name=path.name,
            kind=_kind_of_fate(fate),
            sentence=spoken(fate.sentence),
            photo=path,
            photo_id=fate.photo_id,
        )
    if isinstance(fate, Known):
        return _known_before(path, row, asks=fate.photo_id not in here)
    return row


def _kind_of_fate(fate: Fate) -> Kind:
    match fate:
        case Stored():
            return Kind.STORED
        case NeedsTray():
            return Kind.NEEDS_TRAY if fate.proposal_id is None else Kind.PROPOSED
        case NeedsCorners():
            return Kind.NEEDS_CORNERS
        case Refused():
            return Kind.REFUSED
        case Known():
            return Kind.KNOWN
        case _:
            assert_never(fate)


def _known_before(path: Path, row: IntakeRow, *, asks: bool) -> IntakeRow:
    """A file that was in the book already: under its own name, and asking for a person once, not twice."""
    words = translate("Intake", "already in the book: {fate}")
    if path.name != row.name:
        words = translate("Intake", "the same photo as {name}, already in the book: {fate}")
    keeps = asks and row.kind is not Kind.STORED
    return replace(
        row,
        key=path,
        name=path.name,
        sentence=words.format(name=row.name, fate=row.sentence),
        kind=row.kind if keeps else Kind.KNOWN,
    )


def _row_of_photo(photo: PhotoRow, ended: Mapping[TrayId, date]) -> IntakeRow:
    sentence = spoken(photo.sentence)
    tray, code = photo.tray_id or photo.proposal_id, photo.tray_code or photo.proposal_code
    if tray is not None and tray in ended:
        words = translate("Intake", "{sentence} (this {code} ended on {day})")
        sentence = filled(words, sentence=sentence, code=code, day=day_words(ended[tray], DAY))
    return IntakeRow(
        key=int(photo.id),
        name=photo.name,
        kind=_kind_of(photo),
        sentence=sentence,
        taken_at=photo.taken_at,
        photo_id=photo.id,
        photo=photo.photo,
        thumbnail=photo.thumbnail or photo.photo,  # a photo that is not used has no top view: show itself
        tray_id=photo.tray_id,
        tray_code=photo.tray_code,
        proposal_id=photo.proposal_id,
        proposal_code=photo.proposal_code,
    )


def _kind_of(photo: PhotoRow) -> Kind:
    match photo.state:
        case PhotoState.STORED:
            return Kind.STORED
        case PhotoState.NEEDS_TRAY:
            return Kind.NEEDS_TRAY if photo.proposal_id is None else Kind.PROPOSED
        case PhotoState.NEEDS_CORNERS:
            return Kind.NEEDS_CORNERS
        case PhotoState.LEFT_OUT:
            return Kind.LEFT_OUT
        case _:
            return Kind.REFUSED
