"""Next trial: the trays that a repetition of a trial takes."""

from data.statistics.power import Design, power
from data.verdict.nexttrial import next_trial
from data.verdict.outcome import Outcome
from tests.data.trialrack import EVEN, NOISE, WORSE, Rack

WIDE = 8.0  # times the usual spread: four blocks cannot tell


def shoot_uneven(rack: Rack, *, leave: int = 0) -> None:
    """Media alike, trays of one medium far apart."""
    for number, tray in enumerate(rack.trays[leave:]):
        rack.shoot(tray, EVEN[tray.medium] + WIDE * NOISE[number % len(NOISE)])


def test_the_next_trial_holds_the_trays_of_this_one_and_the_further_ones(rack: Rack) -> None:
    shoot_uneven(rack)
    (found,) = rack.verdicts()
    further = [line.further for line in found.verdict.compared if line.further is not None]
    assert further

    then = next_trial([found])
    assert then is not None
    assert (then.trays, then.crop) == (4 + max(further), found.crop)


def test_so_many_trays_show_it_with_a_chance_of_four_fifths(rack: Rack) -> None:
    shoot_uneven(rack)
    (found,) = rack.verdicts()
    then = next_trial([found])
    assert then is not None
    trays = then.trays
    (line,) = [line for line in found.verdict.compared if line.further == trays - 4]
    assert line.difference is not None
    assert line.se is not None
    assert found.verdict.mse is not None
    spread = found.verdict.mse**0.5
    camera_sd = (line.se**2 - found.verdict.mse * 2 / 4) ** 0.5  # what the trays do not explain
    assert camera_sd > 0.5

    def chance(blocks: int) -> float:
        design = Design(blocks=blocks, treatments=3, camera_sd=camera_sd)
        found_chance = power(design, abs(found.verdict.margin + line.difference), spread)
        assert found_chance is not None
        return found_chance

    assert chance(trays) >= 0.8 > chance(trays - 1)


def test_nothing_is_open_once_everything_is_shown(rack: Rack) -> None:
    rack.shoot_all(WORSE)
    (found,) = rack.verdicts()
    assert all(line.outcome is not None and line.outcome.is_shown for line in found.verdict.compared)

    assert next_trial([found]) is None


def test_while_the_trial_runs_no_next_one_is_planned(rack: Rack) -> None:
    shoot_uneven(rack, leave=1)
    rack.today("2026-03-10")

    assert next_trial(rack.verdicts()) is None


def test_no_number_of_trays_is_promised_where_the_camera_is_what_hides_the_answer(rack: Rack) -> None:
    """3.4 points less and a margin of 5 leave 1.6: too little beside what the camera may add, 0.8 points."""
    rack.shoot_all(EVEN | {"coir": 76.0})
    (found,) = rack.verdicts()
    coir = found.verdict.medium("coir")
    assert coir.outcome is Outcome.NOT_SHOWN

    assert coir.further is None
    assert next_trial([found]) is None
