"""The mold table on a rendered tray, and how it is bound to the network whose chances it reads."""

import json
from pathlib import Path

import cv2
import numpy as np
import pytest

from vision import learned, moldchance
from vision.learned import LearnedTissue
from vision.moldchance import Cells, features, mold_cells, names_of_features, together
from vision.network import FOLDER, ModelDamaged
from vision.planes import Pixels
from vision.tissue import Label, PlainTissue, TissueMap

PHOTOS = Path(__file__).parent.parent / "photos"


def rendered(name: str) -> Pixels:
    """A rendered tray, warped by its true corners."""
    return np.ascontiguousarray(cv2.imread(str(PHOTOS / name))[..., ::-1])


def cells_of(top: Pixels) -> Cells:
    return mold_cells(top, LearnedTissue().label(top, 2.0))


def test_cells_that_show_mold_are_likelier_than_all_others():
    truth = cv2.imread(str(PHOTOS / "top_felt_labels.png"), cv2.IMREAD_GRAYSCALE) == Label.FUZZ
    mold = cv2.resize(truth.astype(np.float32), (254, 127), interpolation=cv2.INTER_AREA)

    cells = cells_of(rendered("top_felt.jpg"))

    seen = cells.bare > 0.5
    assert np.median(cells.chance[seen & (mold > 0.8)]) > 0.6
    assert np.percentile(cells.chance[seen & (mold == 0)], 95) < 0.1


def test_a_young_tray_without_mold_has_hardly_a_likely_cell():
    assert (cells_of(rendered("top_young.jpg")).chance > 0.3).mean() < 0.002


def test_nothing_is_said_of_cells_under_leaves():
    top = rendered("top_young.jpg")
    labels = np.full(top.shape[:2], Label.GREEN, np.uint8)
    chances = np.zeros((len(Label), 127, 254), np.float32)

    cells = mold_cells(top, TissueMap(labels=labels, chances=chances))

    assert not cells.chance.any()
    assert not cells.bare.any()


def test_two_opinions_count_alike_and_neither_alone_makes_it_sure():
    table, network = np.array([0.9, 0.1, 1.0, 0.5], np.float32), np.array([0.1, 0.9, 0.0, 0.9], np.float32)

    chance = together(table, network)

    assert chance == pytest.approx([0.5, 0.5, 0.5, 0.75], abs=1e-5)  # odds of 1 and 9: 3, the geometric mean


def test_a_tray_turned_round_has_its_chances_turned_round():
    top = rendered("top_felt.jpg")
    tissue = LearnedTissue().label(top, 2.0)
    assert tissue.chances is not None
    assert tissue.fuzz is not None
    turned = TissueMap(
        labels=np.ascontiguousarray(tissue.labels[::-1, ::-1]),
        fuzz=np.ascontiguousarray(tissue.fuzz[::-1, ::-1]),
        chances=np.ascontiguousarray(tissue.chances[:, ::-1, ::-1]),
    )

    there = mold_cells(top, tissue).chance
    back = mold_cells(np.ascontiguousarray(top[::-1, ::-1]), turned).chance[::-1, ::-1]

    assert np.abs(there - back).max() < 0.01


def test_features_are_the_same_to_the_last_digit_wherever_in_memory_they_lie():
    """Else the table could not be learned twice alike; OpenCV's `magnitude` rounds by the address."""
    top = rendered("top_felt.jpg")
    tissue = LearnedTissue().label(top, 2.0)
    first = features(top, tissue)

    for size in (1_001, 40_007, 130_003):
        taken = np.empty(size)  # so that the next planes lie elsewhere
        again = features(top, tissue)
        assert all(np.array_equal(first[name], again[name]) for name in first), taken.size


def test_the_table_has_learned_the_features_that_it_is_given():
    assert json.loads(moldchance.MODEL.read_text())["features"] == list(names_of_features())


def test_the_card_names_the_network_that_the_table_belongs_to():
    """A new tissue network needs a new table: `training/learn_mold.py`."""
    assert learned.DIGEST[:8] in (FOLDER / "mold.md").read_text()


def test_a_method_without_chances_is_refused_loudly():
    top = rendered("top_young.jpg")

    with pytest.raises(ValueError, match="no chances"):
        mold_cells(top, PlainTissue().label(top, 2.0))


def test_a_damaged_table_is_said_when_the_method_is_made(monkeypatch: pytest.MonkeyPatch):
    moldchance._table.cache_clear()
    monkeypatch.setattr(moldchance, "DIGEST", "0" * 64)
    try:
        with pytest.raises(ModelDamaged, match=r"mold\.json is damaged"):
            LearnedTissue()
    finally:
        moldchance._table.cache_clear()


def a_drawn_answer(top: Pixels) -> TissueMap:
    """What a network would tell that is always right and always sure."""
    truth = cv2.imread(str(PHOTOS / "top_felt_labels.png"), cv2.IMREAD_GRAYSCALE)
    truth = np.ascontiguousarray(truth[: top.shape[0], : top.shape[1]])
    cells = (top.shape[1] // 4, top.shape[0] // 4)
    chances = [
        cv2.resize((truth == label).astype(np.float32), cells, interpolation=cv2.INTER_AREA)
        for label in Label
    ]
    return TissueMap(labels=truth, chances=np.stack(chances))


@pytest.mark.parametrize(
    ("side", "recorded", "chance"),
    [
        (None, (-27.721, 40.562, 35.848, -16.772), 8.834e-3),
        (64, (-11.994, 25.474, 29.849, -17.545), 3.674e-4),  # 36 cells of the medium: too few for its medians
    ],
)
def test_cells_are_judged_by_what_the_table_was_learned_with(
    side: int | None, recorded: tuple[float, ...], chance: float
):
    """Drawn sums of the features' means and spreads, and what the table makes of them, as they were recorded.

    Whoever changes a limit of a feature has to learn another table.
    """
    top = np.ascontiguousarray(rendered("top_felt.jpg")[:side, :side])
    tissue = a_drawn_answer(top)
    table = json.loads(moldchance.MODEL.read_text())
    values = np.stack([plane.ravel() for plane in features(top, tissue).values()], axis=1)
    told = np.stack([values.mean(axis=0) - table["mean"], values.std(axis=0)]) / table["spread"]

    sums = told @ np.random.default_rng(3).standard_normal((2, told.shape[1])).T

    assert sums.ravel() == pytest.approx(recorded, abs=0.02)
    assert mold_cells(top, tissue).chance.mean() == pytest.approx(chance, rel=3e-3)


def test_no_two_opinions_make_it_surer_than_one_in_a_thousand():
    sure = np.array([1.0, 0.0], np.float32)

    assert together(sure, sure) == pytest.approx([0.999, 0.001], abs=1e-5)
