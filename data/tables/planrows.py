"""Plan rows: questions about trials, and the one place where a row of a plan or a drawing becomes a record.

In    rows
Out   `KeptPlan`, `KeptDraw`; SQL as constants, values bound by name
Not   running the queries (the chapters)

What a plan and a drawing are comes in with the first row of one: the first look list is read without.
"""

import sqlite3
from collections.abc import Iterable
from datetime import datetime
from typing import TYPE_CHECKING

from data.queries import TRAY_COLUMNS
from data.tables.rows import time_of

if TYPE_CHECKING:
    from data.plan.drawing import KeptDraw
    from data.trial import KeptPlan

__all__ = [
    "DRAWS", "PLANS", "TRAYS_OF_TRIAL", "TRIAL_ID", "TRIAL_NAMES", "TRIAL_OF_DRAW", "kept_draws",
    "kept_plans",
]  # fmt: skip

TRIAL_NAMES = "SELECT name FROM trial ORDER BY id"
TRIAL_ID = "SELECT id FROM trial WHERE name = :name"
PLANS = """
    SELECT k.id, k.trial, k.body, k.kept_at, k.why,
           (SELECT min(t.sown_at) FROM tray t WHERE t.trial = k.trial) AS first_sown_at
      FROM plan k
      JOIN trial r ON r.id = k.trial
     WHERE :trial IS NULL OR r.name = :trial
     ORDER BY k.kept_at, k.id
"""
DRAWS = """
    SELECT d.id, d.plan, d.seed, d.body, d.drawn_at, d.why
      FROM draw d
      JOIN plan p ON p.id = d.plan
      JOIN trial r ON r.id = p.trial
     WHERE r.name = :trial
     ORDER BY d.drawn_at, d.id
"""
TRIAL_OF_DRAW = """
    SELECT r.name AS trial
      FROM draw d
      JOIN plan p ON p.id = d.plan
      JOIN trial r ON r.id = p.trial
     WHERE d.id = :draw
"""
TRAYS_OF_TRIAL = TRAY_COLUMNS + " WHERE r.name = :trial ORDER BY t.shelf, t.position, t.id"


def kept_plans(rows: Iterable[sqlite3.Row]) -> "tuple[KeptPlan, ...]":
    """Versions are counted from 1 for each trial, oldest first."""
    from data.plan.plantext import plan_of
    from data.trial import KeptPlan, PlanId

    versions: dict[int, int] = {}
    kept = []
    for row in rows:
        version = versions[row["trial"]] = versions.get(row["trial"], 0) + 1
        kept.append(
            KeptPlan(
                id=PlanId(row["id"]),
                plan=plan_of(row["body"]),
                version=version,
                kept_at=datetime.fromisoformat(row["kept_at"]),
                why=row["why"],
                first_sown_at=time_of(row["first_sown_at"]),
            )
        )
    return tuple(kept)


def kept_draws(rows: Iterable[sqlite3.Row]) -> "tuple[KeptDraw, ...]":
    """As the book has them."""
    from data.plan.drawing import DrawId, KeptDraw, draw_of
    from data.trial import PlanId

    return tuple(
        KeptDraw(
            id=DrawId(row["id"]),
            plan_id=PlanId(row["plan"]),
            draw=draw_of(row["seed"], row["body"]),
            drawn_at=datetime.fromisoformat(row["drawn_at"]),
            why=row["why"],
        )
        for row in rows
    )
