"""How long each number of a logger stands; limits are common practice."""

from datetime import datetime, timedelta

import pytest

from data.growing.samples import hours, spans

NOON = datetime(2026, 3, 4, 12)


def standing(*at: float, begin: float = 0, end: float = 100) -> list[tuple[int, float, float]]:
    """(number, begin, end) in hours since noon, of samples at such hours."""
    times = [NOON + timedelta(hours=hour) for hour in at]
    found = spans(times, NOON + timedelta(hours=begin), NOON + timedelta(hours=end))
    return [(number, hours(one - NOON), hours(two - NOON)) for number, one, two in found]


def test_a_number_stands_until_the_next_and_the_last_as_long_as_the_one_in_the_middle() -> None:
    assert standing(0, 1, 2, 2.5) == [(0, 0, 1), (1, 1, 2), (2, 2, 2.5), (3, 2.5, 3.5)]


def test_after_two_hours_of_silence_nothing_is_known() -> None:
    assert standing(0, 5, 6) == [(0, 0, 2), (1, 5, 6), (2, 6, 8)]
    assert standing(0, 2, 4) == [(0, 0, 2), (1, 2, 4), (2, 4, 6)]


def test_a_logger_that_speaks_every_third_hour_is_known_for_two_of_three() -> None:
    assert standing(0, 3, 6) == [(0, 0, 2), (1, 3, 5), (2, 6, 8)]


def test_one_number_alone_stands_for_no_time() -> None:
    assert standing(0) == []
    assert standing() == []


@pytest.mark.parametrize(
    ("begin", "end", "wanted"),
    [
        (0.5, 1.5, [(0, 0.5, 1), (1, 1, 1.5)]),
        (1, 2, [(1, 1, 2)]),
        (-1, 0, []),
        (3, 9, []),
    ],
)
def test_only_the_time_that_is_asked_for_counts(
    begin: float, end: float, wanted: list[tuple[int, float, float]]
) -> None:
    assert standing(0, 1, 2, begin=begin, end=end) == wanted
