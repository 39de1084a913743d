"""A photo in doubt: the look list asks for another one, once and only while none of today is better."""

from datetime import date, datetime

import pytest

from data.look import Look, LookKind, Urgency
from data.looklist.answers import Answer, AnswerKind
from data.looklist.standing import by_day
from data.numbers import TrayId
from data.records import DayNumbers
from data.watch import Morning, looks
from tests.data.builders import a_kept_tray, numbers
from vision.reason import RETAKE, Reason

TODAY = date(2026, 3, 8)
TRAYS = [a_kept_tray(n) for n in (1, 2, 3, 4)]
GLARE = {"doubts": (Reason.GLARE,)}


def rack(
    doubts: dict[int, tuple[Reason, ...]], days: tuple[int, ...] = (7, 8), **more: object
) -> list[DayNumbers]:
    """Four even trays; what is doubtful about today's photo, by tray."""
    return [
        numbers(n, day, doubts=doubts.get(n, ()) if day == 8 else (), **more)
        for n in (1, 2, 3, 4)
        for day in days
    ]


def told(photos: list[DayNumbers], answers: tuple[Answer, ...] = ()) -> list[Look]:
    ordered = sorted(photos, key=lambda n: (n.tray_id, n.taken_at))
    return list(looks(Morning(today=TODAY, trays=TRAYS, numbers=ordered, answers=answers)))


@pytest.mark.parametrize("doubt", sorted(RETAKE))
def test_a_photo_in_doubt_is_to_be_taken_again_today_and_says_why(doubt: Reason) -> None:
    (look,) = told(rack({2: (doubt,)}))

    assert (look.code, look.what, look.urgency, look.since) == ("A2", LookKind.DOUBTED, Urgency.TODAY, TODAY)
    assert look.sentence == f"Today's photo is in doubt: {doubt}."
    assert look.why_urgent == "Today: a photo can be taken again only today."
    assert look.first.startswith("Photograph the tray again")


def test_all_that_is_doubtful_about_it_is_said() -> None:
    (look,) = told(rack({2: (Reason.FADED, Reason.GLARE)}))

    assert f"{Reason.FADED}; {Reason.GLARE}." in look.sentence


def test_another_photo_of_today_is_enough_whichever_came_first() -> None:
    again = numbers(2, 8, taken_at=datetime(2026, 3, 8, 12, 5))
    before = numbers(2, 8, taken_at=datetime(2026, 3, 8, 11))

    assert told([*rack({2: (Reason.GLARE,)}), again]) == []
    assert told([*rack({2: (Reason.GLARE,)}), before]) == []


def test_a_photo_of_yesterday_can_no_longer_be_taken_again() -> None:
    photos = [numbers(n, 7, **(GLARE if n == 1 else {})) for n in (1, 2, 3, 4)]

    assert [look for look in told(photos) if look.what is LookKind.DOUBTED] == []


def test_what_is_wrong_with_one_lens_is_said_once_for_the_walk() -> None:
    (line,) = told(rack(dict.fromkeys((1, 2, 4), (Reason.FADED,))))

    assert line.trays == (TrayId(1), TrayId(2), TrayId(4))
    assert line.sentence == f"A1, A2, A4: Today's photo is in doubt: {Reason.FADED}."


def test_what_else_is_wrong_with_a_tray_keeps_its_own_line_beside_it() -> None:
    photos = rack(dict.fromkeys((1, 2, 3, 4), (Reason.FADED,)))
    lagging = [one._replace(coverage=50.0) if one.tray_id == 1 else one for one in photos]

    lines = told(lagging)

    assert [(look.what, len(look.trays)) for look in lines] == [(LookKind.LAGGING, 0), (LookKind.DOUBTED, 4)]
    assert lines[0].also == ()


def test_one_tray_in_doubt_has_one_line_with_all_that_is_said_of_it() -> None:
    photos = [one._replace(coverage=70.0) if one.tray_id == 1 else one for one in rack({1: (Reason.GLARE,)})]

    (look,) = told(photos)

    assert {one.what for one in look.whole} == {LookKind.DOUBTED, LookKind.LAGGING}


def test_once_seen_it_stays_away_while_it_goes_on_and_comes_back_after_a_break() -> None:
    def seen(since: int, answered: int) -> Answer:
        return Answer(
            tray_id=TrayId(2), what=LookKind.DOUBTED, since=date(2026, 3, since), answer=AnswerKind.SEEN,
            urgency=Urgency.TODAY, size=None, answered_on=date(2026, 3, answered),
            last_on=date(2026, 3, answered),
        )  # fmt: skip

    goes_on = [numbers(n, day, **(GLARE if n == 2 else {})) for n in (1, 2, 3, 4) for day in (4, 5, 6, 7, 8)]
    again = [
        numbers(n, day, **(GLARE if n == 2 and day in (4, 8) else {}))
        for n in (1, 2, 3, 4)
        for day in (4, 7, 8)
    ]

    assert [look.since.day for look in told(goes_on)] == [4]
    assert told(goes_on, (seen(4, 5),)) == []
    assert [look.since.day for look in told(again, (seen(4, 5),))] == [8]


def test_numbers_of_a_day_are_those_of_its_photos_without_doubts() -> None:
    doubted = numbers(1, 8, coverage=20.0, **GLARE)
    good = numbers(1, 8, coverage=80.0, taken_at=datetime(2026, 3, 8, 12, 5))

    assert by_day([doubted, good])[TODAY].coverage == 80.0
    assert by_day([doubted])[TODAY].coverage == 20.0
