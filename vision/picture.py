"""Picture: a scored top view -> overlay, thumbnail, bytes of a file.

In    top view, uint8 (rows, columns, 3), sRGB; its labels; the stand and the suspects measured on it
Out   new pictures of the same kind (what is handed in stays as it was); JPEG and PNG as bytes
Not   measuring (`stand.py`, `suspects.py`), writing files, the window's own layers (it draws those itself)

Every layer is told by line, pattern and number as well as by colour: canopy a plain line, gaps hatched, cells
a grid with their coverage, suspects dashed rings with a number. Colours are of Okabe & Ito (2008) Color
Universal Design; each light line lies on a dark one, so that it is seen on any leaf.
"""

import math
from collections.abc import Sequence

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.cells import CELL_COLUMNS, CELL_ROWS, cell_edges
from vision.planes import Pixels
from vision.stand import Stand
from vision.suspect import Suspect
from vision.tissue import Labels, Mask, canopy
from vision.topview import PX_PER_MM

__all__ = [
    "decode_jpeg",
    "decode_labels",
    "encode_jpeg",
    "encode_labels",
    "encode_png",
    "thumbnail",
    "with_canopy",
    "with_cells",
    "with_everything",
    "with_gaps",
    "with_suspects",
]

Rgb = tuple[int, int, int]

DARK: Rgb = (12, 16, 14)
CANOPY: Rgb = (0x56, 0xB4, 0xE9)  # sky blue
GAPS: Rgb = (0xE6, 0x9F, 0x00)  # orange
SUSPECTS: Rgb = (0xF0, 0xE4, 0x42)  # yellow
CELLS: Rgb = (255, 255, 255)

THUMBNAIL_WIDTH = 320
THUMBNAIL_HEIGHT = 160
JPEG_QUALITY = 85  # 150 kB for a top view; the eye sees no difference at the window's size
HATCH_PX = 12  # from one hatch line to the next
SPECK_PX = (
    40  # canopy specks below 0.1 cm2 get no outline and no island in a gap: they would hide the picture
)
SHADE = 0.55  # of a cell without canopy; a full cell is not shaded
LEAST_RING_PX = 14
DASH_DEGREES = 18
FONT = cv2.FONT_HERSHEY_SIMPLEX
LEAST_CELL_PX = 34  # a cell needs this width to carry its number


def with_everything(top: Pixels, labels: Labels, stand: Stand, suspects: Sequence[Suspect]) -> Pixels:
    """The top view with all four layers; without a scale there are neither gaps nor suspects to draw."""
    picture = with_cells(top, stand)
    picture = with_canopy(picture, labels)
    picture = with_gaps(picture, labels, stand)
    return with_suspects(picture, suspects)


def with_canopy(top: Pixels, labels: Labels) -> Pixels:
    """The canopy's outline as a plain line."""
    mask = _without_specks(canopy(labels))
    picture = top.copy()
    picture[_outline(cv2.dilate(mask, _CROSS))] = DARK
    picture[_outline(mask)] = CANOPY
    return picture


def with_gaps(top: Pixels, labels: Labels, stand: Stand, px_per_mm: float = PX_PER_MM) -> Pixels:
    """Gaps hatched, with an outline."""
    inside = np.zeros(labels.shape, np.uint8)
    for gap in stand.gaps:
        outline = np.rint(np.array(gap.outline_mm) * px_per_mm - 0.5).astype(np.int32)
        cv2.fillPoly(inside, [outline], 1)
    bare = inside.view(np.bool_) & (_without_specks(canopy(labels)) == 0)
    picture = top.copy()
    rows, columns = np.ogrid[: labels.shape[0], : labels.shape[1]]
    phase = (rows + columns) % HATCH_PX
    picture[bare & ((phase == 1) | (phase == 2))] = DARK
    picture[bare & (phase == 0)] = GAPS
    edge = _outline(bare.view(np.uint8))
    picture[edge] = GAPS
    return picture


def with_cells(top: Pixels, stand: Stand) -> Pixels:
    """The cells as a grid, each shaded the more the less it is covered, with its coverage in %."""
    rows, columns = cell_edges((top.shape[0], top.shape[1]))
    shares = np.array(stand.cells)
    light = 1.0 - SHADE * (1.0 - shares / 100.0)
    tables = np.rint(np.arange(256) * light[..., None]).astype(np.uint8)
    picture = np.empty_like(top)
    for r, c in np.ndindex(CELL_ROWS, CELL_COLUMNS):
        cell = slice(rows[r], rows[r + 1]), slice(columns[c], columns[c + 1])
        picture[cell] = cv2.LUT(top[cell], tables[r, c])
    for row in rows[1:-1].tolist():
        picture[row] = CELLS
    for column in columns[1:-1].tolist():
        picture[:, column] = CELLS
    if int(columns[1]) >= LEAST_CELL_PX:
        for r in range(CELL_ROWS):
            for c in range(CELL_COLUMNS):
                _write(picture, f"{shares[r, c]:.0f}", (int(columns[c]) + 5, int(rows[r + 1]) - 7), CELLS)
    return picture


def with_suspects(top: Pixels, suspects: Sequence[Suspect], px_per_mm: float = PX_PER_MM) -> Pixels:
    """Suspects as dashed rings with their number in the list, from 1."""
    picture = top.copy()
    for number, suspect in enumerate(suspects, start=1):
        centre = (round(suspect.x_mm * px_per_mm - 0.5), round(suspect.y_mm * px_per_mm - 0.5))
        radius = max(LEAST_RING_PX, round(1.4 * math.sqrt(suspect.area_cm2 * 100 / math.pi) * px_per_mm) + 6)
        _dashed_ring(picture, centre, radius, DARK, 5)
        _dashed_ring(picture, centre, radius, SUSPECTS, 2)
        at_right = centre[0] + radius + 30 < top.shape[1]
        x = centre[0] + radius + 4 if at_right else centre[0] - radius - 24
        _write(picture, str(number), (x, centre[1] + 6), SUSPECTS, size=0.7)
    return picture


def thumbnail(top: Pixels) -> Pixels:
    """The top view at 320 x 160 px, area-filtered."""
    small = cv2.resize(top, (THUMBNAIL_WIDTH, THUMBNAIL_HEIGHT), interpolation=cv2.INTER_AREA)
    return np.asarray(small, np.uint8)


def encode_jpeg(picture: Pixels, quality: int = JPEG_QUALITY) -> bytes:
    """The bytes of a JPEG file."""
    done, data = cv2.imencode(
        ".jpg", cv2.cvtColor(picture, cv2.COLOR_RGB2BGR), [cv2.IMWRITE_JPEG_QUALITY, quality]
    )
    if not done:
        raise ValueError(f"a picture of {picture.shape} could not be written as JPEG")
    return data.tobytes()


def encode_png(picture: Pixels) -> bytes:
    """The bytes of a PNG file: nothing is lost, five times as large as a JPEG."""
    done, data = cv2.imencode(".png", cv2.cvtColor(picture, cv2.COLOR_RGB2BGR))
    if not done:
        raise ValueError(f"a picture of {picture.shape} could not be written as PNG")
    return data.tobytes()


def encode_labels(labels: Labels) -> bytes:
    """The bytes of an 8-bit PNG file whose values are the labels."""
    done, data = cv2.imencode(".png", labels, [cv2.IMWRITE_PNG_COMPRESSION, 1])
    if not done:
        raise ValueError(f"labels of {labels.shape} could not be written as PNG")
    return data.tobytes()


def decode_jpeg(data: bytes) -> Pixels | None:
    """The picture that `encode_jpeg` wrote; None where the bytes are damaged."""
    picture = cv2.imdecode(np.frombuffer(data, np.uint8), cv2.IMREAD_COLOR) if data else None
    return None if picture is None else np.ascontiguousarray(picture[..., ::-1], np.uint8)


def decode_labels(data: bytes) -> Labels | None:
    """The labels that `encode_labels` wrote; None where the bytes are damaged."""
    labels = cv2.imdecode(np.frombuffer(data, np.uint8), cv2.IMREAD_GRAYSCALE) if data else None
    return None if labels is None else np.asarray(labels, np.uint8)


_CROSS = cv2.getStructuringElement(cv2.MORPH_CROSS, (3, 3))


def _without_specks(mask: Mask) -> NDArray[np.uint8]:
    _, pieces, stats, _ = cv2.connectedComponentsWithStats(mask.view(np.uint8), connectivity=8)
    keep = stats[:, cv2.CC_STAT_AREA] >= SPECK_PX
    keep[0] = False
    return np.asarray(keep.astype(np.uint8)[pieces], np.uint8)


def _outline(mask: cv2.typing.MatLike) -> Mask:
    """The pixels of a mask that touch what is outside it: morphological gradient to the inside."""
    inner = cv2.erode(mask, _CROSS, borderType=cv2.BORDER_CONSTANT, borderValue=1)
    return np.asarray(mask != inner, np.bool_)


def _dashed_ring(picture: Pixels, centre: tuple[int, int], radius: int, colour: Rgb, width: int) -> None:
    for start in range(0, 360, 2 * DASH_DEGREES):
        cv2.ellipse(
            picture, centre, (radius, radius), 0, start, start + DASH_DEGREES, colour, width, cv2.LINE_AA
        )


def _write(picture: Pixels, text: str, place: tuple[int, int], colour: Rgb, size: float = 0.45) -> None:
    cv2.putText(picture, text, place, FONT, size, DARK, 3, cv2.LINE_AA)
    cv2.putText(picture, text, place, FONT, size, colour, 1, cv2.LINE_AA)
