"""Trial spread: how far the grower's own trays lay apart in earlier trials, for the next plan.

In    a book with trials that have numbers
Out   a `Spread` for each measure that has enough of them
Not   the fit (`plan/spread.py`), the numbers (`verdicts.py`)
"""

from collections.abc import Mapping
from typing import TYPE_CHECKING

from data.plan.spread import LEAST_DF, Told, learn_spread
from data.sentence import Sentence
from data.trial import MeasureKind, Spread

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["learned_spreads"]


def learned_spreads(book: "Book") -> Mapping[MeasureKind, Spread]:
    """Pooled over all trials and crops; a measure with fewer than 4 degrees of freedom has none.

    Yield is taken in % of the mean of its trial and crop. Slow at first: for a worker.
    """
    from data.verdict.verdicts import verdicts

    told: dict[MeasureKind, list[Told]] = {}
    for found in verdicts(book):
        values = [number.value for number in found.numbers if number.value is not None]
        mean = sum(values) / len(values) if values else 0.0
        if found.kind is MeasureKind.YIELD and mean <= 0:
            continue
        unit = mean / 100 if found.kind is MeasureKind.YIELD else 1.0
        told.setdefault(found.kind, []).extend(
            Told(
                group=f"{found.trial}\n{found.crop}",
                block=number.tray.block or "",
                treatment=found.treatments[number.tray.id],
                value=number.value / unit,
            )
            for number in found.numbers
            if number.value is not None and number.tray.id in found.treatments
        )
    spreads = {}
    for kind, trays in told.items():
        learned = learn_spread(trays)
        if learned is not None and learned.df >= LEAST_DF and learned.sd > 0:
            source = Sentence("{n} trays of yours", n=learned.trays)
            spreads[kind] = Spread(sd=round(learned.sd, 1) or 0.1, source=str(source), df=learned.df)
    return spreads
