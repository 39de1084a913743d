"""A report tells under which conditions the media were compared, what differed and what nobody noted."""

from collections import Counter
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

from data.events import EventKind
from data.plan.blocks import ShelfPlaces
from data.readings import NewReading, ReadingKind
from data.records import Tray
from data.report.content import Block, Grid, Heading, Paragraph
from data.report.reading import read_report
from data.trial import CropPlan, Factor
from data.verdict.alike import Value
from data.verdict.conditionwords import had_words
from tests.data.plans import MEDIA
from tests.data.trialrack import EVEN, TRIAL, Rack

CROPS = tuple(CropPlan(name=name, read_on_day=9) for name in ("broccoli", "radish"))
HEADING = "How the trays were grown"


def section(rack: Rack, *, short: bool = False) -> list[Block]:
    """The blocks below the heading."""
    blocks = read_report(rack.book, short=short).blocks
    at = next(n for n, one in enumerate(blocks) if isinstance(one, Heading) and one.text == HEADING)
    rest = blocks[at + 1 :]
    end = next(n for n, one in enumerate(rest) if isinstance(one, Heading))
    return list(rest[:end])


def words(rack: Rack, *, short: bool = False) -> str:
    return "\n".join(str(one.text) for one in section(rack, short=short) if isinstance(one, Paragraph))


def rows(rack: Rack, grid: str, *, short: bool = False) -> dict[str, tuple[str, ...]]:
    found = [one for one in section(rack, short=short) if isinstance(one, Grid) and one.name == grid]
    return {row[0]: row[1:] for one in found for row in one.rows}


ALIKE, NOT_ALIKE, AIR = "Alike for all that is compared", "Not alike", "Air, medium and water"


def set_all(rack: Rack, **said: object) -> None:
    for tray in rack.trays:
        rack.book.edit_tray(tray.id, **said)


def test_what_all_trays_had_stands_once_and_what_nobody_noted_is_named(rack: Rack) -> None:
    sown = rack.trays[0].sown_at
    set_all(rack, stacked=True, blackout_from=sown, blackout_to=sown + timedelta(days=2.5), light="LED")

    alike = rows(rack, ALIKE)

    assert alike["watering"] == ("bottom",)
    assert alike["stacked"] == ("yes",)
    assert alike["blackout"] == ("2.5 days",)
    assert alike["light"] == ("LED",)
    assert rows(rack, NOT_ALIKE) == {}
    assert (
        "Not noted of any tray: seed lot, dry seed a tray, seed soaked, heat mat, temperature of the air"
        in (words(rack))
    )
    assert "light" not in words(rack)


def test_a_shelf_that_has_as_many_trays_of_each_medium_is_alike(rack: Rack) -> None:
    names = sorted({tray.shelf for tray in rack.trays})
    assert len(names) > 1
    assert rows(rack, ALIKE)["shelf"] == (f"{', '.join(names)} (as many trays of each)",)

    rack.book.edit_tray(rack.tray("coir").id, shelf="Window")

    assert "shelf" not in rows(rack, ALIKE)
    assert "Window (1)" in rows(rack, NOT_ALIKE)["shelf"][1]
    assert "the plan does not vary it: shelf." in words(rack)  # its block mates stand elsewhere


def test_what_differs_between_media_and_is_not_planned_is_a_caution(rack: Rack) -> None:
    for tray in rack.trays:
        if tray.medium == "fibre mat":
            rack.book.edit_tray(tray.id, watering="top", sowing_rate_g=20.0)
        else:
            rack.book.edit_tray(tray.id, sowing_rate_g=18.0)

    found = rows(rack, NOT_ALIKE)

    assert found == {"dry seed a tray": ("18 g", "18 g", "20 g"), "watering": ("bottom", "bottom", "top")}
    assert "the plan does not vary it: dry seed a tray, watering." in words(rack)
    mats = ", ".join(tray.code for tray in rack.trays if tray.medium == "fibre mat")
    assert f"Planned for all trays: watering: bottom. These had something else: {mats}." in words(rack)
    assert "the plan does not vary it" in words(rack, short=True)  # a customer has to know it as well


def test_media_that_differ_the_same_way_round_in_two_crops_are_not_evened_out(tmp_path: Path) -> None:
    rack = Rack(tmp_path, crops=CROPS)
    for tray in rack.trays:
        first = (tray.crop == "broccoli") == (tray.medium == "coir")
        rack.book.edit_tray(tray.id, light="lamp" if first else "window")

    found = rows(rack, NOT_ALIKE)

    assert found["light: broccoli"] == ("window", "lamp", "window")
    assert found["light: radish"] == ("lamp", "window", "lamp")
    assert "the plan does not vary it: light." in words(rack)
    rack.book.close()


def test_a_medium_that_lacks_a_tray_in_one_block_is_no_reason_to_doubt_shelf_and_day(tmp_path: Path) -> None:
    rack = Rack(tmp_path)
    lacks = rack.tray("coir")
    rack.book.edit_tray(lacks.id, trial=None, block=None)

    assert "coir" not in {tray.medium for tray in rack.trays if tray.block == lacks.block}
    assert "shelf" in rows(rack, NOT_ALIKE)  # it is shown, and the verdict compares within blocks
    assert "does not vary it" not in words(rack)
    rack.book.close()


def test_of_very_many_trays_that_left_the_plan_the_first_are_named(tmp_path: Path) -> None:
    shelves = tuple(ShelfPlaces(name=name, places=6) for name in "ABCDEFGHIJ")
    rack = Rack(tmp_path, blocks=10, shelves=shelves)
    set_all(rack, watering="top")

    assert len(rack.trays) == 30
    assert "and 6 more." in words(rack)
    rack.book.close()


def test_noted_of_some_trays_is_not_taken_for_all(rack: Rack) -> None:
    rack.book.edit_tray(rack.tray("coir").id, heat_mat=False)

    assert rows(rack, NOT_ALIKE)["heat mat"] == ("not noted", "not noted (3), no (1)", "not noted")
    assert "Noted of some trays only: heat mat." in words(rack)
    assert "does not vary it" not in words(rack)


def test_what_one_crop_had_and_nobody_noted_of_the_other_is_no_difference_of_media(tmp_path: Path) -> None:
    crops = (replace(CROPS[0], blackout_days=3.0), CROPS[1])
    rack = Rack(tmp_path, crops=crops)

    assert rows(rack, NOT_ALIKE) == {}
    assert set(rows(rack, ALIKE)["blackout"][0].split(" / ")) == {"broccoli 3 days", "radish not noted"}
    assert "Noted of some trays only" not in words(rack)
    rack.book.close()


def test_trays_that_were_uncovered_on_one_walk_had_one_blackout(tmp_path: Path) -> None:
    rack = Rack(tmp_path)
    for number, tray in enumerate(rack.trays):
        at = tray.sown_at + timedelta(days=2, minutes=2 * number - 80)  # 1.94 to 1.96 days
        rack.book.add_event([tray.id], EventKind.UNCOVERED, at)

    assert rows(rack, ALIKE)["blackout"] == ("2 days",)


def test_a_crop_planned_without_blackout_had_none_and_a_tray_that_was_covered_is_named(
    tmp_path: Path,
) -> None:
    rack = Rack(tmp_path, crops=(replace(CROPS[0], blackout_days=0.0),))
    assert rows(rack, ALIKE)["blackout"] == ("no",)

    covered = rack.tray("coir")
    dark = {"blackout_from": covered.sown_at, "blackout_to": covered.sown_at + timedelta(days=3)}
    rack.book.edit_tray(covered.id, **dark)

    assert rows(rack, NOT_ALIKE)["blackout"] == ("no", "no (3), 3 days (1)", "no")
    assert "does not vary it: blackout." in words(rack)
    rack.book.close()


def test_what_the_plan_varies_is_shown_and_no_caution(tmp_path: Path) -> None:
    feed = Factor(name="feed", levels=("none", "weekly"))
    rack = Rack(tmp_path, factors=(MEDIA, feed), same={"watering": "bottom"})

    assert set(rows(rack, NOT_ALIKE)["feed"]) == {"none", "weekly"}
    assert "does not vary it" not in words(rack)
    rack.book.close()


def test_air_of_the_shelf_and_water_of_the_tray_count_until_the_day_that_is_read(rack: Rack) -> None:
    shelves = {tray.shelf for tray in rack.trays}
    sown = rack.trays[0].sown_at
    air = [
        NewReading(
            kind=ReadingKind.AIR_TEMPERATURE, value=value, taken_at=sown + timedelta(days=day), shelf=one
        )
        for one in shelves
        for day, value in ((1, 18.0), (3, 24.0), (40, 60.0))  # the last one is of a later tray
    ]
    rack.book.add_readings([*air, _water(rack.tray("coir"), 200, 2), _water(rack.tray("coir"), 300, 4)])

    found = rows(rack, AIR)

    assert found["temperature of the air, °C"] == ("21 (18 to 24)",) * 3
    assert found["water given to a tray, ml"] == ("not noted", "500 (500 to 500), 1 of 4 trays", "not noted")
    assert "humidity of the air" in words(rack)


def test_a_probe_in_the_medium_is_told_by_medium_and_never_taken_from_the_shelf(rack: Rack) -> None:
    assert "temperature of the medium" in words(rack)  # among what nobody noted
    kind = ReadingKind.MEDIUM_TEMPERATURE
    mat = [tray for tray in rack.trays if tray.medium == "fibre mat"][:2]
    probed = [
        NewReading(kind=kind, value=value, taken_at=tray.sown_at + timedelta(days=day), tray_id=tray.id)
        for tray in mat
        for day, value in ((2, 15.5), (3, 17.5))
    ]
    shelf = NewReading(kind=kind, value=30.0, taken_at=mat[0].sown_at + timedelta(days=2), shelf=mat[0].shelf)
    rack.book.add_readings([*probed, shelf])

    found = rows(rack, AIR)

    told = found["temperature of the medium, °C"]
    assert told == ("not noted", "not noted", "16.5 (15.5 to 17.5), 2 of 4 trays")
    assert "temperature of the medium" not in words(rack)


def test_the_air_of_a_shelf_is_a_trays_from_its_move_on_alone(rack: Rack) -> None:
    coir = [tray for tray in rack.trays if tray.medium == "coir"]
    kind = ReadingKind.AIR_TEMPERATURE
    sown = coir[0].sown_at
    rack.book.add_readings(
        [
            NewReading(kind=kind, value=value, taken_at=sown + timedelta(days=day), shelf="warm")
            for day, value in ((1, 30.0), (5, 24.0))
        ]
    )
    rack.today((sown + timedelta(days=4)).date().isoformat())
    for tray in coir:
        rack.book.edit_tray(tray.id, shelf="warm")
    rack.today("2026-04-30")

    assert rows(rack, AIR)["temperature of the air, °C"] == ("not noted", "24 (24 to 24)", "not noted")


def test_no_feed_is_no_feed_in_whatever_words(rack: Rack) -> None:
    for tray, words in zip(rack.trays, ("none", "ohne", "keine", "plain water"), strict=False):
        rack.book.edit_tray(tray.id, feed=words)

    assert rows(rack, ALIKE)["feed"] == ("none",)


def test_a_feed_that_nobody_gave_is_not_missed(rack: Rack) -> None:
    assert "feed" not in words(rack)  # the plan says: none

    set_all(rack, feed="seaweed")

    assert "feed given to a tray" in words(rack)


def test_the_report_for_a_customer_says_in_a_sentence_what_was_alike(rack: Rack) -> None:
    assert rows(rack, ALIKE, short=True) == {}
    assert "watering: bottom; feed: none;" in words(rack, short=True)
    assert "Not noted of any tray" in words(rack, short=True)


def test_the_plans_own_settings_stand_among_what_was_fixed(rack: Rack) -> None:
    blocks = read_report(rack.book).blocks
    fixed = next(one for one in blocks if isinstance(one, Grid) and one.name == "What was fixed")
    assert ("The same for all", "watering: bottom, feed: none") in fixed.rows


def test_without_a_plan_media_are_held_against_each_other_and_no_plan_is_blamed(tmp_path: Path) -> None:
    rack = Rack(tmp_path)
    with rack.book.writing() as db:
        db.execute("DELETE FROM draw")
        db.execute("DELETE FROM plan")
    rack.shoot_all(EVEN)
    rack.book.edit_tray(rack.tray("coir").id, watering="top")

    assert rows(rack, NOT_ALIKE)["watering"] != ()
    assert "no plan was made to vary it: watering." in words(rack)
    assert rack.book.trials() == (TRIAL,)
    rack.book.close()


def _water(tray: Tray, ml: float, day: int) -> NewReading:
    at = tray.sown_at + timedelta(days=day)
    return NewReading(kind=ReadingKind.WATER, value=ml, taken_at=at, tray_id=tray.id)


def test_of_very_many_values_the_most_usual_are_named_and_the_others_counted(tmp_path: Path) -> None:
    shelves = tuple(ShelfPlaces(name=name, places=6) for name in "ABCDEFGHIJ")
    rack = Rack(tmp_path, blocks=10, shelves=shelves)
    for number, tray in enumerate(rack.trays):
        rack.book.edit_tray(tray.id, seed_lot=f"L{number}")

    lots = rows(rack, NOT_ALIKE)["seed lot"][0]
    assert lots.count("L") == 6
    assert lots.endswith(", 4 others (4)")
    rack.book.close()


def test_trays_of_one_medium_are_told_and_not_compared(tmp_path: Path) -> None:
    rack = Rack(tmp_path)
    for tray in rack.trays:
        if tray.medium != "coir":
            rack.book.edit_tray(tray.id, trial=None, block=None)
    coir = rack.trays
    rack.book.edit_tray(coir[0].id, light="lamp")
    rack.book.edit_tray(coir[1].id, light="window")

    had = rows(rack, "What all trays had")

    assert rows(rack, ALIKE) == {}
    assert had["watering"] == ("bottom",)
    assert "as many trays of each" not in had["shelf"][0]
    assert rows(rack, NOT_ALIKE)["light"] == ("not noted (2), lamp (1), window (1)",)
    assert "A difference can come" not in words(rack)
    assert "What all trays had \u2013 " in words(rack, short=True)

    for tray in coir[1:]:
        rack.book.edit_tray(tray.id, trial=None, block=None)
    (head,) = [one.head for one in section(rack) if isinstance(one, Grid)]
    assert head[1] == "As noted of 1 tray"
    rack.book.close()


def test_a_gap_is_named_though_other_values_are_only_counted() -> None:
    had: Counter[Value | None] = Counter({f"L{n}": 2 for n in range(12)})
    had[None] = 1

    assert str(had_words("seed lot", had)).startswith("not noted (1), L0 (2)")
    assert str(had_words("seed lot", had)).endswith("7 others (14)")


def test_report_and_verdict_doubt_by_the_same_trays_those_with_a_number(tmp_path: Path) -> None:
    """A tray that died and was watered otherwise says nothing of those that are compared."""
    rack = Rack(tmp_path)
    dead = rack.tray("coir")
    rack.shoot_all(EVEN, leave=[dead.code])
    rack.book.edit_tray(dead.id, watering="top")

    assert [one.apart for one in rack.verdicts()] == [()]
    assert "does not vary it" not in words(rack)
    assert rows(rack, ALIKE)["watering"] == ("bottom",)
    assert (
        f"Told of the trays that have a number, for only these are compared; without one: {dead.code}."
        in (words(rack))
    )
    rack.book.close()


def test_before_any_tray_has_a_number_report_and_verdict_doubt_by_all(rack: Rack) -> None:
    """While that can still be mended both say so."""
    rack.book.edit_tray(rack.tray("coir").id, watering="top")

    assert [one.apart for one in rack.verdicts()] == [("watering",)]
    assert "does not vary it: watering." in words(rack)
    assert "without one" not in words(rack)


def test_what_any_measure_doubts_is_shown_in_the_report(tmp_path: Path) -> None:
    """Photographed were all, half of each medium under a lamp; weighed were other halves of each medium."""
    rack = Rack(tmp_path)
    rack.shoot_all(EVEN)
    for tray in rack.trays:
        lamp = tray.block in sorted({one.block or "" for one in rack.trays})[:2]
        rack.book.edit_tray(tray.id, light="lamp" if lamp else "window")
    weighed = [one for one in rack.trays if (one.medium == "coir") == (one.light == "window")]
    rack.book.add_readings([_cut(tray, 200.0 + n) for n, tray in enumerate(weighed)])

    for tray in rack.trays:
        rack.book.edit_tray(tray.id, block=None)
    score, by_mass = rack.verdicts()

    assert ("light" in score.apart, "light" in by_mass.apart) == (False, True)
    assert rows(rack, NOT_ALIKE)["light"] == ("lamp (2), window (2)",) * 3
    assert "does not vary it: light" in words(rack)
    rack.book.close()


def _cut(tray: Tray, grams: float) -> NewReading:
    at = tray.sown_at + timedelta(days=10)
    return NewReading(kind=ReadingKind.FRESH_MASS, value=grams, taken_at=at, tray_id=tray.id)
