"""View: one tray with all that it can be held against: its own days, block mates, earlier trays of its crop.

In    `Standing`s of a tray and its mates by day
Out   its newest days on which something holds; its numbers beside those of others
Not   what is out of line (`emergence.py`, `vanishing.py`, `evenness.py`, `paling.py`)

Whatever is raised of the stand has to hold on the two newest days with a usable photo, the later no older
than yesterday (`View.run`), so that one bad photo, or one photo under a wrong tag, alone never raises it.
Mates are compared on the same day, by the same version of the method and counted of the same (`beside.py`).
Other limits here and there are common practice, tried on made sequences (`tests/bench/test_look_alarm.py`).
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from data.look import Look, LookKind, Urgency
from data.looklist.beside import Beside, Counted, middle_and_spread, set_beside
from data.looklist.standing import Days, Number, Standing
from data.records import EarlierDay, Tray

__all__ = ["View"]

LEAST_MATES = 2
LEAST_EARLIER = 3  # days of earlier trays


@dataclass(frozen=True, slots=True, kw_only=True)
class View:
    """One tray with all that it can be held against."""

    tray: Tray
    mine: Days
    others: tuple[Days, ...]  # its mates: same crop, block and sowing day
    today: date
    earlier: tuple[EarlierDay, ...] = ()  # days of earlier trays of the crop
    medium_kind: str = ""  # a `MediumKind`; empty where nobody has said

    @property
    def days(self) -> tuple[date, ...]:
        """Days with a usable photo, oldest first."""
        return tuple(self.mine)

    @property
    def is_current(self) -> bool:
        """Whether there are two days with a usable photo, the newest today or yesterday."""
        return len(self.mine) >= 2 and next(reversed(self.mine)) >= self.today - timedelta(days=1)

    @property
    def now(self) -> Standing:
        """The newest day."""
        return self.mine[next(reversed(self.mine))]

    def run(
        self, holds: Callable[[date], bool], passed: Callable[[date], bool] | None = None
    ) -> tuple[date, ...]:
        """The newest days on which something holds without a break, oldest first; at least two, or none.

        Parameters
        ----------
        passed : days that are passed over, as if there had been no photo.
        """
        found: list[date] = []
        for day in reversed(self.mine):
            if passed is not None and passed(day):
                continue
            if not holds(day):
                break
            found.append(day)
        return tuple(reversed(found)) if len(found) >= 2 else ()

    def beside(self, day: date, number: Counted[Standing]) -> Beside:
        """A number beside that of the mates on a day; at least two have to be asked."""
        return set_beside(self.mine[day], self._mates(day), number, LEAST_MATES)

    def mates(self, day: date, number: Number) -> tuple[float, float] | None:
        """Median and spread of what mates on any medium can be asked alike; None where fewer than two can."""
        if len(self.others) < LEAST_MATES:
            return None
        method = self.mine[day].method
        values = [
            value
            for days in self.others
            if (one := days.get(day)) is not None
            and one.method == method
            and (value := number(one)) is not None
        ]
        return middle_and_spread(values) if len(values) >= LEAST_MATES else None

    def before(self, day: date, number: Counted[Standing | EarlierDay]) -> Beside:
        """A number beside that of earlier trays of the crop at the same age, by the same version."""
        return set_beside(self.mine[day], self._earlier(day), number, LEAST_EARLIER)

    def crop_before(
        self, day: date, number: Callable[[EarlierDay], float | None]
    ) -> tuple[float, float] | None:
        """Median and spread of what earlier trays can be asked alike; None where fewer than three can."""
        values = [value for one in self._earlier(day) if (value := number(one)) is not None]
        return middle_and_spread(values) if len(values) >= LEAST_EARLIER else None

    def _earlier(self, day: date) -> list[EarlierDay]:
        age, method = self.tray.day(day), self.mine[day].method
        return [one for one in self.earlier if one.day == age and one.method == method]

    def _mates(self, day: date) -> list[Standing]:
        method = self.mine[day].method
        return [one for days in self.others if (one := days.get(day)) is not None and one.method == method]

    def look(
        self,
        what: LookKind,
        urgency: Urgency,
        run: Sequence[date],
        sentence: str,
        first: str,
        size: float,
    ) -> Look:
        """A look at this tray since the first day of a run, with the photo of its last one."""
        return Look(
            tray_id=self.tray.id,
            code=self.tray.code,
            what=what,
            urgency=urgency,
            since=run[0],
            sentence=sentence,
            first=first,
            photo_id=self.mine[run[-1]].photo_id,
            size=size,
        )
