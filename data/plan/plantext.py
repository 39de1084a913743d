"""Plan text: a plan as the book keeps it, and back.

In    a `Plan`, or the text of one
Out   JSON, or a `Plan`
Not   the draft of a plan (`drafttext.py`), where it is kept (`tables/planrows.py`)
"""

import json
from collections.abc import Mapping
from dataclasses import asdict
from datetime import date
from typing import Any

from data.trial import Block, CropPlan, Factor, Measure, MeasureKind, Plan, Question, Spread, Treatment

__all__ = ["block_of", "date_text", "factor_of", "plan_of", "plan_text"]

FORM = 1  # of the JSON; raised when an older program could misread it


def plan_text(plan: Plan) -> str:
    """The plan as the book keeps it (JSON)."""
    return json.dumps({"form": FORM} | asdict(plan), default=date_text, ensure_ascii=False)


def date_text(value: object) -> str:
    """What JSON asks for where it meets something that is neither text nor number."""
    if isinstance(value, date):
        return value.isoformat()
    raise TypeError(f"a plan holds text, numbers and dates; got {type(value)}")


def plan_of(text: str) -> Plan:
    """The plan that `plan_text` wrote; raises `ValueError` where it is none, or a later form."""
    body = json.loads(text)
    if not isinstance(body, dict) or body.pop("form", 0) != FORM:
        raise ValueError("this is no plan that this version of the program knows")
    try:
        return Plan(
            **body
            | {
                "question": Question(body["question"]),
                "crops": tuple(CropPlan(**crop) for crop in body["crops"]),
                "factors": tuple(factor_of(factor) for factor in body["factors"]),
                "treatments": tuple(Treatment(**treatment) for treatment in body["treatments"]),
                "measures": tuple(_measure(measure) for measure in body["measures"]),
                "blocks": tuple(block_of(block) for block in body["blocks"]),
                "spread": None if body["spread"] is None else Spread(**body["spread"]),
            }
        )
    except (KeyError, TypeError) as error:
        raise ValueError("this is no plan that this version of the program knows") from error


def _measure(body: Mapping[str, Any]) -> Measure:
    return Measure(**dict(body) | {"kind": MeasureKind(body["kind"])})


def factor_of(body: Mapping[str, Any]) -> Factor:
    """A factor whose levels have become a list on the way."""
    return Factor(**dict(body) | {"levels": tuple(body["levels"])})


def block_of(body: Mapping[str, Any]) -> Block:
    """A block whose shelves have become a list and whose day has become text."""
    shelves, sow_on = tuple(body["shelves"]), date.fromisoformat(body["sow_on"])
    return Block(**dict(body) | {"shelves": shelves, "sow_on": sow_on})
