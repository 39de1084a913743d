"""Look book: what the look list asks of the book, a person's answers to it, and its history.

In    a book; looks and answers
Out   a `Morning`; answers kept, with a way back; entries with their first and last day, and why they went
Not   what needs a look (`watch.py`), which answer hides what (`looklist/answers.py`)
"""

import sqlite3
from collections import defaultdict
from collections.abc import Iterable, Sequence
from datetime import date, datetime, time, timedelta

from data.chapters.changes import Changes
from data.chapters.reader import GROWTH_DAYS
from data.gone import gone_why
from data.growing.air import AirSample, air_samples
from data.look import Look
from data.looklist.answers import BREAK, Answer, AnswerKind
from data.looklist.ripeness import with_usual_days
from data.looklist.stackair import SPAN, is_stacked
from data.numbers import TrayId
from data.readings import ReadingKind
from data.records import DayNumbers, EarlierDay, Tray
from data.tables import lookrows, noterows
from data.tables.journal import Recorder
from data.tables.lookrows import PastLook, answer_of, earlier_day_of, numbers_of, past_look_of
from data.tables.noterows import crop_of, medium_of
from data.tables.rows import time_text
from data.watch import Morning

__all__ = ["LookBook"]

UP = 70.0  # % coverage from which no earlier trays are asked about coming up
EARLIER_DAYS = 10  # after sowing; later no crop is just coming up (common practice)
EVENING = time(20)  # of a day that is looked at afterwards
HOUR = timedelta(hours=1)


class LookBook(Changes):
    """The look list of a book."""

    # --- what it rests on

    def morning(self, today: date | None = None) -> Morning:
        """All that the look list of a day rests on; by default of today."""
        now = self.now() if today is None else datetime.combine(today, EVENING)
        day = now.date()
        trays, method = self.trays(), self.comparable().method
        since = (day - timedelta(days=GROWTH_DAYS)).isoformat()
        numbers = tuple(numbers_of(row) for row in self._tuples(lookrows.NUMBERS, since=since, method=method))
        crops = {
            row["name"]: with_usual_days(crop_of(row), self._cut_on(name))
            for name in {tray.crop for tray in trays}
            for row in self._rows(noterows.CROP, name=name)
        }
        return Morning(
            today=day,
            trays=trays,
            numbers=numbers,
            method=method,
            suspects=self.seen_suspects(),
            proposed=self.proposed(day),
            earlier=self._earlier(trays, numbers, day),
            crops=crops,
            media={row["name"]: medium_of(row) for row in self._rows(noterows.MEDIA_ALL)},
            weights=self._weights(),
            watered=self._watered(),
            air=self._air(trays, now),
            answers=self.look_answers(),
            now=now,
        )

    def _cut_on(self, crop: str) -> list[int]:
        """The days since sowing on which the last trays of a crop were cut."""
        rows = self._rows(lookrows.CUT, crop=crop)
        return [(date.fromisoformat(done[:10]) - date.fromisoformat(sown[:10])).days for sown, done in rows]

    def _weights(self) -> dict[TrayId, list[tuple[datetime, float]]]:
        found: dict[TrayId, list[tuple[datetime, float]]] = defaultdict(list)
        for tray, at, grams in self._tuples(lookrows.NOTED, kind=str(ReadingKind.WEIGHT)):
            found[tray].append((datetime.fromisoformat(at), grams))
        return found

    def _watered(self) -> dict[TrayId, list[datetime]]:
        found: dict[TrayId, list[datetime]] = defaultdict(list)
        for tray, at, _ in self._tuples(lookrows.NOTED, kind=str(ReadingKind.WATER)):
            found[tray].append(datetime.fromisoformat(at))
        for tray, at in self._tuples(lookrows.WATERED):
            found[tray].append(datetime.fromisoformat(at))
        return found

    def _air(self, trays: Iterable[Tray], now: datetime) -> dict[str, tuple[AirSample, ...]]:
        """The last day's log of each shelf on which covered trays press on each other."""

        def logged(shelf: str, kind: ReadingKind) -> list[tuple[datetime, float]]:
            rows = self._rows(
                noterows.READINGS_OF_SHELF,
                shelf=shelf, kind=str(kind), since=time_text(now - SPAN - HOUR), until=time_text(now),
            )  # fmt: skip
            return [(datetime.fromisoformat(row["taken_at"]), row["value"]) for row in rows]

        return {
            shelf: air_samples(
                logged(shelf, ReadingKind.AIR_TEMPERATURE), logged(shelf, ReadingKind.HUMIDITY)
            )
            for shelf in {tray.shelf for tray in trays if is_stacked(tray, now)}
        }

    def _earlier(
        self, trays: Iterable[Tray], numbers: Iterable[DayNumbers], today: date
    ) -> tuple[EarlierDay, ...]:
        """The first days of the last trays of those crops that are just coming up."""
        newest = {one.tray_id: one.coverage for one in numbers if one.sure and one.coverage is not None}
        young = [
            tray for tray in trays if tray.day(today) <= EARLIER_DAYS and (newest.get(tray.id) or 0.0) < UP
        ]
        found: list[EarlierDay] = []
        for crop in {tray.crop for tray in young}:
            same = [tray for tray in young if tray.crop == crop]
            before = min(tray.sown_at for tray in same).date().isoformat()
            days = f"+{1 + max(tray.day(today) for tray in same)} days"
            rows = self._rows(lookrows.EARLIER, crop=crop, before=before, days=days)
            found += (earlier_day_of(row, crop) for row in rows)
        return tuple(found)

    # --- answers

    def look_answers(self) -> tuple[Answer, ...]:
        """What a person has said to looks at growing trays, oldest first."""
        return tuple(answer_of(row) for row in self._rows(lookrows.ANSWERS))

    def answer_look(self, look: Look, answer: AnswerKind | str) -> None:
        """Say "seen" or "tomorrow" to a line of the look list, with all reasons in it."""
        said = AnswerKind(answer)
        on = self.today().isoformat()

        def change(recorder: Recorder) -> None:
            for one in look.whole:
                for tray in one.trays or (one.tray_id,):
                    recorder.insert(
                        "look_answer",
                        {
                            "tray": tray, "what": str(one.what), "since": one.since.isoformat(),
                            "answer": str(said), "urgency": int(one.urgency), "size": one.size,
                            "answered_on": on,
                        },
                    )  # fmt: skip

        text = f"{look.code} seen" if said is AnswerKind.SEEN else f"{look.code} put off until tomorrow"
        self._change(text, change)

    # --- history

    def keep_history(self, reasons: Sequence[Look], morning: Morning) -> None:
        """Note which reasons hold today, and why those that held before do not; writes only what changed."""
        today = morning.today.isoformat()
        here = {(look.tray_id, str(look.what)): look for look in reasons}
        found = {(row["tray"], row["what"]): row for row in self._rows(lookrows.OPEN_ENTRIES)}
        rows = {key: row for key, row in found.items() if key not in here or _goes_on(row, here[key])}
        news = [
            look
            for key, look in here.items()
            if key not in rows
            or (rows[key]["last_on"], rows[key]["urgency"], rows[key]["sentence"])
            != (today, int(look.urgency), str(look.sentence))
        ]
        gone = [row for key, row in rows.items() if key not in here and row["last_on"] <= today]
        gone += [row for key, row in found.items() if key not in rows]
        if not news and not gone:
            return
        with self._block() as session:
            for row in gone:
                why = {"gone_on": today, "gone_why": str(gone_why(row, morning))}
                session.connection.execute(lookrows.ENTRY_GOES, why | {"id": row["id"]})
            for look in news:
                self._keep_entry(session.connection, look, rows.get((look.tray_id, str(look.what))), today)

    def _keep_entry(self, db: sqlite3.Connection, look: Look, row: sqlite3.Row | None, today: str) -> None:
        """Note one reason, in `row` where that is its open entry."""
        said = {"urgency": int(look.urgency), "sentence": str(look.sentence), "today": today}
        if row is not None:
            db.execute(lookrows.ENTRY_GOES_ON, said | {"id": row["id"]})
            return
        key = {"tray": int(look.tray_id), "what": str(look.what), "since": look.since.isoformat()}
        old = self._row(lookrows.SAME_ENTRY, **key)
        if old is None:
            db.execute(lookrows.NEW_ENTRY, key | said)
        else:
            db.execute(lookrows.ENTRY_GOES_ON, said | {"id": old["id"]})

    def look_history(self, tray_id: TrayId | None = None, trial: str | None = None) -> tuple[PastLook, ...]:
        """What stood on the look list, of one tray, of one trial or of all, newest first."""
        rows = self._rows(lookrows.PAST, tray=tray_id, trial=trial)
        answers = {
            tray: self._rows(lookrows.ANSWERS_OF_TRAY, tray=tray) for tray in {row["tray"] for row in rows}
        }
        return tuple(past_look_of(row, answers[row["tray"]]) for row in rows)


def _goes_on(entry: sqlite3.Row, look: Look) -> bool:
    """Whether a reason is that of an open entry, and no new one after days on which nobody asked."""
    return look.since <= date.fromisoformat(entry["last_on"]) + BREAK
