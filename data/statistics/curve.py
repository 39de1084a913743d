"""Curve: points -> the curve through them by least squares, and how sure its parameters are.

In    times and values, a formula, where to begin
Out   `Fit`: parameters with covariance; functions of them with their standard errors
Not   which formula (`growth.py`, `medium/drying.py`), intervals (`estimate.py`)

Nonlinear least squares (Levenberg and Marquardt, MINPACK through scipy). The covariance is the usual one,
s2 (J'J)^-1 with s2 = residual sum of squares / (points - parameters), as in Bates & Watts (1988) Nonlinear
Regression Analysis (from memory). Where points scatter more in one part of the curve than in another that is
too narrow; HC3 of MacKinnon & White (1985) J. Econometrics 29, 305-325 (from memory) takes each residual by
itself, made larger by its point's own pull on the curve. A number that rests on few of the points has few
degrees of freedom then, by Satterthwaite (1946) Biometrics Bulletin 2, 110-114 (from memory).
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from data.statistics.estimate import t_quantile

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Vector = NDArray[np.float64]

__all__ = ["Fit", "Formula", "fit_curve"]

Formula = Callable[..., Any]  # (times, *parameters) -> values, for arrays

TOLERANCE = 1e-12
MOST_TRIES = 2000
STEP = 1e-6  # of a parameter, for derivatives
MOST_PULL = 0.98  # of a point on its own curve, that is counted: at 1 its residual says nothing
FLATTEST = 1e-12  # condition of J'J below which a parameter is not told by the points


@dataclass(frozen=True, slots=True, kw_only=True)
class Fit:
    """A curve through points."""

    parameters: tuple[float, ...]
    spread: tuple[tuple[float, ...], ...] | None  # (J'J)^-1; None where the points do not tell a parameter
    rss: float  # residual sum of squares
    df: int  # points minus parameters
    slopes: tuple[tuple[float, ...], ...]  # of each point by each parameter
    residuals: tuple[float, ...]

    @property
    def covariance(self) -> tuple[tuple[float, ...], ...] | None:
        """Of the parameters; None where there are no more points than parameters."""
        if self.spread is None or self.df <= 0:
            return None
        return tuple(tuple(one * self.rss / self.df for one in row) for row in self.spread)

    @property
    def errors(self) -> tuple[float, ...] | None:
        """Standard errors of the parameters."""
        if self.covariance is None:
            return None
        return tuple(float(row[at]) ** 0.5 for at, row in enumerate(self.covariance))

    def error_of(self, function: Callable[..., float], scatter: float | None = None) -> float | None:
        """Standard error of a function of the parameters, by its slope at the fit (delta method).

        `scatter`: standard deviation of a point, where it is known better than the residuals tell it.
        """
        if self.spread is None or (scatter is None and self.df <= 0):
            return None
        variance = self.rss / self.df if scatter is None else scatter**2
        slopes = [self._slope(function, at) for at in range(len(self.parameters))]
        total = variance * _through(slopes, self.spread, slopes)
        return float(max(0.0, total) ** 0.5)

    def own_error_of(self, function: Callable[..., float]) -> tuple[float, float] | None:
        """The same where points may scatter unlike each other (HC3), and its degrees of freedom."""
        if self.spread is None:
            return None
        slopes = [self._slope(function, at) for at in range(len(self.parameters))]
        weights = [_through(point, self.spread, slopes) for point in self.slopes]
        pulls = [min(_through(point, self.spread, point), MOST_PULL) for point in self.slopes]
        shares = [weight**2 for weight in weights]
        whole = zip(shares, self.residuals, pulls, strict=True)
        total = sum(share * (off / (1 - pull)) ** 2 for share, off, pull in whole)
        squares = sum(share**2 for share in shares)
        rests_on = float(sum(shares) ** 2 / squares) if squares > 0 else 1.0  # points
        return float(total**0.5), min(rests_on, max(self.df, 1))

    def reach_of(self, function: Callable[..., float]) -> float | None:
        """Half of the 95 % interval: the wider one of those with one scatter for all points and without."""
        plain, own = self.error_of(function), self.own_error_of(function)
        if plain is None or own is None:
            return None
        error, df = own
        return max(t_quantile(self.df) * plain, t_quantile(df) * error)

    def _slope(self, function: Callable[..., float], at: int) -> float:
        step = STEP * (abs(self.parameters[at]) or 1.0)
        ends = [
            function(*(p + sign * step * (i == at) for i, p in enumerate(self.parameters)))
            for sign in (-1, 1)
        ]
        return (ends[1] - ends[0]) / (2 * step)


def _through(one: Sequence[float], matrix: Sequence[Sequence[float]], other: Sequence[float]) -> float:
    return sum(
        left * value * right
        for left, row in zip(one, matrix, strict=True)
        for right, value in zip(other, row, strict=True)
    )


def fit_curve(
    formula: Formula,
    times: Sequence[float],
    values: Sequence[float],
    begin: Sequence[float],
    *,
    outliers_within: float | None = None,
) -> Fit | None:
    """The curve with the least squares, or None where no curve settles.

    `outliers_within`: residuals beyond it weigh less and less (soft L1), so that single bad points do not
    pull the curve; the covariance is then only a rough one.
    """
    import numpy as np
    from scipy.optimize import least_squares

    t, y = np.asarray(times, float), np.asarray(values, float)
    if len(t) < len(begin):
        return None

    def residuals(parameters: "Vector") -> "Vector":
        with np.errstate(over="ignore", under="ignore", invalid="ignore"):
            off = np.asarray(formula(t, *parameters), float) - y
        kept: Vector = np.nan_to_num(off, nan=1e9, posinf=1e9, neginf=-1e9)
        return kept

    how: dict[str, Any] = {"method": "lm"}
    if outliers_within is not None:
        how = {"method": "trf", "loss": "soft_l1", "f_scale": outliers_within}
    found = least_squares(
        residuals, begin, **how, xtol=TOLERANCE, ftol=TOLERANCE, gtol=TOLERANCE, max_nfev=MOST_TRIES
    )
    if not found.success or not np.isfinite(found.x).all():
        return None
    return _fit(found.x, residuals(found.x), _slopes(residuals, found.x))


def _slopes(residuals: Callable[["Vector"], "Vector"], parameters: "Vector") -> "Vector":
    """Derivatives by the parameters, from both sides: one-sided ones cost the errors four digits."""
    import numpy as np

    columns = []
    for at, one in enumerate(parameters):
        step = np.zeros_like(parameters)
        step[at] = STEP * (abs(one) or 1.0)
        columns.append((residuals(parameters + step) - residuals(parameters - step)) / (2 * step[at]))
    slopes: Vector = np.column_stack(columns)
    return slopes


def _fit(parameters: "Vector", off: "Vector", jacobian: "Vector") -> Fit:
    import numpy as np

    spread = None
    scale = np.sqrt((jacobian**2).sum(axis=0))
    if (scale > 0).all():
        square = (jacobian / scale).T @ (jacobian / scale)
        if np.linalg.cond(square) < 1 / FLATTEST:
            spread = _rows(np.linalg.inv(square) / np.outer(scale, scale))
    return Fit(
        parameters=tuple(map(float, parameters)),
        spread=spread,
        rss=float(off @ off),
        df=len(off) - len(parameters),
        slopes=_rows(jacobian),
        residuals=tuple(map(float, -off)),
    )


def _rows(matrix: "Vector") -> tuple[tuple[float, ...], ...]:
    return tuple(tuple(map(float, row)) for row in matrix)
