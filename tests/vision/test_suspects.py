"""Drawn felt, hulls, walls and white fans on drawn media; then a rendered tray with mold, one without."""

from pathlib import Path

import cv2
import numpy as np
import pytest

from vision.cielab import encoded, linear
from vision.planes import Pixels
from vision.sparkle import dullness, sparkle
from vision.suspect import Suspect, TrayFacts, known_better, unknown_again, with_facts
from vision.suspects import find_suspects
from vision.tissue import Label, Mask, PlainTissue, TissueMap

PHOTOS = Path(__file__).parent.parent / "photos"
COIR, HEMP = (94, 68, 48), (150, 126, 90)
GREY, HULL, WHITE = (112, 112, 110), (60, 58, 56), (238, 238, 236)


def a_medium(colour: tuple[int, int, int] = COIR) -> Pixels:
    """A bare top view at 2 px/mm: one colour with grain."""
    return _grained(np.ones((508, 1016), bool), np.zeros((508, 1016, 3), np.uint8), colour)


def with_felt(top: Pixels, centre_mm: tuple[float, float], radius_mm: float) -> Pixels:
    """A round grey patch."""
    return _grained(disc(centre_mm, radius_mm), top, GREY)


def disc(centre_mm: tuple[float, float], radius_mm: float) -> Mask:
    rows, columns = np.mgrid[:508, :1016]
    x, y = (columns + 0.5) / 2, (rows + 0.5) / 2
    return np.hypot(x - centre_mm[0], y - centre_mm[1]) <= radius_mm


def _grained(where: Mask, top: Pixels, colour: tuple[int, int, int]) -> Pixels:
    light = np.random.default_rng(3).normal(0, 10, (508, 1016, 1))
    return np.where(where[..., None], np.clip(np.array(colour) + light, 0, 255), top).astype(np.uint8)


def suspects_of(top: Pixels) -> tuple[Suspect, ...]:
    return find_suspects(top, PlainTissue().label(top, 2.0))


@pytest.mark.parametrize("medium", [COIR, HEMP], ids=["coir", "hemp"])
def test_grey_felt_on_a_brown_medium_is_a_suspect_where_it_lies(medium):
    (suspect,) = suspects_of(with_felt(a_medium(medium), (200.0, 100.0), 12.0))

    assert suspect.x_mm == pytest.approx(200.0, abs=1.0)
    assert suspect.y_mm == pytest.approx(100.0, abs=1.0)
    assert suspect.area_cm2 == pytest.approx(np.pi * 1.2**2, rel=0.15)
    assert suspect.confidence > 0.5


def test_the_outline_goes_around_the_patch():
    (suspect,) = suspects_of(with_felt(a_medium(), (200.0, 100.0), 12.0))

    away = [np.hypot(x - 200, y - 100) for x, y in suspect.outline_mm]

    assert min(away) > 8
    assert max(away) < 16


def test_the_reason_tells_size_and_what_it_was_compared_with():
    (suspect,) = suspects_of(with_felt(a_medium(), (200.0, 100.0), 12.0))

    assert suspect.why.startswith("grey web 2")
    assert "lighter than the medium around" in suspect.why
    assert "not white fans along roots" in suspect.why


def test_felt_as_light_as_its_medium_is_said_so_in_plain_words():
    (suspect,) = suspects_of(with_felt(a_medium((136, 108, 72)), (200.0, 100.0), 12.0))

    assert "greyer and as light as the medium around" in suspect.why


def test_a_clean_tray_has_no_suspect():
    assert suspects_of(a_medium()) == ()


def test_felt_under_one_square_centimetre_is_left_alone():
    assert suspects_of(with_felt(a_medium(), (200.0, 100.0), 4.0)) == ()


def test_two_pieces_six_millimetres_apart_are_one_and_far_ones_two():
    near = with_felt(with_felt(a_medium(), (190.0, 100.0), 10.0), (213.0, 100.0), 10.0)
    far = with_felt(with_felt(a_medium(), (150.0, 100.0), 10.0), (250.0, 100.0), 10.0)

    assert len(suspects_of(near)) == 1
    assert len(suspects_of(far)) == 2


def test_larger_felt_is_surer_and_comes_first():
    top = with_felt(with_felt(a_medium(), (100.0, 100.0), 9.0), (300.0, 100.0), 16.0)

    first, second = suspects_of(top)

    assert first.area_cm2 > second.area_cm2
    assert first.confidence > second.confidence
    for one in (first, second):
        assert one.confidence <= one.area_cm2 / (one.area_cm2 + 1) + 0.001  # half sure at 1 cm2, never wholly
        assert "glitters" not in one.why  # it is dull


def test_felt_at_the_wall_is_less_sure_and_says_why():
    inside, at_wall = (only_suspect_at((200.0, y)) for y in (120.0, 14.0))

    assert at_wall.confidence < inside.confidence / 2
    assert "wall" in at_wall.why
    assert "wall" not in inside.why


def a_lamp_over(top: Pixels, centre_mm: tuple[float, float]) -> Pixels:
    """Its reflection, 25 mm to one standard deviation: light added to what lies there."""
    rows, columns = np.mgrid[:508, :1016]
    away = np.hypot(columns / 2 - centre_mm[0], rows / 2 - centre_mm[1]) / 25
    return encoded(linear(top) + (0.2 * np.exp(-(away**2) / 2))[:, :, None])


def test_felt_in_the_glare_of_a_lamp_is_half_as_sure_and_says_why():
    """Glare on a drawn canopy and on bare ground made about one false suspect a photo, up to 0.99 sure."""
    labels = np.full((508, 1016), Label.MEDIUM, np.uint8)
    tissue = TissueMap(labels=labels, fuzz=disc((200.0, 120.0), 13.0).astype(np.float32))
    felt = with_felt(a_medium(), (200.0, 120.0), 13.0)

    (plain,), (far,), (glaring,) = (
        find_suspects(top, tissue)
        for top in (felt, a_lamp_over(felt, (400.0, 120.0)), a_lamp_over(felt, (200.0, 120.0)))
    )

    assert "glare" not in plain.why + far.why
    assert glaring.why.endswith("in the glare of a lamp, so it may be that")
    assert 0.3 * plain.confidence < glaring.confidence < 0.6 * plain.confidence


def test_a_faint_patch_is_not_taken_off_the_list_by_glare():
    """It would close itself the next day as no longer seen, although a lamp alone hides it."""
    labels = np.full((508, 1016), Label.MEDIUM, np.uint8)
    tissue = TissueMap(labels=labels, fuzz=disc((200.0, 120.0), 13.0).astype(np.float32))
    felt = with_felt(a_medium((104, 98, 90)), (200.0, 120.0), 13.0)

    (plain,), (glaring,) = (find_suspects(top, tissue) for top in (felt, a_lamp_over(felt, (200.0, 120.0))))

    assert 0.25 < plain.confidence < 0.5
    assert glaring.confidence == 0.25
    assert "glare" in glaring.why


def test_a_grey_glove_over_the_tray_is_half_as_sure_as_felt_and_says_why():
    """Where something so smooth and large lies on the tray, what is smooth may be that and no felt."""
    labels = np.full((508, 1016), Label.MEDIUM, np.uint8)
    tissue = TissueMap(labels=labels, fuzz=disc((200.0, 120.0), 32.0).astype(np.float32))
    felt = with_felt(a_medium(), (200.0, 120.0), 32.0)
    glove = np.where(disc((200.0, 120.0), 32.0)[..., None], np.uint8(112), a_medium())

    (rough,), (smooth,) = find_suspects(felt, tissue), find_suspects(glove, tissue)

    assert "smooth" not in rough.why
    assert smooth.why.endswith("smooth as a glove, a tool or a drop on the lens, so it may be that")
    assert smooth.confidence < 0.7 * rough.confidence


def test_wet_ground_that_glitters_is_told_from_dull_felt():
    rng = np.random.default_rng(5)
    seen = disc((100.0, 60.0), 20.0)
    felt = np.clip(rng.normal(45.0, 4.0, seen.shape), 0, 100).astype(np.float32)
    wet = np.where(rng.random(seen.shape) < 0.04, 95.0, 30.0).astype(np.float32)
    wet[~seen] = 100.0  # leaves beside it take no part

    assert dullness(sparkle(felt, seen, 2.0)) == 1.0
    assert dullness(sparkle(wet, seen, 2.0)) == pytest.approx(0.3)
    assert sparkle(wet, np.zeros_like(seen), 2.0) == 0.0


def only_suspect_at(centre_mm: tuple[float, float]) -> Suspect:
    """What is said of felt that the tissue method is sure of."""
    chance = disc(centre_mm, 13.0).astype(np.float32)
    labels = np.full((508, 1016), Label.MEDIUM, np.uint8)
    (suspect,) = find_suspects(with_felt(a_medium(), centre_mm, 13.0), TissueMap(labels=labels, fuzz=chance))
    return suspect


def test_hulls_of_the_same_grey_all_over_are_no_suspects():
    centres = [(float(x), float(y)) for x in range(60, 460, 30) for y in range(40, 220, 30)]
    hulls = np.logical_or.reduce([disc(centre, 6.5) for centre in centres])

    assert suspects_of(_grained(hulls, a_medium(), GREY)) == ()


def test_a_smooth_grey_card_is_no_felt():
    top = a_medium()
    top[180:230, 380:440] = GREY

    assert suspects_of(top) == ()


def test_white_fans_of_root_hairs_are_no_suspects():
    top = a_medium()
    for x in range(120, 920, 40):
        for angle in np.linspace(0, np.pi, 9):
            end = (int(x + 16 * np.cos(angle)), int(250 + 16 * np.sin(angle)))
            cv2.line(top, (x, 250), end, WHITE, 1)

    assert suspects_of(top) == ()


def test_turning_the_tray_turns_its_suspects():
    top = with_felt(a_medium(), (200.0, 100.0), 12.0)

    (turned,) = suspects_of(np.ascontiguousarray(np.rot90(top, 2)))

    assert (turned.x_mm, turned.y_mm) == pytest.approx((508 - 200.0, 254 - 100.0), abs=1.0)


def test_a_method_that_gives_chances_is_believed_instead_of_its_labels():
    chance = np.where(disc((300.0, 120.0), 10.0), 0.9, 0.1).astype(np.float32)
    labels = np.full((508, 1016), Label.MEDIUM, np.uint8)
    top = with_felt(a_medium(), (300.0, 120.0), 10.0)

    (suspect,) = find_suspects(top, TissueMap(labels=labels, fuzz=chance))

    assert suspect.x_mm == pytest.approx(300.0, abs=1.0)


def a_white_suspect() -> Suspect:
    """White felt that the tissue method is sure of, on a day that nobody has told."""
    top = a_medium()
    top[disc((200.0, 100.0), 13.0)] = WHITE
    chance = disc((200.0, 100.0), 13.0).astype(np.float32)
    labels = np.full((508, 1016), Label.MEDIUM, np.uint8)
    (suspect,) = find_suspects(top, TissueMap(labels=labels, fuzz=chance))
    return suspect


def test_white_may_be_root_hairs_where_the_day_is_not_known():
    assert a_white_suspect().white
    assert "white web 26 mm wide on the bare medium" in a_white_suspect().why
    assert "bright white, so it may be root hairs" in a_white_suspect().why


@pytest.mark.parametrize("days", [1.0, 3.2, 4.9])
def test_white_on_the_days_of_root_hairs_counts_less_and_says_to_look_again(days: float):
    (judged,) = with_facts([a_white_suspect()], TrayFacts(days=days))

    assert judged.confidence < a_white_suspect().confidence
    assert f"bright white on day {days:.0f}, when root hairs stand in fans: look again tomorrow" in judged.why


def test_white_after_the_days_of_root_hairs_counts_more():
    (judged,) = with_facts([a_white_suspect()], TrayFacts(days=9.0))

    assert judged.confidence > a_white_suspect().confidence
    assert "bright white, yet on day 9 root hairs have mostly faded" in judged.why


@pytest.mark.parametrize("days", [-0.3, 0.0, 0.4])
def test_white_before_any_root_stands_is_not_said_to_be_a_faded_root_hair(days: float):
    """Root hairs come with the root, half a day after sowing at the earliest (growers' pages)."""
    (judged,) = with_facts([a_white_suspect()], TrayFacts(days=days))

    assert "bright white, before root hairs stand" in judged.why
    assert "faded" not in judged.why


@pytest.mark.parametrize("days", [0.2, 3.0, 9.0])
def test_what_another_tray_s_day_and_medium_said_can_be_taken_back(days: float):
    facts = TrayFacts(days=days, medium="coir fibre")
    known = known_better(a_white_suspect(), facts)
    assert "coir fibre" in known.why

    back = unknown_again(known, facts)

    assert back.why == a_white_suspect().why
    assert back.confidence == pytest.approx(a_white_suspect().confidence, abs=0.002)


def test_grey_felt_counts_the_same_on_every_day():
    suspects = suspects_of(with_felt(a_medium(), (200.0, 100.0), 12.0))

    assert with_facts(suspects, TrayFacts(days=3.0)) == with_facts(suspects, TrayFacts(days=9.0)) == suspects


def test_the_reason_names_the_medium_where_it_is_known():
    top = with_felt(a_medium(), (200.0, 100.0), 12.0)

    (suspect,) = with_facts(suspects_of(top), TrayFacts(medium="coir"))

    assert "on the bare coir; greyer and lighter than the coir around" in suspect.why


def test_labels_of_another_size_are_refused_loudly():
    with pytest.raises(ValueError, match="differ in size"):
        find_suspects(a_medium(), TissueMap(labels=np.zeros((5, 5), np.uint8)))


def rendered(name: str) -> Pixels:
    """A rendered tray, warped by its true corners."""
    return np.ascontiguousarray(cv2.imread(str(PHOTOS / name))[..., ::-1])


def test_mold_on_a_rendered_broccoli_tray_is_found():
    """Truth of the rendering: felt of 9.8 cm2 is to be seen between leaves."""
    truth = cv2.imread(str(PHOTOS / "top_felt_labels.png"), cv2.IMREAD_GRAYSCALE) == Label.FUZZ
    rows, columns = np.nonzero(truth)

    suspects = suspects_of(rendered("top_felt.jpg"))

    assert np.hypot(suspects[0].x_mm - columns.mean() / 2, suspects[0].y_mm - rows.mean() / 2) < 15
    assert suspects[0].area_cm2 == pytest.approx(truth.sum() / 400, rel=0.3)


def test_a_rendered_young_tray_without_mold_is_quiet():
    assert suspects_of(rendered("top_young.jpg")) == ()


def test_a_patch_that_fills_the_picture_has_nothing_around_it_and_is_told_all_the_same():
    chances = np.zeros((len(Label), 127, 254), np.float32)
    chances[Label.FUZZ] = 1
    labels = np.full((508, 1016), Label.FUZZ, np.uint8)

    (suspect,) = find_suspects(
        np.full((508, 1016, 3), 128, np.uint8), TissueMap(labels=labels, chances=chances)
    )

    assert suspect.area_cm2 == pytest.approx(50.8 * 25.4)
    assert "no bare medium beside it" in suspect.why
    assert "on the bare medium" not in suspect.why


@pytest.mark.parametrize(("warmer", "greyer"), [(0, False), (40, True)])
def test_felt_is_called_greyer_only_where_an_eye_would_see_it(warmer, greyer):
    """Both media are darker than the felt, one as grey, one brown."""
    top = with_felt(a_medium((62 + warmer, 62, 60 - warmer)), (200.0, 120.0), 13.0)
    labels = np.full((508, 1016), Label.MEDIUM, np.uint8)

    (suspect,) = find_suspects(
        top, TissueMap(labels=labels, fuzz=disc((200.0, 120.0), 13.0).astype(np.float32))
    )

    assert ("greyer" in suspect.why) is greyer
