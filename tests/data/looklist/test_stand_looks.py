"""The signs of a stand: thin sides, a patch that went, paling, patchiness, ripeness; and how urgent."""

from dataclasses import replace
from datetime import date, datetime, timedelta
from itertools import product

import pytest

from data.growing.conditions import Crop, Medium
from data.look import Look, LookKind, Urgency
from data.looklist.places import COLUMNS, ROWS, as_now, bare_share, lacks, lost_patch
from data.looklist.urgency import combined
from data.numbers import TrayId
from data.records import DayNumbers, EarlierDay, Tray
from data.watch import Morning, looks
from tests.data.builders import a_kept_tray, numbers

TODAY = date(2026, 3, 8)
TRAYS = [a_kept_tray(n) for n in (1, 2, 3, 4)]


def packed(cells: list[float]) -> bytes:
    return b"".join(round(100 * value).to_bytes(2, "little") for value in cells)


def even(level: float = 90.0, **at: float) -> list[float]:
    """Cells of one level, but for those named by row and column: `r0c11=20`."""
    cells = [level] * (ROWS * COLUMNS)
    for place, value in at.items():
        row, column = place[1:].split("c")
        cells[int(row) * COLUMNS + int(column)] = value
    return cells


def side(name: str, level: float, middle: float = 90.0) -> bytes:
    """A tray that is `level` on one side and `middle` elsewhere."""
    cells = even(middle)
    for n in range(ROWS * COLUMNS):
        row, column = divmod(n, COLUMNS)
        if {"far": row == 0, "near": row == 5, "left": column == 0, "right": column == 11}[name]:
            cells[n] = level
    return packed(cells)


def rack(first: dict[int, dict[str, object]], **mates: object) -> list[DayNumbers]:
    """Tray 1 as told by day, three mates as usual on the same days."""
    found = [numbers(1, day, **special) for day, special in first.items()]
    return found + [
        numbers(tray, day, **({"cells": packed(even())} | mates)) for tray in (2, 3, 4) for day in first
    ]


def told(photos: list[DayNumbers], trays: list[Tray] = TRAYS, **more: object) -> list[Look]:
    ordered = sorted(photos, key=lambda n: (n.tray_id, n.taken_at))
    return list(looks(Morning(today=TODAY, trays=trays, numbers=ordered, **more)))


def only(list_: list[Look]) -> Look:
    (look,) = list_
    return look


@pytest.mark.parametrize(
    ("kind", "said", "unsaid"),
    [
        ("mat", "mat", "shrunk"),
        ("loose", "shrunk", "mat"),
        ("", "medium", "mat"),
        ("felt", "medium", "mat"),
        ("other", "medium", "mat"),
    ],
)
def test_what_to_do_at_a_thin_edge_fits_the_kind_of_medium(kind: str, said: str, unsaid: str) -> None:
    media = {TRAYS[0].medium: Medium(name=TRAYS[0].medium, kind=kind)}

    look = only(told(rack({day: {"edge_deficit": 30.0} for day in (7, 8)}), media=media))

    assert look.what is LookKind.EDGE
    assert said in look.first
    assert unsaid not in look.first
    assert look.asks_kind_of == ("" if kind else TRAYS[0].medium)


# --- cells


@pytest.mark.parametrize("name", ["far", "near", "left", "right"])
def test_a_side_lacks_what_it_is_thinner_than_the_middle(name: str) -> None:
    found = lacks(side(name, 50.0))

    assert found[name] == pytest.approx(40.0)
    assert max(found, key=lambda place: found[place]) == name


@pytest.mark.parametrize(
    ("name", "rows", "columns"),
    [
        ("far left", range(3), range(3)),
        ("far right", range(3), range(9, 12)),
        ("near left", range(3, 6), range(3)),
        ("near right", range(3, 6), range(9, 12)),
    ],
)
def test_each_of_the_nine_cells_of_a_corner_counts_as_much(name: str, rows: range, columns: range) -> None:
    for row, column in product(range(ROWS), range(COLUMNS)):
        counts = row in rows and column in columns

        assert lacks(packed(even(**{f"r{row}c{column}": 0.0})))[name] == pytest.approx(
            10.0 if counts else 0.0
        )


def test_bare_cells_are_those_with_less_than_a_third_of_the_middle_one() -> None:
    assert bare_share(packed(even())) == 0
    assert bare_share(packed(even(60.0, r0c0=19.0, r5c11=21.0))) == pytest.approx(100 / 72)


def test_a_patch_is_connected_cells_and_a_tray_that_was_turned_round_has_lost_none() -> None:
    gone = even(90.0, r0c0=10.0, r0c1=10.0, r1c0=10.0, r5c11=10.0)

    assert lost_patch(packed(even()), (packed(gone), packed(gone)), 25.0) == (0, 1, 12)
    thin_left = side("left", 20.0)
    assert lost_patch(thin_left, (side("right", 20.0), side("right", 20.0)), 25.0) == ()


# --- signs


@pytest.mark.parametrize("name", ["far", "near", "left", "right"])
def test_a_dry_side_is_named_and_one_that_grows_is_for_today(name: str) -> None:
    growing = rack({day: {"cells": side(name, 90.0 - dry)} for day, dry in ((6, 14.0), (7, 18.0), (8, 24.0))})
    look = only(told(growing))

    assert (look.what, look.urgency) == (LookKind.EDGE, Urgency.TODAY)
    assert look.sentence == (
        f"The {name} side is 24 points thinner than the middle, and was 14 on 6 March: it grows."
    )
    assert look.why_urgent == "Today: it grows from day to day, and what has dried out comes back slowly."

    stays = only(told(rack({day: {"cells": side(name, 70.0)} for day in (6, 7, 8)})))
    assert stays.urgency is Urgency.SOON


def test_a_thin_side_of_a_tray_that_is_turned_every_day_is_told_where_it_is_now() -> None:
    """Turned end for end so that all of it gets the light: left and right change places each day."""
    turned = {7: side("left", 62.0), 8: side("right", 60.0)}

    look = only(told(rack({day: {"cells": cells} for day, cells in turned.items()})))

    assert look.what is LookKind.EDGE
    assert look.sentence == "The right side is 30 points thinner than the middle (28 on 7 March)."


def test_two_sides_that_are_thin_on_one_day_each_are_no_turned_tray() -> None:
    """The far side one day, a side at its end the next: no turn brings one to where the other is."""
    cells = {7: side("far", 60.0), 8: side("right", 60.0)}

    assert told(rack({day: {"cells": one} for day, one in cells.items()})) == []


def test_an_earlier_day_is_turned_round_only_where_that_fits_clearly_better() -> None:
    left, right, whole = side("left", 60.0), side("right", 60.0), packed(even())

    assert as_now(left, right) == right
    assert as_now(left, left) == left
    assert as_now(whole, right) == whole
    both = packed(even(90.0, r0c0=20.0, r5c11=20.0))
    assert as_now(both, both) == both


def test_a_patch_that_went_is_told_on_a_tray_that_is_turned_every_day() -> None:
    hole = packed(even(90.0, **{f"r{r}c{c}": 20.0 for r in (1, 2) for c in (2, 3, 4)}))
    other = packed(even(90.0, **{f"r{r}c{c}": 20.0 for r in (3, 4) for c in (7, 8, 9)}))
    whole = packed(even())
    days = {5: whole, 6: whole, 7: hole, 8: other}

    assert [one.what for one in vanished({day: {"cells": cells} for day, cells in days.items()})] == [
        LookKind.VANISHED
    ]


def test_one_corner_that_is_far_thinner_than_the_edge_is_named_in_its_place() -> None:
    corner = packed(even(90.0, **{f"r{r}c{c}": 20.0 for r in (0, 1, 2) for c in (9, 10, 11)}))

    named = only(told(rack({day: {"cells": corner, "edge_deficit": 17.0} for day in (7, 8)})))
    assert named.sentence.startswith("The far right corner is 70 points thinner")
    round_ = only(told(rack({day: {"cells": corner, "edge_deficit": 60.0} for day in (7, 8)})))
    assert round_.sentence.startswith("The edge is 60 points thinner")


def test_a_side_that_all_mates_have_thin_is_no_news_unless_it_is_very_thin() -> None:
    def all_alike(level: float) -> list[DayNumbers]:
        cells = side("near", level)
        return rack({day: {"cells": cells} for day in (7, 8)}, cells=cells)

    assert told(all_alike(70.0)) == []
    assert {look.what for look in told(all_alike(40.0))} == {LookKind.EDGE}


@pytest.mark.parametrize(("lack", "is_told"), [(28.0, False), (32.0, True)])
def test_a_side_thirty_points_thinner_is_told_whatever_its_mates_do(lack: float, is_told: bool) -> None:
    cells = side("near", 90.0 - lack)

    assert bool(told(rack({day: {"cells": cells} for day in (7, 8)}, cells=cells))) is is_told


@pytest.mark.parametrize(("mates", "is_told"), [(3.0, True), (6.0, True), (8.0, False), (15.0, False)])
def test_a_thin_edge_is_held_against_that_of_the_mates(mates: float, is_told: bool) -> None:
    photos = rack({day: {"edge_deficit": 15.0} for day in (7, 8)}, edge_deficit=mates)

    assert bool(told([one for one in photos if one.tray_id == 1], TRAYS[:1]))  # none to be held against
    assert any(look.tray_id == 1 for look in told(photos)) is is_told


@pytest.mark.parametrize(
    ("course", "is_told"),
    [
        ((30.0, 28.0), True),  # closes, but not for eight days
        ((30.0, 20.0), False),  # closed within the day
        ((16.0, 14.0), False),
        ((16.0, 15.5), True),  # hardly closes
    ],
)
def test_an_edge_that_closes_within_three_days_is_left_alone(
    course: tuple[float, float], is_told: bool
) -> None:
    photos = rack({day: {"edge_deficit": lack} for day, lack in zip((7, 8), course, strict=True)})

    assert bool(told(photos)) is is_told


@pytest.mark.parametrize(
    ("course", "urgency"),
    [
        ((15.0, 17.0, 19.0), Urgency.TODAY),
        ((15.0, 24.0, 22.0), Urgency.SOON),  # larger than three days ago, and smaller than yesterday
        ((22.0, 16.0, 20.0), Urgency.SOON),
        ((15.0, 17.0, 18.0, 19.0), Urgency.SOON),  # by 2 points within three days
    ],
)
def test_an_edge_is_for_today_where_it_grew_within_three_days_and_not_shrank_since_yesterday(
    course: tuple[float, ...], urgency: Urgency
) -> None:
    days = range(9 - len(course), 9)
    photos = rack({day: {"edge_deficit": lack} for day, lack in zip(days, course, strict=True)})

    assert [(look.what, look.urgency) for look in told(photos)] == [(LookKind.EDGE, urgency)]


@pytest.mark.parametrize(("mine", "is_told"), [(7.0, False), (8.0, True)])
def test_gaps_are_held_against_those_of_the_mates(mine: float, is_told: bool) -> None:
    assert bool(told(rack({day: {"gap_share": mine} for day in (7, 8)}, gap_share=5.0))) is is_told


def test_a_patch_that_lost_its_canopy_on_two_days_is_urgent_and_on_one_day_is_not_told() -> None:
    hole = packed(even(90.0, **{f"r{r}c{c}": 20.0 for r in (2, 3) for c in (4, 5, 6)}))
    whole = packed(even())

    look = only(
        told(rack({5: {"cells": whole}, 6: {"cells": whole}, 7: {"cells": hole}, 8: {"cells": hole}}))
    )
    assert (look.what, look.urgency, look.since) == (LookKind.VANISHED, Urgency.NOW, date(2026, 3, 7))
    assert look.sentence == (
        "A patch of 8 % of the tray lost its canopy after 6 March, and lacks it on two days."
    )
    assert (
        told(rack({5: {"cells": whole}, 6: {"cells": whole}, 7: {"cells": whole}, 8: {"cells": hole}})) == []
    )


def vanished(first: dict[int, dict[str, object]]) -> list[Look]:
    """What is said of canopy that went, whatever else is said of the tray."""
    return [one for look in told(rack(first)) for one in (look, *look.also) if one.what is LookKind.VANISHED]


def covered(*coverage: float) -> dict[int, dict[str, object]]:
    """Coverage on the last days up to the 8th, of which no cells are known."""
    return {9 - len(coverage) + n: {"coverage": value} for n, value in enumerate(coverage)}


@pytest.mark.parametrize(
    ("had", "fall", "is_told"),
    [
        (85.0, 8.0, True), (85.0, 7.9, False),  # a closed stand
        (84.9, 12.0, True), (84.9, 11.9, False),  # one that is open is read less surely
        (30.0, 12.0, True), (29.9, 20.0, False),  # too little to be said to vanish
    ],
)  # fmt: skip
def test_from_which_fall_on_canopy_is_said_to_vanish(had: float, fall: float, is_told: bool) -> None:
    """The limits are common practice."""
    assert bool(vanished(covered(had, had, had - fall, had - fall))) is is_told
    assert not vanished(covered(had, had, had, had - fall))


def test_one_day_that_was_read_too_high_is_not_what_a_tray_had() -> None:
    assert not vanished(covered(99.0, 80.0, 80.0, 70.0, 70.0))


def test_a_fall_is_told_with_its_size_since_the_first_day_on_which_it_held() -> None:
    look = only(vanished(covered(90.0, 90.0, 78.0, 76.0, 74.0)))

    assert (look.since, look.size) == (date(2026, 3, 6), 16.0)
    assert look.sentence == (
        "Coverage fell from 90 % on 4 March to 74 %; two days running below what it was."
    )


def hole(cells: int, level: float) -> bytes:
    """A tray of 90 % whose first cells of a row in the middle have another level."""
    return packed(even(90.0, **{f"r2c{c}": level for c in range(3, 3 + cells)}))


@pytest.mark.parametrize(
    ("cells", "level", "before", "is_told"),
    [
        (4, 65.0, 90.0, True), (4, 65.1, 90.0, False), (3, 20.0, 90.0, False),
        (4, 20.0, 32.5, True), (4, 20.0, 32.4, False),  # the day before the last good one had it too
    ],
)  # fmt: skip
def test_from_which_patch_on_canopy_is_said_to_vanish(
    cells: int, level: float, before: float, is_told: bool
) -> None:
    """Four cells of 42 mm, a quarter of their canopy, half of that held two days before: common practice."""
    lost = {"cells": hole(cells, level)}
    days = {5: {"cells": hole(cells, before)}, 6: {"cells": packed(even())}, 7: lost, 8: lost}

    found = vanished(days)

    assert bool(found) is is_told
    assert all(look.size == pytest.approx(100 * 4 / 72) for look in found)


@pytest.mark.parametrize("unknown", [5, 6, 7, 8])
def test_a_patch_is_not_told_where_one_of_the_days_knows_no_cells(unknown: int) -> None:
    lost = {"cells": hole(4, 20.0)}
    days = {5: {"cells": packed(even())}, 6: {"cells": packed(even())}, 7: lost, 8: lost}

    assert vanished(days)
    assert not vanished(days | {unknown: {}})


def test_a_patch_that_is_back_on_the_next_day_was_one_bad_photo() -> None:
    whole = {"cells": packed(even())}

    assert not vanished({5: whole, 6: whole, 7: {"cells": hole(4, 20.0)}, 8: whole})


def test_a_patch_of_a_tray_that_was_hardly_up_is_not_said_to_vanish() -> None:
    enough = {"coverage": 30.0, "cells": packed(even())}
    lost = {"coverage": 29.0, "cells": hole(4, 20.0)}

    assert vanished({5: enough, 6: enough, 7: lost, 8: lost})
    assert not vanished({4: enough, 5: enough, 6: enough | {"coverage": 29.0}, 7: lost, 8: lost})


def green(*index: float, corrected: bool = True) -> dict[int, dict[str, object]]:
    """The dark green index on the last days up to the 8th."""
    return {
        9 - len(index) + n: {"dark_green": value, "corrected": corrected, "cells": packed(even())}
        for n, value in enumerate(index)
    }


def red(*lightness: float) -> dict[int, dict[str, object]]:
    """L* of a red crop, which has no dark green index, on the last days up to the 8th."""
    return {
        9 - len(lightness) + n: {"lightness": value, "corrected": True, "cells": packed(even())}
        for n, value in enumerate(lightness)
    }


def test_paling_is_told_against_the_trays_own_days() -> None:
    look = only(told(rack(green(0.63, 0.62, 0.56, 0.55), dark_green=0.62, corrected=True)))

    assert (look.what, look.urgency) == (LookKind.PALING, Urgency.SOON)
    assert look.sentence.startswith("The dark green colour index fell from 0.62 around 6 March to 0.55")


def test_paling_tells_the_numbers_and_the_photo_of_the_last_day_that_is_believed() -> None:
    shaded = green(0.63, 0.62, 0.56, 0.55, 0.20)
    shaded[8]["coverage"] = 60.0  # fell as no crop does, and may come back

    look = only(told(rack(shaded, dark_green=0.62, corrected=True)))

    assert "to 0.55, 0.07 more" in look.sentence
    assert look.since == date(2026, 3, 6)
    assert look.photo_id == next(n.photo_id for n in rack(shaded) if (n.tray_id, n.taken_at.day) == (1, 7))


@pytest.mark.parametrize(
    ("first", "is_told"),
    [
        (green(0.70, 0.70, 0.649, 0.649), True),
        (green(0.70, 0.70, 0.652, 0.652), False),
        (green(0.70, 0.70, 0.655, 0.60), False),  # on one day only
        (green(0.80, 0.80, 0.70, 0.66, 0.66, 0.62, 0.62), False),  # the last three days tell what it was
        (green(0.80, 0.70, 0.70, 0.66, 0.64, 0.64), True),
        (green(0.70, 0.60, 0.60), False),  # one day alone does not tell what it was
    ],
)
def test_from_which_fall_of_the_index_on_a_tray_is_said_to_pale(
    first: dict[int, dict[str, object]], is_told: bool
) -> None:
    """0.05 below the middle of the three closed days before, on two days running: common practice."""
    looks_ = told(rack(first, dark_green=0.7, corrected=True))

    assert bool(looks_) is is_told
    assert all(look.size == pytest.approx(100 * (0.7 - first[8]["dark_green"])) for look in looks_)


@pytest.mark.parametrize(("coverage", "is_told"), [(60.0, True), (59.9, False)])
@pytest.mark.parametrize("open_days", [(5, 6), (7,)])
def test_colour_is_asked_of_a_closed_stand(
    coverage: float, open_days: tuple[int, ...], is_told: bool
) -> None:
    pale = green(0.70, 0.70, 0.60, 0.60)
    for day in pale:
        pale[day]["coverage"] = coverage if day in open_days else 65.0

    assert bool(told(rack(pale, coverage=65.0, dark_green=0.7, corrected=True))) is is_told


@pytest.mark.parametrize(("now", "is_told"), [(48.0, True), (47.9, False)])
def test_from_which_lightness_on_a_red_crop_is_said_to_pale(now: float, is_told: bool) -> None:
    assert bool(told(rack(red(40.0, 40.0, now, now), lightness=40.0, corrected=True))) is is_told


def test_a_crop_that_has_a_green_index_is_not_judged_by_its_lightness() -> None:
    lit = red(40.0, 40.0, 55.0, 55.0)
    for day in lit.values():
        day["dark_green"] = 0.7

    assert told(rack(lit, lightness=40.0, dark_green=0.7, corrected=True)) == []


def test_a_tray_that_pales_alone_is_not_said_to_pale_more_than_its_mates() -> None:
    alone = [numbers(1, day, **said) for day, said in green(0.63, 0.62, 0.56, 0.55).items()]
    red_alone = [numbers(1, day, **said) for day, said in red(38.0, 40.0, 49.0, 50.0).items()]

    assert only(told(alone, TRAYS[:1])).sentence == (
        "The dark green colour index fell from 0.62 around 6 March to 0.55; no mates tell whether the light "
        "changed."
    )
    assert only(told(red_alone, TRAYS[:1])).sentence == (
        "The canopy grew lighter, from L* 39 around 6 March to 50; no mates tell whether the light changed."
    )


@pytest.mark.parametrize(
    "first",
    [green(0.63, 0.66, 0.62, 0.56, 0.55), red(38.0, 39.0, 40.0, 49.0, 50.0)],
    ids=["index", "lightness"],
)
def test_paling_names_the_last_day_before_it(first: dict[int, dict[str, object]]) -> None:
    look = only(told(rack(first, dark_green=0.62, lightness=40.0, corrected=True)))

    assert "around 6 March" in look.sentence


def test_a_fall_too_small_to_count_is_not_told_of_a_tray_without_mates() -> None:
    alone = [numbers(1, day, **said) for day, said in green(0.70, 0.70, 0.66, 0.66).items()]

    assert told(alone, TRAYS[:1]) == []


@pytest.mark.parametrize("uncorrected", [(5, 6), (7,), (8,)])
def test_colour_that_no_patch_set_right_tells_no_fall(uncorrected: tuple[int, ...]) -> None:
    pale = green(0.70, 0.70, 0.60, 0.60)
    assert told(rack(pale, dark_green=0.7, corrected=True))
    for day in uncorrected:
        pale[day]["corrected"] = False

    assert told(rack(pale, dark_green=0.7, corrected=True)) == []


def test_a_mate_that_was_not_photographed_today_tells_nothing_of_the_light() -> None:
    photos = rack(green(0.70, 0.70, 0.60, 0.60), dark_green=0.7, corrected=True)

    look = only(told([photo for photo in photos if photo.tray_id == 1 or photo.taken_at.day < 8]))

    assert "no mates tell" in look.sentence


def test_mates_scored_by_another_method_tell_nothing_of_the_light() -> None:
    photos = rack(green(0.70, 0.70, 0.60, 0.60), dark_green=0.7, corrected=True, method="older 1")

    assert "no mates tell" in only(told(photos)).sentence


def test_colours_by_another_method_are_not_what_a_tray_was_before() -> None:
    pale = green(0.70, 0.70, 0.60, 0.60)
    for day in (5, 6):
        pale[day]["method"] = "older 1"

    assert told(rack(pale, dark_green=0.7, corrected=True)) == []


def test_a_lamp_that_pales_all_trays_and_colours_without_a_patch_are_no_news() -> None:
    fading = green(0.63, 0.62, 0.56, 0.55)
    everywhere = [numbers(tray, day, **special) for tray in (1, 2, 3, 4) for day, special in fading.items()]
    assert told(everywhere) == []
    assert told(rack(green(0.63, 0.62, 0.56, 0.55, corrected=False))) == []


def test_a_red_crop_that_pales_is_told_by_its_lightness_and_one_that_darkens_is_not() -> None:
    look = only(told(rack(red(38.0, 40.0, 49.0, 50.0), lightness=40.0, corrected=True)))

    assert (look.what, look.urgency) == (LookKind.PALING, Urgency.SOON)
    assert look.sentence == (
        "The canopy grew lighter, from L* 39 around 6 March to 50, 11 more than its block mates."
    )
    assert told(rack(red(50.0, 50.0, 39.0, 38.0), lightness=40.0, corrected=True)) == []
    assert told(rack(red(38.0, 40.0, 45.0, 50.0), lightness=40.0, corrected=True)) == []  # 6 on one day


def test_a_lamp_that_makes_all_red_trays_lighter_is_no_news() -> None:
    lit = red(38.0, 40.0, 49.0, 50.0)

    assert told([numbers(tray, day, **said) for tray in (1, 2, 3, 4) for day, said in lit.items()]) == []


def test_a_tray_that_comes_up_patchy_is_told() -> None:
    bare = packed(even(40.0, **{f"r{r}c{c}": 2.0 for r in range(6) for c in (4, 5, 7)}))
    others = {"coverage": 45.0, "cells": packed(even(45.0))}
    photos = rack({day: {"coverage": 40.0, "cells": bare} for day in (7, 8)}, **others)

    look = only(told(photos))
    assert look.what is LookKind.PATCHY
    assert look.sentence.startswith("25 % of the tray is bare or nearly so")


def patchy(coverage: float, columns: int = 3) -> dict[str, object]:
    """As many columns bare, but for their ends at the edge, and all else even."""
    bare = {f"r{r}c{c}": 1.0 for r in range(1, ROWS - 1) for c in range(4, 4 + columns)}
    return {"coverage": coverage, "cells": packed(even(coverage, **bare))}


def of_patches(photos: list[DayNumbers]) -> list[Look]:
    return [one for look in told(photos) for one in (look, *look.also) if one.what is LookKind.PATCHY]


@pytest.mark.parametrize(
    ("mine", "mates", "is_told"), [(4, 0, True), (4, 1, True), (4, 2, False), (4, 4, False), (2, 0, False)]
)
def test_a_tray_is_patchy_where_far_more_of_it_is_bare_than_of_its_mates(
    mine: int, mates: int, is_told: bool
) -> None:
    """A column is 5.6 % of the tray; 12 points more than the mates have, and 15 % at least."""
    photos = rack({day: patchy(40.0, mine) for day in (7, 8)}, **patchy(40.0, mates))

    assert bool(of_patches(photos)) is is_told


@pytest.mark.parametrize(("coverage", "is_told"), [(14.0, False), (16.0, True), (69.0, True), (71.0, False)])
def test_patches_are_asked_for_from_the_first_canopy_until_it_closes(coverage: float, is_told: bool) -> None:
    photos = rack({day: patchy(coverage) for day in (7, 8)}, coverage=coverage, cells=packed(even(coverage)))

    assert bool(of_patches(photos)) is is_told


@pytest.mark.parametrize(
    ("lags", "is_told"),
    [
        ((7.0, 7.0), False),  # nearly too much on two days only
        ((7.0, 7.0, 7.0), False),
        ((8.5, 8.5, 8.5), True),  # nearly too much on three days
        ((7.0, 12.0), True),  # the one day makes up for the other
        ((4.0, 12.0), False),
        ((5.0, 5.0, 12.0), False),
        ((9.5, 9.5), True),
    ],
)
def test_a_lag_is_told_where_its_days_together_make_up_two_full_ones(
    lags: tuple[float, ...], is_told: bool
) -> None:
    """Nine points on each of two days are too much, or 90 % of that on each of three (common practice)."""
    days = range(9 - len(lags), 9)
    found = told(rack({day: {"coverage": 80.0 - lag} for day, lag in zip(days, lags, strict=True)}))

    assert [look.what for look in found] == ([LookKind.LAGGING] if is_told else [])


def test_where_all_mates_are_late_earlier_trays_of_the_crop_tell_it() -> None:
    earlier = [
        EarlierDay(crop="broccoli", day=day, method="plain 1", coverage=coverage)
        for day, coverage in ((6, 50.0), (7, 60.0))
        for _ in range(3)
    ]
    slow = [numbers(tray, day, coverage=20.0) for tray in (1, 2, 3, 4) for day in (7, 8)]

    assert told(slow) == []
    late = told(slow, earlier=earlier)
    assert [look.what for look in late] == [LookKind.LATE] * 4
    assert late[0].sentence.startswith(
        "Coverage 20 % on day 7; earlier trays of broccoli had 60 % at that age"
    )


def test_a_tray_without_mates_that_is_behind_earlier_ones_is_not_said_to_be_behind_mates() -> None:
    earlier = [
        EarlierDay(crop="broccoli", day=day, method="plain 1", coverage=coverage)
        for day, coverage in ((6, 75.0), (7, 80.0))
        for _ in range(3)
    ]

    def alone(coverage: float) -> Look:
        photos = [numbers(1, day, coverage=coverage) for day in (7, 8)]
        return only(told(photos, trays=[TRAYS[0]], earlier=earlier))

    far, near = alone(40.0), alone(62.0)
    assert [(one.what, one.urgency) for one in (far, near)] == [
        (LookKind.LAGGING, Urgency.TODAY),
        (LookKind.LAGGING, Urgency.SOON),
    ]
    for look in (far, near):
        assert "mates" not in f"{look.sentence} {look.why_urgent}"


# --- media at different heights in the tray


def beside_peat(**mates: object) -> list[DayNumbers]:
    """Tray 1 on a deep mat: 12 points behind by coverage, 3 by the bed; a tenth of it is wall."""
    mine = {"coverage": 72.0, "bed_share": 80.0}
    photos = [numbers(1, day, **mine) for day in (7, 8)]
    others = {"coverage": 84.0, "bed_share": 83.0} | mates
    return photos + [numbers(tray, day, **others) for tray in (2, 3, 4) for day in (7, 8)]


def test_a_deep_mat_is_held_against_its_mates_by_the_growing_bed() -> None:
    assert told(beside_peat()) == []

    look = only(told(beside_peat(bed_share=95.0)))
    assert look.what is LookKind.LAGGING
    assert look.sentence == (
        "Coverage of the growing bed 80 %, 15 points below the middle of its block mates (95 %); as much as "
        "on 7 March (15 points)."
    )


def test_where_one_mate_does_not_know_its_bed_all_are_counted_of_the_inner_area() -> None:
    photos = beside_peat(bed_share=95.0)
    photos[-1] = photos[-1]._replace(bed_share=None)  # of tray 4 on the second day
    photos[-2] = photos[-2]._replace(bed_share=None)

    assert only(told(photos)).sentence.startswith("Coverage 72 %, 12 points below the middle")


def test_two_photos_of_a_day_know_their_bed_only_where_both_do() -> None:
    photos = beside_peat(bed_share=95.0)
    again = [one._replace(taken_at=one.taken_at + timedelta(hours=1), bed_share=None) for one in photos[:2]]

    assert only(told([*photos, *again])).sentence.startswith("Coverage 72 %, 12 points below the middle")


def test_the_wall_of_a_deep_mat_is_no_gap() -> None:
    walled = {"coverage": 72.0, "bed_share": 80.0, "gap_share": 11.0}  # a tenth is wall
    gappy = walled | {"gap_share": 19.0}

    assert told(rack(dict.fromkeys((7, 8), walled), bed_share=80.0)) == []
    look = only(told(rack(dict.fromkeys((7, 8), gappy), bed_share=80.0)))
    assert look.what is LookKind.GAPS
    assert look.sentence.startswith("Without the wall that is seen, gaps take 9 % of the tray")


def test_earlier_trays_of_the_crop_are_held_against_by_the_bed_where_they_know_it() -> None:
    def earlier(**bed: float) -> list[EarlierDay]:
        ages = ((6, 50.0), (7, 60.0))
        return [
            EarlierDay(crop="broccoli", day=age, method="plain 1", coverage=coverage, **bed)
            for age, coverage in ages
            for _ in range(3)
        ]

    slow = [numbers(tray, day, coverage=20.0, bed_share=24.0) for tray in (1, 2, 3, 4) for day in (7, 8)]
    assert told(slow, earlier=earlier(bed_share=30.0)) == []
    assert told(slow, earlier=earlier(bed_share=64.0))[0].sentence.startswith(
        "Coverage of the growing bed 24 % on day 7; earlier trays of broccoli had 64 % at that age"
    )
    assert told(slow, earlier=earlier())[0].sentence.startswith("Coverage 20 % on day 7")


# --- ready to cut


def test_trays_that_gain_no_more_in_their_time_are_one_line_to_cut() -> None:
    full = [numbers(tray, day, coverage=95.0) for tray in (1, 2, 3, 4) for day in (7, 8)]
    crop = Crop(name="broccoli", cut_from_day=7.0, cut_to_day=10.0)

    look = only(told(full, crops={"broccoli": crop}))
    assert (look.what, look.urgency) == (LookKind.READY, Urgency.SOON)
    assert look.sentence == ("A1, A2, A3, A4: broccoli on day 7, 95 % coverage; usually cut on day 7 to 10.")
    assert look.trays == (1, 2, 3, 4)

    last = only(told(full, crops={"broccoli": replace(crop, cut_to_day=7.0)}))
    assert last.urgency is Urgency.TODAY
    assert told(full) == []  # nobody has said when this crop is cut
    assert told(full, crops={"broccoli": replace(crop, cut_from_day=8.0)}) == []


def test_a_tray_that_needs_another_look_is_not_hidden_in_the_line_to_cut() -> None:
    full = [numbers(tray, day, coverage=95.0) for tray in (2, 3, 4) for day in (7, 8)]
    sick = [numbers(1, day, coverage=95.0, cells=side("far", 60.0)) for day in (7, 8)]
    list_ = told(full + sick, crops={"broccoli": Crop(name="broccoli", cut_from_day=7.0)})

    assert [(look.code, look.what, [also.what for also in look.also]) for look in list_] == [
        ("A1", LookKind.EDGE, [LookKind.READY]), ("A2", LookKind.READY, []),
    ]  # fmt: skip


# --- how urgent


def a_reason(what: LookKind, urgency: Urgency) -> Look:
    return Look(
        tray_id=TrayId(1),
        code="A1",
        what=what,
        urgency=urgency,
        since=TODAY,
        sentence=str(what),
        first="look",
    )


def test_the_most_urgent_reason_of_a_tray_speaks_and_the_others_stand_behind() -> None:
    one = combined([a_reason(LookKind.UNEVEN, Urgency.SOON), a_reason(LookKind.LAGGING, Urgency.TODAY)])

    assert (one.what, one.urgency) == (LookKind.LAGGING, Urgency.TODAY)
    assert [also.what for also in one.also] == [LookKind.UNEVEN]
    assert one.why_urgent == "Today: it is far behind on two days running."


@pytest.mark.parametrize("other", [LookKind.VANISHED, LookKind.STACK])
def test_possible_mold_where_canopy_goes_or_the_air_is_warm_and_wet_is_for_now(other: LookKind) -> None:
    one = combined([a_reason(LookKind.SUSPECT, Urgency.SOON), a_reason(other, Urgency.TODAY)])

    assert (one.what, one.urgency) == (LookKind.SUSPECT, Urgency.NOW)
    assert one.why_urgent.startswith("Now: possible mold together with")
    assert [behind.what for behind in one.also] == [other]


def test_two_signs_that_could_wait_are_for_today() -> None:
    one = combined([a_reason(LookKind.UNEVEN, Urgency.SOON), a_reason(LookKind.PALING, Urgency.SOON)])

    assert one.urgency is Urgency.TODAY
    assert one.why_urgent == "Today: each sign alone could wait, two of them on one tray should not."


def test_a_thin_edge_and_the_lag_that_it_makes_are_one_sign() -> None:
    one = combined([a_reason(LookKind.LAGGING, Urgency.SOON), a_reason(LookKind.EDGE, Urgency.SOON)])

    assert (one.what, one.urgency) == (LookKind.EDGE, Urgency.SOON)


def test_a_missing_photo_or_a_ripe_tray_makes_no_sign_more_urgent() -> None:
    for kind in (LookKind.NO_PHOTO, LookKind.READY, LookKind.UNMATCHED):
        one = combined([a_reason(LookKind.UNEVEN, Urgency.SOON), a_reason(kind, Urgency.SOON)])
        assert (one.what, one.urgency) == (LookKind.UNEVEN, Urgency.SOON)


@pytest.mark.parametrize("kind", LookKind)
@pytest.mark.parametrize("urgency", Urgency)
def test_how_urgent_is_always_said_in_words(kind: LookKind, urgency: Urgency) -> None:
    said = combined([a_reason(kind, urgency)]).why_urgent

    assert said.startswith(f"{urgency.words.capitalize()}: ")
    assert said.endswith(".")
    assert hasattr(said, "template")


# --- under a stack


def test_stacked_trays_of_one_warm_wet_shelf_are_one_line() -> None:
    from data.growing.air import AirSample

    now = datetime(2026, 3, 8, 9)
    stacked = [
        a_kept_tray(n, sown_at=datetime(2026, 3, 7, 9), stacked=True, blackout_to=datetime(2026, 3, 10))
        for n in (1, 2, 3)
    ]
    air = [AirSample(at=now - timedelta(minutes=30 * n), temperature=24.0, humidity=96.0) for n in range(40)]

    list_ = told([], stacked, air={"A": air}, now=now)
    assert only(list_).what is LookKind.STACK
    assert only(list_).sentence.startswith("A1, A2, A3: Warm and wet for 20 of the last 20 logged hours")
    assert told([], stacked, air={"A": air[:10]}, now=now) == []
    assert told([], [replace(t, stacked=False) for t in stacked], air={"A": air}, now=now) == []
