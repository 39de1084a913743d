"""The table of mold: three small nets over a cell's features, learned from labelled trays.

In    `Tray`s
Out   the table as `vision/moldchance.py` reads it, and the same as a function
Not   reading trays (`mold_trays.py`), what the table finds (`judge_mold.py`)

The same trays give the same table to the last digit: features are kept to three decimals, draws have fixed
seeds, sums are float32 in one order on one thread.
"""

import itertools
from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from mold_trays import Tray

from vision.moldchance import FARTHEST_SD, names_of_features

SEEDS = (1, 2, 3)
HIDDEN, STEPS, BATCH, DECAY, RATE = 32, 12, 512, 1e-2, 2e-3
MOST_MOLD, MOST_REST = 600, 600  # cells of a tray
JUDGED_BARE = 0.12  # of a cell that is learned from
SAMPLED_BY = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class Net:
    """One hidden layer, and the answer's weights."""

    weights: np.ndarray
    offsets: np.ndarray
    last: np.ndarray
    last_offset: float


def learned(trays: list[Tray]) -> tuple[dict, Callable[[np.ndarray], np.ndarray]]:
    """The table, and the same as a function: three nets, their answers averaged before the last curve."""
    values, mold = sampled(trays)
    mean, spread = values.mean(0), values.std(0) + 1e-3
    known = np.clip((values - mean) / spread, -FARTHEST_SD, FARTHEST_SD).astype(np.float32)
    nets = [net(known, mold, seed) for seed in SEEDS]
    table = {
        "features": list(names_of_features()),
        "mean": rounded(mean),
        "spread": rounded(spread),
        "weights": rounded(np.hstack([one.weights for one in nets])),
        "offsets": rounded(np.hstack([one.offsets for one in nets])),
        "last": rounded(np.hstack([one.last for one in nets]) / len(nets)),
        "last_offset": round(float(np.mean([one.last_offset for one in nets])), 5),
    }

    def chance(values: np.ndarray) -> np.ndarray:
        known = np.clip((values - mean) / spread, -FARTHEST_SD, FARTHEST_SD)
        hidden = np.maximum(known @ np.array(table["weights"]) + np.array(table["offsets"]), 0)
        return 1 / (1 + np.exp(-(hidden @ np.array(table["last"]) + table["last_offset"])))

    return table, chance


def net(known: np.ndarray, mold: np.ndarray, seed: int) -> Net:
    """One small net by Adam (Kingma & Ba 2015); `known` in standard deviations.

    Written out, so that no version of a library moves the table.
    """
    draw = np.random.default_rng(seed)
    sizes = (known.shape[1], HIDDEN, 1)
    reach = [np.sqrt(6 / (a + b)) for a, b in itertools.pairwise(sizes)]  # Glorot & Bengio 2010
    drawn = [
        draw.uniform(-reach[0], reach[0], (sizes[0], HIDDEN)), np.zeros(HIDDEN),
        draw.uniform(-reach[1], reach[1], HIDDEN), np.zeros(1),
    ]  # fmt: skip
    parts = [part.astype(np.float32) for part in drawn]
    means, squares, step = [0 * part for part in parts], [0 * part for part in parts], 0
    for _ in range(STEPS):
        order = draw.permutation(len(known))
        for begin in range(0, len(order), BATCH):
            batch = order[begin : begin + BATCH]
            step += 1
            rate = RATE * np.sqrt(1 - 0.999**step) / (1 - 0.9**step)
            for k, slope in enumerate(slopes(parts, known[batch], mold[batch])):
                means[k] = 0.9 * means[k] + 0.1 * slope
                squares[k] = 0.999 * squares[k] + 0.001 * slope * slope
                parts[k] = (parts[k] - rate * means[k] / (np.sqrt(squares[k]) + 1e-8)).astype(np.float32)
    return Net(weights=parts[0], offsets=parts[1], last=parts[2], last_offset=float(parts[3][0]))


def slopes(parts: list[np.ndarray], known: np.ndarray, mold: np.ndarray) -> list[np.ndarray]:
    """Of the mean log loss and the decay of weights, by each part."""
    weights, offsets, last, last_offset = parts
    hidden = np.maximum(known @ weights + offsets, 0)
    off = (1 / (1 + np.exp(-(hidden @ last + last_offset))) - mold) / len(known)
    back = np.outer(off, last) * (hidden > 0)
    decay = DECAY / len(known)
    return [
        known.T @ back + decay * weights,
        back.sum(0),
        hidden.T @ off + decay * last,
        np.array([off.sum()]),
    ]


def sampled(trays: list[Tray]) -> tuple[np.ndarray, np.ndarray]:
    """Cells that show mold for more than half of their bare ground, and cells without any."""
    chance = np.random.default_rng(SAMPLED_BY)
    values, mold = [], []
    for tray in trays:
        bare = tray.bare > JUDGED_BARE
        share = tray.mold / np.maximum(tray.bare, 1e-3)
        for wanted, most, is_mold in ((share > 0.5, MOST_MOLD, 1), (share < 0.1, MOST_REST, 0)):
            cells = np.flatnonzero(bare & wanted)
            cells = chance.choice(cells, min(most, len(cells)), replace=False) if len(cells) else cells
            values.append(tray.values.reshape(-1, tray.values.shape[-1])[cells])
            mold.append(np.full(len(cells), is_mold, np.float32))
    return np.concatenate(values), np.concatenate(mold)


def rounded(values: np.ndarray) -> list:
    """As the table keeps them."""
    return np.round(values.astype(np.float64), 5).tolist()
