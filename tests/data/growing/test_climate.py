"""What the air of a tray was like, from its loggers."""

from datetime import datetime, timedelta

import pytest

from data.growing.air import deficit
from data.growing.climate import climate_words

SOWN = datetime(2026, 3, 4, 9)
DAY = timedelta(days=1)


def hourly(*values: float) -> list[tuple[datetime, float]]:
    return [(SOWN + timedelta(hours=hour), value) for hour, value in enumerate(values)]


def test_of_a_tray_that_was_moved_the_air_is_told_from_then_on() -> None:
    (told,) = climate_words(hourly(*[17.0] * 24), [], SOWN, SOWN + DAY, moved=True)

    assert told.startswith("Air since it was moved to this shelf: 17.0 °C on average")


def test_a_day_and_a_half_of_air_in_words() -> None:
    warm, damp = hourly(*[17.0] * 12, *[25.0] * 12), hourly(*[60.0] * 18, *[95.0] * 6)

    told = climate_words(warm, damp, SOWN, SOWN + 1.5 * DAY)

    assert told == (
        "Air from sowing on: 21.0 °C on average, 16 degree days above 5 °C; logged for 24 of 36 hours.",
        # 12 h of 17 C and 60 %, 6 h of 25 C and 60 %, 6 h of 25 C and 95 %
        f"Its humidity: 69 % on average, vapour pressure deficit "
        f"{(2 * deficit(17, 60) + deficit(25, 60) + deficit(25, 95)) / 4:.2f} kPa.",
        "Leaves were likely wet for 6 of 24 logged hours, 6 of them warm.",
    )


def test_temperature_alone_says_nothing_of_humidity() -> None:
    (told,) = climate_words(hourly(*[20.0] * 24), [], SOWN, SOWN + DAY)

    assert "15 degree days" in told


@pytest.mark.parametrize("known", [0, 11])
def test_under_twelve_hours_are_no_climate(known: int) -> None:
    assert climate_words(hourly(*[20.0] * known), hourly(*[60.0] * known), SOWN, SOWN + DAY) == ()


def test_what_was_logged_before_and_after_does_not_count() -> None:
    warm = hourly(*[20.0] * 60)

    (told,) = climate_words(warm, [], SOWN + DAY, SOWN + 2 * DAY)

    assert "logged for 24 of 24 hours" in told


def test_wet_hours_that_were_cold_are_not_called_warm() -> None:
    told = climate_words(hourly(*[12.0] * 24), hourly(*[95.0] * 24), SOWN, SOWN + DAY)

    assert told[-1] == "Leaves were likely wet for 24 of 24 logged hours."
