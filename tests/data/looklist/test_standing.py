"""Standing: several photos of one day are one day, of the newest version of the method."""

from datetime import date

from data.looklist.standing import by_day
from data.records import PhotoId
from tests.data.builders import numbers

THAT_DAY = date(2026, 3, 8)
THREE = [
    numbers(coverage=coverage, bed_share=bed, cells=cells, photo_id=PhotoId(number))
    for number, coverage, bed, cells in ((1, 40.0, 60.0, b"a"), (2, 70.0, 90.0, b"b"), (3, 50.0, 70.0, b"c"))
]


def test_a_day_is_the_middle_of_its_photos_with_the_cells_of_the_nearest_and_the_name_of_the_last() -> None:
    day = by_day(THREE[::-1])[THAT_DAY]

    assert (day.coverage, day.bed_share, day.cells, day.photo_id) == (50.0, 70.0, b"c", 1)


def test_a_photo_without_its_bed_leaves_the_day_without_it() -> None:
    assert by_day([*THREE, numbers(coverage=50.0, bed_share=None)])[THAT_DAY].bed_share is None


def test_photos_of_an_older_version_and_such_as_are_not_sure_do_not_count() -> None:
    older, unsure = numbers(coverage=10.0, method="plain 0"), numbers(coverage=10.0, sure=False)

    assert by_day([older, unsure, *THREE])[THAT_DAY].coverage == 50.0
    assert by_day([unsure]) == {}
