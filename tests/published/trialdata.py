"""Trial data that statistical packages carry for all to use: numbers only, with where they come from."""

import numpy as np

# barley, 6 places as blocks, 5 varieties, mean of two years: data set `immer` of the R package MASS
# (Immer, Hayes & Powers 1934); a row a place, varieties M S V T P
IMMER_PLACES = ("UF", "W", "M", "C", "GR", "D")
IMMER_VARIETIES = ("M", "S", "V", "T", "P")
IMMER = np.array(
    [
        [80.85, 93.85, 100.05, 98.45, 91.25],
        [123.50, 128.75, 131.45, 169.60, 126.90],
        [92.70, 91.20, 97.45, 135.60, 109.60],
        [109.35, 91.65, 110.10, 133.15, 100.25],
        [82.65, 69.45, 82.90, 75.60, 92.20],
        [77.30, 71.90, 73.15, 96.80, 95.05],
    ]
)

# peas, 6 blocks of 4 plots, nitrogen, phosphate, potash: data set `npk` of R
NPK_YIELD = np.array(
    [
        49.5, 62.8, 46.8, 57.0, 59.8, 58.5, 55.5, 56.0, 62.8, 55.8, 69.5, 55.0,
        62.0, 48.8, 45.5, 44.2, 52.0, 51.5, 49.8, 48.8, 57.2, 59.0, 53.2, 56.0,
    ]
)  # fmt: skip
NPK_N = (0, 1, 0, 1, 1, 1, 0, 0, 0, 1, 1, 0, 1, 1, 0, 0, 1, 0, 1, 0, 1, 1, 0, 0)
NPK_P = (1, 1, 0, 0, 0, 1, 0, 1, 1, 1, 0, 0, 0, 1, 0, 1, 1, 0, 0, 1, 0, 1, 1, 0)
NPK_K = (1, 0, 0, 1, 0, 1, 1, 0, 0, 1, 0, 1, 0, 1, 1, 0, 0, 0, 1, 1, 1, 0, 1, 0)

# oats, split plot: Yates (1935); data set `oats` of the R package MASS. Blocks x varieties (Golden Rain,
# Marvellous, Victory) x nitrogen (0, 0.2, 0.4, 0.6 cwt)
OATS = np.array(
    [
        [[117, 114, 161, 141], [105, 140, 118, 156], [111, 130, 157, 174]],
        [[70, 108, 126, 149], [96, 124, 121, 144], [61, 91, 97, 100]],
        [[60, 102, 89, 96], [89, 129, 132, 124], [68, 64, 112, 86]],
        [[64, 103, 132, 133], [70, 89, 104, 117], [74, 89, 81, 122]],
        [[80, 82, 94, 126], [63, 70, 109, 99], [62, 90, 100, 116]],
        [[89, 82, 86, 104], [97, 99, 119, 121], [53, 74, 118, 113]],
    ],
    dtype=float,
)

# dried weight of plants, 3 groups of 10: data set `PlantGrowth` of R (Dobson 1983)
PLANTS = {
    "ctrl": np.array([4.17, 5.58, 5.18, 6.11, 4.50, 4.61, 5.17, 4.53, 5.33, 5.14]),
    "trt1": np.array([4.81, 4.17, 4.41, 3.59, 5.87, 3.83, 6.03, 4.89, 4.32, 4.69]),
    "trt2": np.array([6.31, 5.12, 5.54, 5.50, 5.37, 5.29, 4.92, 6.15, 5.80, 5.26]),
}

# breaks of yarn, 2 wools x 3 tensions (L, M, H) x 9 looms: data set `warpbreaks` of R (Tippett 1950)
WARP = {
    ("A", "L"): (26, 30, 54, 25, 70, 52, 51, 26, 67),
    ("A", "M"): (18, 21, 29, 17, 12, 18, 35, 30, 36),
    ("A", "H"): (36, 21, 24, 18, 10, 43, 28, 15, 26),
    ("B", "L"): (27, 14, 29, 19, 29, 31, 41, 20, 44),
    ("B", "M"): (42, 26, 19, 16, 39, 28, 21, 39, 29),
    ("B", "H"): (20, 21, 24, 17, 13, 15, 15, 16, 28),
}

# blood counts, Dunnett (1955), as carried by scipy's tutorial
BLOOD = {
    "control": (7.40, 8.50, 7.20, 8.24, 9.84, 8.32),
    "A": (9.76, 8.80, 7.68, 9.36),
    "B": (12.80, 9.68, 12.16, 9.20, 10.55),
}
# the samples of the docstring of scipy.stats.dunnett
SAMPLES = {
    "control": (2.9, 3.0, 2.5, 2.6, 3.2),
    "first": (3.8, 2.7, 4.0, 2.4),
    "second": (2.8, 3.4, 3.7, 2.2, 2.0),
}

# peak flow, first readings, large and mini meter: Bland & Altman (1986), as carried by R's epiR
LARGE = (494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427)
MINI = (512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451)

# 6 targets x 4 judges: Shrout & Fleiss (1979), as carried by R's psych
JUDGES = np.array(
    [[9, 2, 5, 8], [6, 1, 3, 2], [8, 4, 6, 8], [7, 1, 2, 6], [10, 5, 6, 9], [6, 2, 4, 7]], dtype=float
)


def in_blocks(table=IMMER, places=IMMER_PLACES, names=IMMER_VARIETIES):
    """Rows of (block, medium, value) of a table of blocks x media."""
    return [
        (place, name, float(table[i, j])) for i, place in enumerate(places) for j, name in enumerate(names)
    ]
