"""Grown tables: what was planned and sown, column by column, as it stands in an export.

In    nothing
Out   `GROWN`: media, crops, kinds of trays, seed lots, trials with plans and drawings, blocks, trays
Not   what was seen and noted of them (`notedtables.py`)
"""

from data.openfiles.columns import (
    FEED,
    NOTE,
    SEATING,
    WATERING,
    OpenTable,
    integer,
    json,
    number,
    ref,
    row_id,
    text,
    time,
    yes_no,
)

__all__ = ["GROWN"]

GROWN: tuple[OpenTable, ...] = (
    OpenTable(
        table="medium",
        file="media",
        about="What the seed lies on",
        columns=(
            row_id("medium"), text("name", "the medium"),
            text("kind", "mat, loose or other; empty until it is said"),
            yes_no("trusted", "the medium that others are held against"), SEATING, WATERING, FEED, NOTE,
        ),
    ),
    OpenTable(
        table="crop",
        file="crops",
        about="Crops and what the grower usually does with them",
        columns=(
            row_id("crop"), text("name", "the crop"), text("variety", "the variety"),
            number("sowing_rate_g", "dry seed a tray"),
            number("soak_hours", "soaking before sowing", "soak_h"),
            number("blackout_days", "days under cover after sowing"),
            yes_no("stacked", "trays press on each other under cover"), text("light", "kind of light"),
            number("cut_from_day", "days since sowing from which it is cut"),
            number("cut_to_day", "days since sowing until which it is cut"),
            number("base_c", "temperature below which it does not grow", "base_temperature_c"), NOTE,
        ),
    ),
    OpenTable(
        table="tray_type",
        file="tray_types",
        about="Tray types",
        columns=(
            row_id("tray_type"), text("name", "the kind"),
            number("outer_long_mm", "outer length of the rim"),
            number("outer_short_mm", "outer width of the rim"),
            number("inner_long_mm", "length of the inner area"),
            number("inner_short_mm", "width of the inner area"),
            number("rim_height_mm", "height of the rim's top above the bench"),
        ),
    ),
    OpenTable(
        table="seed_lot",
        file="seed_lots",
        about="The bags that the seed came from",
        columns=(
            row_id("seed_lot"), ref("crop"), text("name", "the lot"), text("received_on", "day of arrival"),
            number("germination_pct", "share that germinates, as declared"),
            number("thousand_seed_g", "mass of a thousand seeds"), NOTE,
        ),
    ),
    OpenTable(
        table="trial",
        file="trials",
        about="Trials",
        columns=(
            row_id("trial"), text("name", "the trial"), text("question", "what it asks"),
            ref("medium", "the trusted medium", "trusted"),
            number("margin_points", "difference that still counts as good, points of the canopy score"),
            time("margin_set_at", "when the margin was set"),
            text("began_on", "first sowing, as planned"),
            NOTE,
        ),
    ),
    OpenTable(
        table="plan",
        file="plans",
        about="Every version of a trial's plan that was kept, and when: before or after sowing",
        columns=(
            row_id("plan"), ref("trial"), json("body", "the whole plan"), time("kept_at", "when it was kept"),
            text("why", "why it was changed"),
        ),
    ),
    OpenTable(
        table="draw",
        file="draws",
        about="Every drawing of places, with its seed",
        columns=(
            row_id("draw"), ref("plan"), integer("seed", "seed of the random numbers; 0: drawn on paper"),
            json("body", "which tray stands where"), time("drawn_at", "when it was drawn"),
            text("why", "why it was drawn again"),
        ),
    ),
    OpenTable(
        table="block",
        file="blocks",
        about="Trays that share place and sowing; comparisons are made within blocks",
        columns=(row_id("block"), ref("trial"), text("name", "the block"), NOTE),
    ),
    OpenTable(
        table="tray",
        file="trays",
        about="One physical tray and what grows in it from sowing to cut: the experimental unit",
        columns=(
            row_id("tray"), text("code", "the tray's code"), ref("trial"), ref("block"), ref("crop"),
            ref("medium"),
            ref("tray_type"), ref("seed_lot"), SEATING, number("sowing_rate_g", "dry seed a tray"),
            number("soak_hours", "soaking before sowing", "soak_h"), time("sown_at", "sowing"),
            time("blackout_from", "begin of the cover"), time("blackout_to", "end of the cover"),
            yes_no("stacked", "trays pressed on each other under cover"), WATERING, FEED,
            yes_no("heat_mat", "a heat mat below"), text("shelf", "the shelf"),
            integer("position", "place along the shelf, from 1"), text("light", "kind of light"),
            integer("tag_number", "number of the printed tag"), time("done_at", "end of the tray"),
            text("ended", "how it ended: cut or thrown away"), text("ended_why", "why it was thrown away"),
            NOTE,
        ),
    ),
)  # fmt: skip
