"""Two photos of one tray in a book, drawn so that what grew and what vanished is known."""

import hashlib
import shutil
from collections.abc import Sequence
from dataclasses import replace
from datetime import date, datetime, timedelta
from functools import cache
from pathlib import Path

import numpy as np
import pytest

from data.book import Book
from data.chapters.between import Between, between
from data.look import LookKind
from data.looklist.mold import looks_at_mold
from data.photos.judged import Judged
from data.records import KeptSuspect, Look, PhotoId, Said, Urgency
from data.watch import read_looks
from tests.data.builders import Patch, a_score, a_tray
from vision.alignment import AS_PLACED, Alignment
from vision.history import Became
from vision.picture import encode_jpeg, encode_labels
from vision.reason import RETAKE, Reason
from vision.tissue import Label

Box = tuple[int, int, int, int]  # left, top, right, bottom, mm


def medium(seed: int = 1) -> np.ndarray:
    """Grain that two photos of one tray share, so that they can be laid on each other."""
    grain = np.random.default_rng(seed).normal(0, 22, (254, 508))
    return (
        np.clip(110 + np.kron(grain, np.ones((2, 2)))[..., None], 0, 255).repeat(3, axis=2).astype(np.uint8)
    )


@cache
def top_view(turned: bool) -> bytes:
    top = medium()
    return encode_jpeg(np.ascontiguousarray(top[::-1, ::-1]) if turned else top)


def photo_on(
    book: Book,
    day: int,
    leaves: Sequence[Box] = (),
    suspects: Sequence[Patch] = (),
    hour: int = 12,
    sure: float = 1.0,
    method: str = "plain 1",
    tag: int | None = 10,
    turned: bool = False,
    inner_mm: tuple[float, float] = (508.0, 254.0),
    notes: tuple[Reason, ...] = (),
) -> PhotoId:
    """A photo of tray A1 (tag 10) at noon of a day in March 2026, kept as intake keeps it.

    Of a tray that was put in turned round, leaves and suspects are told as the photo shows them.
    """
    labels = np.full((508, 1016), Label.MEDIUM, np.uint8)
    for left, upper, right, lower in leaves:
        labels[2 * upper : 2 * lower, 2 * left : 2 * right] = Label.GREEN
    taken_at = datetime(2026, 3, day, hour)
    name = f"{taken_at:%d-%H}.jpg"
    source = book.folder.parent / name
    source.write_bytes(name.encode() + method.encode())
    coverage = 100 * float((labels == Label.GREEN).mean())
    score = a_score(coverage, suspects=suspects, confidence=sure, method=method)
    score.inner_mm = inner_mm
    score.notes = notes
    judged = Judged(
        name=name,
        digest=hashlib.sha256(source.read_bytes()).hexdigest(),
        taken_at=taken_at,
        tag_number=tag,
        score=score,
        top_view=top_view(turned),
        labels=encode_labels(labels),
        thumbnail=b"thumb",
    )
    fate = book.keep(judged, source)
    assert fate.photo_id is not None
    return fate.photo_id


def the_suspect(book: Book, photo: PhotoId) -> KeptSuspect:
    score = book.score(photo)
    assert score is not None
    (suspect,) = score.suspects
    return suspect


def told(book: Book, earlier: PhotoId, later: PhotoId) -> Between:
    found = between(book, earlier, later)
    assert found is not None
    return found


# --- what grew, what vanished


def test_canopy_that_grew_and_canopy_that_vanished_are_told_with_their_places(book: Book) -> None:
    first = photo_on(book, 6, leaves=[(50, 50, 150, 150), (300, 50, 350, 100)])
    second = photo_on(book, 7, leaves=[(50, 50, 250, 150)])

    found = told(book, first, second)

    assert found.coverage == pytest.approx(100 * (100 * 100 - 50 * 50) / (508 * 254), abs=0.1)
    (gone,) = found.vanished_areas
    assert gone.area_cm2 == pytest.approx(25.0, rel=0.02)
    assert (gone.x_mm, gone.y_mm) == pytest.approx((325.0, 75.0), abs=1.0)
    assert found.sentences[0].startswith("Coverage rose by 5.8 points")
    assert "25 cm²" in " ".join(found.sentences)


def test_places_and_areas_on_a_small_tray_are_its_own(book: Book) -> None:
    small = (385.0, 195.0)
    first = photo_on(book, 6, leaves=[(50, 50, 150, 150), (300, 50, 350, 100)], inner_mm=small)
    second = photo_on(book, 7, leaves=[(50, 50, 150, 150)], inner_mm=small)

    (gone,) = told(book, first, second).vanished_areas

    assert gone.area_cm2 == pytest.approx(25.0 * 385 * 195 / (508 * 254), rel=0.02)
    assert (gone.x_mm, gone.y_mm) == pytest.approx((325.0 / 508 * 385, 75.0 / 254 * 195), abs=1.0)


def test_mold_on_a_small_tray_put_in_turned_round_is_known_again_and_does_not_close(book: Book) -> None:
    small = (385.0, 195.0)
    first = photo_on(book, 6, suspects=[Patch(x_mm=60.0, y_mm=50.0, area_cm2=4.0)], inner_mm=small)
    photo_on(book, 7, suspects=[Patch(x_mm=325.0, y_mm=145.0, area_cm2=7.0)], turned=True, inner_mm=small)

    assert the_suspect(book, first).is_open
    (look,) = looks(book)
    assert "grown from 4.0 to 7.0 cm² since 6 March" in look.sentence


def test_a_tray_that_stands_still_says_so_in_one_sentence(book: Book) -> None:
    first, second = (photo_on(book, day, leaves=[(50, 50, 150, 150)]) for day in (6, 7))

    assert told(book, first, second).sentences == ("Coverage stayed within a point.",)


def test_photos_by_two_methods_are_not_compared(book: Book) -> None:
    first, second = photo_on(book, 6), photo_on(book, 7, method="plain 2")

    found = told(book, first, second)

    assert found.coverage is None
    assert "different methods" in found.sentences[0]


def test_a_photo_whose_corners_are_not_sure_is_not_compared(book: Book) -> None:
    assert between(book, photo_on(book, 6, sure=0.2), photo_on(book, 7)) is None


def test_pictures_that_the_cache_has_lost_are_no_mistake(book: Book) -> None:
    first, second = photo_on(book, 6), photo_on(book, 7)
    pictures = book.pictures(first)
    assert pictures is not None
    pictures.labels.unlink()

    assert between(book, first, second) is None


def test_a_suspect_that_grew_names_itself_on_both_photos(book: Book) -> None:
    first = photo_on(book, 6, suspects=[Patch(area_cm2=3.0)])
    second = photo_on(book, 7, suspects=[Patch(area_cm2=6.0)])

    (course,) = told(book, first, second).suspects

    assert course.became is Became.LARGER
    assert course.earlier == (the_suspect(book, first).id,)
    assert course.later == (the_suspect(book, second).id,)
    assert course.sentence == "A patch grew from 3.0 to 6.0 cm². Mold grows: look at it now."


# --- closing


def test_a_suspect_that_the_next_day_no_longer_shows_closes_itself_with_a_note(book: Book) -> None:
    first = photo_on(book, 6, suspects=[Patch(area_cm2=3.0)])
    photo_on(book, 7)

    suspect = the_suspect(book, first)

    assert not suspect.is_open
    assert suspect.closed_why.startswith("No longer seen on 07 March, 3.0 cm² before. Root hairs fade")
    assert book.undo_text() is None


def test_a_suspect_closes_also_when_the_later_photo_was_brought_in_first(book: Book) -> None:
    photo_on(book, 7)

    assert not the_suspect(book, photo_on(book, 6, suspects=[Patch()])).is_open


def test_a_suspect_under_leaves_stays_open(book: Book) -> None:
    first = photo_on(book, 6, suspects=[Patch(x_mm=100.0, y_mm=50.0)])
    second = photo_on(book, 7, leaves=[(60, 20, 140, 90)])

    assert the_suspect(book, first).is_open
    (course,) = told(book, first, second).suspects
    assert course.under_leaves
    assert "lift the leaves" in course.sentence


@pytest.mark.parametrize("word", list(Said))
def test_what_a_person_said_is_never_overruled(book: Book, word: Said) -> None:
    first = photo_on(book, 6, suspects=[Patch()])
    book.say(the_suspect(book, first).id, word)
    photo_on(book, 7)

    suspect = the_suspect(book, first)

    assert (suspect.said, suspect.closed_at, suspect.closed_why) == (word, None, "")


@pytest.mark.parametrize(
    "later",
    [{"day": 6, "hour": 18}, {"day": 7, "sure": 0.2}, {"day": 7, "method": "plain 2"}],
    ids=["same day", "unsure corners", "other method"],
)
def test_nothing_closes_by_a_photo_that_cannot_be_compared(book: Book, later: dict) -> None:
    first = photo_on(book, 6, suspects=[Patch()])
    photo_on(book, **later)

    assert the_suspect(book, first).is_open


@pytest.mark.parametrize("doubt", sorted(RETAKE))
def test_nothing_closes_by_a_photo_that_hides_part_of_the_tray_or_its_colours(
    book: Book, doubt: Reason
) -> None:
    """Mold under a hand, in glare or without its colour is not gone."""
    first = photo_on(book, 6, suspects=[Patch()])
    photo_on(book, 7, notes=(doubt,))

    assert the_suspect(book, first).is_open


def test_the_next_photo_without_doubts_closes_what_one_in_doubt_had_to_leave_open(book: Book) -> None:
    first = photo_on(book, 6, suspects=[Patch()])
    photo_on(book, 7, notes=(Reason.GLARE,))
    photo_on(book, 8)

    assert not the_suspect(book, first).is_open
    assert looks(book) == []


def test_a_photo_taken_again_on_the_same_day_closes_it_too(book: Book) -> None:
    first = photo_on(book, 6, suspects=[Patch()])
    photo_on(book, 7, hour=8, notes=(Reason.HIDDEN,))
    photo_on(book, 7, hour=9)

    assert not the_suspect(book, first).is_open


def test_nothing_closes_by_looking_back_further_than_a_photo_without_doubts(book: Book) -> None:
    """On the day between, leaves lay over it: a person has to lift them."""
    first = photo_on(book, 6, suspects=[PATCH])
    photo_on(book, 7, leaves=LEAVES)
    photo_on(book, 8)

    assert the_suspect(book, first).is_open


def test_a_patch_that_grew_is_urgent_over_a_day_whose_photo_was_in_doubt(book: Book) -> None:
    photo_on(book, 6, suspects=[PATCH])
    photo_on(book, 7, notes=(Reason.FADED,))
    photo_on(book, 8, suspects=[replace(PATCH, area_cm2=6.0)])

    (look,) = looks(book)

    assert "grown from 3.0 to 6.0 cm² since 6 March" in look.sentence
    assert look.urgency is Urgency.NOW


def test_a_patch_that_comes_back_is_a_new_suspect(book: Book) -> None:
    photo_on(book, 6, suspects=[Patch(confidence=0.4)])
    photo_on(book, 7)
    again = photo_on(book, 8, suspects=[Patch(confidence=0.4)])

    assert the_suspect(book, again).is_open
    tray = book.trays()[0]
    (look,) = looks_at_mold(
        tray, book.seen_suspects(), [n for n in book.morning().numbers if n.tray_id == tray.id]
    )
    assert look.since == datetime(2026, 3, 8).date()


def test_a_patch_that_stays_does_not_close(book: Book, tmp_path: Path) -> None:
    first = photo_on(book, 6, suspects=[Patch()])
    photo_on(book, 7, suspects=[Patch(x_mm=104.0)])

    assert the_suspect(book, first).is_open


# --- the look list rests on it


def test_photos_that_lie_on_each_other_less_than_exactly_say_so(
    book: Book, monkeypatch: pytest.MonkeyPatch
) -> None:
    first, second = photo_on(book, 6), photo_on(book, 7)
    words = "Leaves have moved unlike each other: single places are told to within 2 mm."
    found = between(book, first, second)
    assert found is not None
    assert words not in map(str, found.sentences)

    rough = Alignment(matrix=AS_PLACED, turned=False, error_mm=1.8)
    monkeypatch.setattr("vision.alignment.align", lambda _earlier, _later: rough)
    found = between(book, first, second)

    assert found is not None
    assert words in map(str, found.sentences)


def looks(book: Book) -> list[Look]:
    tray = book.trays()[0]
    photos = [one for one in book.morning().numbers if one.tray_id == tray.id]
    return list(looks_at_mold(tray, book.seen_suspects(), photos))


def without_what_was_carried(book: Book) -> None:
    """As if the photos had never been laid on each other."""
    with book.writing() as db:
        db.table("setting").delete_where("name LIKE 'carried %'")


def test_mold_that_grew_on_a_tray_put_in_turned_round_is_urgent_without_any_picture(book: Book) -> None:
    photo_on(book, 6, suspects=[Patch(x_mm=100.0, y_mm=50.0, area_cm2=4.0)])
    photo_on(book, 7, suspects=[Patch(x_mm=408.0, y_mm=204.0, area_cm2=7.0)], turned=True)
    shutil.rmtree(book.folder / "cache")

    (look,) = looks(book)
    assert look.urgency is Urgency.NOW
    assert "grown from 4.0 to 7.0 cm² since 6 March" in look.sentence
    assert look.since == date(2026, 3, 6)

    without_what_was_carried(book)
    (look,) = looks(book)
    assert look.urgency is not Urgency.NOW


def test_a_faint_patch_is_told_once_it_has_grown_and_not_before(book: Book) -> None:
    """Faint ones alone were told on trays without mold, in `models/mold.md`: too many to call for each."""
    photo_on(book, 6, suspects=[Patch(area_cm2=1.5, confidence=0.2)])
    photo_on(book, 7, suspects=[Patch(area_cm2=1.6, confidence=0.2)])
    assert looks(book) == []

    photo_on(book, 8, suspects=[Patch(area_cm2=2.6, confidence=0.25)])

    (look,) = looks(book)
    assert look.urgency is Urgency.TODAY
    assert "grown from 1.6 to 2.6 cm² since 7 March" in look.sentence


def test_a_faint_patch_that_has_grown_stays_told_though_it_stands_still_the_next_day(book: Book) -> None:
    for day, area in ((6, 1.6), (7, 2.6), (8, 2.6)):
        photo_on(book, day, suspects=[Patch(area_cm2=area, confidence=0.2)])

    (look,) = looks(book)
    assert look.urgency is Urgency.TODAY
    assert "grown from 1.6 to 2.6 cm² since 6 March" in look.sentence


def test_a_faint_patch_that_grows_too_slowly_for_one_day_is_told_all_the_same(book: Book) -> None:
    for day, area in ((6, 1.6), (7, 1.85), (8, 2.1)):
        photo_on(book, day, suspects=[Patch(area_cm2=area, confidence=0.2)])

    (look,) = looks(book)
    assert "grown from 1.6 to 2.1 cm² since 6 March" in look.sentence


@pytest.mark.parametrize(
    ("next_day", "why"),
    [
        ({}, "The newest photo shows no open patch there any more."),
        ({"suspects": [Patch(x_mm=100.0, y_mm=50.0, area_cm2=3.0, confidence=0.2)]}, "is faint and has not"),
    ],
    ids=["gone", "fainter"],
)
def test_a_patch_that_leaves_the_look_list_is_not_said_to_be_gone_where_it_may_still_be_there(
    book: Book, next_day: dict, why: str
) -> None:
    photo_on(book, 6, suspects=[Patch(x_mm=100.0, y_mm=50.0, area_cm2=3.0, confidence=0.5)])
    book.set_setting("today", "2026-03-06")
    assert any(look.what is LookKind.SUSPECT for look in read_looks(book))

    photo_on(book, 7, **next_day)
    book.set_setting("today", "2026-03-07")
    read_looks(book)

    (past,) = (one for one in book.look_history() if one.what is LookKind.SUSPECT)
    assert why in str(past.gone_why)


def test_what_is_doubtful_about_either_photo_is_said_before_what_changed(book: Book) -> None:
    first = photo_on(book, 6, notes=(Reason.DOUBTFUL, Reason.FADED))
    second = photo_on(book, 7, leaves=[(200, 100, 250, 150)], notes=(Reason.GLARE,))

    assert told(book, first, second).sentences[1:3] == (
        f"The earlier photo is in doubt, so what seems to have changed may be that: {Reason.FADED}.",
        f"The later photo is in doubt, so what seems to have changed may be that: {Reason.GLARE}.",
    )


def test_a_patch_that_grew_is_said_before_the_places_that_did(book: Book) -> None:
    """The screen has room for four sentences."""
    first = photo_on(book, 6, leaves=[(300, 20, 360, 90)], suspects=[PATCH])
    second = photo_on(book, 7, leaves=[(200, 100, 250, 150)], suspects=[replace(PATCH, area_cm2=6.0)])

    sentences = told(book, first, second).sentences

    assert sentences[1] == "A patch grew from 3.0 to 6.0 cm². Mold grows: look at it now."
    assert any("vanished" in one for one in sentences[2:])


def test_new_canopy_is_not_said_to_be_all_that_grew(book: Book) -> None:
    """Shoots in rows 8 mm apart that grow from 3 to 6 mm cover far more, and nothing 3 mm away."""
    small, large = (
        [(x, y, x + wide, y + wide) for x in range(40, 460, 8) for y in range(40, 210, 8)] for wide in (3, 6)
    )
    sentences = told(book, photo_on(book, 6, leaves=small), photo_on(book, 7, leaves=large)).sentences

    assert sentences[0].startswith("Coverage rose by 2")
    assert not any("newly covered" in one for one in sentences)


LEAVES = [(60, 20, 140, 90)]  # over the place of the patch below
PATCH = Patch(x_mm=100.0, y_mm=50.0, area_cm2=3.0, confidence=0.5)


def test_a_patch_under_leaves_stays_on_the_look_list_and_says_so_until_a_person_has_looked(
    book: Book,
) -> None:
    first = photo_on(book, 6, suspects=[PATCH])
    photo_on(book, 7, leaves=LEAVES)
    photo_on(book, 8, leaves=LEAVES)

    (look,) = looks(book)

    assert look.sentence == (
        "1 patch that may be mold, the largest 3.0 cm², 10 cm from the left and 5 cm from the far side; last "
        "seen on 6 March, leaves may hide it now; confidence 0.50."
    )
    assert (look.what, look.urgency) == (LookKind.SUSPECT, Urgency.TODAY)
    assert (look.since, look.photo_id) == (date(2026, 3, 6), first)
    assert look.first.startswith("Lift the leaves at the place")

    book.say(the_suspect(book, first).id, Said.NOT_MOLD)
    assert looks(book) == []


def test_a_patch_that_a_photo_in_doubt_does_not_show_stays_on_the_look_list_and_says_so(book: Book) -> None:
    photo_on(book, 6, suspects=[PATCH])
    photo_on(book, 7, notes=(Reason.GLARE,))

    (look,) = looks(book)

    assert look.sentence == (
        "1 patch that may be mold, the largest 3.0 cm², 10 cm from the left and 5 cm from the far side; last "
        "seen on 6 March; the newest photo, which is in doubt, does not tell whether it is gone; confidence "
        "0.50."
    )
    assert look.first.startswith("Look at the place without touching it")


def test_a_patch_that_was_gone_before_leaves_came_over_its_place_is_not_looked_for(book: Book) -> None:
    photo_on(book, 5, suspects=[PATCH])
    photo_on(book, 6, suspects=[PATCH])
    photo_on(book, 7)
    photo_on(book, 8, leaves=LEAVES)

    assert looks(book) == []


def test_a_patch_that_comes_out_from_under_leaves_is_told_once(book: Book) -> None:
    photo_on(book, 6, suspects=[PATCH])
    photo_on(book, 7, leaves=LEAVES)
    last = photo_on(book, 8, suspects=[replace(PATCH, x_mm=106.0)])

    (look,) = looks(book)

    assert look.photo_id == last
    assert "leaves" not in look.sentence


def test_a_faint_patch_under_leaves_is_looked_for_only_if_it_had_grown(book: Book) -> None:
    photo_on(book, 5, suspects=[replace(PATCH, confidence=0.2)])
    photo_on(book, 6, suspects=[replace(PATCH, confidence=0.2, area_cm2=3.1)])
    photo_on(book, 8, leaves=LEAVES)
    assert looks(book) == []

    grown = photo_on(book, 7, suspects=[replace(PATCH, confidence=0.2, area_cm2=6.0)])

    (look,) = looks(book)
    assert look.photo_id == grown
    assert look.since == date(2026, 3, 5)


def test_a_patch_that_a_second_photo_of_its_day_no_longer_showed_is_not_looked_for_under_leaves(
    book: Book,
) -> None:
    photo_on(book, 6, suspects=[PATCH], hour=8)
    photo_on(book, 6, hour=12)
    photo_on(book, 7, leaves=LEAVES)

    assert looks(book) == []


def test_a_patch_on_the_first_photo_of_today_is_told_though_a_second_one_does_not_show_it(book: Book) -> None:
    """A tray photographed twice: possible mold of eight o'clock was told by nobody."""
    first = photo_on(book, 6, suspects=[PATCH], hour=8)
    second = photo_on(book, 6, leaves=LEAVES, hour=12)
    assert first != second

    (look,) = looks(book)

    assert (look.what, look.photo_id) == (LookKind.SUSPECT, first)
    assert "; on an earlier photo of 6 March, not on the newest; confidence 0.50." in look.sentence
    book.say(the_suspect(book, first).id, Said.NOT_MOLD)
    assert looks(book) == []


def test_a_patch_that_both_photos_of_today_show_is_told_once(book: Book) -> None:
    photo_on(book, 6, suspects=[PATCH], hour=8)
    second = photo_on(book, 6, suspects=[replace(PATCH, x_mm=103.0)], hour=12)

    (look,) = looks(book)
    assert look.photo_id == second
    assert "earlier photo" not in look.sentence

    book.say(the_suspect(book, second).id, Said.NOT_MOLD)
    assert looks(book) == []


def test_not_mold_is_remembered_of_a_patch_although_its_tray_was_turned_round(book: Book) -> None:
    first = photo_on(book, 6, suspects=[Patch(x_mm=100.0, y_mm=50.0)])
    book.say(the_suspect(book, first).id, Said.NOT_MOLD)
    photo_on(book, 7, suspects=[Patch(x_mm=408.0, y_mm=204.0)], turned=True)
    photo_on(book, 8, suspects=[Patch(x_mm=408.0, y_mm=204.0, area_cm2=6.5)], turned=True)

    assert looks(book) == []
    without_what_was_carried(book)
    assert len(looks(book)) == 1


def test_a_patch_of_a_turned_tray_that_faded_closes_and_one_where_another_was_is_new(book: Book) -> None:
    first = photo_on(book, 6, suspects=[Patch(x_mm=100.0, y_mm=50.0, area_cm2=3.0)])
    photo_on(book, 7, suspects=[Patch(x_mm=100.0, y_mm=50.0, area_cm2=7.0)], turned=True)

    assert "No longer seen" in the_suspect(book, first).closed_why
    (look,) = looks(book)
    assert look.urgency is not Urgency.NOW
    assert "grown" not in look.sentence


def test_what_was_carried_is_found_again_once_both_photos_are_scored_by_another_method(book: Book) -> None:
    there, turned = Patch(x_mm=100.0, y_mm=50.0, area_cm2=4.0), Patch(x_mm=408.0, y_mm=204.0, area_cm2=7.0)
    first = photo_on(book, 6, suspects=[there])
    second = photo_on(book, 7, suspects=[turned], turned=True)

    for photo, patch in ((first, there), (second, turned)):
        pictures = book.pictures(photo)
        assert pictures is not None
        again = Judged(
            name="again",
            digest=None,
            taken_at=None,
            tag_number=10,
            score=a_score(0.0, suspects=[patch], method="plain 2"),
            top_view=pictures.top_view.read_bytes(),
            labels=pictures.labels.read_bytes(),
            thumbnail=b"thumb",
        )
        assert book.keep_again(photo, again)

    (look,) = looks(book)
    assert look.urgency is Urgency.NOW
    assert the_suspect(book, second).id in {seen.id for seen in book.seen_suspects() if seen.was}


def test_three_days_in_a_row_are_one_patch(book: Book) -> None:
    for day, area in ((5, 2.0), (6, 4.0), (7, 7.0)):
        turned = day == 6
        at = {"x_mm": 408.0, "y_mm": 204.0} if turned else {"x_mm": 100.0, "y_mm": 50.0}
        photo_on(book, day, suspects=[Patch(area_cm2=area, **at)], turned=turned)

    (look,) = looks(book)
    assert (look.urgency, look.since) == (Urgency.NOW, date(2026, 3, 5))


# --- a photo that turns out to be of another tray


@pytest.mark.parametrize("how", ["moved", "left out", "clock"])
@pytest.mark.parametrize("next_day", ["none", "gone", "there"])
def test_what_a_photo_closed_is_open_again_once_it_is_not_of_that_tray(
    book: Book, how: str, next_day: str
) -> None:
    other = next(tray.id for tray in book.trays() if tray.code == "A2")
    first = photo_on(book, 6, suspects=[Patch(area_cm2=3.0)])
    wrong = photo_on(book, 7)
    if next_day != "none":
        photo_on(book, 8, suspects=[Patch(area_cm2=3.1)] if next_day == "there" else [])
    closed = the_suspect(book, first)
    assert "No longer seen on 07 March" in closed.closed_why

    if how == "moved":
        book.match(wrong, other)
    elif how == "left out":
        book.leave_out(wrong)
    else:
        book.mend_clock([wrong], timedelta(days=-3))  # so it was taken before

    if next_day == "gone":
        assert "No longer seen on 08 March" in the_suspect(book, first).closed_why
    else:
        assert the_suspect(book, first).is_open
        assert the_suspect(book, first).closed_why == ""
    book.undo()
    assert the_suspect(book, first) == closed


def test_another_photo_of_the_same_day_still_closes_what_it_no_longer_shows(book: Book) -> None:
    first = photo_on(book, 6, suspects=[Patch(area_cm2=3.0)])
    wrong, right = photo_on(book, 7, hour=11), photo_on(book, 7, hour=12)

    book.leave_out(wrong)
    assert not the_suspect(book, first).is_open

    book.leave_out(right)
    assert the_suspect(book, first).is_open


# --- root hairs


def test_white_on_a_day_of_root_hairs_is_kept_as_less_sure_than_white_on_a_later_day(book: Book) -> None:
    """The trays are sown on 1 March."""
    white = Patch(confidence=0.45, white=True, why="white web; bright white, so it may be root hairs")

    early, late = (the_suspect(book, photo_on(book, day, suspects=[white])) for day in (4, 9))

    assert early.confidence < 0.45 < late.confidence
    assert "on day 3, when root hairs stand in fans" in early.why
    assert "on day 8 root hairs have mostly faded" in late.why


def test_the_reason_of_a_kept_suspect_names_the_medium_of_its_tray(book: Book) -> None:
    photo = photo_on(book, 6, suspects=[Patch(why="grey web 14 mm wide on the bare medium")])

    assert the_suspect(book, photo).why == "grey web 14 mm wide on the bare coir"


def test_a_photo_that_a_person_matches_is_judged_by_the_day_of_its_tray_until_that_is_undone(
    book: Book,
) -> None:
    white = Patch(confidence=0.45, white=True, why="white web; bright white, so it may be root hairs")
    tray = next(tray.id for tray in book.trays() if tray.code == "A1")
    photo = photo_on(book, 4, suspects=[white], tag=None)
    assert the_suspect(book, photo).confidence == 0.45

    book.match(photo, tray)

    assert the_suspect(book, photo).confidence < 0.45
    assert "on day 3, when root hairs stand in fans" in the_suspect(book, photo).why
    once = the_suspect(book, photo)
    book.match(photo, tray)
    assert the_suspect(book, photo) == once
    book.undo()
    book.undo()
    assert the_suspect(book, photo).confidence == 0.45


def test_a_photo_that_moves_to_another_tray_is_judged_by_day_and_medium_of_that_one(book: Book) -> None:
    """On another tray, sown nine days earlier on hemp, root hairs have faded by then."""
    why = "white web 14 mm wide on the bare medium; lighter than the medium around; "
    white = Patch(confidence=0.45, white=True, why=why + "bright white, so it may be root hairs")
    other = book.add_tray(a_tray("B9", medium="hemp", sown_at=datetime(2026, 2, 20, 9)))
    photo = photo_on(book, 4, suspects=[white])
    first = the_suspect(book, photo)
    assert "on the bare coir; lighter than the coir around; bright white on day 3" in first.why

    book.match(photo, other)

    moved = the_suspect(book, photo)
    assert "on the bare hemp; lighter than the hemp around; bright white, yet on day 12" in moved.why
    assert first.confidence < 0.45 < moved.confidence == pytest.approx(0.72)
    book.undo()
    assert the_suspect(book, photo) == first


@pytest.mark.parametrize(("days", "why"), [(5, "yet on day 8 root hairs"), (-10, "so it may be root hairs")])
def test_a_photo_whose_clock_is_mended_is_judged_by_the_day_that_it_was_taken_on(
    book: Book, days: int, why: str
) -> None:
    """Ten days earlier its tag was on no tray: then nothing is known of its day and medium."""
    white = Patch(confidence=0.45, white=True, why="white web; bright white, so it may be root hairs")
    photo = photo_on(book, 4, suspects=[white])
    first = the_suspect(book, photo)

    book.mend_clock([photo], timedelta(days=days))

    mended = the_suspect(book, photo)
    assert why in mended.why
    assert mended.confidence == pytest.approx(0.72 if days > 0 else 0.45)
    book.undo()
    assert the_suspect(book, photo) == first


def test_a_tray_whose_medium_and_sowing_are_set_right_has_its_suspects_judged_by_them(book: Book) -> None:
    why = "white web 14 mm wide on the bare medium; bright white, so it may be root hairs"
    photo = photo_on(book, 4, suspects=[Patch(confidence=0.45, white=True, why=why)])
    first = the_suspect(book, photo)
    tray = next(tray.id for tray in book.trays() if tray.code == "A1")

    book.edit_tray(tray, medium="hemp", sown_at=datetime(2026, 2, 20, 9))

    now = the_suspect(book, photo)
    assert "on the bare hemp; bright white, yet on day 12" in now.why
    assert now.confidence == pytest.approx(0.72)
    book.undo()
    assert the_suspect(book, photo) == first


def test_a_faint_white_suspect_that_its_tray_makes_fainter_still_is_kept_when_its_photo_is_matched(
    book: Book,
) -> None:
    """What has stood in the book, and may have been looked at, does not go without a word."""
    white = Patch(confidence=0.15, white=True, why="white web; bright white, so it may be root hairs")
    tray = next(tray.id for tray in book.trays() if tray.code == "A1")
    photo = photo_on(book, 4, suspects=[white], tag=None)

    book.match(photo, tray)

    assert the_suspect(book, photo).confidence == pytest.approx(0.09)
    assert "on day 3, when root hairs stand in fans" in the_suspect(book, photo).why


def test_a_photo_that_a_person_matches_closes_what_it_no_longer_shows_until_that_is_undone(
    book: Book,
) -> None:
    tray = next(tray.id for tray in book.trays() if tray.code == "A1")
    first = photo_on(book, 6, suspects=[Patch(area_cm2=3.0)])
    second = photo_on(book, 7, tag=None)
    assert the_suspect(book, first).is_open

    book.match(second, tray)

    assert not the_suspect(book, first).is_open
    book.undo()
    assert the_suspect(book, first).is_open


def test_suspects_of_a_photo_with_mended_corners_are_judged_by_the_day_of_its_tray(book: Book) -> None:
    white = Patch(confidence=0.45, white=True, why="white web; bright white, so it may be root hairs")
    photo = photo_on(book, 4, sure=0.3)
    judged = Judged(
        name="again.jpg",
        digest=book.photo_path(photo).stem,
        taken_at=datetime(2026, 3, 4, 12),
        tag_number=10,
        score=a_score(40.0, suspects=[white]),
        top_view=b"",
        labels=b"",
        thumbnail=b"",
    )

    book.set_corners(photo, [(1.0, 2.0), (900.0, 2.0), (900.0, 480.0), (1.0, 480.0)], judged)

    assert the_suspect(book, photo).confidence < 0.45
