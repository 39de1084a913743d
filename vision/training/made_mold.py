"""Mold that was never grown: felt laid over bare ground of any tray, in that place's own light.

In    a batch of pictures (n, 3, size, size), 0-1, and labels, as `tissue_pictures.py` draws them
Out   the same with patches of felt, labelled so, and with decoys that keep their labels
Not   other changes of pictures (`tissue_pictures.py`), the network (`learn_tissue.py`)

Trays with mold are few (18 patches of 2 cm2 and more). Made felt can lie on every medium, under every crop,
in every light. It is grey in the colour of the light, dull and fine, and hides what it grows over; shade and
leaves above it stay. So that no network learns "something was laid here", decoys are laid in the same way:
as neutral but glittering, or as dull but brown. Texture: spot noise (Galerne, Gousseau & Morel 2011, IEEE
Trans. Image Process. 20, 257), white noise convolved with a small spot.
"""

import math

import torch
import torch.nn.functional as tf
from draws import DEVICE, even, field, normal
from torch import Tensor

MEDIUM, HULL, ROOT_HAIRS, FUZZ = 2, 3, 7, 8
FELT_LIGHT, FELT_LIGHT_SD = 0.13, 0.5  # linear luminance of felt that is seen well in trays learned from
TINT_SD = 0.10  # of the light, each channel
FINEST_PX, COARSEST_PX = 0.6, 2.2  # spots of felt
DARKEST = 0.01  # linear: felt in deeper shade is not to be told, by nobody
SHADE_STEP_PX = 4
GAMMA = 2.2


def with_made_mold(x: Tensor, y: Tensor, felt: slice, decoys: slice) -> tuple[Tensor, Tensor]:
    """Felt on the bare ground of some pictures, look-alikes on that of others."""
    x[felt], laid = overgrown(x[felt], bare(y[felt]), is_felt=True)
    y[felt] = torch.where(laid, torch.full_like(y[felt], FUZZ), y[felt])
    x[decoys], _ = overgrown(x[decoys], bare(y[decoys]) & (y[decoys] != FUZZ), is_felt=False)
    return x, y


def bare(y: Tensor) -> Tensor:
    """Where nothing stands above the ground."""
    return (y == MEDIUM) | (y == HULL) | (y == ROOT_HAIRS) | (y == FUZZ)


def overgrown(x: Tensor, ground: Tensor, *, is_felt: bool) -> tuple[Tensor, Tensor]:
    """Pictures with one layer on bare ground, and where it hides more than half of it and can be seen."""
    count, size = len(x), x.shape[2]
    linear = x.clamp(0, 1) ** GAMMA
    shade = shading(linear, ground)
    contrast = even(count, 1, 1, 1) * 0.16 + 0.04
    tint = torch.exp(normal(count, 3, 1, 1) * TINT_SD)
    if not is_felt:
        glitters = even(count, 1, 1, 1) < 0.5
        contrast = torch.where(glitters, 0.45 + 0.5 * even(count, 1, 1, 1), contrast)
        tint = torch.where(glitters, tint, brown(count))
    level = FELT_LIGHT * torch.exp(normal(count, 1, 1, 1) * FELT_LIGHT_SD)
    layer = level * tint * shade * torch.exp(contrast * spots(count, size))
    layer = specked(layer) if is_felt else layer
    hides = (patch(ground, size) * (0.65 + 0.5 * even(count, 1, 1, 1))).clamp(0, 1) * ground[:, None]
    mixed = linear * (1 - hides) + layer * hides
    told = (hides > 0.5) & (layer.mean(1, keepdim=True) > DARKEST)
    return mixed.clamp(0, 1) ** (1 / GAMMA), told[:, 0]


def shading(linear: Tensor, ground: Tensor) -> Tensor:
    """How bright the ground is around each pixel, its mean in the picture being 1; (n, 1, size, size)."""
    seen = ground[:, None].float()
    few = tf.avg_pool2d(torch.cat([linear.mean(1, keepdim=True) * seen, seen], 1), SHADE_STEP_PX)
    near = tf.avg_pool2d(few, 3, 1, 1, count_include_pad=False)
    wide = few.mean((2, 3), keepdim=True)
    near = (near[:, :1] + 0.02 * wide[:, :1]) / (near[:, 1:] + 0.02 * wide[:, 1:]).clamp(min=1e-4)
    share = near / (wide[:, :1] / wide[:, 1:].clamp(min=1e-4)).clamp(min=1e-4)
    share = tf.interpolate(share, scale_factor=SHADE_STEP_PX, mode="bilinear", align_corners=False)
    return share.clamp(0.08, 2.5) ** 0.8


def spots(count: int, size: int) -> Tensor:
    """Spot noise, sd 1; spots round, of any size between the finest and the coarsest."""
    sd = FINEST_PX * (COARSEST_PX / FINEST_PX) ** even(count, 1, 1)
    way = torch.fft.fftfreq(size, device=DEVICE)
    slow = way[:, None] ** 2 + way[None, : size // 2 + 1] ** 2
    kept = torch.exp(-2 * (math.pi * sd) ** 2 * slow)
    noise = torch.fft.irfft2(torch.fft.rfft2(normal(count, size, size)) * kept, (size, size))
    return (noise / noise.std((1, 2), keepdim=True))[:, None]


def specked(layer: Tensor) -> Tensor:
    """A third of them with dark specks, as felt that has begun to bear spores."""
    count, size = len(layer), layer.shape[2]
    bears = (even(count, 1, 1, 1) < 0.33).float()
    specks = (spots(count, size) > 2.2).float() * bears
    return layer * (1 - 0.6 * specks)


def patch(ground: Tensor, size: int) -> Tensor:
    """A ragged round patch about some bare pixel of each picture, 1 inside, 0 outside, (n, 1, size, size)."""
    count = len(ground)
    open_share = ground.flatten(1).float() + 1e-6
    middle = torch.multinomial(open_share, 1)[:, 0]
    row, column = (middle // size)[:, None, None], (middle % size)[:, None, None]
    way = torch.arange(size, device=DEVICE)
    far = torch.sqrt((way[None, :, None] - row) ** 2.0 + (way[None, None, :] - column) ** 2.0)[:, None]
    reach = 10 * 7 ** even(count, 1, 1, 1)
    ragged = 0.45 * field(count, size, 9) + 0.2 * field(count, size, 40)
    return torch.sigmoid((reach * (1 + ragged) - far) / (1 + 0.12 * reach) + 0.5 * spots(count, size))


def brown(count: int) -> Tensor:
    """The colour of wet ground or of a stain, never that of a plant."""
    channels = torch.tensor([1.0, -0.1, -1.0], device=DEVICE)[None, :, None, None]
    return torch.exp((0.2 + 0.3 * even(count, 1, 1, 1)) * channels)
