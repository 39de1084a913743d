"""Look rows: questions of the look list to the book, and the one place where their rows become records.

In    rows
Out   `DayNumbers`, `EarlierDay`, `Answer`, `PastLook`; SQL as constants, values bound by name
Not   running the queries (`chapters/lookbook.py`), what needs a look (`watch.py`)

All of them begin at trays that grow, or at some earlier ones of a crop: a morning depends on the rack, not
on the years kept. What comes in thousands is ordered as its index holds it, so that nothing is sorted.
"""

from dataclasses import dataclass
from datetime import date, datetime
from sqlite3 import Row
from typing import Any

from data.look import LookKind, Urgency
from data.looklist.answers import Answer, AnswerKind
from data.looklist.places import bare_share
from data.numbers import TrayId
from data.queries import ASKED_SCORE
from data.records import DayNumbers, EarlierDay
from data.tables.rows import doubts_of, reason_of

__all__ = [
    "ANSWERS", "ANSWERS_OF_TRAY", "CUT", "EARLIER", "ENTRY_GOES", "ENTRY_GOES_ON", "FORGET_ENTRIES",
    "NEW_ENTRY", "NOTED", "NUMBERS", "OPEN_ENTRIES", "PAST", "SAME_ENTRY", "WATERED", "PastLook", "answer_of",
    "earlier_day_of", "numbers_of", "past_look_of",
]  # fmt: skip

EARLIER_TRAYS = 8

NUMBERS = f"""
    SELECT t.id AS tray, p.id AS photo, p.taken_at, p.refusal, p.needs_corners,
           s.method, s.sure, s.coverage, s.uniformity, s.edge_deficit, s.gap_share,
           s.lightness, s.dark_green, s.corrected_by, s.cells, s.bed_share, s.notes, s.mended
      FROM tray t
      CROSS JOIN photo p ON p.tray = t.id AND p.taken_at >= :since
      LEFT JOIN score s ON {ASKED_SCORE}
     WHERE t.done_at IS NULL AND p.left_out_at IS NULL
     ORDER BY t.shelf, t.position, t.id, p.taken_at, p.id
"""
NOTED = """
    SELECT r.tray, r.taken_at, r.value
      FROM tray t
      CROSS JOIN reading r ON r.tray = t.id AND r.kind = :kind
     WHERE t.done_at IS NULL
     ORDER BY t.shelf, t.position, t.id, r.taken_at, r.id
"""
WATERED = """
    SELECT e.tray, e.at
      FROM tray t
      CROSS JOIN event e ON e.tray = t.id
     WHERE t.done_at IS NULL AND e.kind = 'watered'
     ORDER BY t.shelf, t.position, t.id, e.at, e.id
"""
EARLIER = f"""
    SELECT t.sown_at, p.taken_at, s.method, s.coverage, s.cells, s.bed_share
      FROM (SELECT o.id, o.sown_at
              FROM crop c
              CROSS JOIN tray o ON o.crop = c.id AND o.sown_at < :before
             WHERE c.name = :crop
             ORDER BY o.sown_at DESC
             LIMIT {EARLIER_TRAYS}) t
      CROSS JOIN photo p ON p.tray = t.id AND p.taken_at < date(t.sown_at, :days)
      CROSS JOIN score s ON s.id = (SELECT max(z.id) FROM score z WHERE z.photo = p.id)
     WHERE s.sure = 1 AND s.coverage IS NOT NULL AND p.refusal IS NULL AND p.left_out_at IS NULL
"""
CUT = f"""
    SELECT t.sown_at, t.done_at
      FROM crop c
      CROSS JOIN tray t ON t.crop = c.id
     WHERE c.name = :crop AND t.ended = 'cut'
     ORDER BY t.sown_at DESC
     LIMIT {EARLIER_TRAYS}
"""
# the last day of what was answered: an entry that began after the answer is another one
ANSWERS = """
    SELECT a.tray, a.what, a.since, a.answer, a.urgency, a.size, a.answered_on,
           (SELECT max(e.last_on)
              FROM look_entry e
             WHERE e.tray = a.tray AND e.what = a.what AND e.first_on <= a.answered_on) AS last_on
      FROM tray t
      CROSS JOIN look_answer a ON a.tray = t.id
     WHERE t.done_at IS NULL
     ORDER BY a.id
"""
ANSWERS_OF_TRAY = "SELECT what, answer, answered_on FROM look_answer WHERE tray = :tray ORDER BY id DESC"
ENTRY = """
    SELECT e.id, e.tray, t.code, e.what, e.since, e.urgency, e.sentence, e.first_on, e.last_on, e.gone_on,
           e.gone_why, t.ended, t.done_at
      FROM look_entry e
      JOIN tray t ON t.id = e.tray
"""
OPEN_ENTRIES = ENTRY + " WHERE e.gone_on IS NULL"
SAME_ENTRY = "SELECT id FROM look_entry WHERE tray = :tray AND what = :what AND since = :since"
NEW_ENTRY = """
    INSERT INTO look_entry (tray, what, since, urgency, sentence, first_on, last_on)
    VALUES (:tray, :what, :since, :urgency, :sentence, :today, :today)
"""
ENTRY_GOES_ON = """
    UPDATE look_entry
       SET urgency = :urgency, sentence = :sentence, last_on = :today, gone_on = NULL, gone_why = ''
     WHERE id = :id
"""
ENTRY_GOES = "UPDATE look_entry SET gone_on = :gone_on, gone_why = :gone_why WHERE id = :id"
# what the list itself has noted of trays that a person takes back
FORGET_ENTRIES = "DELETE FROM look_entry WHERE tray BETWEEN :first AND :last"
PAST = (
    ENTRY
    + """
      LEFT JOIN trial r ON r.id = t.trial
     WHERE (:tray IS NULL OR e.tray = :tray) AND (:trial IS NULL OR r.name = :trial)
     ORDER BY e.first_on DESC, e.id DESC
"""
)


@dataclass(frozen=True, slots=True, kw_only=True)
class PastLook:
    """One reason that stood on the look list, and what became of it."""

    tray_id: TrayId
    code: str
    what: LookKind
    since: date
    urgency: Urgency
    sentence: str  # as it was said last
    first_on: date
    last_on: date
    gone_on: date | None  # None while it holds
    gone_why: str
    answer: AnswerKind | None = None  # what a person said to it last
    answered_on: date | None = None


def numbers_of(row: tuple[Any, ...]) -> DayNumbers:
    """What the look list asks of one photo; thousands of rows a morning, so by place and not by name."""
    (
        tray, photo, taken_at, refusal, needs_corners, method, sure, coverage, uniformity, edge_deficit,
        gap_share, lightness, dark_green, corrected_by, cells, bed_share, notes, mended,
    ) = row  # fmt: skip
    return DayNumbers(
        tray,
        photo,
        datetime.fromisoformat(taken_at),
        None if refusal is None else reason_of(refusal),
        needs_corners == 1,
        method,
        sure == 1,
        coverage,
        uniformity,
        edge_deficit,
        gap_share,
        lightness,
        dark_green,
        corrected_by == "patch",
        cells or b"",
        bed_share,
        () if notes == "[]" else doubts_of(notes, mended),  # nearly always
    )


def earlier_day_of(row: Row, crop: str) -> EarlierDay:
    """One day of an earlier tray of a crop."""
    sown, taken = (datetime.fromisoformat(row[name]).date() for name in ("sown_at", "taken_at"))
    return EarlierDay(
        crop=crop,
        day=(taken - sown).days,
        method=row["method"],
        coverage=row["coverage"],
        bare=bare_share(row["cells"]),
        bed_share=row["bed_share"],
    )


def answer_of(row: Row) -> Answer:
    """What a person said to a reason."""
    return Answer(
        tray_id=TrayId(row["tray"]),
        what=LookKind(row["what"]),
        since=date.fromisoformat(row["since"]),
        answer=AnswerKind(row["answer"]),
        urgency=Urgency(row["urgency"]),
        size=row["size"],
        answered_on=date.fromisoformat(row["answered_on"]),
        last_on=None if row["last_on"] is None else date.fromisoformat(row["last_on"]),
    )


def past_look_of(row: Row, answers: list[Row]) -> PastLook:
    """One line of the history, with the newest answer given while it stood there."""
    until = row["gone_on"] or "9999"
    said = next(
        (a for a in answers if a["what"] == row["what"] and row["first_on"] <= a["answered_on"] <= until),
        None,
    )
    return PastLook(
        tray_id=TrayId(row["tray"]),
        code=row["code"],
        what=LookKind(row["what"]),
        since=date.fromisoformat(row["since"]),
        urgency=Urgency(row["urgency"]),
        sentence=row["sentence"],
        first_on=date.fromisoformat(row["first_on"]),
        last_on=date.fromisoformat(row["last_on"]),
        gone_on=None if row["gone_on"] is None else date.fromisoformat(row["gone_on"]),
        gone_why=row["gone_why"],
        answer=None if said is None else AnswerKind(said["answer"]),
        answered_on=None if said is None else date.fromisoformat(said["answered_on"]),
    )
