"""A verdict from numbers: one reading of one interval, and a reason wherever there is none."""

import re
import subprocess
import sys
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from data.statistics.leastsquares import design_of
from data.verdict import Measured, MediumResult, Verdict, verdict_of
from data.verdict.notes import cautions, how_worked_out
from data.verdict.outcome import ErrorFrom, Outcome, Why, outcome_of
from data.verdict.words import Scale, Unit, scale_for, sentence

POINTS = Scale(unit=Unit.POINTS, digits=1)
# three blocks; within them mat lies 10 below peat, give or take
PEAT, MAT = (80.0, 90.0, 100.0), (71.0, 79.0, 90.0)


def table(**media: tuple[float | None, ...]) -> list[Measured]:
    """Trays of some media, one a block, in blocks 1, 2, ...; None is a missing tray."""
    return [
        Measured(block=str(block), medium=medium, value=value)
        for medium, values in media.items()
        for block, value in enumerate(values, 1)
        if value is not None
    ]


def the(verdict: Verdict, medium: str = "mat") -> str:
    return str(sentence(verdict, verdict.medium(medium), POINTS))


# --- one reading of one interval


@pytest.mark.parametrize(
    ("low", "high", "outcome"),
    [
        (0.1, 9.0, Outcome.BETTER),
        (0.0, 9.0, Outcome.AS_GOOD),
        (-4.9, 9.0, Outcome.AS_GOOD),
        (-4.9, -0.1, Outcome.AS_GOOD_LOWER),
        (-5.0, -0.1, Outcome.NOT_SHOWN),
        (-9.0, 9.0, Outcome.NOT_SHOWN),
        (-9.0, -5.0, Outcome.NOT_SHOWN),
        (-9.0, -5.1, Outcome.WORSE),
    ],
)
def test_an_interval_is_read_against_zero_and_the_margin(low: float, high: float, outcome: Outcome) -> None:
    assert outcome_of(low, high, 5.0) is outcome
    assert outcome_of(-high, -low, 5.0, lower_is_better=True) is outcome


@given(st.floats(-50, 50), st.floats(0, 50), st.floats(0, 20), st.floats(0, 20))
def test_a_wider_margin_never_takes_a_good_outcome_away(
    low: float, width: float, margin: float, more: float
) -> None:
    good = {Outcome.BETTER, Outcome.AS_GOOD, Outcome.AS_GOOD_LOWER}
    if outcome_of(low, low + width, margin) in good:
        assert outcome_of(low, low + width, margin + more) in good


# --- numbers


def test_differences_are_new_minus_trusted_with_limits_of_q_standard_errors() -> None:
    verdict = verdict_of(table(peat=PEAT, mat=MAT, coir=(82.0, 89.0, 101.0)), "peat", 5.0)

    line = verdict.medium("mat")
    assert line.difference == pytest.approx(-10.0)
    assert line.q == verdict.q
    assert line.low == pytest.approx(line.difference - verdict.q * line.se)
    assert line.high == pytest.approx(line.difference + verdict.q * line.se)
    assert [one.medium for one in verdict.media] == ["peat", "mat", "coir"]


def test_smaller_is_better_turns_only_the_outcome_and_the_ranks() -> None:
    rows = table(peat=PEAT, mat=(60.0, 71.0, 80.0))

    usual = verdict_of(rows, "peat", 5.0)
    turned = verdict_of(rows, "peat", 5.0, lower_is_better=True)

    assert usual.medium("mat").outcome is Outcome.WORSE
    assert turned.medium("mat").outcome is Outcome.BETTER
    assert turned.medium("mat").low == usual.medium("mat").low
    assert (usual.medium("mat").rank_low, turned.medium("mat").rank_low) == (2, 1)


@given(
    st.lists(st.tuples(*(st.floats(-100, 100),) * 3), min_size=2, max_size=6),
    st.floats(-1000, 1000),
    st.floats(0.01, 100),
)
def test_what_a_block_adds_and_the_unit_make_no_difference(
    blocks: list[tuple[float, float, float]], level: float, unit: float
) -> None:
    def verdict(times: float, plus: float) -> Verdict:
        rows = [
            Measured(block=str(b), medium=medium, value=times * (value + plus * b))
            for b, values in enumerate(blocks)
            for medium, value in zip(("peat", "mat", "coir"), values, strict=True)
        ]
        return verdict_of(rows, "peat", 5.0 * times, quick=True)

    one, other = verdict(1.0, 0.0), verdict(unit, level)

    if one.mse is not None and one.mse > 1e-6:
        assert other.mse == pytest.approx(one.mse * unit**2, rel=1e-4)
        assert other.medium("mat").difference == pytest.approx(
            unit * one.medium("mat").difference, rel=1e-4, abs=1e-6 * unit * (1 + abs(level))
        )


def test_a_block_with_one_tray_left_adds_nothing() -> None:
    rows = table(peat=PEAT, mat=MAT)

    with_more = verdict_of([*rows, Measured(block="4", medium="mat", value=12.0)], "peat", 5.0)

    usual = verdict_of(rows, "peat", 5.0)
    assert with_more.medium("mat").difference == pytest.approx(usual.medium("mat").difference)
    assert (with_more.df, with_more.mse) == (usual.df, pytest.approx(usual.mse))


def test_the_way_a_camera_sees_media_widens_the_interval() -> None:
    rows = table(peat=PEAT, mat=MAT)

    blind, careful = (verdict_of(rows, "peat", 5.0, camera_sd=sd).medium("mat") for sd in (0.0, 3.0))

    assert careful.se == pytest.approx((blind.se**2 + 9.0) ** 0.5)
    assert careful.high - careful.low > blind.high - blind.low


@given(st.floats(0.0, 4.0), st.sampled_from([1.0, 20.0]))
def test_a_rank_is_no_surer_than_the_interval(camera_sd: float, wilder: float) -> None:
    rows = [
        Measured(block=str(b), medium=name, value=80 - lower + spread * (((7 * b) % 11 - 5) / 5))
        for b in range(10)
        for name, lower, spread in (("peat", 0.0, wilder), ("coir", 3.0, 1.2), ("mat", 6.0, 0.8))
    ]
    verdict = verdict_of(rows, "peat", 5.0, camera_sd=camera_sd)

    for line in verdict.compared:
        if line.low <= 0 <= line.high:  # not told from the trusted one, so its rank is open
            trusted = verdict.medium("peat")
            assert line.rank_low <= trusted.rank_high
            assert trusted.rank_low <= line.rank_high


def test_where_each_pair_has_its_own_error_it_has_its_own_difference_too() -> None:
    """Mat and peat stand level in their four blocks; only by way of coir, elsewhere, mat would lie above."""
    noise = (0.1, -0.1, 0.2, -0.2)
    rows = [(f"a{n}", {"peat": 80.0 + n, "mat": 80.0 + n + e}) for n, e in enumerate(noise)]
    rows += [(f"b{n}", {"peat": 80.0 + n, "coir": 80.0 + n + e}) for n, e in enumerate(noise)]
    rows += [(f"c{n}", {"coir": 80.0 + n, "mat": 90.0 + n + e}) for n, e in enumerate(noise)]
    trays = [Measured(block=b, medium=m, value=v) for b, there in rows for m, v in there.items()]

    verdict = verdict_of(trays, "peat", 5.0, own_trays=True)

    ranks = {line.medium: (line.rank_low, line.rank_high) for line in verdict.media}
    assert ranks == {"peat": (1, 3), "mat": (1, 2), "coir": (2, 3)}
    assert any("each pair with an error of its own" in line for line in how_worked_out(verdict))


def test_ranks_rest_on_the_spread_of_all_media_where_that_gives_the_intervals() -> None:
    """By hand: mat lies 6 above peat, 6.7 errors from all media with 8 df, 6.0 from the two alone with 2 df.

    Tukey's 95 % point of five media over root 2 is 3.45 with 8 df, 7.69 with 2 (scipy's studentized_range).
    """
    noise = ((0, 1, 2), (2, 0, 1), (1, 2, 0), (0, 2, 1), (1, 0, 2))
    names, levels = ("peat", "coir", "mat", "wood", "felt"), (80.0, 80.2, 86.0, 79.9, 80.1)
    rows = [
        Measured(block=str(block), medium=name, value=level + wave[block])
        for name, level, wave in zip(names, levels, noise, strict=True)
        for block in range(3)
    ]

    verdict = verdict_of(rows, "peat", 5.0)

    assert verdict.error_from is ErrorFrom.ALL_MEDIA
    assert (verdict.medium("mat").rank_low, verdict.medium("mat").rank_high) == (1, 1)
    assert (verdict.medium("peat").rank_low, verdict.medium("peat").rank_high) == (2, 5)


# --- spreads that differ, and settings of whole shelves


def wild(blocks: int = 10) -> list[Measured]:
    """The trusted medium scatters twenty times as much as two others."""
    noise = [((7 * b) % 11 - 5) / 5 for b in range(blocks)]
    return table(
        peat=tuple(80 + 20 * e for e in noise),
        mat=tuple(80 + ((3 * b) % 7 - 3) / 3 for b in range(blocks)),
        coir=tuple(79 + ((5 * b) % 9 - 4) / 4 for b in range(blocks)),
        wood=tuple(81 + ((2 * b) % 5 - 2) / 2 for b in range(blocks)),
    )


def test_where_spreads_differ_clearly_own_trays_give_the_error_and_that_is_said() -> None:
    verdict = verdict_of(wild(), "peat", 5.0)

    assert verdict.error_from is ErrorFrom.OWN_TRAYS
    assert verdict.medium("mat").df == 9  # ten differences by block
    assert verdict.df == 27  # that of one spread, for who wants it
    assert any("Spreads differ clearly" in note for note in cautions(verdict))
    told = " ".join(how_worked_out(verdict))
    assert f"{verdict.q:.4f}" not in told
    assert "Dunnett" not in told
    assert "Error variance" not in told
    assert "one-sided at 98.30 %" in told  # 0.95 to the power 1/3
    assert verdict.medium("mat").q == pytest.approx(2.4992, abs=1e-4)  # scipy.stats.t.ppf(0.95 ** (1 / 3), 9)


def test_of_one_medium_the_interval_is_that_of_students_t_and_says_so() -> None:
    values = {"peat": (80.0, 82.0, 81.0), "mat": (78.0, 79.0, 80.0)}
    alone = verdict_of(table(**values), "peat", 5.0)
    apart = Measured(block="another shelf", medium="coir", value=70.0)
    stranger = verdict_of([*table(**values), apart], "peat", 5.0)

    for verdict in (alone, stranger):  # coir shares no block with the others, so it has no interval
        told = " ".join(how_worked_out(verdict))
        assert verdict.q == pytest.approx(2.9200, abs=1e-4)  # scipy.stats.t.ppf(0.95, 2)
        assert "q = 2.9200, Student's t, one-sided 95 %" in told
        assert "media together" not in told


def test_without_blocks_a_limit_of_one_medium_is_told_to_hold_about() -> None:
    """Welch's limits fail in up to 6 of 100 drawn trials: it is said there, and 95 % plainly in blocks."""
    rows = in_no_block(peat=(80.0, 83.0, 77.0), mat=(79.0, 76.0, 81.0))

    loose, blocks = (
        " ".join(how_worked_out(verdict_of(one, "peat", 5.0))) for one in (rows, table(peat=PEAT, mat=MAT))
    )

    assert "lower limit holds with about 95 %" in loose
    assert "lower limit holds with 95 %" in blocks


def test_that_a_limit_holds_for_one_crop_and_measure_is_said_beside_it() -> None:
    """Four crops that are each answered with 95 % err somewhere in 1 - 0.95^4, 19 of 100 trials (by hand)."""
    compared = verdict_of(table(peat=PEAT, mat=MAT), "peat", 5.0)
    alone = verdict_of(table(peat=PEAT), "peat", 5.0)

    def told(verdict: Verdict) -> bool:
        return any("with its own chance to err" in line for line in how_worked_out(verdict))

    assert told(compared)
    assert not told(alone)


def test_spreads_of_few_trays_cannot_be_told_apart() -> None:
    verdict = verdict_of(wild(4), "peat", 5.0)

    assert verdict.error_from is ErrorFrom.ALL_MEDIA
    assert verdict.unequal_chance is None
    told = " ".join(how_worked_out(verdict))
    assert "Too few trays" in told
    assert (
        "a lower limit fails in up to 11 of 100 trials instead of 5, with eight media in up to 15, and"
        in told
    )
    assert "up to 11" not in " ".join(how_worked_out(verdict_of(table(peat=PEAT, mat=MAT), "peat", 5.0)))


@pytest.mark.parametrize(("peat", "mat", "said"), [(3, 2, True), (2, 2, False), (1, 1, False)])
def test_what_one_spread_can_do_is_said_of_two_media_where_blocks_hold_unlike_many(
    peat: int, mat: int, said: bool
) -> None:
    """Three trays and two in a block: 9 to 10 of 100 drawn trials where the fewer scatter thrice as much."""
    rows = [
        Measured(block=str(b), medium=m, value=70.0 + 3 * b + (7 * tray + len(m) * b * b) % 5)
        for b in range(4)
        for m, trays in (("peat", peat), ("mat", mat))
        for tray in range(trays)
    ]

    verdict = verdict_of(rows[:-1] if (peat, mat) == (1, 1) else rows, "peat", 5.0)

    assert verdict.medium("mat").low is not None
    assert verdict.error_from is ErrorFrom.ALL_MEDIA
    assert any("a lower limit fails in up to 11" in line for line in how_worked_out(verdict)) is said


@pytest.mark.parametrize(
    ("times", "least", "most", "error"),
    [(5.0, 0.0, 0.01, ErrorFrom.OWN_TRAYS), (4.0, 0.01, 0.05, ErrorFrom.ALL_MEDIA)],
)
def test_own_trays_give_the_error_up_to_a_chance_of_one_in_a_hundred_else_it_is_said_what_that_can_do(
    times: float, least: float, most: float, error: ErrorFrom
) -> None:
    noise = [((7 * b) % 11 - 5) / 5 for b in range(8)]
    verdict = verdict_of(
        table(
            peat=tuple(80 + times * e for e in noise),
            mat=tuple(80 + ((3 * b) % 7 - 3) / 3 for b in range(8)),
            coir=tuple(79 + ((5 * b) % 9 - 4) / 4 for b in range(8)),
            wood=tuple(81 + ((2 * b) % 5 - 2) / 2 for b in range(8)),
        ),
        "peat", 5.0,
    )  # fmt: skip

    assert verdict.unequal_chance is not None
    assert least < verdict.unequal_chance <= most
    assert verdict.error_from is error
    assert ("in up to 11" in " ".join(how_worked_out(verdict))) is (error is ErrorFrom.ALL_MEDIA)


def in_no_block(**media: tuple[float, ...]) -> list[Measured]:
    """Trays of some media of which no block is noted."""
    return [Measured(block="", medium=m, value=v) for m, there in media.items() for v in there]


def test_without_blocks_each_difference_rests_on_its_own_two_media() -> None:
    """scipy.stats.ttest_ind(mat, peat, equal_var=False) and its confidence_interval(0.9).

    With one spread 7 of 100 drawn trials of four trays each told equal media apart where one scattered thrice
    as much, and 14 to 18 where there were three trays of it and five or six of the other.
    """
    peat, mat = (80.0, 82.0, 81.0, 79.0), (70.0, 78.0, 86.0, 75.0)

    verdict = verdict_of(in_no_block(peat=peat, mat=mat), "peat", 5.0)

    line, welch = verdict.medium("mat"), stats.ttest_ind(mat, peat, equal_var=False)
    limits = welch.confidence_interval(0.9)  # one-sided 95 % on either side
    assert verdict.error_from is ErrorFrom.OWN_TRAYS
    assert (line.df, line.low, line.high) == pytest.approx((welch.df, limits.low, limits.high))
    assert cautions(verdict) == ()
    told = " ".join(how_worked_out(verdict))
    assert f"q = {line.q:.4f}, Student's t" in told
    assert f"{verdict.q:.4f}" not in told  # that of one spread
    assert "Without blocks each difference rests on its own two media's trays" in told
    assert "one spread" not in told.replace("not on one common spread", "")


def test_without_blocks_limits_of_several_media_are_told_to_hold_about_and_in_blocks_at_least() -> None:
    """Satterthwaite's degrees of freedom are near only; differences by block are exact, and Sidak careful."""
    trays = {
        "peat": (80.0, 82.0, 81.0, 79.0),
        "mat": (70.0, 78.0, 86.0, 75.0),
        "coir": (81.0, 80.0, 84.0, 80.0),
    }

    loose = " ".join(how_worked_out(verdict_of(in_no_block(**trays), "peat", 5.0)))
    blocks = " ".join(how_worked_out(verdict_of(table(**trays), "peat", 5.0, own_trays=True)))

    assert "lower limits hold with about 95 %" in loose
    assert "lower limits hold with at least 95 %" in blocks


def test_without_blocks_nobody_asks_whether_spreads_differ() -> None:
    """Each medium has its own anyway; a test beforehand does harm (Zimmerman 2004, from memory)."""
    trays = {"peat": (80.0, 82.0, 81.0, 79.0, 80.0), "mat": (60.0, 78.0, 86.0, 75.0, 99.0)}

    assert verdict_of(in_no_block(**trays), "peat", 5.0).unequal_chance is None
    assert verdict_of(table(**trays), "peat", 5.0).unequal_chance is not None


def test_without_a_tray_of_the_trusted_medium_means_are_told_and_no_difference() -> None:
    verdict = verdict_of(table(mat=MAT, coir=PEAT), "peat", 5.0)

    line = verdict.medium("mat")
    assert line.mean == pytest.approx(80.0)
    assert (line.difference, line.missing["difference"]) == (None, Why.NO_TRUSTED)
    assert "mean" not in line.missing


def test_q_knows_which_trays_are_missing_and_a_quick_answer_only_how_many() -> None:
    """scipy's multivariate t with the correlations of this very trial, 200,000 fixed points."""
    rows = table(
        peat=(80.0, 82.0, 81.0, 79.0, 83.0, 80.0), mat=(78.0, 83.0, 80.0, 78.0, 82.0, 81.0),
        coir=(None, None, 84.0, 80.0, 82.0, 80.0), wool=(79.0, None, None, 81.0, 83.0, 77.0),
    )  # fmt: skip

    full, quick = (verdict_of(rows, "peat", 5.0, quick=quick) for quick in (False, True))

    assert full.q != quick.q
    assert quick.q == pytest.approx(full.q, abs=0.02)
    design = design_of([row.block for row in rows], [row.medium for row in rows])
    chance = stats.multivariate_t(shape=design.correlation(0, [1, 2, 3]), df=design.df).cdf(
        [full.q] * 3, maxpts=200_000, random_state=1
    )
    assert chance == pytest.approx(0.95, abs=2e-4)


def test_of_many_trays_of_one_medium_and_few_of_another_the_few_count() -> None:
    """Mickey & Brown (1966): n - 1 of the fewer never fails too often; t one-sided 95 % with 2 df is 2.92."""
    peat, mat = (80.0, 81.0, 82.0, 80.0, 81.0, 82.0), (70.0, 78.0, 86.0)

    line = verdict_of(in_no_block(peat=peat, mat=mat), "peat", 5.0).medium("mat")

    assert line.se == pytest.approx((0.8 / 6 + 64 / 3) ** 0.5)
    assert (line.df, line.q) == (2, pytest.approx(2.9200, abs=1e-4))


@pytest.mark.parametrize(("peat", "own"), [(2, True), (1, False)])
def test_in_blocks_with_twice_the_trays_of_one_medium_blocks_are_compared_one_by_one(
    peat: int, own: bool
) -> None:
    """One spread failed in 12 of 100 drawn trials where the fewer scattered thrice; by blocks it is exact."""
    rows = [
        Measured(block=str(b), medium=m, value=value + 3 * b + (5 * tray + b * b) % 3)
        for b in range(4)
        for m, value, trays in (("peat", 80.0, peat), ("mat", 70.0 + b % 2, 1))
        for tray in range(trays)
    ]

    verdict = verdict_of(rows, "peat", 5.0)

    assert verdict.error_from is (ErrorFrom.OWN_TRAYS if own else ErrorFrom.ALL_MEDIA)
    assert verdict.medium("mat").df == 3
    assert any("twice as many trays" in note for note in cautions(verdict)) is own
    assert any("one spread was used" in line for line in how_worked_out(verdict)) is not own


def test_one_tray_of_a_medium_beside_many_takes_no_sureness_from_the_others() -> None:
    rows = table(peat=(80.0, 82.0, 84.0), mat=(78.0, 79.5, 82.0), coir=(79.0, 80.0, 83.0))

    verdict = verdict_of([*rows, Measured(block="1", medium="wool", value=60.0)], "peat", 5.0)

    assert verdict.error_from is ErrorFrom.ALL_MEDIA
    assert verdict.medium("mat").df == 4
    assert verdict.medium("wool").missing["outcome"] is Why.ONE_TRAY
    assert verdict.medium("wool").spread is None


def on_shelves(per_shelf: int, *media_of_blocks: dict[str, float]) -> list[Measured]:
    """Blocks of shelves, each shelf with one medium on several trays."""
    return [
        Measured(block=str(b), shelf=f"{b}{medium}", medium=medium, value=value + tray)
        for b, shelves in enumerate(media_of_blocks)
        for medium, value in shelves.items()
        for tray in range(per_shelf)
    ]


def test_a_medium_of_whole_shelves_is_compared_between_shelves() -> None:
    verdict = verdict_of(
        on_shelves(6, {"peat": 80, "mat": 70}, {"peat": 82, "mat": 75}, {"peat": 90, "mat": 78}), "peat", 5.0
    )

    assert verdict.error_from is ErrorFrom.SHELVES
    assert verdict.df == 2  # six shelves, not 36 trays
    assert verdict.medium("mat").n == 18


def test_a_tray_without_a_noted_shelf_does_not_turn_whole_shelves_into_many_trays() -> None:
    """Yates (1935): shelves repeat, not the trays on them, whatever one note lacks."""
    rows = on_shelves(6, {"peat": 80, "mat": 70}, {"peat": 82, "mat": 75}, {"peat": 90, "mat": 78})
    whole = verdict_of(rows, "peat", 5.0)

    gap = verdict_of([replace(rows[0], shelf=None), *rows[1:]], "peat", 5.0)
    hardly_any = verdict_of(  # three of each six
        [replace(row, shelf=row.shelf if n % 2 else None) for n, row in enumerate(rows)], "peat", 5.0
    )
    alone = verdict_of([*rows, Measured(block="4", medium="mat", value=75.0)], "peat", 5.0)

    assert (gap.error_from, gap.df, gap.medium("mat").low) == (whole.error_from, 2, whole.medium("mat").low)
    assert hardly_any.error_from is alone.error_from is ErrorFrom.ALL_MEDIA


def test_one_shelf_a_medium_cannot_be_tested_however_many_trays_stand_on_it() -> None:
    verdict = verdict_of(on_shelves(6, {"peat": 80, "mat": 70}), "peat", 5.0)

    assert verdict.medium("mat").outcome is None
    assert verdict.medium("mat").missing["outcome"] is Why.ONE_SHELF
    assert "each medium needs at least two" in the(verdict)


def test_one_shelf_of_a_medium_gets_no_outcome_however_many_shelves_the_others_have() -> None:
    shelves = [("peat", 80.0), ("peat", 82.0), ("peat", 81.0), ("mat", 90.0)]
    rows = [
        Measured(block="1", shelf=str(n), medium=medium, value=value + tray)
        for n, (medium, value) in enumerate(shelves)
        for tray in range(4)
    ]

    blocks = on_shelves(
        4, {"peat": 80, "coir": 79, "mat": 90}, {"peat": 82, "coir": 80}, {"peat": 81, "coir": 82}
    )

    for line in (verdict_of(rows, "peat", 5.0).medium("mat"), verdict_of(blocks, "peat", 5.0).medium("mat")):
        assert (line.n, line.outcome, line.missing["outcome"]) == (4, None, Why.ONE_SHELF)


def test_what_is_not_shown_of_whole_shelves_is_settled_by_whole_shelves() -> None:
    noise = (0.0, 3.0, -3.0, 1.0)
    values = [{"peat": 80 + e, "mat": 79 - e} for e in noise]
    shelves = verdict_of(table(peat=tuple(one["peat"] for one in values),
                               mat=tuple(one["mat"] for one in values)), "peat", 5.0)  # fmt: skip
    trays = verdict_of(on_shelves(3, *values), "peat", 5.0)

    assert shelves.medium("mat").outcome is trays.medium("mat").outcome is Outcome.NOT_SHOWN
    assert trays.medium("mat").further == 3 * shelves.medium("mat").further


# --- what cannot be had


def test_one_tray_of_each_medium_gives_numbers_and_no_verdict() -> None:
    verdict = verdict_of(table(peat=(80.0,), mat=(70.0,)), "peat", 5.0)

    line = verdict.medium("mat")
    assert (line.mean, line.difference) == (70.0, pytest.approx(-10.0))
    assert (line.se, line.low, line.high, line.outcome) == (None,) * 4
    assert (verdict.df, verdict.mse, verdict.q) == (None, None, None)
    assert verdict.missing == dict.fromkeys(("df", "mse", "q"), Why.ONE_TRAY_EACH)
    assert the(verdict).startswith(
        "mat: numbers, no verdict. Its mean is 70.0 points, -10.0 points against peat."
    )


def test_two_blocks_of_which_one_holds_a_single_tray_have_none_left_over_for_chance() -> None:
    """Three trays, two blocks, two media: nothing is left, though there are two trays of peat."""
    rows = [("1", "peat", 80.0), ("2", "peat", 82.0), ("2", "mat", 79.0)]
    verdict = verdict_of([Measured(block=b, medium=m, value=v) for b, m, v in rows], "peat", 5.0)

    assert verdict.missing == dict.fromkeys(("df", "mse", "q"), Why.NO_ERROR)
    assert verdict.medium("mat").difference == pytest.approx(-3.0)


def test_a_medium_with_one_tray_among_many_gets_no_outcome() -> None:
    verdict = verdict_of(table(peat=PEAT, coir=(82.0, 89.0, 101.0), mat=(71.0, None, None)), "peat", 5.0)

    assert verdict.medium("mat").outcome is None
    assert verdict.medium("mat").missing["outcome"] is Why.ONE_TRAY
    assert verdict.medium("coir").outcome is not None


def test_several_trays_a_medium_in_one_block_are_compared_as_they_stand() -> None:
    rows = [Measured(block="1", medium=m, value=v) for m, vs in (("peat", PEAT), ("mat", MAT)) for v in vs]

    verdict = verdict_of(rows, "peat", 5.0)

    assert verdict.df == 4
    assert verdict.medium("mat").outcome is Outcome.NOT_SHOWN


def test_without_numbers_there_is_nothing() -> None:
    verdict = verdict_of([], "peat", 5.0)

    assert verdict.media == ()
    assert cautions(verdict) == ("There is no number to compare: no tray has one.",)


def test_without_the_trusted_medium_nothing_is_compared() -> None:
    verdict = verdict_of(table(mat=MAT, coir=PEAT), "peat", 5.0)

    assert {line.outcome for line in verdict.media} == {None}
    assert verdict.missing["q"] is Why.NO_TRUSTED


def test_media_that_no_chain_of_blocks_joins_are_not_compared() -> None:
    verdict = verdict_of(
        [*table(peat=PEAT, coir=MAT), Measured(block="9", medium="mat", value=50.0)], "peat", 5.0
    )

    assert verdict.medium("mat").difference is None
    assert verdict.medium("mat").missing["outcome"] is Why.APART
    assert verdict.medium("peat").mean == pytest.approx(90.0)  # of its own blocks alone


def test_numbers_without_any_spread_are_not_believed() -> None:
    verdict = verdict_of(table(peat=(80.0, 90.0, 85.0), mat=(70.0, 80.0, 75.0)), "peat", 5.0)

    assert verdict.medium("mat").missing["outcome"] is Why.NO_SPREAD


def test_trays_that_all_stand_at_the_best_a_score_tells_are_not_called_copied_alone() -> None:
    verdict = verdict_of(table(peat=(100.0,) * 4, mat=(100.0,) * 4), "peat", 5.0)

    assert verdict.medium("mat").outcome is None
    assert "look whether all stand at its limit, or whether numbers were copied" in the(verdict)


ALONE = [Measured(block="9", medium="mat", value=50.0)]
FIELDS = ("mean", "rank_low", "rank_high", "difference", "se", "q", "df", "low", "high", "outcome")


@pytest.mark.parametrize(
    ("rows", "special", "why_no_q"),
    [
        (table(peat=PEAT, mat=MAT), {}, None),
        (table(peat=PEAT[:2], mat=MAT[:2]), {}, None),
        (table(peat=PEAT), {}, Why.ONLY_TRUSTED),
        (table(peat=PEAT) + table(peat=MAT), {}, Why.ONLY_TRUSTED),
        (table(mat=MAT, coir=PEAT), {}, Why.NO_TRUSTED),
        (table(peat=PEAT, coir=MAT) + ALONE, {}, None),
        (table(peat=PEAT) + table(peat=MAT) + ALONE, {}, Why.APART),
        (table(peat=PEAT, mat=(70.0, None, None)), {}, Why.NO_ERROR),
        (table(peat=(5.0, 6.0, 7.0), mat=(4.0, 5.0, 6.0)), {}, Why.NO_SPREAD),
        (table(peat=PEAT, coir=MAT, mat=(70.0, None, None)), {"own_trays": True}, None),
        (table(peat=PEAT, mat=MAT), {"by_shelf": True}, None),
    ],
)
def test_what_a_line_does_not_tell_has_a_reason_and_what_it_tells_has_none(
    rows: list[Measured], special: dict[str, bool], why_no_q: Why | None
) -> None:
    verdict = verdict_of(rows, "peat", 5.0, **special)

    assert verdict.missing.get("q") is why_no_q
    assert (verdict.q is None) is (why_no_q is not None)
    assert ("df" in verdict.missing, "mse" in verdict.missing) == (verdict.df is None, verdict.mse is None)
    for line in verdict.media:
        assert set(line.missing) == {name for name in FIELDS if getattr(line, name) is None}, line.medium


def test_a_spread_is_told_of_media_with_two_trays_and_more() -> None:
    """Of two trays the textbook's standard deviation, n - 1, once what the block adds is taken off."""
    rows = table(peat=PEAT, mat=(70.0, None, 88.0), coir=(71.0, None, None))

    verdict = verdict_of(rows, "peat", 5.0)

    assert verdict.medium("peat").spread is not None
    assert verdict.medium("mat").spread is not None
    assert verdict.medium("coir").spread is None


def test_of_trays_that_stand_alone_in_their_blocks_no_spread_is_told() -> None:
    alone = [Measured(block=f"far {n}", medium="coir", value=70.0 + n) for n in range(2)]

    verdict = verdict_of([*table(peat=PEAT, mat=MAT), *alone], "peat", 5.0)

    assert verdict.medium("coir").n == 2
    assert verdict.medium("coir").spread is None


def test_a_medium_without_an_error_of_its_own_gets_no_interval_and_says_why() -> None:
    rows = table(peat=PEAT, coir=MAT, mat=(70.0, None, None))
    second = Measured(block="1", medium="mat", value=70.0)

    one = verdict_of(rows, "peat", 5.0, own_trays=True).medium("mat")
    two = verdict_of([*rows, second], "peat", 5.0, own_trays=True).medium("mat")

    assert one.difference == pytest.approx(70.0 - ((80.0 + 71.0) / 2 + 10.0 / 2))  # its block holds both
    assert (one.low, one.missing["low"]) == (None, Why.ONE_TRAY)
    assert (two.low, two.missing["low"]) == (None, Why.NO_ERROR)


@pytest.mark.parametrize("asked", [{"by_shelf": True}, {"own_trays": True}])
def test_a_difference_that_is_the_same_in_each_block_rests_on_no_error_of_rounding(
    asked: dict[str, bool],
) -> None:
    """0.3 in each block, but for the last digit of a computer's numbers: no trays are so alike."""
    peat = (80.1, 81.3, 82.7, 79.9)
    rows = table(peat=peat, mat=tuple(one + 0.3 for one in peat), coir=(70.0, 85.0, 80.0, 77.0))

    line = verdict_of(rows, "peat", 5.0, **asked).medium("mat")

    assert line.difference == pytest.approx(0.3)
    assert (line.outcome, line.missing["outcome"]) == (None, Why.NO_SPREAD)
    assert (line.rank_low, line.rank_high) == (1, 3)


def test_two_media_without_any_spread_of_their_own_are_asked_without_a_word_to_the_terminal() -> None:
    """Scores by eye come in steps of five; here the warning of a division by nothing would be an error."""
    rows = [
        Measured(block="1", medium=medium, value=value)
        for medium, values in {"peat": (80.0, 80.0), "coir": (80.0, 85.0), "mat": (80.0, 80.0)}.items()
        for value in values
    ]

    verdict = verdict_of(rows, "peat", 5.0)

    assert verdict.medium("mat").missing["outcome"] is Why.NO_SPREAD
    assert verdict.medium("coir").df == pytest.approx(1.0)  # Satterthwaite: coir alone scatters, by 1 df


def test_a_margin_of_zero_is_named() -> None:
    verdict = verdict_of(table(peat=PEAT, mat=MAT), "peat", 0.0)

    assert verdict.medium("mat").outcome is Outcome.WORSE
    assert any("The margin is zero" in note for note in cautions(verdict))


# --- while it runs, and what would settle it


def test_a_running_trial_says_so_far_and_shows_nothing() -> None:
    verdict = verdict_of(table(peat=PEAT, mat=(60.0, 71.0, 80.0)), "peat", 5.0, so_far=True)

    assert verdict.medium("mat").outcome is Outcome.NOT_SHOWN
    assert the(verdict).startswith("So far mat differs from peat by -19.7 points")
    assert "nothing is shown before the planned trays are in" in the(verdict)


def test_what_is_not_shown_comes_with_the_trays_that_would_settle_it() -> None:
    verdict = verdict_of(table(peat=PEAT, mat=(78.0, 87.0, 104.0)), "peat", 5.0)

    line = verdict.medium("mat")
    assert line.outcome is Outcome.NOT_SHOWN
    assert line.further is not None
    assert f"{3 + line.further} trays of each medium, {line.further} more than here, would" in the(verdict)
    assert any("a chance of 80 %" in words for words in how_worked_out(verdict))


def test_where_less_is_better_as_many_further_trays_settle_it_as_for_the_mirrored_numbers() -> None:
    values = {"peat": (80.0, 90.0, 86.0, 83.0), "mat": (76.0, 89.0, 80.0, 81.0)}
    mirrored = {name: tuple(-one for one in there) for name, there in values.items()}

    usual = verdict_of(table(**values), "peat", 5.0).medium("mat")
    turned = verdict_of(table(**mirrored), "peat", 5.0, lower_is_better=True).medium("mat")

    assert usual.outcome is Outcome.NOT_SHOWN
    assert usual.further is not None
    assert (turned.outcome, turned.further) == (usual.outcome, usual.further)


def test_where_one_medium_has_many_trays_those_lacking_of_the_other_are_told() -> None:
    """A trial of its own takes as many of each, however many there were of one."""
    peat = (80.0, 83.0, 77.0, 80.0)
    mat = tuple(79.0 + n % 3 for n in range(30))

    verdict = verdict_of(in_no_block(peat=peat, mat=mat), "peat", 2.0)

    line = verdict.medium("mat")
    assert line.outcome is Outcome.NOT_SHOWN
    assert 4 < line.enough < 30
    assert line.further == line.enough - 4
    assert f"{line.enough} trays of each medium, {line.further} more than here" in the(verdict)


def test_what_was_too_little_here_is_not_said_to_be_enough() -> None:
    """Two trays beside three go by t with 1 df; two beside two would be surer, but two are what there was."""
    peat, mat = (80.0, 82.0), (80.0, 81.0, 82.0)

    verdict = verdict_of(in_no_block(peat=peat, mat=mat), "peat", 7.0)

    assert "3 trays of each medium, 1 more than here, would probably settle it." in the(verdict)


def test_why_a_medium_has_no_rank_is_told() -> None:
    (alone,) = verdict_of([Measured(block="a", medium="peat", value=v) for v in PEAT], "peat", 5.0).media
    single = verdict_of(table(peat=(80.0,), mat=(70.0,)), "peat", 5.0).medium("mat")

    assert alone.missing["rank_low"] is Why.ONLY_TRUSTED
    assert single.missing["rank_high"] is Why.ONE_TRAY_EACH
    loose = verdict_of(in_no_block(peat=(80.0,), mat=(70.0,)), "peat", 5.0).medium("mat")
    assert single.missing["outcome"] is loose.missing["outcome"] is Why.ONE_TRAY_EACH


def test_of_ranks_nothing_is_said_where_no_medium_has_one() -> None:
    single = verdict_of(table(peat=(80.0,), mat=(70.0,)), "peat", 5.0)

    assert not any("Ranks:" in line for line in how_worked_out(single))
    assert any(
        "Ranks:" in line for line in how_worked_out(verdict_of(table(peat=PEAT, mat=MAT), "peat", 5.0))
    )


def test_media_equally_far_apart_in_every_block_are_told_so_and_rest_on_nothing() -> None:
    """Peat has twice the trays: blocks would be compared one by one, if their differences were not all 1."""
    rows = [
        Measured(block=block, medium=medium, value=value)
        for block, there in (("a", (80.0, 82.0, 82.0)), ("b", (84.0, 88.0, 87.0)))
        for medium, value in zip(("peat", "peat", "mat"), there, strict=True)
    ]

    verdict = verdict_of(rows, "peat", 5.0)

    assert verdict.medium("mat").missing["outcome"] is Why.NO_SPREAD
    assert "or two media lie equally far apart in every block" in the(verdict)
    assert not any("each difference rests on" in str(line) for line in cautions(verdict))


def test_of_spreads_nothing_is_said_where_nothing_is_compared() -> None:
    alone = verdict_of(in_no_block(peat=(80.0,), mat=(70.0,)), "peat", 5.0)

    assert not any("spread was used" in line or "Without blocks" in line for line in how_worked_out(alone))


def test_the_trusted_medium_is_held_against_nothing_and_says_so() -> None:
    line = verdict_of(table(peat=PEAT, mat=MAT), "peat", 5.0).medium("peat")

    assert line.difference is None
    assert {line.missing[name] for name in ("difference", "se", "low", "high", "outcome")} == {Why.IS_TRUSTED}


def test_one_trusted_tray_alone_gives_no_medium_an_outcome() -> None:
    verdict = verdict_of(table(peat=(80.0, None, None, None), mat=MAT, coir=PEAT), "peat", 5.0)

    for line in verdict.compared:
        assert line.low is not None
        assert (line.outcome, line.missing["outcome"]) == (None, Why.ONE_TRAY)


def test_what_is_shown_asks_for_no_further_trays() -> None:
    shown = verdict_of(table(peat=PEAT, mat=(79.0, 90.5, 99.5)), "peat", 5.0).medium("mat")

    assert (shown.outcome, shown.further) == (Outcome.AS_GOOD, None)


def test_a_difference_that_lies_at_the_margin_is_not_settled_by_trays() -> None:
    verdict = verdict_of(table(peat=(80.0, 90.0, 100.0), mat=(76.0, 84.0, 95.0)), "peat", 5.0)

    assert verdict.medium("mat").further is None
    assert "how trays and camera scatter" in the(verdict)  # near is not told by the margin alone
    assert "no reasonable number of further trays" in the(verdict)


@pytest.mark.parametrize(
    ("mat", "lower_is_better"), [((84.0, 88.0, 87.0), False), ((97.0, 100.0, 103.0), True)]
)
def test_what_is_surely_less_good_is_not_called_unknown_where_only_the_margin_is_in_doubt(
    mat: tuple[float, ...], lower_is_better: bool
) -> None:
    peat = (91.0, 92.0, 95.0)
    verdict = verdict_of(table(peat=peat, mat=mat), "peat", 6.5, lower_is_better=lower_is_better)

    assert verdict.medium("mat").outcome is Outcome.NOT_SHOWN
    assert the(verdict).startswith("Not shown: mat is surely less good than peat, but the trial cannot tell")


def test_what_may_be_as_good_or_better_is_not_called_less_good() -> None:
    verdict = verdict_of(table(peat=PEAT, mat=(78.0, 87.0, 104.0)), "peat", 5.0)

    assert the(verdict).startswith("Not shown: the trial cannot tell whether mat is as good as peat")


# --- sentences


@given(
    st.lists(st.tuples(st.floats(0, 100), st.floats(0, 100), st.floats(0, 100)), min_size=2, max_size=8),
    st.floats(0.1, 30),
    st.booleans(),
    st.booleans(),
)
def test_every_number_in_a_sentence_stands_in_the_table(
    blocks: list[tuple[float, float, float]], margin: float, so_far: bool, lower: bool
) -> None:
    rows = [
        Measured(block=str(b), medium=medium, value=value)
        for b, values in enumerate(blocks)
        for medium, value in zip(("peat", "mat", "coir"), values, strict=True)
    ]
    verdict = verdict_of(rows, "peat", margin, so_far=so_far, lower_is_better=lower)
    scale = scale_for(verdict)

    for line in verdict.compared:
        said = str(sentence(verdict, line, scale))
        written = {
            scale.number(value, sign=sign)
            for value in (line.mean, line.difference, line.low, line.high, margin)
            if value is not None
            for sign in (True, False)
        } | {str(line.further), str(line.enough)}
        assert set(re.findall(r"[+-]?\d+(?:\.\d+)?", said)) <= written
        assert not re.search(r"\bp\b", said)


def test_no_sentence_says_minus_nothing() -> None:
    assert POINTS.number(-0.01, sign=True) == "+0.0"


@pytest.mark.parametrize(("error", "digits"), [(0.012, 3), (0.6, 2), (6.0, 1), (60.0, 0), (1e-9, 6)])
def test_numbers_without_unit_are_written_to_two_digits_of_their_error(error: float, digits: int) -> None:
    rows = table(
        peat=tuple(error * e for e in (0.0, 1.0, 2.5)), mat=tuple(error * e for e in (1.0, 1.0, 4.0))
    )
    verdict = verdict_of(rows, "peat", error)

    assert abs(scale_for(verdict).digits - digits) <= 1


def test_the_records_and_words_of_a_verdict_load_no_numpy() -> None:
    modules = (
        "data.verdict.verdicts, data.verdict.words, data.verdict.notes, data.verdict.surewords, "
        "data.verdict.blindwords, data.verdict.tablefile"
    )
    code = f"import sys, {modules}; print({{'numpy', 'scipy', 'cv2', 'sqlite_utils'}} & set(sys.modules))"

    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)

    assert done.stdout.strip() == "set()"


# --- two settings at once, one of whole shelves


def heated(blocks: int) -> list[Measured]:
    """Sets of two shelves, one with a heat mat; peat and mat on each."""
    return [
        Measured(
            block=str(b),
            shelf=f"{b}{heat}",
            medium=f"{medium}, {heat}",
            value=80
            - 5 * (medium == "mat")
            + 2 * (heat == "warm")
            + [0, 3, -2, 1][b] * (heat == "warm")
            + tray,
        )
        for b in range(blocks)
        for heat in ("cold", "warm")
        for medium in ("peat", "mat")
        for tray in range(2)
    ]


def test_settings_of_shelves_and_media_are_compared_set_by_set() -> None:
    verdict = verdict_of(heated(4), "peat, cold", 5.0, by_shelf=True)

    assert verdict.error_from is ErrorFrom.SHELVES
    assert verdict.medium("peat, warm").df == 3  # four sets of shelves
    assert verdict.medium("peat, warm").difference == pytest.approx(2.5)


def settles(line: MediumResult, repeats: int, now: int, compared: int, free: float = 1.0) -> float:
    """By scipy's noncentral t: the chance of so many repeats of a line that has `now`, for a margin of 2."""
    df = free * (repeats - 1)
    limit = stats.t.ppf(0.95 ** (1 / compared), df)
    return float(stats.nct.sf(limit, df, (2.0 + line.difference) / (line.se * (now / repeats) ** 0.5)))


def test_sets_that_would_settle_it_are_counted_as_sets_are_read() -> None:
    """By scipy's noncentral t: as many reach a chance of 0.8 against Sidak's limit, one fewer does not."""
    slips = (0.0, 3.0, -2.0, 1.0, -3.0)
    rows = [
        Measured(block=str(b), shelf=f"{b}{heat}", medium=f"{medium}, {heat}",
                 value=80 + slip * (heat == "warm") - slip * (medium == "mat"))
        for b, slip in enumerate(slips)
        for heat in ("cold", "warm")
        for medium in ("peat", "mat")
    ]  # fmt: skip
    line = verdict_of(rows, "peat, cold", 2.0, by_shelf=True).medium("peat, warm")
    assert line.outcome is Outcome.NOT_SHOWN

    now = len(slips)
    assert settles(line, line.enough, now, 3) >= 0.8 > settles(line, line.enough - 1, now, 3)


def test_trays_that_would_settle_it_fill_as_many_shelves_as_it_takes() -> None:
    """Shelves of two and three trays: a further shelf with three scatters no more than those seen."""
    slips = (0.0, 1.5, -1.2, 0.8)
    rows = [
        Measured(block=str(b), shelf=f"{b}{medium}", medium=medium, value=80 + slip * side + tray - n / 2)
        for b, slip in enumerate(slips)
        for medium, side, n in (("peat", 1, 3 - (b == 3)), ("mat", -1, 2))
        for tray in range(n)
    ]  # fmt: skip

    verdict = verdict_of(rows, "peat", 2.0)

    line = verdict.medium("mat")
    assert line.outcome is Outcome.NOT_SHOWN
    assert line.n == 8  # on four shelves; peat has 11: nearly three on each
    shelves, over = divmod(line.enough, 3)
    assert over == 0
    assert settles(line, shelves, 4, 1) >= 0.8 > settles(line, shelves - 1, 4, 1)
    assert f"{line.enough} trays of each medium on {shelves} shelves, {line.enough - 8} trays more" in the(
        verdict
    )


def test_where_blocks_hold_several_trays_and_count_one_by_one_those_that_settle_it_fill_blocks() -> None:
    slips = (0.0, 3.0, -2.0, 1.0, -3.0)
    rows = [
        Measured(block=str(b), medium=medium, value=80 + slip * side + tray)
        for b, slip in enumerate(slips)
        for medium, side in (("peat", 1), ("mat", -1))
        for tray in range(2)
    ]

    line = verdict_of(rows, "peat", 2.0, own_trays=True).medium("mat")

    assert line.n == 10
    blocks, over = divmod(line.enough, 2)
    assert over == 0
    assert settles(line, blocks, 5, 1) >= 0.8 > settles(line, blocks - 1, 5, 1)


def test_trays_that_would_settle_it_without_blocks_are_counted_as_they_are_read() -> None:
    """Satterthwaite: variances a and b add (a + b)^2 / (a^2 + b^2) degrees of freedom a tray."""
    peat, mat = (77.0, 83.0, 80.0, 77.0, 83.0), (79.0, 81.0, 80.0, 79.0, 81.0, 80.0)

    line = verdict_of(in_no_block(peat=peat, mat=mat), "peat", 2.0).medium("mat")

    new, old = stats.tvar(mat), stats.tvar(peat)
    even = replace(line, se=((new + old) / 5) ** 0.5)  # as with five trays of each
    free = (new + old) ** 2 / (new**2 + old**2)
    assert line.outcome is Outcome.NOT_SHOWN
    assert settles(even, line.enough, 5, 1, free) >= 0.8 > settles(even, line.enough - 1, 5, 1, free)


def test_one_set_of_shelves_is_no_test_of_what_belongs_to_the_shelf() -> None:
    verdict = verdict_of(heated(1), "peat, cold", 5.0, by_shelf=True)

    assert verdict.medium("peat, warm").outcome is None
    assert verdict.medium("peat, warm").missing["outcome"] is Why.ONE_SHELF
    assert {(line.rank_low, line.rank_high) for line in verdict.media} == {(1, 4)}
