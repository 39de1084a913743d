"""Answers to the look list are kept with a way back; what stood on it stays readable, with why it went."""

import subprocess
import sys
from collections import defaultdict
from datetime import date, datetime, timedelta
from pathlib import Path

import pytest

from data.book import Book
from data.errors import BookReadOnly
from data.events import EventKind
from data.look import Look, LookKind
from data.looklist.answers import AnswerKind
from data.readings import NewReading, ReadingKind
from data.report.beside import look_blocks
from data.report.content import Grid
from data.sentence import Sentence
from data.tables import lookrows
from data.watch import read_looks
from tests.data.builders import a_note, a_tray, bring

ROOT = Path(__file__).resolve().parents[3]


def photograph(
    book: Book, phone: Path, day: int, behind: float = 30.0, tags: tuple[int, ...] = (10, 11, 12)
) -> None:
    """Photos of the three trays on a day in March; A1 has `behind` where the others have 70 %."""
    for tag in tags:
        taken = datetime(2026, 3, day, 8, tag).isoformat()
        coverage = behind if tag == 10 else 70.0
        bring(book, a_note(phone, f"{day}-{tag}.jpg", tag=tag, taken_at=taken, coverage=coverage))


@pytest.fixture
def lagging(book: Book, phone: Path) -> Book:
    """A1 lags on 7 and 8 March; today is the 8th."""
    for day in (6, 7, 8):
        photograph(book, phone, day)
    return book


def today(book: Book, day: int) -> None:
    book.set_setting("today", f"2026-03-{day:02}")


def only(looks: tuple[Look, ...]) -> Look:
    (look,) = looks
    return look


# --- ready to cut


@pytest.mark.parametrize(
    ("cut_on", "words"),
    [
        ([7, 8, 8], "usually cut on day 7 to 8."),
        ([2, 7, 7, 7, 20], "usually cut on day 7."),
        ([7, 8], ""),
        ([9, 9, 10], ""),
    ],
)
def test_a_full_tray_is_ready_to_cut_when_the_last_ones_of_its_crop_were_cut(
    book: Book, phone: Path, cut_on: list[int], words: str
) -> None:
    for number, age in enumerate(cut_on):
        sown = datetime(2026, 1, 1 + number, 9)
        tray = book.add_tray(a_tray(f"C{number}", sown_at=sown))
        book.add_event([tray], EventKind.CUT, sown + timedelta(days=age))
    for day in (6, 7, 8):
        for tag in (10, 11, 12):
            taken = datetime(2026, 3, day, 8, tag).isoformat()
            bring(book, a_note(phone, f"{day}-{tag}.jpg", tag=tag, taken_at=taken, coverage=96.0))

    ready = [str(look.sentence) for look in read_looks(book) if look.what is LookKind.READY]

    assert len(ready) == (1 if words else 0)
    assert all(sentence.endswith(words) for sentence in ready)


# --- answers


@pytest.mark.parametrize("answer", AnswerKind)
def test_an_answered_line_leaves_the_list_and_undo_brings_it_back(lagging: Book, answer: AnswerKind) -> None:
    look = only(read_looks(lagging))

    lagging.answer_look(look, answer)
    assert read_looks(lagging) == ()

    text = lagging.undo()
    assert text in ("A1 seen", "A1 put off until tomorrow")
    assert only(read_looks(lagging)).what is LookKind.LAGGING
    lagging.redo()
    assert read_looks(lagging) == ()


@pytest.mark.parametrize("answer", AnswerKind)
def test_what_was_said_to_a_line_stands_in_a_report_as_a_sentence(lagging: Book, answer: AnswerKind) -> None:
    read_looks(lagging)
    lagging.answer_look(only(read_looks(lagging)), answer)

    (grid,) = [block for block in look_blocks(lagging, "t") if isinstance(block, Grid)]

    assert isinstance(grid.rows[0][-1], Sentence)


def test_put_off_until_tomorrow_it_is_back_tomorrow(lagging: Book, phone: Path) -> None:
    lagging.answer_look(only(read_looks(lagging)), "tomorrow")
    today(lagging, 9)
    photograph(lagging, phone, 9)

    assert only(read_looks(lagging)).what is LookKind.LAGGING


def test_seen_it_stays_away_until_it_gets_worse(lagging: Book, phone: Path) -> None:
    lagging.answer_look(only(read_looks(lagging)), "seen")
    today(lagging, 9)
    photograph(lagging, phone, 9)
    assert read_looks(lagging) == ()

    for day in (10, 11):
        today(lagging, day)
        photograph(lagging, phone, day, behind=5.0)
    assert [look.code for look in read_looks(lagging)] == ["A1"]


@pytest.mark.parametrize("asked_between", [True, False])
def test_what_comes_back_after_days_is_shown_however_often_one_looks(
    lagging: Book, phone: Path, asked_between: bool
) -> None:
    read_looks(lagging)
    lagging.answer_look(only(read_looks(lagging)), "seen")
    for day in range(9, 14):
        photograph(lagging, phone, day, behind=69.0)
        if asked_between:  # else the program stood still for days
            today(lagging, day)
            assert read_looks(lagging) == ()
    for day in (14, 15):
        photograph(lagging, phone, day, behind=58.0)

    for day in (15, 15, 16):
        today(lagging, day)
        assert LookKind.LAGGING in {one.what for look in read_looks(lagging) for one in look.whole}

    first, later = reversed(lagging.look_history(lagging.trays()[0].id)[-2:])
    assert (first.since, later.since) == (date(2026, 3, 6), date(2026, 3, 14))
    assert (first.answer, later.answer) == (AnswerKind.SEEN, None)
    assert first.gone_on is not None


# --- history


def test_the_history_knows_first_and_last_day_and_why_it_went(lagging: Book, phone: Path) -> None:
    read_looks(lagging)
    today(lagging, 9)
    photograph(lagging, phone, 9)
    read_looks(lagging)
    today(lagging, 10)
    photograph(lagging, phone, 10, behind=69.0)
    read_looks(lagging)

    (past,) = lagging.look_history(lagging.trays()[0].id)
    assert (past.code, past.what, past.since) == ("A1", LookKind.LAGGING, date(2026, 3, 6))
    assert (past.first_on, past.last_on, past.gone_on) == (
        date(2026, 3, 8),
        date(2026, 3, 9),
        date(2026, 3, 10),
    )
    assert past.gone_why == "It is in line with its block mates again."
    assert "40 points below the middle" in past.sentence


def test_the_history_is_written_only_where_something_changed(lagging: Book) -> None:
    read_looks(lagging)
    lagging.written_elsewhere()
    before = lagging._row("SELECT total_changes()")

    read_looks(lagging)

    assert tuple(lagging._row("SELECT total_changes()") or ()) == tuple(before or ())
    assert lagging.undo_text() is None  # nobody has changed anything


def test_a_tray_that_was_thrown_away_says_so(lagging: Book) -> None:
    read_looks(lagging)
    lagging.add_event([lagging.trays()[0].id], EventKind.THROWN_AWAY, datetime(2026, 3, 8, 10), "mold")
    read_looks(lagging)

    assert lagging.look_history()[0].gone_why == "The tray was thrown away."


def test_without_a_photo_nobody_says_that_all_is_well(lagging: Book, phone: Path) -> None:
    read_looks(lagging)
    today(lagging, 10)
    photograph(lagging, phone, 10, tags=(11, 12))
    read_looks(lagging)

    lag = next(past for past in lagging.look_history() if past.what is LookKind.LAGGING)
    assert lag.gone_why == "No photo of today or yesterday says how it stands now."


def test_an_answer_stands_in_the_history_beside_its_entry(lagging: Book) -> None:
    read_looks(lagging)
    lagging.answer_look(only(read_looks(lagging)), "seen")
    assert read_looks(lagging) == ()

    (past,) = lagging.look_history(trial="t")
    assert (past.answer, past.answered_on, past.gone_on) == (AnswerKind.SEEN, date(2026, 3, 8), None)
    assert lagging.look_history(trial="another") == ()


def test_what_comes_back_is_opened_again(lagging: Book, phone: Path) -> None:
    read_looks(lagging)
    today(lagging, 9)
    photograph(lagging, phone, 9, behind=69.0)
    read_looks(lagging)
    for day in (10, 11):
        today(lagging, day)
        photograph(lagging, phone, day)
    read_looks(lagging)

    assert [past.gone_on for past in lagging.look_history()] == [None, date(2026, 3, 9)]


def test_the_first_list_of_a_day_is_read_and_noted_before_anything_heavy_is_loaded(lagging: Book) -> None:
    lagging.close()
    asked = f"""
import sys
from pathlib import Path
from data.book import Book
from data.watch import read_looks
book = Book.open(Path({str(lagging.folder)!r}))
looks = read_looks(book)
heavy = [name for name in ("sqlite_utils", "numpy", "click") if name in sys.modules]
print([look.code for look in looks], [past.code for past in book.look_history()], heavy)
"""
    done = subprocess.run(
        [sys.executable, "-c", asked], cwd=ROOT, capture_output=True, text=True, check=True, timeout=60
    )
    assert done.stdout.strip() == "['A1'] ['A1'] []"


def test_a_list_that_is_read_while_something_is_written_is_kept_or_lost_with_it(lagging: Book) -> None:
    def read_and_fail() -> None:
        with lagging.writing():
            read_looks(lagging)
            assert len(lagging.look_history()) == 1
            raise RuntimeError

    with pytest.raises(RuntimeError):
        read_and_fail()
    assert lagging.look_history() == ()

    with lagging.writing():
        read_looks(lagging)
    assert len(lagging.look_history()) == 1


def test_a_book_that_cannot_be_written_still_shows_its_list(
    lagging: Book, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse(*_: object) -> None:
        raise BookReadOnly(lagging.folder)

    monkeypatch.setattr(Book, "keep_history", refuse)

    assert only(read_looks(lagging)).code == "A1"


# --- what a morning rests on


def test_a_dry_tray_is_told_from_the_weights_in_the_book(book: Book) -> None:
    tray = book.trays()[0].id
    weights = [
        (datetime(2026, 3, 1, 9), 400.0),
        (datetime(2026, 3, 1, 10), 900.0),
        (datetime(2026, 3, 8, 0, 0), 530.0),
    ]
    book.add_readings(
        [NewReading(kind=ReadingKind.WEIGHT, value=g, taken_at=at, tray_id=tray) for at, g in weights]
    )

    look = only(read_looks(book))

    assert (look.code, look.what, look.urgency.words) == ("A1", LookKind.DRY, "now")
    assert look.sentence == "530 g on 8 March at 00:00, 20 g under the weight at which it is dry (550 g)."

    book.add_event([tray], EventKind.WATERED, datetime(2026, 3, 8, 0, 1))
    assert read_looks(book) == ()


def test_a_lone_tray_is_held_against_earlier_trays_of_its_crop(book: Book, phone: Path) -> None:
    """Three trays were sown on 1 March; a fourth one a month later comes up slower than they did."""
    for day in (6, 7):
        photograph(book, phone, day, behind=70.0)
    book.add_tray(a_tray("L1", tag_number=20, block="late", sown_at=datetime(2026, 4, 1, 9)))
    today(book, 30)
    book.set_setting("today", "2026-04-07")
    for tray in book.trays()[:3]:
        book.finish_tray(tray.id, datetime(2026, 3, 20))
    for day in (6, 7):
        taken = datetime(2026, 4, day, 8).isoformat()
        bring(book, a_note(phone, f"late-{day}.jpg", tag=20, taken_at=taken, coverage=20.0))

    look = only(read_looks(book))

    assert (look.code, look.what) == ("L1", LookKind.LATE)
    assert "earlier trays of broccoli had 70 % at that age" in look.sentence


VALUES = {
    "since": "2026-03-01", "crop": "broccoli", "before": "2026-03-08", "days": "+14 days", "tray": 1,
    "what": "mold", "method": "plain 1", "kind": "weight",
}  # fmt: skip


@pytest.mark.parametrize(
    "name", ["NUMBERS", "EARLIER", "ANSWERS", "ANSWERS_OF_TRAY", "NOTED", "OPEN_ENTRIES", "SAME_ENTRY"]
)
def test_no_question_of_the_morning_walks_over_all_photos(book: Book, name: str) -> None:
    with book.writing() as db:
        db.table("tray").insert_all(
            {
                "code": f"T{n}", "crop": 1, "medium": 1, "tray_type": 1, "position": n,
                "sown_at": f"2025-{1 + n % 12:02}-01T09:00:00", "done_at": "2025-12-31T00:00:00",
            }
            for n in range(500)
        )  # fmt: skip
        db.execute("ANALYZE")
    plan = book._rows("EXPLAIN QUERY PLAN " + getattr(lookrows, name), **defaultdict(lambda: None, VALUES))

    details = [row["detail"] for row in plan]
    assert not [
        d for d in details if d.startswith(("SCAN p", "SCAN s", "SCAN q", "SCAN z", "SCAN a", "SCAN o"))
    ]
