"""Profile: pixels as a file's colour profile means them -> the same colours in sRGB.

In    pixels, the file's embedded ICC profile
Out   pixels in sRGB, by relative colorimetric rendering
Not   the colour of the light (`light.py`)
"""

from functools import lru_cache
from io import BytesIO

import numpy as np
from numpy.typing import NDArray
from PIL import Image, ImageCms

__all__ = ["from_inks", "in_srgb", "worth_applying"]

SAME_CODES = 2  # a profile that moves no colour by more is sRGB under another name


def in_srgb(pixels: NDArray[np.uint8], profile: bytes | None) -> NDArray[np.uint8]:
    """The same colours in sRGB, by relative colorimetric rendering; unchanged where there is no profile.

    Twelve megapixels cost more than decoding them: convert the top view or a preview, not the photo.
    """
    transform = _to_srgb(profile) if profile is not None else None
    return pixels if transform is None else _applied(pixels, transform)


def worth_applying(profile: bytes | None) -> bytes | None:
    """The profile where it changes colours; None where it is broken, for other than RGB, or sRGB itself."""
    return profile if profile is not None and _to_srgb(profile) is not None else None


def from_inks(strip: Image.Image, profile: bytes | None) -> Image.Image:
    """A picture in printing inks (CMYK) as RGB, by its own profile where that works, else plainly."""
    transform = None if profile is None else _transform(profile, "CMYK")
    return strip.convert("RGB") if transform is None else ImageCms.applyTransform(strip, transform) or strip


@lru_cache(maxsize=8)
def _to_srgb(profile: bytes) -> ImageCms.ImageCmsTransform | None:
    transform = _transform(profile, "RGB")
    if transform is None:
        return None
    cube = (np.indices((6, 6, 6)).reshape(3, 6, 36).transpose(1, 2, 0) * 51).astype(np.uint8)
    moved = np.abs(_applied(cube, transform).astype(int) - cube).max()
    return None if moved <= SAME_CODES else transform


@lru_cache(maxsize=8)
def _transform(profile: bytes, mode: str) -> ImageCms.ImageCmsTransform | None:
    """From a profile for that mode to sRGB; None where it is broken or for another mode."""
    try:
        return ImageCms.buildTransform(
            ImageCms.ImageCmsProfile(BytesIO(profile)),
            ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")),
            mode,
            "RGB",
            renderingIntent=ImageCms.Intent.RELATIVE_COLORIMETRIC,
        )
    except (ImageCms.PyCMSError, OSError, ValueError, TypeError):
        return None


def _applied(pixels: NDArray[np.uint8], transform: ImageCms.ImageCmsTransform) -> NDArray[np.uint8]:
    image = Image.fromarray(np.ascontiguousarray(pixels))
    return np.asarray(ImageCms.applyTransform(image, transform) or image)
