"""Draft text: a plan that is being made, to text and back, so that closing the window loses nothing.

In    a `Draft`
Out   JSON for a setting of the book; the draft again, or None where the text is no draft of this version
Not   plans that are kept (`plantext.py`)
"""

import json
from dataclasses import asdict, replace
from datetime import date

from data.plan.blocks import ShelfPlaces
from data.plan.draft import Draft, Laid, laid_like
from data.plan.plantext import block_of, date_text, factor_of
from data.trial import CropPlan, MeasureKind, Question, Spread

__all__ = ["SETTING", "draft_from", "draft_text"]

SETTING = "plan draft"  # its name in the book
FORM = 1


def draft_text(draft: Draft) -> str:
    """The draft as JSON; the blocks of a kept plan behind it go along while they still fit."""
    fits = draft.laid is not None and draft.laid.like == laid_like(draft)
    laid = draft.laid.blocks if draft.laid is not None and fits else ()
    body = asdict(replace(draft, laid=None)) | {"form": FORM, "laid": [asdict(block) for block in laid]}
    return json.dumps(body, default=date_text, ensure_ascii=False)


def draft_from(text: str | None) -> Draft | None:
    """The draft that `draft_text` wrote."""
    try:
        body = json.loads(text or "null")
        if not isinstance(body, dict) or body.pop("form", 0) != FORM:
            return None
        laid = tuple(block_of(block) for block in body.pop("laid"))
        other = body["other"]
        draft = Draft(
            **body
            | {
                "question": Question(body["question"]),
                "measure": MeasureKind(body["measure"]),
                "crops": tuple(CropPlan(**crop) for crop in body["crops"]),
                "media": tuple(body["media"]),
                "other": None if other is None else factor_of(other),
                "spread": Spread(**body["spread"]),
                "shelves": tuple(ShelfPlaces(**shelf) for shelf in body["shelves"]),
                "begins": date.fromisoformat(body["begins"]),
                "earlier": tuple(block_of(block) for block in body["earlier"]),
                "laid": None,
            }
        )
    except (KeyError, TypeError, ValueError):
        return None
    return replace(draft, laid=Laid(blocks=laid, like=laid_like(draft))) if laid else draft
