"""Drawn trays first, then top views of rendered ones, then what is done without the model's file."""

from dataclasses import replace
from pathlib import Path

import cv2
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import vision.learned
from vision.learned import LearnedTissue, View, coverage_sd, labelled, look, most_probable
from vision.methods import METHODS, best_tissue, tissue_named
from vision.network import ModelDamaged
from vision.planes import Pixels
from vision.reason import Reason
from vision.stand import measure_stand
from vision.suspects import find_suspects
from vision.tissue import Label, Labels, Mask, PlainTissue, TissueMap, canopy

PHOTOS = Path(__file__).parent.parent / "photos"
PEAT, GREEN = (52, 42, 34), (84, 140, 60)


def a_tray(leaf: tuple[int, int, int] = GREEN, side: int = 40) -> Pixels:
    """A medium with grain and round leaves in rows, 80 px apart."""
    rng = np.random.default_rng(0)
    light = cv2.GaussianBlur(rng.normal(0, 18, (508, 1016, 1)), (5, 5), 0)[..., None]
    top = np.clip(np.array(PEAT) + light, 0, 255).astype(np.uint8)
    for y in range(50, 480, 80):
        for x in range(50, 980, 80):
            cv2.circle(top, (x, y), side // 2, leaf, -1, cv2.LINE_AA)
    return top


def rendered(name: str) -> tuple[Pixels, Labels]:
    top = cv2.imread(str(PHOTOS / f"{name}.jpg"))
    labels = cv2.imread(str(PHOTOS / f"{name}_labels.png"), cv2.IMREAD_GRAYSCALE)
    return np.ascontiguousarray(top[..., ::-1]), np.asarray(labels, np.uint8)


def a_view(chance: np.ndarray) -> View:
    """A view that takes all canopy for green and all else for medium."""
    return View(
        canopy=chance.astype(np.float32),
        fuzz=np.zeros(chance.shape, np.float32),
        leaf=np.full(chance.shape, Label.GREEN, np.uint8),
        ground=np.full(chance.shape, Label.MEDIUM, np.uint8),
    )


def share(mask: Mask) -> float:
    return 100 * float(mask.mean())


def overlap(one: Mask, other: Mask) -> float:
    return float((one & other).sum() / (one | other).sum())


@pytest.fixture(scope="module")
def tissue() -> LearnedTissue:
    return LearnedTissue()


# --- rules that can be counted by hand


def test_a_pixel_that_is_canopy_with_a_quarter_counts_as_a_quarter_of_a_pixel():
    labels = labelled(a_view(np.full((20, 20), 0.25)))

    assert np.count_nonzero(canopy(labels)) == 100


def test_the_surest_pixels_are_the_canopy():
    chance = np.array([[0.9, 0.8, 0.1, 0.1, 0.1]])

    assert labelled(a_view(chance)).tolist() == [[Label.GREEN, Label.GREEN, *[Label.MEDIUM] * 3]]


def test_another_order_of_pixels_does_not_change_how_much_is_canopy():
    chance = np.random.default_rng(1).random((60, 120)).astype(np.float32)
    order = np.random.default_rng(2).random(chance.shape).astype(np.float32)

    kept, moved = (canopy(labelled(a_view(chance), value)) for value in (None, order))

    assert moved.sum() == kept.sum() == round(float(chance.sum(dtype=np.float64)))
    assert order[moved].min() > order[~moved].max()


def test_a_tray_with_no_chance_of_canopy_has_none():
    assert not canopy(labelled(a_view(np.zeros((6, 12))))).any()


@settings(deadline=None)
@given(st.integers(0, 2**16))
def test_the_running_maximum_is_the_argmax(seed):
    planes = np.random.default_rng(seed).normal(size=(10, 4, 3, 5)).astype(np.float32)

    label, best = most_probable(planes, tuple(Label))

    assert (label == planes.argmax(axis=0)).all()
    assert (best == planes.max(axis=0)).all()


def test_doubt_grows_with_the_number_of_pixels_that_are_unsure():
    unsure = [coverage_sd(np.where(np.arange(100) < few, 0.5, 1.0), 0.0) for few in (0, 20, 100)]

    assert unsure[0] < unsure[1] < unsure[2]
    assert 0 < unsure[0] < 1


def test_doubt_grows_with_how_far_the_plain_method_is_apart():
    assert coverage_sd(np.ones(100), 2.0) < coverage_sd(np.ones(100), 20.0)


def test_fuzz_counts_where_it_touches_plain_felt_and_not_elsewhere(tissue, monkeypatch):
    """Felt on the left that the network sees twice as large; on the right a patch that it sees alone."""
    seen = np.zeros((508, 1016), np.float32)
    seen[200:260, 200:320] = seen[200:260, 700:820] = 0.9
    felt = np.full(seen.shape, Label.MEDIUM, np.uint8)
    felt[200:260, 200:260] = Label.FUZZ
    monkeypatch.setattr(vision.learned, "look", lambda _: replace(a_view(0 * seen), fuzz=seen))
    monkeypatch.setattr(PlainTissue, "label", lambda *_: TissueMap(labels=felt))

    fuzz = tissue.label(a_tray(), 2.0).fuzz

    assert (fuzz > 0.5).sum() == 60 * 120
    assert not fuzz[:, 400:].any()


# --- drawn and rendered trays


def test_drawn_leaves_on_peat_are_found(tissue):
    drawn = (a_tray() != a_tray(leaf=(255, 0, 255))).any(axis=2)

    found = canopy(tissue.label(a_tray(), 2.0).labels)

    assert overlap(found, drawn) > 0.9


@pytest.mark.parametrize("name", ["top_felt", "top_young"])
def test_coverage_of_rendered_trays_is_near_their_truth(tissue, name):
    """Broccoli of day 9 and radish of day 5 on fibre mats, which were learned from: no proof of accuracy."""
    top, truth = rendered(name)

    found = tissue.label(top, 2.0)

    assert share(canopy(found.labels)) == pytest.approx(share(canopy(truth)), abs=4.0)
    assert 0 < found.coverage_sd < 10


def test_coverage_is_the_mean_of_the_cells_weighted_by_their_size(tissue):
    labels = tissue.label(rendered("top_felt")[0], 2.0).labels
    stand = measure_stand(labels)
    rows, columns = np.diff(np.arange(7) * 508 // 6), np.diff(np.arange(13) * 1016 // 12)

    counted = (np.array(stand.cells) * np.outer(rows, columns)).sum() / (508 * 1016)

    assert stand.coverage == pytest.approx(counted)


def test_coverage_is_the_mean_chance_of_canopy(tissue):
    top, _ = rendered("top_young")

    assert share(canopy(tissue.label(top, 2.0).labels)) == pytest.approx(
        100 * float(look(top).canopy.mean()), abs=0.01
    )


@pytest.mark.parametrize("size", [(33, 47), (100, 700), (1300, 90), (1, 50), (1100, 1)])
def test_a_picture_of_any_size_and_unknown_scale_gets_labels_of_its_size(tissue, size):
    picture = cv2.resize(a_tray(), size[::-1], interpolation=cv2.INTER_AREA)

    found = tissue.label(picture, None)

    assert found.labels.shape == size
    assert set(np.unique(found.labels)) <= set(Label)
    assert found.coverage_sd is None


def test_a_narrow_strip_looked_at_again_is_seen_alike():
    """OpenCV 5 reads beside the maps of a network where they are 1 px wide; once it crashed there."""
    strip = np.full((32, 64, 3), 90, np.uint8)
    first = look(strip).canopy.copy()
    look(a_tray())

    assert np.array_equal(look(strip).canopy, first)


def test_a_small_tray_whose_top_view_is_finer_is_looked_at_as_coarsely_as_learning_was(tissue, monkeypatch):
    """A quarter of a tray shown at 4 px/mm."""
    top, truth = rendered("top_young")
    quarter = np.ascontiguousarray(cv2.resize(top[:254, :508], (1016, 508), interpolation=cv2.INTER_CUBIC))
    seen = []
    monkeypatch.setattr(vision.learned, "look", lambda picture: seen.append(picture.shape) or look(picture))
    found = tissue.label(quarter, 4.0)

    assert seen == [(318, 635, 3)]
    assert found.labels.shape == found.fuzz.shape == (508, 1016)
    assert found.chances is None  # they would be those of a smaller picture
    assert share(canopy(found.labels)) == pytest.approx(share(canopy(truth[:254, :508])), abs=4.0)


def test_what_is_no_picture_of_three_channels_is_refused(tissue):
    with pytest.raises(ValueError, match="uint8"):
        tissue.label(np.zeros((508, 1016), np.uint8), 2.0)


def test_felt_among_leaves_is_a_suspect_and_a_young_tray_without_mold_has_none(tissue):
    """Both were learned from; the felt is the plain method's find."""
    felt, young = (
        find_suspects(top, tissue.label(top, 2.0))
        for top in (rendered(n)[0] for n in ("top_felt", "top_young"))
    )

    assert len(felt) == 1
    assert young == ()


def test_a_tray_whose_pixels_are_unsure_is_said_to_be_doubtful(tissue, monkeypatch):
    monkeypatch.setattr(vision.learned, "look", lambda top: a_view(np.full(top.shape[:2], 0.5)))

    found = tissue.label(a_tray(), 2.0)

    assert Reason.DOUBTFUL in found.notes
    assert found.coverage_sd > 4


def test_a_model_that_sees_canopy_everywhere_on_a_sparse_tray_is_contradicted(tissue, monkeypatch):
    monkeypatch.setattr(vision.learned, "look", lambda top: a_view(np.ones(top.shape[:2])))

    assert Reason.APART in tissue.label(a_tray(), 2.0).notes


def test_a_clear_tray_has_no_notes(tissue):
    assert tissue.label(a_tray(), 2.0).notes == ()


# --- without the model


def test_the_learned_model_is_used_unasked_and_the_plain_method_when_asked_for():
    assert best_tissue().name == "learned"
    assert [tissue_named(name).name for name in METHODS] == ["learned", "plain"]


@pytest.mark.parametrize("data", [None, b"damaged"], ids=["missing", "damaged"])
def test_without_its_file_the_plain_method_stands_in_and_says_so(data, tmp_path, monkeypatch):
    if data is not None:
        (tmp_path / "tissue.onnx").write_bytes(data)
    monkeypatch.setattr(vision.learned, "MODEL", tmp_path / "tissue.onnx")

    tissue = best_tissue()

    assert tissue.name == "plain"
    assert tissue.label(a_tray(), 2.0).notes == (Reason.PLAIN_ONLY,)
    with pytest.raises(ModelDamaged, match="install the program again"):
        LearnedTissue()
