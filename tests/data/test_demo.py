"""The demonstration is an ordinary book of an invented trial; nothing in it is scored beforehand."""

from collections import Counter
from collections.abc import Iterator
from datetime import date, datetime
from pathlib import Path

import pytest
from PIL import Image

from data.book import Book
from data.chapters.drawbook import unsown
from data.demo import demo_photos, make_demo
from data.trial import treatment_of
from data.watch import read_looks

CLOCK, FOCAL_35MM, GPS = 36867, 41989, 34853  # EXIF 2.32: DateTimeOriginal, FocalLengthIn35mmFilm, GPS IFD


@pytest.fixture
def demo(tmp_path: Path) -> Iterator[Book]:
    with make_demo(tmp_path / "demo") as book:
        yield book


def test_there_are_eighteen_trays_on_three_shelves(demo: Book) -> None:
    assert [(s.name, [t.code for t in s.trays]) for s in demo.rack()] == [
        (shelf, [f"{shelf}{n}" for n in range(1, 7)]) for shelf in "ABC"
    ]
    assert [tray.tag_number for tray in demo.trays()] == list(range(10, 28))


def test_each_block_has_every_crop_on_every_medium_once(demo: Book) -> None:
    count = Counter((tray.block, tray.crop, tray.medium) for tray in demo.trays())

    assert set(count.values()) == {1}
    assert len(count) == 3 * 2 * 3
    assert demo.crops() == ("broccoli", "red radish")
    assert demo.media() == ("coir", "peat mix", "plant-fibre mat")


def test_trays_carry_their_growing_conditions(demo: Book) -> None:
    for tray in demo.trays():
        assert tray.sown_at == datetime(2026, 3, 2, 9)
        assert tray.sowing_rate_g == {"broccoli": 18.0, "red radish": 35.0}[tray.crop]
        assert tray.seed_lot is not None
        assert "invented" in tray.seed_lot
        assert tray.blackout_to == datetime(2026, 3, 4, 9)


def test_the_demonstration_stands_still_on_day_nine(demo: Book) -> None:
    assert demo.today() == date(2026, 3, 11)
    assert {tile.day for tile in demo.tiles()} == {9}


def test_nothing_is_scored_and_nothing_can_be_taken_back_yet(demo: Book) -> None:
    assert demo.photos() == ()
    assert [look.code for look in read_looks(demo)] == ["C3"]  # by its weights alone: drying out
    assert demo.undo_text() is None


def test_photos_come_newest_day_first_in_the_order_of_the_walk() -> None:
    photos = demo_photos()
    codes = [f"{shelf}{n}" for shelf in "ABC" for n in range(1, 7)]

    assert [path.stem for path in photos] == [f"{c}_day{d:02}" for d in range(9, 1, -1) for c in codes]


def test_photos_are_small_and_carry_clock_and_focal_length_but_no_place() -> None:
    photos = demo_photos()

    assert sum(path.stat().st_size for path in photos) <= 14_000_000
    for path in photos[::7]:
        with Image.open(path) as image:
            exif = image.getexif()
            day = 2 + int(path.stem[-2:])
            assert image.size == (1120, 840)
            assert exif.get_ifd(34665)[CLOCK].startswith(f"2026:03:{day:02} 08:")
            assert exif.get_ifd(34665)[FOCAL_35MM] > 0
            assert GPS not in exif


def test_the_tags_in_the_photos_are_those_of_the_trays() -> None:
    from vision.markers import find_marks
    from vision.photo import grey, read_photo

    photos = [path for path in demo_photos() if path.stem.endswith("day02")]

    tags = [find_marks(grey(read_photo(path))).tag for path in photos]

    assert [tag and tag.number for tag in tags] == list(range(10, 28))


def test_the_trial_was_planned_before_sowing_and_stands_as_drawn(tmp_path: Path) -> None:
    with make_demo(tmp_path / "demo") as book:
        (kept,) = book.plans()
        (draw,) = book.draws(kept.plan.trial)
        trays = book.trial_trays(kept.plan.trial)

        assert kept.version == 1
        assert not kept.after_sowing
        assert unsown(draw.draw, trays) == ()
        assert len(trays) == kept.plan.trays == 18
        for tray in trays:
            place = next(place for place in draw.draw.places if place.code == tray.code)
            assert (tray.shelf, tray.position, tray.block) == (place.shelf, place.position, place.block)
            assert (tray.crop, treatment_of(tray, kept.plan)) == (place.crop, place.treatment)
        assert book.undo_text() is None
