"""What a grower brings in and says is kept, once, and found again."""

from dataclasses import replace
from datetime import datetime, timedelta
from pathlib import Path
from types import SimpleNamespace

import pytest

from data.book import Book
from data.errors import BookError, TagTaken
from data.photos.judged import Judged
from data.records import (
    KeptGap,
    Known,
    NeedsCorners,
    NeedsTray,
    PhotoState,
    Refused,
    Said,
    Stored,
    TakenFrom,
    TrayId,
)
from tests.data.builders import NOON, Patch, a_note, a_score, a_tray, bring, score_note
from vision.reason import Reason


def count(book: Book, table: str) -> int:
    with book.writing() as db:
        return int(db.table(table).count)


def test_a_photo_with_a_tag_finds_its_tray(book: Book, phone: Path) -> None:
    fate = bring(book, a_note(phone, tag=11, coverage=61.0))

    assert isinstance(fate, Stored)
    assert (fate.tray_code, fate.matched_by, fate.coverage) == ("A2", "tag", 61.0)
    assert fate.sentence == "A2, matched by its tag, coverage 61 %"


def test_a_photo_that_had_better_be_taken_again_says_how(book: Book, phone: Path) -> None:
    fate = bring(book, a_note(phone, tag=11, coverage=61.0, notes=["FADED", "DOUBTFUL"]))

    assert isinstance(fate, Stored)
    assert fate.sentence == f"A2, matched by its tag, coverage 61 %; {Reason.FADED}"
    assert book.photo(fate.photo_id).sentence == fate.sentence


def test_bringing_a_photo_in_twice_changes_nothing(book: Book, phone: Path) -> None:
    first = bring(book, a_note(phone, tag=10))

    second = bring(book, phone / "IMG_1.jpg")

    assert isinstance(second, Known)
    assert second.photo_id == first.photo_id
    assert second.sentence == "already in the book: A1, matched by its tag, coverage 55 %"
    assert (count(book, "photo"), count(book, "score")) == (1, 1)


def test_two_windows_that_keep_one_photo_at_the_same_time_keep_it_once(
    book: Book, phone: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = a_note(phone, tag=10)
    with Book.open(book.folder) as other:
        copy = book._copy

        def copy_while_the_other_is_faster(judged: Judged, source: Path) -> None:
            assert isinstance(bring(other, path), Stored)
            copy(judged, source)

        monkeypatch.setattr(book, "_copy", copy_while_the_other_is_faster)

        assert isinstance(bring(book, path), Known)
    assert (count(book, "photo"), count(book, "score")) == (1, 1)


def test_a_photo_under_another_name_is_the_same_photo(book: Book, phone: Path) -> None:
    path = a_note(phone, tag=10)
    bring(book, path)

    again = phone / "copy of it.jpg"
    again.write_bytes(path.read_bytes())

    assert isinstance(bring(book, again), Known)


def test_all_numbers_come_back_as_they_were_measured(book: Book, phone: Path) -> None:
    fate = bring(book, a_note(phone, tag=10, coverage=55.0, suspects=[{"x_mm": 12.5}]))
    told = a_score(55.0)

    score = book.score(fate.photo_id)

    assert score is not None
    for name in ("coverage", "green", "uniformity", "edge_deficit", "gradient_y", "gap_share"):
        assert getattr(score, name) == getattr(told.stand, name)
    assert score.cells == told.stand.cells
    assert score.hue == told.colour.hue
    assert score.cast is None
    assert score.reasons["cast"] is Reason.NO_PATCH
    assert score.reasons["spread"] is Reason.NO_CANOPY
    assert score.corners_px == told.corners_px
    assert [(s.x_mm, s.said) for s in score.suspects] == [(12.5, None)]
    assert score.gaps == (KeptGap(x_mm=30.0, y_mm=40.0, area_cm2=5.0),)  # its outline lies in the labels


def test_the_original_is_kept_byte_by_byte_under_its_digest(book: Book, phone: Path) -> None:
    path = a_note(phone, tag=10)
    fate = bring(book, path)

    kept = book.photo_path(fate.photo_id)

    assert kept.read_bytes() == path.read_bytes()
    assert kept.stem == score_note(path).digest
    assert kept.parent == book.folder / "photos" / kept.stem[:2]


def test_everything_is_there_after_closing_and_opening(book: Book, phone: Path) -> None:
    fate = bring(book, a_note(phone, tag=10, suspects=[{}]))
    suspect = book.days(fate.tray_id)[0].score.suspects[0]
    book.say(suspect.id, "mold")
    before = book.days(fate.tray_id), book.tiles(), book.photos()
    book.close()

    with Book.open(book.folder) as again:
        assert (again.days(fate.tray_id), again.tiles(), again.photos()) == before
        assert again.days(fate.tray_id)[0].score.suspects[0].said is Said.MOLD


def test_a_tag_that_no_growing_tray_carries_waits_for_a_person(book: Book, phone: Path) -> None:
    fate = bring(book, a_note(phone, tag=77))

    assert isinstance(fate, NeedsTray)
    assert fate.sentence == "tag 77 belongs to no tray that grew at that time: choose the tray"


def test_a_tag_belongs_to_the_tray_that_grew_when_the_photo_was_taken(book: Book, phone: Path) -> None:
    book.finish_tray(book.trays()[0].id, datetime(2026, 3, 10, 8))
    book.add_tray(a_tray("B1", tag_number=10, sown_at=datetime(2026, 3, 12)))
    book.set_setting("today", "2026-03-20")

    early = bring(book, a_note(phone, "early.jpg", tag=10, taken_at="2026-03-08T12:00:00"))
    late = bring(book, a_note(phone, "late.jpg", tag=10, taken_at="2026-03-15T12:00:00"))
    between = bring(book, a_note(phone, "between.jpg", tag=10, taken_at="2026-03-11T12:00:00"))

    assert (early.tray_code, late.tray_code) == ("A1", "B1")
    assert isinstance(between, NeedsTray)


def test_an_unsure_frame_is_kept_but_counts_for_nothing_until_the_corners_are_set(
    book: Book, phone: Path
) -> None:
    fate = bring(book, a_note(phone, tag=10, found_by="frame", sure=0.3))

    assert isinstance(fate, NeedsCorners)
    assert fate.sentence == f"A1: {Reason.UNSURE_FRAME}"
    tile = book.tiles()[0]
    assert (tile.coverage, tile.growth) == (None, ())


def test_corners_by_hand_make_an_unsure_photo_count(book: Book, phone: Path) -> None:
    fate = bring(book, a_note(phone, tag=10, found_by="frame", sure=0.3, coverage=50.0))
    corners = [(1.0, 2.0), (900.0, 2.0), (900.0, 480.0), (1.0, 480.0)]

    mended = book.set_corners(fate.photo_id, corners, score_note(phone / "IMG_1.jpg", corners))

    assert isinstance(mended, Stored)
    assert book.tiles()[0].coverage == 60.0
    assert count(book, "score") == 1


def test_a_word_on_a_suspect_stays_when_the_corners_are_mended(book: Book, phone: Path) -> None:
    patches = [{"x_mm": 100.0}, {"x_mm": 400.0}]
    fate = bring(book, a_note(phone, tag=10, found_by="frame", sure=0.3, suspects=patches))
    near = next(s for s in book.score(fate.photo_id).suspects if s.x_mm == 100.0)
    book.say(near.id, Said.NOT_MOLD)

    corners = [(1.0, 2.0), (900.0, 2.0), (900.0, 480.0), (1.0, 480.0)]
    book.set_corners(fate.photo_id, corners, score_note(phone / "IMG_1.jpg", corners))

    said = {s.x_mm: s.said for s in book.score(fate.photo_id).suspects}
    assert said == {100.0: Said.NOT_MOLD, 400.0: None}


def test_corners_that_do_not_help_leave_the_photo_as_it_was(book: Book, phone: Path) -> None:
    fate = bring(book, a_note(phone, tag=10, found_by="frame", sure=0.3))
    blurred = a_note(phone, "blurred.jpg", refuse="BLURRED")

    answer = book.set_corners(fate.photo_id, [(0, 0)] * 4, score_note(blurred))

    assert isinstance(answer, Refused)
    assert book.photo(fate.photo_id).state is PhotoState.NEEDS_CORNERS
    assert book.undo_text() is None


def test_a_photo_without_any_frame_waits_for_corners(book: Book, phone: Path) -> None:
    assert isinstance(bring(book, a_note(phone, tag=10, refuse="NO_TRAY")), NeedsCorners)


def test_a_refused_photo_is_remembered_with_its_reason_and_its_tray(book: Book, phone: Path) -> None:
    fate = bring(book, a_note(phone, tag=12, refuse="BLURRED"))

    assert isinstance(fate, Refused)
    (row,) = book.photos()
    assert (row.state, row.reason, row.tray_code) == (PhotoState.REFUSED, Reason.BLURRED, "A3")
    assert row.sentence == f"A3: not used: {Reason.BLURRED}"
    assert book.photo_path(row.id).exists()


def test_a_file_that_is_no_picture_is_remembered_but_not_copied(book: Book, phone: Path) -> None:
    fate = bring(book, a_note(phone, refuse="NO_PICTURE"))

    assert book.photo(fate.photo_id).photo is None
    assert list((book.folder / "photos").rglob("*.*")) == []
    with pytest.raises(KeyError):
        book.photo_path(fate.photo_id)


def test_a_photo_without_a_clock_has_the_time_of_its_file_and_says_so(book: Book, phone: Path) -> None:
    import os

    path = a_note(phone, tag=10, taken_at=None)
    os.utime(path, (datetime(2026, 3, 5, 7, 30).timestamp(),) * 2)

    row = book.photo(bring(book, path).photo_id)

    assert (row.taken_at, row.taken_from) == (datetime(2026, 3, 5, 7, 30), TakenFrom.FILE)


@pytest.mark.parametrize("clock", ["1980-01-01T00:00:00", "2099-01-01T00:00:00"])
def test_a_clock_that_cannot_be_right_is_not_believed(book: Book, phone: Path, clock: str) -> None:
    row = book.photo(bring(book, a_note(phone, tag=10, taken_at=clock)).photo_id)

    assert row.taken_from is TakenFrom.FILE


def test_a_file_that_changed_after_it_was_scored_is_not_kept(book: Book, phone: Path) -> None:
    path = a_note(phone, tag=10)
    judged = score_note(path)
    path.write_bytes(path.read_bytes() + b" ")

    fate = book.keep(judged, path)

    assert fate == Refused(photo_id=None, name="IMG_1.jpg", reason=Reason.ALTERED)
    assert count(book, "photo") == 0
    assert list((book.folder / "photos").rglob("*.*")) == []


def test_a_file_that_is_gone_after_it_was_scored_is_not_kept(book: Book, phone: Path) -> None:
    path = a_note(phone, tag=10)
    judged = score_note(path)
    path.unlink()

    assert book.keep(judged, path) == Refused(photo_id=None, name="IMG_1.jpg", reason=Reason.UNREADABLE)


def test_what_is_wrong_with_the_place_of_a_photo_is_not_said_of_the_book(book: Book, phone: Path) -> None:
    path = a_note(phone, tag=10)
    judged = score_note(path)
    path.unlink()
    path.mkdir()  # can be found and not read, as on a card with a bad contact

    assert book.keep(judged, path) == Refused(photo_id=None, name="IMG_1.jpg", reason=Reason.UNREADABLE)
    assert not [found for found in (book.folder / "photos").rglob("*") if found.is_file()]


@pytest.mark.parametrize("changed", [1e12, -1e12, float("nan")])
def test_a_file_of_a_time_that_no_clock_shows_is_kept_as_of_now(
    book: Book, phone: Path, changed: float, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = a_note(phone, tag=10, taken_at=None)
    really = Path.stat

    def told(self: Path, **how: bool) -> object:
        return SimpleNamespace(st_mtime=changed) if self == path else really(self, **how)

    monkeypatch.setattr(Path, "stat", told)
    fate = book.keep(score_note(path), path)

    assert fate.photo_id is not None
    assert abs(book.photo(fate.photo_id).taken_at - datetime.now()) < timedelta(minutes=1)


def test_a_lost_cache_costs_nothing_but_time(book: Book, phone: Path) -> None:
    fate = bring(book, a_note(phone, tag=10))
    pictures = book.pictures(fate.photo_id)
    assert pictures is not None
    assert pictures.thumbnail.read_bytes() == b"thumb"

    pictures.thumbnail.unlink()

    assert book.pictures(fate.photo_id) == pictures
    assert book.tiles()[0].thumbnail == pictures.thumbnail


def test_a_tag_cannot_be_on_two_growing_trays(book: Book) -> None:
    with pytest.raises(TagTaken, match="tag 10 is on A1, which still grows"):
        book.add_trays([a_tray("B1"), a_tray("B2", tag_number=10)])

    assert [tray.code for tray in book.trays()] == ["A1", "A2", "A3"]


def test_of_two_new_trays_with_one_tag_the_first_is_named(book: Book) -> None:
    with pytest.raises(TagTaken, match="tag 30 is on B1, which still grows"):
        book.add_trays([a_tray("B1", tag_number=30), a_tray("B2", tag_number=30)])


def test_a_tray_keeps_its_growing_conditions(book: Book) -> None:
    new = a_tray(
        "C1",
        seed_lot="L-7",
        seating="on an upturned tray",
        sowing_rate_g=18.0,
        soak_hours=8.0,
        blackout_from=datetime(2026, 3, 1, 10),
        blackout_to=datetime(2026, 3, 4, 8),
        stacked=True,
        watering="bottom",
        feed="seaweed 1:200",
        heat_mat=False,
        light="LED",
        note="first mat",
        shelf="C",
        position=4,
    )

    tray = book.tray(book.add_tray(new))

    for name in (
        "seed_lot",
        "seating",
        "sowing_rate_g",
        "soak_hours",
        "blackout_from",
        "blackout_to",
        "stacked",
        "watering",
        "feed",
        "heat_mat",
        "light",
        "note",
        "shelf",
        "position",
        "crop",
        "medium",
    ):
        assert getattr(tray, name) == getattr(new, name)


def test_trays_stand_in_rack_order(book: Book) -> None:
    book.add_trays(
        [a_tray("C1", shelf="C"), a_tray("B2", shelf="B", position=2), a_tray("B1", shelf="B", position=1)]
    )

    assert [(shelf.name, [t.code for t in shelf.trays]) for shelf in book.rack()] == [
        ("A", ["A1", "A2", "A3"]),
        ("B", ["B1", "B2"]),
        ("C", ["C1"]),
    ]


def test_the_growth_line_has_one_point_a_day_and_the_newest_is_shown(book: Book, phone: Path) -> None:
    for day, hour, coverage in ((6, 8, 30.0), (7, 8, 44.0), (7, 9, 45.0), (8, 8, 60.0)):
        taken = datetime(2026, 3, day, hour).isoformat()
        bring(book, a_note(phone, f"{day}-{hour}.jpg", tag=10, taken_at=taken, coverage=coverage))

    tile = book.tiles()[0]

    assert tile.growth == ((5, 30.0), (6, 45.0), (7, 60.0))
    assert (tile.day, tile.coverage) == (7, 60.0)


def test_a_tray_is_compared_with_its_block_mates_only(book: Book, phone: Path) -> None:
    book.add_trays([a_tray("B1", tag_number=20, block="2"), a_tray("R1", tag_number=21, crop="red radish")])
    for n, tag in enumerate((10, 11, 20, 21)):
        bring(book, a_note(phone, f"{n}.jpg", tag=tag))

    peers = book.peers(book.trays()[0].id)

    assert [point.code for point in peers] == ["A1", "A2"]
    assert peers[0].day == pytest.approx(7.125)  # sown at 9 on 1 March, taken at 12 on 8 March


def test_a_tray_without_a_block_is_compared_with_those_of_its_shelf(book: Book, phone: Path) -> None:
    alone = {"block": None, "trial": None}
    first, *_ = book.add_trays(
        a_tray(code, tag_number=tag, shelf=shelf, **alone)
        for code, tag, shelf in (("X1", 20, "X"), ("X2", 21, "X"), ("Y1", 22, "Y"))
    )
    for tag in (20, 21, 22):
        bring(book, a_note(phone, f"{tag}.jpg", tag=tag))

    assert [point.code for point in book.peers(first)] == ["X1", "X2"]


def test_a_photo_left_out_is_out_of_everything_but_still_there(book: Book, phone: Path) -> None:
    fate = bring(book, a_note(phone, tag=10))

    book.leave_out(fate.photo_id)

    assert book.tiles()[0].photo_id is None
    assert book.photo(fate.photo_id).state is PhotoState.LEFT_OUT
    assert book.photo_path(fate.photo_id).exists()


def test_untagged_photos_between_tagged_ones_are_proposed_in_rack_order(book: Book, phone: Path) -> None:
    for n, tag in enumerate((10, None, 12)):
        bring(book, a_note(phone, f"{n}.jpg", tag=tag, taken_at=datetime(2026, 3, 8, 8, n).isoformat()))

    row = book.photos()[1]

    assert (row.proposal_code, row.state) == ("A2", PhotoState.NEEDS_TRAY)
    assert "A2, by the order of the walk" in row.sentence
    assert book.match(row.id, row.proposal_id or TrayId(0)).sentence.startswith(
        "A2, matched by the order of the walk"
    )


def test_many_threads_may_ask_one_book(book: Book, phone: Path) -> None:
    from concurrent.futures import ThreadPoolExecutor

    def work(n: int) -> str:
        fate = bring(book, a_note(phone, f"{n}.jpg", tag=10, number=n))
        return str(fate.tray_code) + str(len(book.tiles()))

    with ThreadPoolExecutor(8) as pool:
        assert set(pool.map(work, range(40))) == {"A13"}
    assert count(book, "photo") == 40


def test_an_unknown_photo_is_our_mistake_and_loud(book: Book) -> None:
    with pytest.raises(KeyError):
        book.photo(999)


def test_a_word_that_is_no_word_is_refused(book: Book, phone: Path) -> None:
    fate = bring(book, a_note(phone, tag=10, suspects=[{}]))
    suspect = book.score(fate.photo_id).suspects[0]

    with pytest.raises(ValueError, match="perhaps"):
        book.say(suspect.id, "perhaps")


def test_old_scores_stay_beside_those_of_a_newer_method(book: Book, phone: Path) -> None:
    path = a_note(phone, tag=10, suspects=[{}])
    fate = bring(book, path)
    newer = score_note(path)
    object.__setattr__(newer, "score", a_score(70.0, method="plain 2", suspects=[Patch()]))

    book.set_corners(fate.photo_id, [(0, 0)] * 4, newer)

    assert count(book, "score") == 2
    assert book.score(fate.photo_id).method == "plain 2"
    assert book.tiles()[0].coverage == 70.0


def test_every_error_is_a_sentence_that_names_the_folder(book: Book) -> None:
    for kind in BookError.__subclasses__():
        words = str(
            kind(
                book.folder,
                tag=10,
                code="A1",
                change="mold on A5",
                why="too much",
                what="plan",
                fixed=0.95,
                level=0.9,
                trial="Mat",
                watering="every morning",
            )
        )
        assert "{" not in words
        assert len(words) > 40


def test_the_day_of_a_tray_is_counted_by_the_calendar(book: Book) -> None:
    tray = book.trays()[0]
    assert (tray.day(NOON.date()), tray.day(tray.sown_at.date())) == (7, 0)


def test_a_photo_of_a_tray_with_two_tags_asks_which_tray_it_is_and_says_why(book: Book, phone: Path) -> None:
    two = bring(book, a_note(phone, "two.jpg", tag=None, notes=["TWO_TAGS"]))
    none = bring(book, a_note(phone, "none.jpg", tag=None, taken_at="2026-03-08T09:00:00"))

    assert isinstance(two, NeedsTray)
    assert two.sentence == (
        "more than one tag hangs on this tray: choose the tray, and leave only its own tag there"
    )
    assert none.sentence == "no tag read: choose the tray"
    proposed = replace(two, proposal_code="A2").sentence
    assert proposed.startswith("probably A2")
    assert proposed.endswith(f"; {Reason.TWO_TAGS}")
