"""Uncertainty budget: a sum of products of inputs with ranges -> each input's share of its variance.

In    terms, each a product of named inputs; inputs as (low, most likely, high)
Out   the share of each input in the variance
Not   what the inputs are (`medium/factors.py`), the whole distribution by draws (`footprint.py`)

First order: u2 = sum (dG/dx u(x))2, JCGM 100:2008, 5.1.2. A triangle (l, m, h) has the mean (l + m + h)/3 and
the variance (l2 + m2 + h2 - lm - lh - mh)/18.
"""

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

__all__ = ["Range", "Term", "shares_of_variance"]


@dataclass(frozen=True, slots=True)
class Range:
    """An input: low, most likely, high; a triangle between them. All the same: exact."""

    low: float
    mode: float
    high: float

    @property
    def mean(self) -> float:
        """Of the triangle."""
        return (self.low + self.mode + self.high) / 3

    @property
    def variance(self) -> float:
        """Of the triangle."""
        a, m, b = self.low, self.mode, self.high
        return max(0.0, a * a + m * m + b * b - a * m - a * b - m * b) / 18


@dataclass(frozen=True, slots=True)
class Term:
    """`times` x the product of inputs, over the product of `below`; `part` is what it is a part of."""

    part: str
    inputs: tuple[str, ...]
    times: float = 1.0
    below: tuple[str, ...] = ()


def _value(term: Term, values: Mapping[str, float]) -> float:
    over = math.prod(values[name] for name in term.inputs)
    return term.times * over / math.prod(values[name] for name in term.below)


def _parts_of_variance(terms: Sequence[Term], inputs: Mapping[str, Range]) -> dict[str, float]:
    """(dG/dx u(x))2 of each input."""
    found: dict[str, float] = {}
    for name in dict.fromkeys(name for term in terms for name in (*term.inputs, *term.below)):
        means = {key: one.mean for key, one in inputs.items()}
        slope = 0.0
        for term in terms:
            for at, key in enumerate(term.inputs):
                if key == name:
                    others = term.inputs[:at] + term.inputs[at + 1 :]
                    slope += _value(Term(term.part, others, term.times, term.below), means)
            slope -= term.below.count(name) * _value(term, means) / means[name] if name in term.below else 0
        found[name] = slope * slope * inputs[name].variance
    return found


def shares_of_variance(terms: Sequence[Term], inputs: Mapping[str, Range]) -> dict[str, float]:
    """Share of each input in the variance of G, 0-1, largest first."""
    parts = _parts_of_variance(terms, inputs)
    total = sum(parts.values())
    ordered = sorted(parts.items(), key=lambda item: -item[1])
    return {name: part / total if total > 0 else 0.0 for name, part in ordered}
