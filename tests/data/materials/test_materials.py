"""The table of media: cells with range, n and source; gaps that say what to do; limits."""

from dataclasses import replace
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from data.book import Book
from data.breakdown import by_eye, decay_of
from data.costs import Labour, labour_kind, mean_of_trays, minutes_by_kind
from data.errors import ImpossibleFactor, PhotoGone
from data.heat import CAUTION, cooling_of, degree_hours_below, lift_over_mat
from data.materials.cells import cells_of
from data.materials.facts import MediumFacts
from data.materials.reading import read_materials
from data.materials.table import ROWS, Cell, Kept, difference_of, standing_of, table_of
from data.medium.benchtest import (
    BenchKind,
    BenchTest,
    NewBenchTest,
    due_of,
    step_reading,
    steps_of,
    wrong_reading,
)
from data.medium.factors import Factor
from data.medium.feeds import feed_caution, is_of_waste
from data.readings import BenchTestId, NewReading, Reading, ReadingId, ReadingKind
from data.sentence import Sentence
from data.statistics.estimate import Estimate
from tests.data.builders import a_tray
from tests.made.books import a_demonstration, an_empty_book

NOON = datetime(2026, 3, 8, 12)
HOUR = timedelta(hours=1)
TEST = BenchTest(id=BenchTestId(1), kind=BenchKind.WETTING, medium="coir", begun_at=NOON)


def a_reading(step: str, value: float, hours: float = 0.0, kind: ReadingKind = ReadingKind.WEIGHT) -> Reading:
    return Reading(
        id=ReadingId(1), kind=kind, value=value, taken_at=NOON + hours * HOUR, tray_id=None, shelf=None,
        bench_test=TEST.id, source="person", note=step,
    )  # fmt: skip


# --- the lead through a test


def test_a_wetting_test_asks_for_one_weighing_after_the_other() -> None:
    so_far = [a_reading("dry", 640), a_reading("soaked", 2890, 0.3), a_reading("drained", 2540, 1)]

    first = due_of(TEST, (), NOON)
    later = due_of(TEST, so_far, NOON + 2 * HOUR)

    assert first is not None
    assert later is not None
    assert (first.step.name, first.is_now) == ("dry", True)
    assert (later.step.name, later.at, later.is_now) == ("after 6 h", NOON + 7 * HOUR, False)


def test_a_complete_test_asks_for_nothing() -> None:
    done = [a_reading(step.name, 900, n) for n, step in enumerate(steps_of(BenchKind.WETTING))]

    assert due_of(TEST, done, NOON) is None


@pytest.mark.parametrize(
    ("step", "value", "hours", "words"),
    [
        (1, -5.0, 1.0, "above zero"),
        (1, 500.0, 1.0, "one of the two is wrong"),
        (1, 2000.0, 0.0, "already"),
        (1, 2e6, 1.0, "can be"),
    ],
)
def test_a_weighing_that_cannot_be_is_refused(step: int, value: float, hours: float, words: str) -> None:
    dry = [a_reading("dry", 640)]

    wrong = wrong_reading(dry, steps_of(BenchKind.WETTING)[step], value, NOON + hours * HOUR)

    assert words in str(wrong)


# --- warmth, break-down, costs


@pytest.mark.parametrize(
    ("samples", "air", "words"),
    [
        ([(NOON, 24.0)], 18.0, "twice"),
        ([(NOON, 24.0), (NOON, 22.0)], 18.0, "same time"),
        ([(NOON, 24.0), (NOON + HOUR, 25.0)], 18.0, "did not cool"),
        ([(NOON, 18.2), (NOON + HOUR, 18.1)], 18.0, "Warm it"),
        ([(NOON, 21.9), (NOON + HOUR, 18.1)], 18.0, "Warm it at least 4 K"),
        ([(NOON, 22.0), (NOON + HOUR, 18.9)], 18.0, "read it after a quarter and half an hour"),
        ([(NOON, 24.0), (NOON + HOUR, 22.0)], None, "air"),
        ([(NOON, 24.0), (NOON + HOUR, 23.7)], 18.0, "fell too little"),
        # least squares took 58 million hours from this, between -3 and 3 thousand billion
        ([(NOON + n * HOUR, 18 + k) for n, k in enumerate((5.0, 1.5, 4.9, 4.95))], 18.0, "too unevenly"),
    ],
)
def test_what_tells_no_cooling_says_why(
    samples: list[tuple[datetime, float]], air: float | None, words: str
) -> None:
    found = cooling_of(samples, air)

    assert found.hours is None
    assert words in str(found.reason)


def test_over_a_mat_only_what_is_steady_counts() -> None:
    rising = [(NOON, 20.0), (NOON + HOUR, 23.0)]
    steady = [(NOON, 24.0), (NOON + HOUR, 24.2)]

    assert "still getting warmer" in str(lift_over_mat(rising, 18.0)[1])
    assert lift_over_mat(steady, 18.0)[0] == pytest.approx(6.1)
    assert lift_over_mat(steady[:1], 18.0)[0] == pytest.approx(6.0)
    begun = [(NOON - 4 * HOUR, 19.0), (NOON - 3 * HOUR, 23.7), *steady]
    assert lift_over_mat(begun[::-1], 18.0)[0] == pytest.approx(6.1)  # of the last three hours alone
    assert lift_over_mat([(NOON, 24.0), (NOON + 3 * HOUR, 24.5)], 18.0)[0] == pytest.approx(6.25)
    assert "air beside" in str(lift_over_mat(steady, None)[1])
    assert "half a day" in str(lift_over_mat([], 18.0)[1])


def test_degree_hours_are_counted_at_night_only() -> None:
    night = [(datetime(2026, 3, 8, 20) + n * HOUR, 16.0) for n in range(13)]
    day = [(datetime(2026, 3, 8, 9) + n * HOUR, 10.0) for n in range(5)]

    assert degree_hours_below([*day, *night], 18.0) == (pytest.approx(24.0), 1)


@pytest.mark.parametrize(
    ("before", "after", "below"),
    [(19.0, 17.0, 0.25), (22.0, 16.0, 1 / 3), (16.0, 22.0, 1 / 3), (17.0, 20.0, 1 / 6), (18.0, 19.0, 0.0)],
)
def test_a_line_that_crosses_the_floor_counts_for_its_part_below(
    before: float, after: float, below: float
) -> None:
    """From 22 to 16 degrees within an hour it lies below 18 for a third of it, a kelvin deep: 1/3 K h."""
    night = [(datetime(2026, 3, 8, 20) + n * HOUR, 18.0) for n in range(13)]
    night[5] = (night[5][0], before)
    night[6] = (night[6][0], after)
    sides = sum(max(18.0 - c, 0.0) / 2 for c in (before, after))  # with the hours before and after it

    assert degree_hours_below(night, 18.0)[0] == pytest.approx(sides + below)


def test_a_night_of_which_little_was_logged_does_not_count_as_a_warm_one() -> None:
    """16 degrees all night, 2 K below for 12 hours; the second night was read out half way."""
    one = [(datetime(2026, 3, 8, 20) + n * HOUR, 16.0) for n in range(13)]
    part = [(datetime(2026, 3, 9, 20) + n * HOUR / 2, 16.0) for n in range(12)]

    assert degree_hours_below([*one, *part], 18.0) == (pytest.approx(24.0), 1)
    assert degree_hours_below(part, 18.0) == (None, 0)


def test_a_night_is_from_eight_to_eight_and_a_gap_in_it_counts_for_nothing() -> None:
    """16 degrees, 2 K below: 12 h; two hours' gap is bridged, three hours' are left out of nine logged."""
    eight = datetime(2026, 3, 8, 20)
    night = [(eight + n * HOUR, 16.0) for n in range(-3, 16)]
    warm = [(at, 16.0 if eight <= at <= eight + 12 * HOUR else 10.0) for at, _ in night]

    assert degree_hours_below(night[::-1], 18.0) == (pytest.approx(24.0), 1)
    assert degree_hours_below([one for one in night if one[0].hour != 2], 18.0) == (pytest.approx(24.0), 1)
    assert degree_hours_below([one for one in night if one[0].hour not in (2, 3)], 18.0) == (
        pytest.approx(18.0), 1,
    )  # fmt: skip
    assert degree_hours_below([one for one in night if one[0].hour not in (2, 3, 4)], 18.0) == (None, 0)
    assert degree_hours_below(warm, 18.0) == (pytest.approx(24.0), 1)
    assert degree_hours_below([(at, 18.0) for at, _ in night], 18.0) == (0.0, 1)
    rising = [(at, 17.0 + n % 2 * 2) for n, (at, _) in enumerate(night)]
    assert degree_hours_below(rising, 18.0) == (pytest.approx(12 * 0.25), 1)


def warmth_of(tests: tuple[tuple[BenchTest, list[Reading]], ...], **facts: Any) -> dict[str, Cell]:
    return cells_of(MediumFacts(medium="coir", area_cm2=1290.32, tests=tests, **facts))


def test_how_long_roots_stand_cold_after_watering_is_told_by_the_cooling_test() -> None:
    """Newton's law by hand: 6 K fall to 3 K within an hour; of 10 K there are 1.25 left after three."""
    cooling = replace(TEST, kind=BenchKind.COOLING)
    air = a_reading("air", 18.0, kind=ReadingKind.AIR_TEMPERATURE)
    off = a_reading("off", 24.0, kind=ReadingKind.MEDIUM_TEMPERATURE)
    later = a_reading("cooling", 21.0, 1.0, ReadingKind.MEDIUM_TEMPERATURE)

    (note, caution) = warmth_of(((cooling, [air, off, later]),))["cooling"].notes

    assert note.startswith(
        "Wetted from the tap at 10 °C in air of 20 °C it stands at 19 °C after 3 hours and at 20 °C after 12;"
    )
    assert caution == CAUTION

    both = warmth_of(((cooling, [air, off, later]), (cooling, [air, off, later])))["cooling"]
    assert note in both.notes


def test_before_a_cooling_test_the_stored_heat_says_how_fast_it_should_follow() -> None:
    """By hand, de Vries (1963): 30 mm, 8 % solids, 60 % water: 81.26 kJ/m2K; 1.88 h at 12 W, 2.82 at 8."""
    litres = 0.129032 * 30
    readings = [
        a_reading("dry", 600), a_reading("soaked", 600 + 700 * litres, 0.1),
        a_reading("drained", 600 + 600 * litres, 1.0),
    ]  # fmt: skip

    def exactly(name: str, value: float) -> Factor:
        return Factor(name=name, value=value, low=value, high=value, unit="", source="scale", medium="coir",
                      entered_at=NOON)  # fmt: skip

    factors = [
        exactly("thickness", 30), exactly("dry mass", 80 * litres * 1.5), exactly("solid density", 1.5),
        exactly("minerals", 0),
    ]  # fmt: skip

    heat = warmth_of(((TEST, readings),), factors=factors)["heat"]

    assert heat.value == pytest.approx(81.264, abs=0.01)
    assert "follow the shelf in 1.9 to 2.8 h" in heat.notes[1]


@pytest.mark.parametrize(
    ("days", "left", "words"),
    [
        ([30.0], [90.0], "Cannot tell yet"),
        ([30.0, 60.0], [99.0, 97.0], "less than a tenth"),
        ([30.0, 30.0], [80.0, 70.0], "same time"),
        ([30.0, 60.0], [80.0, -1.0], "below zero"),
        ([30.0, 60.0], [150.0, 80.0], "more than at first"),
    ],
)
def test_a_break_down_that_cannot_be_told_says_why(days: list[float], left: list[float], words: str) -> None:
    assert words in str(decay_of(days, left).reason)


def test_half_gone_is_not_told_far_beyond_what_was_seen() -> None:
    soon = decay_of([14, 28, 42], [95, 91, 88])

    assert soon.half_weeks is None
    assert "Cannot tell yet" in str(soon.reason)


def test_a_rest_that_stays_is_told() -> None:
    found = decay_of([30, 60, 120, 240, 360, 480], [62, 47, 37, 35, 35, 35])

    assert found.remains_pct == pytest.approx(35, abs=1.5)


def test_by_eye_it_lies_between_two_looks() -> None:
    seen = by_eye([14, 28, 42], [5, 3, 2])

    assert (seen.low_weeks, seen.high_weeks) == (4.0, 6.0)
    assert by_eye([14], [4]).high_weeks is None


@given(st.lists(st.floats(1, 100), min_size=2, max_size=6))
def test_intervals_shrink_with_more_trays_of_the_same_spread(values: list[float]) -> None:
    few, many = mean_of_trays(values), mean_of_trays(values * 4)
    assert few is not None
    assert many is not None

    def width(one: Estimate) -> float:
        return (one.high or 0.0) - (one.low or 0.0)

    assert width(many.estimate) <= width(few.estimate)


def test_marks_that_are_all_alike_do_not_tell_how_sure_their_mean_is() -> None:
    """Three marks of 4 are rounded to whole marks: their mean is not known to the last digit."""
    cell = warmth_of((), cut_quality=(4.0, 4.0, 4.0))["cut quality"]

    assert (cell.value, cell.low, cell.high, cell.n) == (4.0, None, None, 3)
    assert "All alike" in str(cell.notes[-1])


def test_a_wetting_test_that_is_begun_is_gone_on_with_not_begun_again() -> None:
    begun = [a_reading("dry", 640), a_reading("soaked", 2890, 0.3), a_reading("drained", 2540, 1)]
    covered = [*begun, a_reading("after 6 h", 2541, 7), a_reading("after 12 h", 2540, 13)]

    def gap(*tests: list[Reading]) -> str:
        return str(warmth_of(tuple((TEST, readings) for readings in tests))["dry after"].gap)

    assert gap() == "Do the wetting test and weigh after 6, 12, 24 and 48 hours: 5 minutes in all."
    assert gap(begun) == "Weigh it 6, 12, 24 and 48 hours after it drained."
    assert gap(covered) == "It hardly dried: go on weighing it."  # by one scale's noise alone in 10^8 years


def test_two_tests_that_agree_by_luck_are_no_surer_of_a_forecast_than_each_of_them() -> None:
    """Student's t of 40 and 41, two tests, is 40.5 -+ 12.71 x 0.5, so 34.1 to 46.9; each says 35 to 70."""
    each = [Estimate(value=40.0, low=35.0, high=69.0), Estimate(value=41.0, low=35.0, high=71.0)]

    cell = warmth_of((), dry_after=each)["dry after"]

    assert (cell.value, cell.n) == (40.5, 2)
    assert (cell.low, cell.high) == pytest.approx((34.147, 70.0), abs=1e-3)
    assert warmth_of((), dry_after=each[:1])["dry after"].high == 69.0
    assert warmth_of((), dry_after=[Estimate(value=40.0), each[1]])["dry after"].high == pytest.approx(
        46.853, abs=1e-3
    )


def test_minutes_of_the_evening_of_sowing_are_set_up_though_the_hour_of_sowing_was_taken_for_nine() -> None:
    sown = datetime(2026, 3, 2, 9)

    assert labour_kind(datetime(2026, 3, 2, 22, 30), sown, None) is Labour.SET_UP
    assert labour_kind(datetime(2026, 3, 3, 0, 30), sown, None) is Labour.CARE
    assert labour_kind(datetime(2026, 3, 3, 0, 30), datetime(2026, 3, 2, 23, 40), None) is Labour.SET_UP


def test_minutes_are_told_apart_by_when_they_were_noted() -> None:
    done = NOON + timedelta(days=9)
    noted = [(NOON - HOUR, 5.0), (NOON + timedelta(days=3), 2.0), (done + HOUR, 4.0)]

    assert minutes_by_kind(noted, NOON, done) == {Labour.SET_UP: 5.0, Labour.CARE: 2.0, Labour.AFTER: 4.0}


@pytest.mark.parametrize(
    "feed",
    [
        "worm tea", "diluted urine 1:10", "chicken manure", "compost extract",
        "Hühnermist, verdünnt", "Brennnesseljauche", "Wurmtee", "Kompostauszug", "Mist", "Hornspäne",
    ],
)  # fmt: skip
def test_feeds_of_waste_carry_their_caution(feed: str) -> None:
    assert is_of_waste(feed)
    assert "local food authority" in str(feed_caution(feed))


def test_plain_water_needs_no_caution_and_another_feed_asks_for_the_law() -> None:
    assert feed_caution("none") is None
    assert feed_caution("Ohne") is None
    assert "local law" in str(feed_caution("mineral salts"))
    assert not is_of_waste("the chemist's mix")


# --- the table


def a_cell(value: float, reach: float | None = None) -> Cell:
    low, high = (None, None) if reach is None else (value - reach, value + reach)
    return Cell(value=value, low=low, high=high, n=3)


def test_a_difference_has_the_interval_of_both() -> None:
    found = difference_of(Estimate(value=10, low=7, high=13), Estimate(value=4, low=0, high=8))

    assert (found.value, found.low, found.high) == (6, 1, 11)


def test_limits_are_kept_missed_or_cannot_be_told() -> None:
    cells = {
        ("price", "a"): a_cell(1.0, 0.1), ("price", "b"): a_cell(1.25, 0.1), ("price", "c"): a_cell(2.0, 0.1),
        ("price", "d"): Cell.missing(Sentence("Type it in.")),
    }  # fmt: skip
    table = table_of(["a", "b", "c", "d"], "a", cells)

    standing = standing_of(table, {"price": (None, 1.2)})

    assert [one.all_in_all for one in standing] == [Kept.YES, Kept.NOT_SURE, Kept.NO, Kept.GAP]


def test_the_demonstration_fills_most_of_the_table_and_each_gap_says_what_to_do(tmp_path: Path) -> None:
    with a_demonstration(tmp_path / "book") as book:
        reading = read_materials(book)
        table = reading.table

        assert table.media == ("peat mix", "coir", "plant-fibre mat")
        assert table.trusted == "peat mix"
        assert set(table.cells) == {(row.key, medium) for row in ROWS for medium in table.media}
        assert 10 < table.gaps < len(table.cells) / 2
        assert all(cell.gap or cell.n for cell in table.cells.values())
        mat = table.cell("footprint", "plant-fibre mat")
        assert mat.difference is not None
        assert mat.difference.high is not None
        assert mat.difference.high < 0
        assert any("no certified assessment" in note for note in mat.notes)
        assert table.cell("half gone", "plant-fibre mat").value == pytest.approx(13.9, abs=0.5)
        assert [one.test.medium for one in reading.due[:1]] == ["plant-fibre mat"]


# --- kept in the book


def a_book(tmp_path: Path) -> Book:
    book = an_empty_book(tmp_path / "book")
    book.add_tray(a_tray())
    return book


def test_a_test_its_readings_and_a_factor_are_kept_and_taken_back(tmp_path: Path) -> None:
    with a_book(tmp_path) as book:
        test = book.begin_test(
            NewBenchTest(
                kind=BenchKind.WETTING, medium="coir", begun_at=NOON, tray_type="10 x 20 inch",
                seating="in the tray", watering="bottom",
            )
        )  # fmt: skip
        book.add_readings([step_reading(book.bench_test(test), steps_of(BenchKind.WETTING)[0], 640.0, NOON)])
        factor = Factor(
            name="price", value=1.0, low=0.9, high=1.1, unit="/tray", source="bill", year=2026,
            medium="coir", who="A", entered_at=NOON,
        )  # fmt: skip
        book.set_factor(factor)

        assert book.factors() == (factor,)
        assert [one.note for one in book.test_readings()[test]] == ["dry"]
        book.put_back_factor("price", "coir")
        assert book.factors() == ()
        book.undo()
        assert book.factors() == (factor,)
        book.delete_test(test)
        assert book.bench_tests() == ()
        assert book.test_readings() == {}
        book.undo()
        assert [one.note for one in book.test_readings()[test]] == ["dry"]


def test_a_factor_without_a_range_is_not_kept(tmp_path: Path) -> None:
    with a_book(tmp_path) as book:
        factor = Factor(
            name="price", value=1.0, low=None, high=None, unit="/tray", source="bill", medium="coir"
        )
        with pytest.raises(ImpossibleFactor, match="without a range"):
            book.set_factor(factor)

        assert book.factors() == ()


def test_photographs_of_the_heap_are_kept_once_beside_their_test(tmp_path: Path) -> None:
    picture = tmp_path / "heap.jpg"
    picture.write_bytes(b"a picture of a heap")
    with a_book(tmp_path) as book:
        test = book.begin_test(NewBenchTest(kind=BenchKind.BREAKDOWN, medium="coir", begun_at=NOON))

        assert book.keep_heap_photos(test, [picture, picture], NOON) == 1
        assert book.keep_heap_photos(test, [picture], NOON) == 0
        other = tmp_path / "other.jpg"
        other.write_bytes(b"another")
        with pytest.raises(PhotoGone, match=r"gone\.jpg cannot be read, and none"):
            book.keep_heap_photos(test, [other, tmp_path / "gone.jpg"], NOON)
        assert len(book.heap_photos(test)) == 1

        (kept,) = book.heap_photos(test)
        assert book.heap_photo_path(kept).read_bytes() == picture.read_bytes()


def test_a_tray_that_is_cut_twice_has_the_yield_of_both_cuts(tmp_path: Path) -> None:
    with a_book(tmp_path) as book:
        tray = book.trays()[0].id
        first = {ReadingKind.FRESH_MASS: 150.0, ReadingKind.SWEEPINGS: 20.0, ReadingKind.CUT_QUALITY: 5.0}
        again = {ReadingKind.FRESH_MASS: 100.0, ReadingKind.SWEEPINGS: 30.0, ReadingKind.CUT_QUALITY: 4.0}
        book.add_readings(
            [
                NewReading(kind=kind, value=value, taken_at=at, tray_id=tray)
                for at, noted in ((NOON, first), (NOON + 100 * HOUR, again))
                for kind, value in noted.items()
            ]
        )
        peat = Factor(name="coir", value=0.25, low=0.25, high=0.25, unit="kg/tray", source="scale",
                      medium="coir", entered_at=NOON)  # fmt: skip
        book.set_factor(peat)
        book.set_factor(replace(peat, name="coir made", value=1.0, low=1.0, high=1.0, unit="kg CO2e/kg"))

        table = read_materials(book).table

        assert table.cell("footprint by kg", "coir").value == pytest.approx(
            1.0
        )  # 0.25 kg CO2e a 0.25 kg of cut
        assert table.cell("footprint by kg", "coir").low is None  # one tray tells no interval
        assert table.cell("sweepings", "coir").value == 50.0
        assert table.cell("cut quality", "coir").value == 4.5


def test_shelf_life_and_taste_of_the_cut_stand_beside_its_quality(tmp_path: Path) -> None:
    with a_book(tmp_path) as book:
        before = read_materials(book).table
        assert before.cell("shelf life", "coir").value is None
        assert "how many days the cut" in str(before.cell("shelf life", "coir").gap)

        tray = book.trays()[0]
        book.add_readings(
            [
                NewReading(kind=kind, value=value, taken_at=NOON, tray_id=tray.id)
                for kind, value in ((ReadingKind.SHELF_LIFE, 9.0), (ReadingKind.TASTE, 4.0))
            ]
        )

        table = read_materials(book).table
        assert (table.cell("shelf life", "coir").value, table.cell("shelf life", "coir").n) == (9.0, 1)
        assert table.cell("taste", "coir").value == 4.0


def test_a_probe_in_the_medium_and_minutes_of_care_stand_beside_the_rest(tmp_path: Path) -> None:
    with an_empty_book(tmp_path / "book") as book:
        one, other = book.add_trays([a_tray("A1", medium="coir"), a_tray("A2", medium="coir")])
        sown = book.tray(one).sown_at
        assert read_materials(book).table.cell("root warmth", "coir").gap is not None
        probe, labour = ReadingKind.MEDIUM_TEMPERATURE, ReadingKind.LABOUR
        told = ((one, probe, 16.0, 2), (one, probe, 18.0, 3), (other, probe, 19.0, 3), (one, labour, 1.5, 4),
                (one, labour, 2.0, 5))  # fmt: skip
        book.add_readings(
            [
                NewReading(kind=kind, value=value, taken_at=sown + timedelta(days=day), tray_id=tray)
                for tray, kind, value, day in told
            ]
        )

        table = read_materials(book).table

        warm, care = table.cell("root warmth", "coir"), table.cell("care", "coir")
        assert (warm.value, warm.n) == (18.0, 2)  # 17 and 19: a tray counts once
        assert "read together" in str(warm.notes[0])
        assert (care.value, care.n) == (3.5, 1)
        assert table.cell("cold nights", "coir").value is None  # a probe in the morning is no night


def test_limits_and_trays_a_week_are_kept(tmp_path: Path) -> None:
    with a_book(tmp_path) as book:
        book.set_limits({"price": (None, 1.2)})
        book.set_trays_a_week(40)

        assert book.limits() == {"price": (None, 1.2)}
        assert book.trays_a_week() == 40
