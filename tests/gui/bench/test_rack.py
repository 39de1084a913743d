"""Rack: trays shelf by shelf, each with the most urgent thing that is to be seen of it."""

from data.records import LookKind, Urgency
from gui.bench.rack import rack_state
from tests.gui.rackbook import a_look, a_tile


def test_trays_stand_on_their_shelves_in_the_order_of_the_rack() -> None:
    tiles = [a_tile(1), a_tile(2), a_tile(3, shelf="B", code="B1")]

    state = rack_state(tiles)

    assert state.shelves == (("A", 2), ("B", 1))
    assert [one.tile.code for one in state.standings] == ["A1", "A2", "B1"]


def test_a_tray_shows_its_most_urgent_look() -> None:
    looks = [a_look(1, urgency=Urgency.TODAY), a_look(1, what=LookKind.SUSPECT, urgency=Urgency.NOW)]

    (standing,) = rack_state([a_tile(1)], looks).standings

    assert standing.look is not None
    assert standing.look.what is LookKind.SUSPECT


def test_the_filter_wants_every_word_whatever_its_case() -> None:
    tiles = [a_tile(1), a_tile(2, crop="red radish"), a_tile(3, crop="red radish", medium="peat mix")]

    state = rack_state(tiles, wanted="PEAT radish")

    assert [one.tile.code for one in state.standings] == ["A3"]
    assert (state.filtered, state.all_trays) == (True, 3)


def test_the_filter_finds_what_needs_a_look_too() -> None:
    state = rack_state([a_tile(1), a_tile(2)], [a_look(2)], wanted="lags")
    assert [one.tile.code for one in state.standings] == ["A2"]


def test_trays_with_a_photo_are_counted() -> None:
    state = rack_state([a_tile(1), a_tile(2, photo_id=None, coverage=None)])
    assert (state.with_photo, state.all_trays, state.filtered) == (1, 2, False)
