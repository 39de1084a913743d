"""Planes seen by cameras, and chance: what pictures of the frame networks are drawn with.

In    points and homographies as tensors, a batch at a time; one seed
Out   homographies, sampling grids, rectangles, lenses; random numbers that one seed decides
Not   which views are taken (`frame_batches.py`)
"""

import torch
from torch import Tensor


def grid_of(matrix: Tensor, size: tuple[int, int], source: tuple[int, int], fine: int = 2) -> Tensor:
    """Sampling grid, `fine` times as fine as `size`, for homographies from output px to source px."""
    width, height = size
    device = matrix.device
    x = (torch.arange(fine * width, device=device) + 0.5) / fine
    y = (torch.arange(fine * height, device=device) + 0.5) / fine
    ys, xs = torch.meshgrid(y, x, indexing="ij")
    places = torch.stack([xs, ys, torch.ones_like(xs)], -1).reshape(-1, 3)
    seen = places @ matrix.transpose(1, 2)
    flat = seen[..., :2] / seen[..., 2:].clamp(min=1e-3)
    flat = flat * (2.0 / torch.tensor(source, device=device)) - 1
    return flat.reshape(-1, fine * height, fine * width, 2)


def solve(plane: Tensor, photo: Tensor) -> Tensor:
    """Homographies (n, 3, 3) that take four points (n, 4, 2) to four others."""
    n = plane.shape[0]
    x, y, u, v = plane[..., 0], plane[..., 1], photo[..., 0], photo[..., 1]
    zero, one = torch.zeros_like(x), torch.ones_like(x)
    first = torch.stack([x, y, one, zero, zero, zero, -u * x, -u * y], -1)
    second = torch.stack([zero, zero, zero, x, y, one, -v * x, -v * y], -1)
    left = torch.cat([first, second], 1).double()
    right = torch.cat([u, v], 1).double()
    found = torch.linalg.solve(left, right)
    return torch.cat([found, torch.ones(n, 1, device=plane.device, dtype=torch.float64)], 1).reshape(n, 3, 3)


def moved(matrix: Tensor, points: Tensor) -> Tensor:
    """Points (n, k, 2) through homographies (n, 3, 3)."""
    ones = torch.ones_like(points[..., :1])
    seen = torch.cat([points, ones], -1).to(matrix.dtype) @ matrix.transpose(1, 2)
    return (seen[..., :2] / seen[..., 2:]).float()


def bent(points: Tensor, lens: Tensor, size: tuple[int, int]) -> Tensor:
    """Points of photos of `size` through a lens (n, 2): r (1 + k1 r2 + k2 r4), r in half diagonals."""
    middle, square = _from_middle(points, size)
    return middle * (1 + lens[:, None, :1] * square + lens[:, None, 1:] * square**2) + points - middle


def freed(points: Tensor, lens: Tensor, size: tuple[int, int]) -> Tensor:
    """The way back, by iteration."""
    found = points
    for _ in range(8):
        found = found + points - bent(found, lens, size)
    return found


def _from_middle(points: Tensor, size: tuple[int, int]) -> tuple[Tensor, Tensor]:
    whole = torch.tensor(size, dtype=points.dtype, device=points.device)
    middle = points - whole / 2
    return middle, (middle / (whole.norm() / 2)).square().sum(-1, keepdim=True)


def rectangle(size_mm: tuple[float, float], count: int, device: torch.device) -> Tensor:
    """Corners of a rectangle around the origin, y down, top left first."""
    x, y = size_mm[0] / 2, size_mm[1] / 2
    return torch.tensor([[-x, -y], [x, -y], [x, y], [-x, y]], device=device).expand(count, 4, 2)


def turn(angle: Tensor, scale: Tensor) -> Tensor:
    """Rotation and scale, (n, 2, 2)."""
    c, s = torch.cos(angle) * scale, torch.sin(angle) * scale
    return torch.stack([torch.stack([c, -s], -1), torch.stack([s, c], -1)], -2)


class Chance:
    """Random numbers on one device from one seed."""

    def __init__(self, device: torch.device, seed: int) -> None:
        self.device = device
        self.rng = torch.Generator(device=device)
        self.rng.manual_seed(seed)

    def uniform(self, *shape: int, low: float = 0.0, high: float = 1.0) -> Tensor:
        """Even between low and high."""
        return torch.rand(*shape, device=self.device, generator=self.rng) * (high - low) + low

    def normal(self, *shape: int) -> Tensor:
        """Standard normal."""
        return torch.randn(*shape, device=self.device, generator=self.rng)

    def often(self, share: float, count: int) -> Tensor:
        """1.0 with that chance, else 0.0; (count, 1, 1, 1)."""
        return (self.uniform(count, 1, 1, 1) < share).float()

    def pick(self, weight: Tensor, count: int) -> Tensor:
        """Indices drawn by weight."""
        return torch.multinomial(weight, count, replacement=True, generator=self.rng)
