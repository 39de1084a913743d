"""Blind view: where a round of scoring by eye stands, no Qt.

In    a round and the scores given so far; what the person does
Out   the next state; which picture is shown; never a name
Not   keeping scores (`data/chapters/trialbook.py`), the window (`blindwindow.py`)
"""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace

from data.blind import Showing
from data.chapters.trialbook import EyeRound

__all__ = ["BlindState", "first_open"]

LOWEST, HIGHEST = 0, 100


@dataclass(frozen=True, slots=True, kw_only=True)
class BlindState:
    """One place of a round."""

    round: EyeRound
    given: Mapping[int, float] = field(default_factory=dict)  # by place, from 1
    place: int = 1
    value: int | None = None  # chosen at this place, not kept yet
    result: bool = False

    @property
    def total(self) -> int:
        """Pictures to be shown, those that come again too."""
        return len(self.round.showings)

    @property
    def showing(self) -> Showing:
        """What is shown now."""
        return self.round.showings[self.place - 1]

    @property
    def following(self) -> Showing | None:
        """What comes next, to be loaded ahead."""
        return self.round.showings[self.place] if self.place < self.total else None

    def at(self, place: int) -> "BlindState":
        """Another place, with the score given there."""
        said = self.given.get(place)
        return replace(self, place=place, value=None if said is None else round(said), result=False)

    def chosen(self, value: int) -> "BlindState":
        """Another score for this picture."""
        return replace(self, value=min(max(value, LOWEST), HIGHEST))

    def kept(self) -> "BlindState":
        """The score is in the book: the next picture, or the end."""
        given = dict(self.given) | ({} if self.value is None else {self.place: float(self.value)})
        state = replace(self, given=given)
        if self.place < self.total:
            return state.at(self.place + 1)
        missing = next((place for place in range(1, self.total + 1) if place not in given), None)
        return replace(state, result=True) if missing is None else state.at(missing)


def first_open(eye_round: EyeRound, given: Mapping[int, float]) -> BlindState:
    """Go on where the round was left."""
    state = BlindState(round=eye_round, given=dict(given))
    places = range(1, state.total + 1)
    missing = next((place for place in places if place not in given), None)
    return replace(state, result=True) if missing is None else state.at(missing)
