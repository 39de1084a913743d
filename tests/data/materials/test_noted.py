"""Verdict and report name the same things that tell media apart: weights, logs, room, climate, green."""

from collections.abc import Iterator
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from data.cancel import Cancelled, CancelToken
from data.materials.noted import read_noted
from data.medium.factors import Factor
from data.readings import NewReading, ReadingKind
from data.records import Tray
from data.report.beside import apart_blocks
from data.report.content import Heading, Paragraph
from data.report.reading import read_report
from tests.data.trialrack import TRIAL, Rack

HOUR = timedelta(hours=1)


@pytest.fixture
def rack(tmp_path: Path) -> Iterator[Rack]:
    made = Rack(tmp_path)
    yield made
    made.book.close()


def read(rack: Rack, tray: Tray, kind: ReadingKind, values: dict[datetime, float]) -> None:
    rack.book.add_readings(
        [NewReading(tray_id=tray.id, kind=kind, value=value, taken_at=at) for at, value in values.items()]
    )


def enter(rack: Rack, name: str, medium: str, value: float, unit: str) -> None:
    rack.book.set_factor(
        Factor(
            name=name, value=value, low=0.9 * value, high=1.1 * value, unit=unit, source="measured here",
            medium=medium, entered_at=datetime(2026, 3, 1),
        )
    )  # fmt: skip


def told(rack: Rack, begin: str) -> list[str]:
    return [str(one) for one in read_noted(rack.book, TRIAL).words if one.startswith(begin)]


def log_nights(rack: Rack, tray: Tray, degrees: float) -> None:
    first = tray.sown_at.replace(hour=19, minute=0) + timedelta(days=2)
    read(rack, tray, ReadingKind.MEDIUM_TEMPERATURE, {first + n * HOUR: degrees for n in range(15)})


def test_a_difference_that_rounds_to_nothing_has_no_sign_of_less(rack: Rack) -> None:
    for block, less in ((0, 0.03), (1, 0.05)):
        for medium, mark in (("fibre mat", 4.0 - less), ("peat mix", 4.0)):
            tray = rack.tray(medium, block)
            read(rack, tray, ReadingKind.CUT_QUALITY, {tray.sown_at + timedelta(days=9): mark})

    (mat,) = told(rack, "Cut quality")

    assert "fibre mat +0.0 marks against peat mix" in mat


def test_cold_roots_are_told_by_logged_trays_side_by_side(rack: Rack) -> None:
    """12 h from 20:00 to 8:00 at 16 and at 17 degrees are 24 and 12 K h below 18: 12 apart, by hand."""
    for block, more in ((0, 0.0), (1, 0.1)):
        log_nights(rack, rack.tray("fibre mat", block), 16.0)
        log_nights(rack, rack.tray("peat mix", block), 17.0 + more)

    (mat,) = told(rack, "Below 18 °C at night")

    assert "fibre mat +12.6 K h against peat mix, interval" in mat
    assert "2, and 2 of peat mix" in mat


def test_a_medium_that_nobody_logged_is_not_named(rack: Rack) -> None:
    log_nights(rack, rack.tray("fibre mat"), 16.0)

    assert told(rack, "Below 18 °C at night") == []


def test_drying_out_is_told_by_weights(rack: Rack) -> None:
    """Two trays of each, soaked to 1000 g of water over 500 g dry; the mat loses it twice as fast."""
    for block in (0, 1):
        for medium, loss in (("fibre mat", 20.0 + block), ("peat mix", 10.0 + block / 2)):
            tray = rack.tray(medium, block)
            begin = tray.blackout_to or tray.sown_at
            weights = {tray.sown_at - HOUR: 500.0, tray.sown_at: 1500.0}
            weights |= {begin + n * 12 * HOUR: 1500.0 - 12 * n * loss for n in range(1, 4)}
            read(rack, tray, ReadingKind.WEIGHT, weights)

    (dries,) = told(rack, "Dries in")

    assert "fibre mat -" in dries
    assert "2, and 2 of peat mix" in dries


def test_room_and_climate_are_told_where_both_have_a_number(rack: Rack) -> None:
    enter(rack, "stored before", "peat mix", 3.0, "l/tray")
    assert told(rack, "Room before") == []

    enter(rack, "stored before", "fibre mat", 1.0, "l/tray")
    (room,) = told(rack, "Room before")
    assert room.startswith(
        "Room before, a week: fibre mat -20.0 l against peat mix, interval -23.2 to -16.8."
    )

    enter(rack, "peat", "peat mix", 0.5, "kg/tray")
    assert told(rack, "fibre mat gives off") == []
    enter(rack, "plant fibre", "fibre mat", 0.1, "kg/tray")
    (climate,) = told(rack, "fibre mat gives off")
    assert "kg CO2e a tray less than peat mix (" in climate
    assert told(rack, "A screening estimate")


def test_the_report_has_the_same_list_green_among_it(rack: Rack) -> None:
    assert list(apart_blocks(rack.book, TRIAL, CancelToken())) == []
    rack.shoot_all({"peat mix": 80.0, "coir": 80.0, "fibre mat": 80.0})
    with rack.book.writing() as db:
        for number, tray in enumerate(rack.trays):
            for day in rack.book.days(tray.id):
                assert day.score is not None
                kept = {"dark_green": 0.5 + 0.001 * (number % 5), "lightness": 40.0, "corrected_by": "patch"}
                db.table("score").update(day.score.id, kept)

    whole = read_report(rack.book, TRIAL)

    words = [str(one) for one in read_noted(rack.book, TRIAL).words]
    assert any(one.startswith("Green of the canopy") for one in words)
    told = [str(block.text) for block in whole.blocks if isinstance(block, (Heading, Paragraph))]
    at = told.index("What else tells them apart")
    assert told[at + 2 : at + 2 + len(words)] == words
    assert "What else tells them apart" not in read_report(rack.book, TRIAL, short=True).texts()


def test_who_leaves_the_trial_does_not_wait_for_the_list(rack: Rack) -> None:
    left = CancelToken()
    left.cancel()

    with pytest.raises(Cancelled):
        read_noted(rack.book, TRIAL, cancel=left)
