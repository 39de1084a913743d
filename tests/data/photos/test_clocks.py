"""Wrong clocks are noticed for a batch, right ones left alone; mending is one step with a way back."""

import os
import time as clock
from collections.abc import Iterator
from dataclasses import replace
from datetime import date, datetime, time, timedelta
from pathlib import Path

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from data.book import Book
from data.chapters.clockbook import usual_time
from data.numbers import PhotoId
from data.photos.clocks import ClockDoubt, ClockFault, ClockPhoto, Grown, clock_doubts
from data.photos.clockwords import photos_by
from tests.data.builders import a_note, a_tray, bring
from tests.data.contents import camera_time

HOUR = timedelta(hours=1)
WALK = datetime(2026, 3, 8, 8, 5)  # of the morning; the first sowing was on 1 March
CAME_IN = datetime(2026, 3, 8, 8, 40)
SOWN = (Grown(sown=date(2026, 3, 1)),)


def a_batch(
    *, shift: timedelta = timedelta(0), copied: bool = False, n: int = 10, begin: datetime = WALK
) -> list[ClockPhoto]:
    """A walk of ten photos, 25 s apart; the camera says `shift` more than the truth."""
    photos = []
    for number in range(n):
        taken = begin + number * timedelta(seconds=25)
        photos.append(
            ClockPhoto(
                id=PhotoId(number + 1),
                taken_at=taken + shift,
                file_at=begin + timedelta(minutes=30) if copied else taken + timedelta(seconds=number % 2),
                added_at=begin + timedelta(minutes=35, seconds=number),
            )
        )
    return photos


def only(doubts: tuple[ClockDoubt, ...]) -> ClockDoubt:
    (doubt,) = doubts
    return doubt


def test_where_the_last_photo_of_a_walk_is_possible_and_another_is_not_the_clock_is_still_moved() -> None:
    """Watched folder: each photo comes in by itself, and the first has waited for less than the last."""
    early = ClockPhoto(
        id=PhotoId(1), taken_at=WALK + HOUR / 5, file_at=None, added_at=WALK, camera="Maker Phone"
    )
    late = ClockPhoto(
        id=PhotoId(2),
        taken_at=WALK + HOUR / 4,
        file_at=None,
        added_at=WALK + HOUR / 4,
        camera="Maker Phone",
    )

    doubt = only(clock_doubts([early, late], SOWN))

    assert doubt.photo_ids == (1, 2)
    assert doubt.shift <= doubt.most
    assert doubt.shift <= -HOUR / 5
    assert "ahead by 1 h or more" in doubt.sentence


@pytest.mark.parametrize("copied", [False, True])
def test_a_clock_that_is_right_is_left_alone(copied: bool) -> None:
    assert clock_doubts(a_batch(copied=copied), SOWN) == ()


def test_no_photos_no_doubts() -> None:
    assert clock_doubts([], SOWN) == ()
    assert clock_doubts([]) == ()


@given(quarters=st.integers(-56, 56).filter(lambda q: abs(q) >= 1), seconds=st.integers(-60, 60))
def test_a_camera_of_another_time_zone_is_mended_to_the_quarter_of_an_hour(
    quarters: int, seconds: int
) -> None:
    zone = quarters * timedelta(minutes=15)
    doubt = only(clock_doubts(a_batch(shift=zone + timedelta(seconds=seconds)), SOWN))

    assert (doubt.fault, doubt.shift, doubt.exact) == (ClockFault.ZONE, -zone, True)
    assert len(doubt.photo_ids) == 10


def test_a_camera_that_missed_the_change_to_summer_time_is_an_hour_behind_from_that_night_on() -> None:
    # Europe, 29 March 2026: at 2:00 clocks go to 3:00; the phone's files follow, the camera does not
    before = a_batch(begin=datetime(2026, 3, 28, 8))
    after = [
        ClockPhoto(id=PhotoId(p.id + 100), taken_at=p.taken_at, file_at=p.file_at, added_at=p.added_at)
        for p in a_batch(begin=datetime(2026, 3, 29, 8), shift=-HOUR)
    ]
    came_in = datetime(2026, 3, 29, 9)
    batch = [
        ClockPhoto(id=p.id, taken_at=p.taken_at, file_at=p.file_at, added_at=came_in) for p in before + after
    ]

    doubt = only(clock_doubts(batch, SOWN))

    assert (doubt.fault, doubt.shift) == (ClockFault.ZONE, HOUR)
    assert set(doubt.photo_ids) == {p.id for p in after}
    assert "missed the change to summer time" in doubt.sentence


def test_copies_that_all_carry_one_time_say_nothing_of_the_zone() -> None:
    assert clock_doubts(a_batch(copied=True, shift=-3 * HOUR), SOWN) == ()


@pytest.mark.parametrize("copied", [False, True])
def test_a_wrong_year_keeps_day_and_time(copied: bool) -> None:
    shift = datetime(2024, 3, 8, 8, 5) - WALK
    doubt = only(clock_doubts(a_batch(shift=shift, copied=copied), SOWN))

    assert (doubt.fault, doubt.shift, doubt.exact) == (ClockFault.YEAR, -shift, True)
    assert "8 March 2024, 08:05, that would be 8 March 2026, 08:05" in doubt.sentence


def test_a_clock_that_was_reset_is_mended_by_its_files() -> None:
    shift = datetime(2010, 1, 1) - WALK
    doubt = only(clock_doubts(a_batch(shift=shift), SOWN))

    assert (doubt.fault, doubt.exact) == (ClockFault.RESET, True)
    assert abs(doubt.shift + shift) <= timedelta(seconds=2)


def test_a_clock_that_was_reset_is_mended_to_about_the_time_of_coming_in_where_files_are_copies() -> None:
    shift = datetime(2010, 1, 1) - WALK
    doubt = only(clock_doubts(a_batch(shift=shift, copied=True), SOWN))

    assert (doubt.fault, doubt.exact) == (ClockFault.RESET, False)
    mended = datetime(2010, 1, 1) + doubt.shift
    assert mended.date() == WALK.date()
    assert "about" in doubt.sentence


@pytest.mark.parametrize("days", [365, 787])
def test_a_camera_that_writes_its_files_by_its_own_wrong_clock_is_doubted(days: int) -> None:
    """A camera without a network: its card carries files of the time that it believes in."""
    batch = [
        replace(photo, file_at=photo.taken_at)
        for photo in a_batch(shift=-timedelta(days=days, hours=0 if days == 365 else 8))
    ]

    doubt = only(clock_doubts(batch, SOWN))

    assert doubt.photo_ids == tuple(photo.id for photo in batch)
    if days == 365:
        assert (doubt.fault, doubt.first + doubt.shift) == (ClockFault.YEAR, WALK)
    else:
        assert doubt.fault is ClockFault.RESET
        assert WALK <= doubt.first + doubt.shift <= CAME_IN


def test_a_day_of_sowing_that_was_noted_too_late_is_no_fault_of_the_phone() -> None:
    week = a_batch(begin=datetime(2026, 2, 22, 8, 5))
    noted = [replace(photo, added_at=CAME_IN) for photo in week]

    assert clock_doubts(noted, SOWN) == ()


def test_files_that_agree_with_a_walk_in_the_night_keep_it_there() -> None:
    night = a_batch(begin=WALK - 6 * HOUR)

    assert clock_doubts(night, SOWN, time(8, 0)) == ()


def test_photos_from_days_to_come_are_brought_back_by_whole_hours() -> None:
    doubt = only(clock_doubts(a_batch(shift=9 * HOUR, copied=True), SOWN))

    assert (doubt.fault, doubt.exact) == (ClockFault.ZONE, False)
    assert doubt.shift % HOUR == timedelta(0)
    assert all(p.taken_at + doubt.shift <= p.added_at for p in a_batch(shift=9 * HOUR, copied=True))


def test_a_clock_that_is_ahead_into_the_night_is_not_told_by_walks_that_nobody_knows() -> None:
    doubt = only(clock_doubts(a_batch(copied=True, shift=14 * HOUR), SOWN))

    assert "taken after coming in" in doubt.sentence
    assert "other days" not in doubt.sentence


def test_a_walk_in_the_night_is_moved_by_whole_hours_to_where_the_others_were() -> None:
    doubt = only(clock_doubts(a_batch(shift=-6 * HOUR, copied=True), SOWN, time(8, 10)))

    assert (doubt.fault, doubt.shift, doubt.exact) == (ClockFault.ZONE, 6 * HOUR, False)
    assert "taken in the night" in doubt.sentence
    assert clock_doubts(a_batch(shift=-6 * HOUR, copied=True), SOWN, None) == ()
    assert clock_doubts(a_batch(begin=WALK + 10 * HOUR, copied=True), SOWN, time(8, 10)) == ()  # an evening


def test_the_usual_time_is_that_of_most_days_and_none_where_they_differ() -> None:
    same = [p for day in range(5) for p in a_batch(begin=WALK + timedelta(days=day, minutes=7 * day))]
    wild = [p for day in range(5) for p in a_batch(begin=WALK + timedelta(days=day, hours=3 * day))]

    usual = usual_time(same)
    assert usual is not None
    assert time(8, 10) <= usual <= time(8, 35)
    assert usual_time(wild) is None
    assert usual_time(a_batch()) is None


def test_a_clock_that_runs_twenty_minutes_late_is_named_and_one_of_five_is_not() -> None:
    doubt = only(clock_doubts(a_batch(shift=timedelta(minutes=-20)), SOWN))

    assert (doubt.fault, doubt.shift) == (ClockFault.RUNS_WRONG, timedelta(minutes=20))
    assert clock_doubts(a_batch(shift=timedelta(minutes=-5)), SOWN) == ()


def test_of_two_cameras_only_the_wrong_one_is_named() -> None:
    right = a_batch()
    wrong = [
        ClockPhoto(id=PhotoId(p.id + 100), taken_at=p.taken_at, file_at=p.file_at, added_at=p.added_at)
        for p in a_batch(shift=2 * HOUR)
    ]

    assert set(only(clock_doubts([*right, *wrong], SOWN)).photo_ids) == {p.id for p in wrong}


def test_two_batches_are_judged_by_themselves() -> None:
    morning = a_batch()
    evening = [
        ClockPhoto(id=PhotoId(p.id + 100), taken_at=p.taken_at, file_at=p.file_at, added_at=p.added_at)
        for p in a_batch(begin=WALK + 10 * HOUR, shift=-HOUR)
    ]

    assert set(only(clock_doubts([*evening, *morning], SOWN)).photo_ids) == {p.id for p in evening}


@given(
    shift=st.timedeltas(timedelta(days=-9000), timedelta(days=3000)),
    copied=st.booleans(),
    own=st.booleans(),
    sown=st.sampled_from([SOWN, ()]),
    n=st.integers(1, 12),
)
@example(shift=3 * HOUR, copied=False, own=True, sown=(), n=4)
def test_whatever_the_clock_says_a_doubt_names_photos_once_and_mends_them_to_before_they_came_in(
    shift: timedelta, copied: bool, own: bool, sown: tuple[Grown, ...], n: int
) -> None:
    batch = a_batch(shift=shift, copied=copied, n=n)
    if own:  # the camera writes its files by its own clock
        batch = [replace(photo, file_at=photo.taken_at) for photo in batch]
    doubts = clock_doubts(batch, sown)

    named = [photo for doubt in doubts for photo in doubt.photo_ids]
    assert len(named) == len(set(named))
    taken = {photo.id: photo for photo in batch}
    for doubt in doubts:
        for photo in doubt.photo_ids:
            assert taken[photo].taken_at + doubt.shift <= taken[photo].added_at + timedelta(minutes=5)


# --- in the book


def a_wrong_walk(book: Book, phone: Path, year: int = 2024) -> list[PhotoId]:
    """Three trays with tags, photographed by a camera with another year; files know better."""
    ids = []
    for n in (1, 2, 3):
        taken = datetime(2026, 3, 8, 8, n)
        note = a_note(phone, f"{n}.jpg", tag=9 + n, taken_at=taken.replace(year=year).isoformat())
        os.utime(note, (taken.timestamp(), taken.timestamp()))
        fate = bring(book, note)
        ids.append(fate.photo_id)
    return ids


def test_a_batch_is_mended_in_one_step_finds_its_trays_and_can_be_taken_back(book: Book, phone: Path) -> None:
    photos = a_wrong_walk(book, phone)
    assert [book.photo(photo).tray_code for photo in photos] == [None] * 3

    doubt = only(book.clock_doubts())
    fates = book.mend_clock(doubt.photo_ids, doubt.shift)

    assert [fate.sentence for fate in fates] == [
        f"A{n}, matched by its tag, coverage 55 %" for n in (1, 2, 3)
    ]
    assert book.photo(photos[0]).taken_at == datetime(2026, 3, 8, 8, 1)
    assert camera_time(book, photos[0]) == datetime(2024, 3, 8, 8, 1)
    assert book.clock_doubts() == ()

    assert book.undo() == "clock of 3 photos mended"
    assert [book.photo(photo).tray_code for photo in photos] == [None] * 3
    assert camera_time(book, photos[0]) is None
    book.redo()
    assert book.photo(photos[2]).tray_code == "A3"


@pytest.fixture
def at_berlin(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    if not hasattr(clock, "tzset"):
        pytest.skip("the zone of this system cannot be set")
    monkeypatch.setenv("TZ", "CET-1CEST,M3.5.0,M10.5.0/3")
    clock.tzset()
    yield
    monkeypatch.undo()
    clock.tzset()


def an_evening_walk(book: Book, phone: Path, zone: float) -> list[PhotoId]:
    """Half past ten in the evening of 8 March at the rack, by a phone of some zone; its files are copies."""
    fates = []
    for n in (1, 2, 3):
        taken = datetime(2026, 3, 8, 22, 30 + n) + timedelta(hours=zone - 1)
        fates.append(bring(book, a_note(phone, f"{n}.jpg", tag=9 + n, taken_at=taken.isoformat(), zone=zone)))
    return [fate.photo_id for fate in fates]


@pytest.mark.usefixtures("at_berlin")
@pytest.mark.parametrize("zone", [3.0, -9.0, 6.5])
def test_a_phone_in_another_zone_is_asked_about_though_its_files_are_copies(
    book: Book, phone: Path, zone: float
) -> None:
    photos = an_evening_walk(book, phone, zone)

    doubt = only(book.clock_doubts())
    book.mend_clock(doubt.photo_ids, doubt.shift)

    assert (doubt.fault, doubt.shift) == (ClockFault.ZONE, timedelta(hours=1 - zone))
    assert book.photo(photos[0]).taken_at == datetime(2026, 3, 8, 22, 31)
    assert book.clock_doubts() == ()


@pytest.mark.usefixtures("at_berlin")
def test_files_still_tell_that_a_phone_in_the_zone_of_the_rack_runs_wrong(book: Book, phone: Path) -> None:
    for n in (1, 2, 3):
        taken = datetime(2026, 3, 8, 22, 30 + n)
        note = a_note(phone, f"{n}.jpg", tag=9 + n, taken_at=taken.isoformat(), zone=1.0)
        os.utime(note, (taken.timestamp() + 25 * 60, taken.timestamp() + 25 * 60))
        bring(book, note)

    assert only(book.clock_doubts()).shift == timedelta(minutes=25)


@pytest.mark.usefixtures("at_berlin")
def test_a_phone_in_the_zone_of_the_rack_is_believed(book: Book, phone: Path) -> None:
    an_evening_walk(book, phone, 1.0)

    assert book.clock_doubts() == ()


def test_mended_twice_the_first_time_of_the_camera_stays(book: Book, phone: Path) -> None:
    photos = a_wrong_walk(book, phone)

    book.mend_clock(photos, HOUR)
    book.mend_clock(photos, HOUR)

    assert camera_time(book, photos[1]) == datetime(2024, 3, 8, 8, 2)
    assert book.photo(photos[1]).taken_at == datetime(2024, 3, 8, 10, 2)


def test_a_clock_that_is_believed_is_not_asked_about_again(book: Book, phone: Path) -> None:
    photos = a_wrong_walk(book, phone)

    book.believe_clock(photos)

    assert book.clock_doubts() == ()
    assert book.photo(photos[0]).taken_at.year == 2024
    book.undo()
    assert len(book.clock_doubts()) == 1


def test_a_photo_that_a_person_has_matched_keeps_its_tray(book: Book, phone: Path) -> None:
    photos = a_wrong_walk(book, phone)
    other = book.trays()[2].id
    book.match(photos[0], other)

    book.mend_clock(photos, datetime(2026, 3, 8) - datetime(2024, 3, 8))

    assert book.photo(photos[0]).tray_id == other


def test_photos_of_a_tray_that_has_ended_since_are_left_alone(book: Book, phone: Path) -> None:
    # a month ago: the tray that they show was harvested, the trays that grow now were sown later
    old = book.add_tray(a_tray("Z1", sown_at=datetime(2026, 1, 1, 9), tag_number=77))
    for n in (1, 2):
        bring(book, a_note(phone, f"z{n}.jpg", tag=77, taken_at=f"2026-01-08T08:0{n}:00"))
    book.finish_tray(old, datetime(2026, 1, 12, 9))

    assert book.clock_doubts() == ()


def test_photos_that_came_in_while_other_trays_grew_are_held_against_those() -> None:
    january = a_batch(copied=True, begin=datetime(2026, 1, 8, 8))
    grown = (Grown(sown=date(2026, 1, 1), done=date(2026, 1, 12)), *SOWN)

    assert clock_doubts(january, grown) == ()
    late = a_batch(copied=True, begin=datetime(2026, 1, 8, 8), shift=timedelta(days=-30))
    assert len(clock_doubts(late, grown)) == 1


def test_a_tag_that_was_on_last_years_tray_does_not_hide_a_wrong_year(book: Book, phone: Path) -> None:
    old = book.add_tray(a_tray("A1", sown_at=datetime(2025, 3, 1, 9), tag_number=77))
    book.finish_tray(old, datetime(2025, 3, 12, 9))
    new = book.add_tray(a_tray("A1", tag_number=77))
    taken = datetime(2026, 3, 8, 8)
    note = a_note(phone, "wrong.jpg", tag=77, taken_at=taken.replace(year=2025).isoformat())
    os.utime(note, (taken.timestamp() + 3600, taken.timestamp() + 3600))
    photo = bring(book, note).photo_id
    assert book.photo(photo).tray_id == old

    doubt = only(book.clock_doubts())
    assert doubt.fault is ClockFault.YEAR
    book.mend_clock(doubt.photo_ids, doubt.shift)

    assert book.photo(photo).tray_id == new


def test_a_doubt_says_when_the_first_and_the_last_photo_were_taken_and_how_far_they_may_be_moved() -> None:
    doubt = only(clock_doubts(a_batch(shift=2 * HOUR), SOWN))

    assert doubt.first == WALK + 2 * HOUR
    assert doubt.last == doubt.first + timedelta(seconds=9 * 25)
    assert doubt.most == timedelta(minutes=35) - 2 * HOUR + timedelta(minutes=5) - timedelta(seconds=9 * 24)


def test_suspects_of_a_mended_photo_count_by_the_day_of_the_tray_it_is_found_to_show(
    book: Book, phone: Path
) -> None:
    from vision.suspect import UNKNOWN_WHITE

    white = [{"why": UNKNOWN_WHITE, "white": True, "confidence": 0.5}]
    note = a_note(phone, "a.jpg", tag=10, taken_at="2024-03-03T08:00:00", suspects=white)
    photo = bring(book, note).photo_id
    before = book.score(photo).suspects[0]

    book.mend_clock([photo], datetime(2026, 3, 3) - datetime(2024, 3, 3))

    after = book.score(photo).suspects[0]
    assert (after.confidence, after.why) != (before.confidence, before.why)
    book.undo()
    assert book.score(photo).suspects[0] == before


# --- cameras


def by(camera: str | None, photos: list[ClockPhoto], first_id: int = 1) -> list[ClockPhoto]:
    """The same photos by a camera that names itself."""
    return [replace(p, camera=camera, id=PhotoId(first_id + n)) for n, p in enumerate(photos)]


BOX, TIN = "Pinhole Box", "Pinhole Tin"


def test_of_two_phones_on_one_walk_only_the_one_whose_clock_is_wrong_is_doubted() -> None:
    # copies of one moment: without the cameras' names the day photos of one hide the night of the other
    right = by(BOX, a_batch(copied=True))
    wrong = by(TIN, a_batch(copied=True, shift=-6 * HOUR), 101)

    doubt = only(clock_doubts([*right, *wrong], SOWN, time(8, 10)))

    assert doubt.camera == TIN
    assert set(doubt.photo_ids) == {p.id for p in wrong}
    assert doubt.shift == 6 * HOUR
    assert doubt.sentence.startswith("10 photos by Pinhole Tin: taken in the night")
    nameless = [replace(p, camera=None) for p in (*right, *wrong)]
    assert clock_doubts(nameless, SOWN, time(8, 10)) == ()


def test_two_phones_that_are_wrong_each_in_its_way_are_two_questions() -> None:
    one = by(BOX, a_batch(copied=True, shift=datetime(2010, 1, 1) - WALK))
    other = by(TIN, a_batch(copied=True, shift=datetime(2024, 3, 8, 8, 5) - WALK), 101)

    doubts = {doubt.camera: doubt for doubt in clock_doubts([*one, *other], SOWN)}

    assert {camera: doubt.fault for camera, doubt in doubts.items()} == {
        BOX: ClockFault.RESET,
        TIN: ClockFault.YEAR,
    }
    assert set(doubts[TIN].photo_ids) == {p.id for p in other}


def test_what_is_wrong_of_some_photos_of_a_walk_is_wrong_of_all_by_the_same_camera() -> None:
    # 38 minutes ahead: of a walk from 8:05 to 8:09 that came in at 8:40 only the later half is impossible
    walk = [replace(p, added_at=CAME_IN) for p in a_batch(copied=True, shift=timedelta(minutes=38))]
    assert len(only(clock_doubts(walk, SOWN)).photo_ids) < len(walk)

    assert len(only(clock_doubts(by(BOX, walk), SOWN)).photo_ids) == len(walk)


def test_a_photo_whose_file_was_touched_later_shares_the_clock_of_its_walk() -> None:
    walk = by(BOX, a_batch(shift=2 * HOUR))
    walk[4] = replace(walk[4], file_at=CAME_IN)
    nameless = [replace(p, camera=None) for p in walk]

    assert len(only(clock_doubts(walk, SOWN)).photo_ids) == 10
    assert len(clock_doubts(nameless, SOWN)) == 2  # the same clock twice, the second time as a guess


def test_photos_of_another_day_by_the_same_camera_may_be_from_before_its_clock_was_set() -> None:
    before = by(BOX, [replace(p, added_at=CAME_IN) for p in a_batch(begin=WALK - timedelta(days=1))])
    after = by(BOX, [replace(p, added_at=CAME_IN) for p in a_batch(shift=3 * HOUR)], 101)

    assert set(only(clock_doubts([*before, *after], SOWN)).photo_ids) == {p.id for p in after}


def test_a_photo_that_does_not_name_its_camera_is_no_photo_of_the_camera_that_is_wrong() -> None:
    wrong = by(TIN, a_batch(copied=True, shift=-6 * HOUR), 101)
    nameless = by(None, a_batch(copied=True, n=3, shift=-6 * HOUR, begin=WALK + timedelta(minutes=2)))

    doubts = clock_doubts([*nameless, *wrong], SOWN, time(8, 10))

    assert {doubt.camera: set(doubt.photo_ids) for doubt in doubts} == {
        None: {p.id for p in nameless},
        TIN: {p.id for p in wrong},
    }


@given(
    shifts=st.lists(st.timedeltas(timedelta(days=-900), timedelta(days=900)), min_size=1, max_size=3),
    copied=st.booleans(),
)
def test_whatever_several_cameras_say_a_doubt_names_photos_of_one_camera_once(
    shifts: list[timedelta], copied: bool
) -> None:
    batch = [
        photo
        for n, shift in enumerate(shifts)
        for photo in by(f"box {n}", a_batch(shift=shift, copied=copied), 100 * n + 1)
    ]
    cameras = {photo.id: photo.camera for photo in batch}

    doubts = clock_doubts(batch, SOWN, time(8, 10))

    named = [photo for doubt in doubts for photo in doubt.photo_ids]
    assert len(named) == len(set(named))
    for doubt in doubts:
        assert {cameras[photo] for photo in doubt.photo_ids} == {doubt.camera}


def test_the_book_keeps_which_camera_took_a_photo_and_asks_by_camera(book: Book, phone: Path) -> None:
    wrong = [
        bring(book, a_note(phone, f"{n}.jpg", taken_at=f"2024-03-08T08:0{n}:00", camera=TIN)).photo_id
        for n in (1, 2)
    ]
    bring(book, a_note(phone, "3.jpg", taken_at="2026-03-08T08:03:00", camera=BOX))
    reset = bring(book, a_note(phone, "4.jpg", taken_at="2010-01-01T00:04:00")).photo_id

    doubts = {doubt.camera: set(doubt.photo_ids) for doubt in book.clock_doubts()}

    assert doubts == {TIN: set(wrong), None: {reset}}


@pytest.mark.parametrize(
    ("count", "camera", "told"),
    [
        (1, None, "1 photo"),
        (2, None, "2 photos"),
        (1, "Box 2", "1 photo by Box 2"),
        (3, "Box 2", "3 photos by Box 2"),
    ],
)
def test_photos_of_a_doubted_clock_are_counted_in_words(count: int, camera: str | None, told: str) -> None:
    assert photos_by(count, camera) == told
