"""Exif: what the camera noted in the file -> which way is up, when, and with what.

In    an opened picture
Out   `CameraNotes`; what is missing, broken or was never set is None
Not   where the photo was taken: that block is never read
"""

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from PIL import ExifTags, Image

__all__ = ["CameraNotes", "camera_notes"]

FIRST_YEAR = 2000  # clocks that were never set tell 1970 or 1980
MOST_LETTERS = 80  # of a camera's name
SERIAL_END = 4  # letters of a body's number: enough to tell two apart, too few to find one by


@dataclass(frozen=True, slots=True, kw_only=True)
class CameraNotes:
    """What the camera noted."""

    orientation: int  # 1 to 8 as Exif counts; 1 is upright
    taken_at: datetime | None  # the camera's own wall clock, without time zone
    utc_offset: timedelta | None  # of that clock
    focal_35mm: float | None  # focal length in mm as on 36 x 24 mm film
    camera: str | None  # maker, model, end of the body's number; printable, at most 80 letters


def camera_notes(image: Image.Image) -> CameraNotes:
    """What the camera noted in a picture that has been decoded (PNG keeps its notes at the end)."""
    main, inner = _blocks(image)
    orientation = main.get(ExifTags.Base.Orientation, 1)
    return CameraNotes(
        orientation=orientation if orientation in range(1, 9) else 1,
        taken_at=_taken_at(inner),
        utc_offset=_utc_offset(inner),
        focal_35mm=_positive(inner.get(ExifTags.Base.FocalLengthIn35mmFilm)),
        camera=_camera(main, inner),
    )


def _blocks(image: Image.Image) -> tuple[dict[int, Any], dict[int, Any]]:
    """Main and photo block of the Exif data, empty where broken. That of the place is left alone."""
    try:
        exif = image.getexif()
        return dict(exif), dict(exif.get_ifd(ExifTags.IFD.Exif))
    except Exception:  # broken metadata is no reason to lose the photo
        return {}, {}


def _taken_at(details: dict[int, Any]) -> datetime | None:
    """Exif DateTimeOriginal; None where it is missing, unset, or from a clock that was never set."""
    try:
        taken = datetime.strptime(str(details[ExifTags.Base.DateTimeOriginal])[:19], "%Y:%m:%d %H:%M:%S")
    except (KeyError, ValueError):
        return None
    return taken if taken.year >= FIRST_YEAR else None


def _utc_offset(details: dict[int, Any]) -> timedelta | None:
    """Exif OffsetTimeOriginal, such as +02:00."""
    try:
        return datetime.strptime(
            str(details[ExifTags.Base.OffsetTimeOriginal]).strip("\0 "), "%z"
        ).utcoffset()
    except (KeyError, ValueError):
        return None


def _positive(value: Any) -> float | None:
    try:
        number = float(value)
    except (TypeError, ValueError, ZeroDivisionError):
        return None
    return number if 0 < number < float("inf") else None


def _camera(exif: dict[int, Any], details: dict[int, Any]) -> str | None:
    """Maker and model as a person reads them; a model that names its maker itself says all.

    Two of one model are told apart by Exif BodySerialNumber, which cameras write and phones mostly do not.
    """
    make, model = (_words(exif.get(tag)) for tag in (ExifTags.Base.Make, ExifTags.Base.Model))
    text = model if model.casefold().startswith(make.casefold()) else f"{make} {model}"
    serial = _words(details.get(ExifTags.Base.BodySerialNumber))
    end = f" …{serial[-SERIAL_END:]}" if serial.strip("0 ") else ""  # zeros: never set
    name = text[: MOST_LETTERS - len(end)].strip()
    return name + end if name else None


def _words(value: Any) -> str:
    """Printable words with one blank between them; empty where it is no text."""
    if isinstance(value, bytes):
        value = value.decode("ascii", "replace")
    if not isinstance(value, str):
        return ""
    return " ".join("".join(letter if letter.isprintable() else " " for letter in value).split())
