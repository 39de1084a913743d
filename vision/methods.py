"""Methods: the way to tell tissues apart that is used when nobody asks for another.

In    nothing, or the name of a method
Out   a `Tissue`: the learned model; the plain method where the model's file is missing or damaged
Not   the methods themselves (`learned.py`, `tissue.py`)
"""

from vision.learned import LearnedTissue
from vision.network import ModelDamaged
from vision.reason import Reason
from vision.tissue import PlainTissue, Tissue

__all__ = ["METHODS", "best_tissue", "tissue_named"]

METHODS = (LearnedTissue.name, PlainTissue.name)


def best_tissue() -> Tissue:
    """The learned model, or the plain method, which then says on every photo that it stands in.

    Scores name their method, so those of the two are never mixed.
    """
    try:
        return LearnedTissue()
    except ModelDamaged:
        return PlainTissue(notes=(Reason.PLAIN_ONLY,))


def tissue_named(name: str) -> Tissue:
    """The method of that name, one of `METHODS`."""
    return PlainTissue() if name == PlainTissue.name else best_tissue()
