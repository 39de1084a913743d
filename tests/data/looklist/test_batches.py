"""Batches: what is the same for many trays of a shelf is one line, and that line is true of each of them."""

from datetime import date, datetime
from typing import Any

from data.growing.conditions import Crop
from data.look import Look, LookKind
from data.looklist.batches import together
from data.looklist.ripeness import look_at_ripeness
from data.looklist.view import View
from data.records import Tray, TrayId, Urgency
from tests.data.builders import a_kept_tray, numbers

TODAY = date(2026, 3, 8)
BROCCOLI = Crop(name="broccoli", cut_from_day=7.0, cut_to_day=10.0)


def ready(tray: Tray, coverage: float = 95.0) -> Look:
    days = {date(2026, 3, day): numbers(tray.id, day, coverage=coverage) for day in (7, 8)}
    look = look_at_ripeness(View(tray=tray, today=TODAY, mine=days, others=()), BROCCOLI)
    assert look is not None
    return look


def stacked(tray: Tray, **special: Any) -> Look:
    ordinary = {"what": LookKind.STACK, "urgency": Urgency.TODAY, "since": TODAY, "first": "Open it."}
    return Look(tray_id=tray.id, code=tray.code, sentence="Warm and wet.", **(ordinary | special))


def lines(*looks: Look, trays: list[Tray]) -> list[str]:
    return [str(look.sentence) for look in together(looks, {tray.id: tray for tray in trays})]


def test_the_line_to_cut_names_the_least_and_the_most_coverage_of_its_trays() -> None:
    trays = [a_kept_tray(1), a_kept_tray(2), a_kept_tray(3)]

    looks = [ready(tray, coverage) for tray, coverage in zip(trays, (97.6, 84.2, 90.0), strict=True)]

    assert lines(*looks, trays=trays) == [
        "A1, A2, A3: broccoli on day 7, 84-98 % coverage; usually cut on day 7 to 10."
    ]


def test_two_sowings_of_a_shelf_are_two_lines_to_cut() -> None:
    trays = [a_kept_tray(1), a_kept_tray(2, sown_at=datetime(2026, 2, 28, 9)), a_kept_tray(3)]

    told = lines(*(ready(tray) for tray in trays), trays=trays)

    assert [line.partition(" on day")[0] for line in told] == ["A1, A3: broccoli", "broccoli"]


def test_a_warm_stack_is_one_line_whatever_was_sown_when() -> None:
    trays = [a_kept_tray(1), a_kept_tray(2, crop="radish", sown_at=datetime(2026, 2, 28, 9))]

    assert lines(*(stacked(tray) for tray in trays), trays=trays) == ["A1, A2: Warm and wet."]


def test_another_shelf_another_urgency_and_another_reason_stand_by_themselves() -> None:
    trays = [a_kept_tray(1), a_kept_tray(2, shelf="B"), a_kept_tray(3), a_kept_tray(4)]
    looks = [stacked(tray) for tray in trays]
    looks[2] = stacked(trays[2], urgency=Urgency.NOW)
    looks[3] = stacked(trays[3], also=(looks[0],))

    assert lines(*looks, trays=trays) == ["Warm and wet."] * 4


def test_six_codes_are_named_and_the_others_counted() -> None:
    trays = [a_kept_tray(n) for n in range(1, 9)]

    (line,) = together([stacked(tray) for tray in trays], {tray.id: tray for tray in trays})

    assert line.sentence == "A1, A2, A3, A4, A5, A6 and 2 more: Warm and wet."
    assert line.trays == tuple(TrayId(n) for n in range(1, 9))
    assert lines(*(stacked(tray) for tray in trays[:6]), trays=trays) == [
        "A1, A2, A3, A4, A5, A6: Warm and wet."
    ]
