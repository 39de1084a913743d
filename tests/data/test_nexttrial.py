"""Next trial: the trays that a repetition of a trial takes."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from data.nexttrial import trays_of_next
from data.power import Design, power
from tests.data.trialrack import EVEN, WORSE, Rack

NEAR = EVEN | {"coir": 76.0}  # near the margin of 5 points: four blocks cannot tell


@pytest.fixture
def rack(tmp_path: Path) -> Iterator[Rack]:
    made = Rack(tmp_path)
    yield made
    made.book.close()


def test_the_next_trial_holds_the_trays_of_this_one_and_the_further_ones(rack: Rack) -> None:
    rack.shoot_all(NEAR)
    (found,) = rack.verdicts()
    further = [line.further for line in found.verdict.compared if line.further is not None]
    assert further

    assert trays_of_next([found]) == 4 + max(further)


def test_so_many_trays_show_it_with_a_chance_of_four_fifths(rack: Rack) -> None:
    rack.shoot_all(NEAR)
    (found,) = rack.verdicts()
    trays = trays_of_next([found])
    assert trays is not None
    (line,) = [line for line in found.verdict.compared if line.further == trays - 4]
    assert line.difference is not None
    assert line.se is not None
    spread = line.se * (4 / 2) ** 0.5  # of one tray, from the error of a difference of two means of four

    def chance(blocks: int) -> float:
        design = Design(blocks=blocks, treatments=3)
        found_chance = power(design, abs(found.verdict.margin + line.difference), spread)
        assert found_chance is not None
        return found_chance

    assert chance(trays) >= 0.8 > chance(trays - 1)


def test_nothing_is_open_once_everything_is_shown(rack: Rack) -> None:
    rack.shoot_all(WORSE)
    (found,) = rack.verdicts()
    assert all(line.outcome is not None and line.outcome.is_shown for line in found.verdict.compared)

    assert trays_of_next([found]) is None


def test_while_the_trial_runs_no_next_one_is_planned(rack: Rack) -> None:
    rack.shoot_all(NEAR, leave=[rack.trays[0].code])
    rack.today("2026-03-10")

    assert trays_of_next(rack.verdicts()) is None
