"""Report fixed: the words of a report that are the same for every trial: methods and cautions.

In    the version that scored the photos, the verdicts
Out   `Sentence`s
Not   what a trial has found (`reading.py`)
"""

from collections.abc import Sequence

from data.sentence import Sentence

__all__ = ["CAUTIONS", "methods"]

CAUTIONS = (
    Sentence(
        "Mold: a flag is a reason to look, no finding, and no flag is no proof that a tray is safe. Do not "
        "taste, sell or give away from a tray with mold; open it away from others, with gloves and a "
        "suitable respirator, keep people with asthma or weak immunity away, and clean trays and tools."
    ),
    Sentence(
        "Food that is sold is ruled by local food-safety law and its inspectors, and so are feeds from "
        "manure or waste. This report is no certificate and no legal judgement."
    ),
    Sentence("Electric heat and water together: follow the maker's and local electrical rules."),
    Sentence("Footprint figures are screening estimates, no certified assessment."),
    Sentence(
        "The answers hold for the crops, seed lots, rack and season of this trial; elsewhere they are a "
        "reason to try, no proof."
    ),
)


def methods(versions: Sequence[str]) -> tuple[Sentence, ...]:
    """How photos were read, in half a page; how media were compared stands with each verdict."""
    named = (
        Sentence(
            "Each photo was turned into a top view of the tray with 2 pixels a millimetre, and every pixel "
            "was told to be canopy or not by the method {versions}.",
            versions=", ".join(versions),
        )
        if versions
        else Sentence("No photo of the day that is read was scored.")
    )
    return (
        named,
        Sentence(
            "Coverage is the share of the inner area that is canopy. Uniformity is read from the coverage of "
            "72 cells of the tray. The canopy score joins coverage, uniformity, colour and mold as "
            "desirabilities by their weighted geometric mean (Derringer & Suich 1980). In it coverage and "
            "uniformity are counted as a share of the growing bed, without rim and wall of the tray, where "
            "every photo that is compared tells it; otherwise as a share of the inner area. For the limits "
            "of coverage a share of the bed is set on the scale of what is seen from straight above: 47 % of "
            "the bed stand for 30 %."
        ),
        Sentence(
            "The tray is the unit. Its number is read on the day that was fixed; a tray without a usable "
            "photo of that day has no number and none is put in its place. Scores of two versions of a "
            "method are never mixed."
        ),
        Sentence(
            "Colours in charts are those of Okabe & Ito (2008); each medium has its own marker and dash as "
            "well."
        ),
    )
