"""When a medium belongs to whole shelves, and what then stands for a shelf."""

from data.statistics.splitplot import medium_is_the_shelfs, shelf_means

TWO_EACH = [
    ("1", "A", "peat", 80.0), ("1", "A", "peat", 84.0), ("1", "B", "mat", 70.0), ("1", "B", "mat", 71.0),
]  # fmt: skip


def test_shelves_of_one_medium_each_with_several_trays_are_what_repeats() -> None:
    assert medium_is_the_shelfs(TWO_EACH)
    assert shelf_means(TWO_EACH) == (("1", "A", "peat", 82.0), ("1", "B", "mat", 70.5))


def test_two_trays_on_one_shelf_are_enough() -> None:
    assert medium_is_the_shelfs(TWO_EACH[:3])


def test_a_tray_on_each_shelf_is_its_shelf() -> None:
    assert not medium_is_the_shelfs(TWO_EACH[1:3])


def test_one_medium_alone_belongs_to_no_shelf_more_than_to_another() -> None:
    assert not medium_is_the_shelfs([(block, shelf, "peat", value) for block, shelf, _, value in TWO_EACH])


def test_a_shelf_that_holds_two_media_is_no_unit() -> None:
    assert not medium_is_the_shelfs([*TWO_EACH, ("1", "B", "peat", 81.0)])


def test_shelves_of_one_name_in_two_blocks_are_two() -> None:
    """Shelf A, sown with peat in March and with mat in April."""
    later = [("2", "A", "mat", 60.0), ("2", "A", "mat", 62.0)]

    assert medium_is_the_shelfs([*TWO_EACH, *later])
    assert shelf_means([*TWO_EACH, *later])[-1] == ("2", "A", "mat", 61.0)
