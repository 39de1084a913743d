from datetime import date, datetime
from pathlib import Path
from typing import Any

from data.records import Known, NeedsTray, PhotoId, PhotoRow, PhotoState, Refused, Stored, TakenFrom, TrayId
from gui.intake.view import Batch, Kind, intake_state
from vision.reason import Reason


def a_photo(number: int = 1, **special: Any) -> PhotoRow:
    """A photo that was matched to A1 by its tag, 80 % covered."""
    ordinary = {
        "id": PhotoId(number),
        "name": f"IMG_{number}.jpg",
        "added_at": datetime(2026, 3, 8, 13),
        "taken_at": datetime(2026, 3, 8, 12),
        "taken_from": TakenFrom.CAMERA,
        "tag_number": 11,
        "state": PhotoState.STORED,
        "tray_id": TrayId(1),
        "tray_code": "A1",
        "matched_by": "tag",
        "proposal_id": None,
        "proposal_code": None,
        "reason": None,
        "photo": Path(f"/book/photos/{number}.jpg"),
        "thumbnail": None,
        "coverage": 80.0,
    }
    return PhotoRow(**(ordinary | special))


def lost(number: int, **special: Any) -> PhotoRow:
    """A photo whose tray nobody knows."""
    without = {"tray_id": None, "tray_code": None, "matched_by": None, "tag_number": None}
    return a_photo(number, **(without | {"state": PhotoState.NEEDS_TRAY} | special))


def test_a_matched_photo_says_its_tray_and_its_coverage():
    (row,) = intake_state(Batch(), [a_photo()]).rows

    assert row.kind is Kind.STORED
    assert row.sentence == "A1, matched by its tag, coverage 80 %"


def test_files_wait_in_the_order_in_which_they_came():
    batch = Batch()
    batch.add([Path("b.jpg"), Path("a.jpg")])

    state = intake_state(batch, [])

    assert [row.name for row in state.rows] == ["b.jpg", "a.jpg"]
    assert state.waiting == 2
    assert state.headline == "Photos are being scored"


def test_photos_of_before_stand_by_the_days_on_which_they_were_taken():
    days = {7: 3, 6: 5, 5: 2, 4: 5}  # the last added first, as the book tells them

    state = intake_state(Batch(), [a_photo(n, taken_at=datetime(2026, 3, day)) for n, day in days.items()])

    assert [row.name for row in state.rows] == ["IMG_6.jpg", "IMG_4.jpg", "IMG_7.jpg", "IMG_5.jpg"]


def test_a_file_that_has_its_fate_is_the_photo_of_the_book():
    batch = Batch()
    batch.add([Path("IMG_1.jpg")])
    fate = Stored(
        photo_id=PhotoId(1),
        name="IMG_1.jpg",
        tray_id=TrayId(1),
        tray_code="A1",
        matched_by="tag",
        coverage=80,
    )
    batch.arrived(Path("IMG_1.jpg"), fate)

    (row,) = intake_state(batch, [a_photo()]).rows

    assert row.photo_id == 1
    assert row.photo == Path("/book/photos/1.jpg")


def test_a_file_of_which_nothing_could_be_kept_keeps_its_row_and_its_sentence():
    batch = Batch()
    batch.arrived(Path("x.jpg"), Refused(photo_id=None, name="x.jpg", reason=Reason.UNREADABLE))

    (row,) = intake_state(batch, []).rows

    assert row.kind is Kind.REFUSED
    assert row.sentence.startswith("not used: the file cannot be opened")


def test_a_refused_photo_is_refused_before_the_book_is_read_again_too():
    batch = Batch()
    batch.add([Path("half.jpg")])
    batch.arrived(Path("half.jpg"), Refused(photo_id=PhotoId(6), name="half.jpg", reason=Reason.CUT_SHORT))

    state = intake_state(batch, photos=())

    assert [row.kind for row in state.rows] == [Kind.REFUSED]
    assert (state.refused, state.stored) == (1, 0)


def test_a_photo_that_comes_again_says_so_and_stands_there_once():
    batch = Batch()
    batch.arrived(Path("again.jpg"), Known(photo_id=PhotoId(1), name="again.jpg"))

    (row,) = intake_state(batch, [a_photo()]).rows

    assert row.kind is Kind.KNOWN
    assert row.name == "again.jpg"
    assert row.sentence == (
        "the same photo as IMG_1.jpg, already in the book: A1, matched by its tag, coverage 80 %"
    )


def test_a_photo_under_two_names_needs_a_person_once():
    batch = Batch()
    needs = NeedsTray(
        photo_id=PhotoId(2), name="IMG_2.jpg", tag_number=None, proposal_id=None, proposal_code=None
    )
    batch.arrived(Path("IMG_2.jpg"), needs)
    batch.arrived(Path("copy.jpg"), Known(photo_id=PhotoId(2), name="copy.jpg"))

    state = intake_state(batch, [lost(2)])

    assert [row.kind for row in state.rows] == [Kind.NEEDS_TRAY, Kind.KNOWN]
    assert state.headline == "1 photo needs you"
    assert state.summary == "2 photos, 1 already in the book"


def test_a_photo_of_yesterday_that_comes_again_still_needs_its_tray():
    batch = Batch()
    batch.arrived(Path("IMG_2.jpg"), Known(photo_id=PhotoId(2), name="IMG_2.jpg"))

    (row,) = intake_state(batch, [lost(2)]).rows

    assert row.kind is Kind.NEEDS_TRAY
    assert row.sentence == "already in the book: no tag read: choose the tray"


def test_the_headline_counts_what_needs_a_person():
    rows = [
        a_photo(1),
        lost(2),
        lost(3, proposal_id=TrayId(2), proposal_code="A2"),
        a_photo(4, state=PhotoState.NEEDS_CORNERS),
    ]

    state = intake_state(Batch(), rows)

    assert state.headline == "3 photos need you"
    assert [row.kind for row in state.rows][1:] == [Kind.NEEDS_TRAY, Kind.PROPOSED, Kind.NEEDS_CORNERS]


def test_a_photo_of_a_tray_that_has_ended_says_so_since_another_one_may_have_its_code():
    rows = [a_photo(1), lost(2, proposal_id=TrayId(1), proposal_code="A1"), a_photo(3, tray_id=TrayId(9))]

    state = intake_state(Batch(), rows, ended={TrayId(1): date(2026, 3, 12)})

    assert [row.sentence for row in state.rows] == [
        "A1, matched by its tag, coverage 80 % (this A1 ended on 12 March)",
        "probably A1, by the order of the walk: confirm it or choose the tray (this A1 ended on 12 March)",
        "A1, matched by its tag, coverage 80 %",
    ]


def test_some_photos_alone_can_be_shown():
    state = intake_state(Batch(), [a_photo(1), lost(2)], only={PhotoId(2)})

    assert [row.photo_id for row in state.rows] == [2]
    assert (state.total, state.needing) == (2, 1)


def test_only_those_that_need_a_person_can_be_shown():
    state = intake_state(Batch(), [a_photo(1), lost(2)], only_needing=True)

    assert [row.photo_id for row in state.rows] == [2]
    assert state.total == 2


def test_proposals_of_the_walk_can_be_confirmed_together():
    rows = [
        lost(2, proposal_id=TrayId(2), proposal_code="A2"),
        lost(3, proposal_id=TrayId(5), proposal_code="A5"),
        lost(4),
    ]

    assert intake_state(Batch(), rows).proposals == ((2, 2), (3, 5))


def test_what_had_no_fate_when_it_was_cancelled_is_gone_and_the_rest_stays():
    batch = Batch()
    batch.add([Path("a.jpg"), Path("b.jpg")])
    batch.arrived(Path("a.jpg"), Refused(photo_id=None, name="a.jpg", reason=Reason.EMPTY))

    batch.drop_waiting()

    assert [row.name for row in intake_state(batch, []).rows] == ["a.jpg"]


def test_what_had_no_fate_when_the_work_broke_off_is_named_until_it_is_brought_in():
    batch = Batch()
    batch.add([Path("a.jpg"), Path("b.jpg")])
    batch.arrived(Path("a.jpg"), Refused(photo_id=None, name="a.jpg", reason=Reason.EMPTY))

    batch.break_off([Path("later")])

    state = intake_state(batch, [])
    assert [row.name for row in state.rows if row.kind is Kind.MISSING] == ["b.jpg", "later"]
    assert state.headline == "2 photos need you"
    assert state.summary.endswith("2 not brought in")
    batch.add([Path("b.jpg"), Path("later")])
    assert intake_state(batch, []).missing == ()


def test_a_photo_that_is_not_used_shows_itself_where_it_has_no_top_view():
    refused = a_photo(1, state=PhotoState.REFUSED, reason=Reason.BLURRED, coverage=None)
    matched = a_photo(2, thumbnail=Path("/book/cache/2.jpg"))
    rows = intake_state(Batch(), [refused, matched]).rows

    assert {row.photo_id: row.thumbnail for row in rows} == {
        1: Path("/book/photos/1.jpg"),
        2: Path("/book/cache/2.jpg"),
    }
