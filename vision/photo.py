"""Photo: bytes of a file -> pixels, which way is up, when and with what it was taken.

In    the bytes of a JPEG, PNG, TIFF, WebP or HEIC file
Out   `Photo`: pixels as stored (uint8 RGB), quarter turns to stand upright, profile, time, focal length
Not   where the tray is (`markers.py`, `frame.py`), whether the light is good enough (`light.py`)

A file that cannot be used raises `PhotoRefused`, whose message tells a grower what to do. The place where a
photo was taken is never read. A decoder sees a file that is cut short and most broken streams, but not every
damage: only the digest tells whether the bytes are what they were.

All points are (x, y) in edge coordinates: pixel (row r, column c) covers c to c + 1 and r to r + 1.
"""

import hashlib
import os
import warnings
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from io import BytesIO
from pathlib import Path

import cv2
import numpy as np
import pi_heif
from numpy.typing import NDArray
from PIL import Image, TiffImagePlugin, UnidentifiedImageError

from vision.exif import camera_notes
from vision.planes import Pixels
from vision.profile import from_inks, in_srgb, worth_applying
from vision.reason import Reason

__all__ = [
    "Photo",
    "PhotoRefused",
    "Pixels",
    "Point",
    "decode_photo",
    "grey",
    "in_srgb",
    "preview",
    "quarter_turned",
    "read_photo",
    "stored_points",
    "upright_points",
]

# OpenCV's wheel points Qt at its own older plugins; children of this process would inherit that.
for _name in ("QT_QPA_PLATFORM_PLUGIN_PATH", "QT_QPA_FONTDIR"):
    if os.environ.get(_name, "").startswith(os.path.dirname(cv2.__file__)):
        del os.environ[_name]

Point = tuple[float, float]

MOST_BYTES = 150_000_000
MOST_PIXELS = 100_000_000
LEAST_SIDE_PX = 64  # below that not even a cell of the tray has an inside
KINDS = ("JPEG", "PNG", "TIFF", "WEBP", "HEIF")  # a multi-picture JPEG opens as JPEG, first picture
GREY_MODES = ("1", "L", "LA", "La", "I", "F", "I;16", "I;16L", "I;16B", "I;16N")
COLOUR_MODES = ("RGB", "RGBA", "RGBX", "RGBa", "P", "PA", "YCbCr", "CMYK")
STRIP_ROWS = 256
NEW_SUBFILE_TYPE, REDUCED, DNG_VERSION = 254, 1, 50706  # tags and a value of TIFF 6.0 and DNG

TURNS = {1: 0, 2: 0, 3: 2, 4: 2, 5: 3, 6: 1, 7: 1, 8: 3}  # Exif orientation -> quarter turns clockwise
MIRRORED = {2, 4, 5, 7}  # these are flipped left to right first

pi_heif.register_heif_opener()
Image.MAX_IMAGE_PIXELS = MOST_PIXELS
warnings.filterwarnings(
    "error", category=Image.DecompressionBombWarning
)  # between one and two times the limit
warnings.filterwarnings(
    "ignore", category=UserWarning, module=r"PIL\."
)  # odd metadata is no news for a grower


class PhotoRefused(Exception):
    """The file cannot be used as a photo; `reason` says why and what to do, `name` which file."""

    def __init__(self, name: str, reason: Reason) -> None:
        super().__init__(f"{name} not used: {reason}")
        self.name = name
        self.reason = reason


@dataclass(frozen=True, slots=True, kw_only=True)
class Photo:
    """One photo as its file holds it."""

    name: str
    digest: str  # SHA-256 of the file's bytes, hexadecimal
    pixels: Pixels  # as stored, colours not yet converted; read-only
    turns: int  # quarter turns clockwise that make it upright, 0 to 3
    profile: bytes | None  # embedded ICC profile, None where it says sRGB or nothing
    taken_at: datetime | None  # the camera's own wall clock, without time zone
    utc_offset: timedelta | None  # of that clock, where the camera noted it
    focal_35mm: float | None  # focal length in mm as on 36 x 24 mm film
    camera: str | None
    notes: tuple[Reason, ...]

    @property
    def size_stored(self) -> tuple[int, int]:
        """Width and height as stored, px."""
        return self.pixels.shape[1], self.pixels.shape[0]

    @property
    def size_upright(self) -> tuple[int, int]:
        """Width and height of the upright photo, px."""
        width, height = self.size_stored
        return (height, width) if self.turns % 2 else (width, height)


def read_photo(path: Path) -> Photo:
    """The photo in a file; raises `PhotoRefused` where it cannot be opened or used."""
    try:
        if not path.is_file():  # a folder, a pipe or a device would wait for ever
            raise PhotoRefused(path.name, Reason.UNREADABLE)
        if path.stat().st_size > MOST_BYTES:
            raise PhotoRefused(path.name, Reason.TOO_BIG)
        data = path.read_bytes()
    except OSError as error:
        raise PhotoRefused(path.name, Reason.UNREADABLE) from error
    return decode_photo(data, path.name)


def decode_photo(data: bytes, name: str) -> Photo:
    """The photo in the bytes of a file; `name` is only for messages. Raises `PhotoRefused`."""
    if not data:
        raise PhotoRefused(name, Reason.EMPTY)
    if len(data) > MOST_BYTES:
        raise PhotoRefused(name, Reason.TOO_BIG)
    image = _opened(data, name)
    _loaded(image, name)
    noted = camera_notes(image)
    pixels, profile, notes = _pixels(image, noted.orientation in MIRRORED)
    return Photo(
        name=name,
        digest=hashlib.sha256(data).hexdigest(),
        pixels=pixels,
        turns=TURNS[noted.orientation],
        profile=profile,
        taken_at=noted.taken_at,
        utc_offset=noted.utc_offset,
        focal_35mm=noted.focal_35mm,
        camera=noted.camera,
        notes=notes,
    )


def _opened(data: bytes, name: str) -> Image.Image:
    """The picture with only its header read: kind and size are judged before memory is spent."""
    try:
        image = Image.open(BytesIO(data), formats=KINDS)
        raw = _is_raw(image)
    except (Image.DecompressionBombError, Image.DecompressionBombWarning) as error:
        raise PhotoRefused(name, Reason.TOO_MANY_PIXELS) from error
    except UnidentifiedImageError as error:
        raise PhotoRefused(name, _why_not_opened(data)) from error
    except Exception as error:  # a hostile header can make a parser raise anything
        raise PhotoRefused(name, Reason.CUT_SHORT) from error
    if image.width * image.height > MOST_PIXELS:
        raise PhotoRefused(name, Reason.TOO_MANY_PIXELS)
    if raw:
        raise PhotoRefused(name, Reason.KIND)
    return image


def _is_raw(image: Image.Image) -> bool:
    """A camera's raw file opens as TIFF, and what opens is a small preview (TIFF 6.0: bit 0 of 254)."""
    return isinstance(image, TiffImagePlugin.TiffImageFile) and (
        image.tag_v2.get(DNG_VERSION) is not None or image.tag_v2.get(NEW_SUBFILE_TYPE) == REDUCED
    )


def _why_not_opened(data: bytes) -> Reason:
    """Another kind of picture, a damaged one of our kinds, or no picture at all."""
    if _has_other_numbers(data):
        return Reason.KIND
    if data.startswith((b"\xff\xd8", b"\x89PNG", b"II*\0", b"MM\0*", b"RIFF")) or data[4:8] == b"ftyp":
        try:
            Image.open(BytesIO(data)).close()
        except Exception:  # as above
            return Reason.CUT_SHORT
        return Reason.KIND
    try:
        Image.open(BytesIO(data)).close()
    except (Image.DecompressionBombError, Image.DecompressionBombWarning):
        return Reason.TOO_MANY_PIXELS
    except Exception:  # as above
        return Reason.NO_PICTURE
    return Reason.KIND


def _has_other_numbers(data: bytes) -> bool:
    """True of a TIFF that is whole and holds what is no colour of 8 or 16 bits, fractions of light say."""
    if not data.startswith((b"II*\0", b"MM\0*")):
        return False
    try:
        TiffImagePlugin.TiffImageFile(BytesIO(data)).close()
    except SyntaxError as error:
        return "pixel mode" in str(error)
    except Exception:  # as above
        return False
    return False


def _loaded(image: Image.Image, name: str) -> None:
    """Decode strictly: a file that is cut short is refused, never half used."""
    try:
        image.load()
    except Exception as error:  # broken streams end in a dozen kinds of error
        raise PhotoRefused(name, Reason.CUT_SHORT) from error
    if "adobe" in image.info and "adobe_transform" not in image.info:  # how the colours are coded was cut off
        raise PhotoRefused(name, Reason.CUT_SHORT)
    if image.mode in GREY_MODES:
        raise PhotoRefused(name, Reason.GREY)
    if image.mode not in COLOUR_MODES:
        raise PhotoRefused(name, Reason.KIND)
    if min(image.size) < LEAST_SIDE_PX:
        raise PhotoRefused(name, Reason.TOO_SMALL)


def _pixels(image: Image.Image, mirrored: bool) -> tuple[Pixels, bytes | None, tuple[Reason, ...]]:
    """Pixels in RGB, the profile that still has to be applied, and what was done to them.

    Strip by strip: at no time does a second whole copy exist beside Pillow's own.
    """
    profile = image.info.get("icc_profile") or None
    pixels = np.empty((image.height, image.width, 3), np.uint8)
    for top in range(0, image.height, STRIP_ROWS):
        strip = image.crop((0, top, image.width, min(top + STRIP_ROWS, image.height)))
        rows = np.asarray(from_inks(strip, profile) if image.mode == "CMYK" else _in_rgb(strip))
        pixels[top : top + STRIP_ROWS] = rows[:, ::-1] if mirrored else rows
    pixels.flags.writeable = False
    if image.mode == "CMYK":
        return pixels, None, (Reason.INKS,)
    return pixels, worth_applying(profile), ()


def _in_rgb(strip: Image.Image) -> Image.Image:
    if strip.mode == "RGB":
        return strip
    if strip.mode == "RGBa":  # premultiplied: divide first
        strip = strip.convert("RGBA")
    return strip.convert("RGB")


def grey(photo: Photo) -> NDArray[np.uint8]:
    """Luma of the stored pixels, (rows, columns)."""
    return np.asarray(cv2.cvtColor(photo.pixels, cv2.COLOR_RGB2GRAY), np.uint8)


def preview(photo: Photo, longest: int) -> Pixels:
    """The upright photo in sRGB, its longer side at most `longest` px; never enlarged."""
    width, height = photo.size_stored
    share = min(1.0, longest / max(width, height))
    size = (max(1, round(width * share)), max(1, round(height * share)))
    small = photo.pixels if share == 1.0 else cv2.resize(photo.pixels, size, interpolation=cv2.INTER_AREA)
    upright = np.rot90(np.asarray(small, np.uint8), -photo.turns)
    return np.ascontiguousarray(in_srgb(np.ascontiguousarray(upright), photo.profile))


def upright_points(photo: Photo, points: Sequence[Point]) -> tuple[Point, ...]:
    """Points of the stored photo as they lie in the upright one."""
    return tuple(quarter_turned(point, photo.turns, photo.size_stored) for point in points)


def stored_points(photo: Photo, points: Sequence[Point]) -> tuple[Point, ...]:
    """Points of the upright photo as they lie in the stored one."""
    return tuple(quarter_turned(point, -photo.turns, photo.size_upright) for point in points)


def quarter_turned(point: Point, turns: int, size: tuple[int, int]) -> Point:
    """The point after quarter turns clockwise of a picture of that width and height."""
    (x, y), (width, height) = point, size
    match turns % 4:
        case 1:
            return height - y, x
        case 2:
            return width - x, height - y
        case 3:
            return y, width - x
        case _:
            return x, y
