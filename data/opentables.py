"""Open tables: how each table of the book stands in an export, column by column.

In    nothing
Out   `TABLES`: for each table its file, what a row is, and its columns with heading, kind, unit in words
Not   writing (`export.py`), reading (`imported.py`)

Headings carry the unit ("coverage_pct"); shares are % of the tray's inner area where not of its bed, times
local time of the rack (ISO 8601), lengths mm from the inner area's top left corner as the top view shows it.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from enum import StrEnum

__all__ = ["CELL_HEADINGS", "TABLES", "Column", "Kind", "OpenTable"]


class Kind(StrEnum):
    """What the cells of a column hold; the values are Frictionless Table Schema types."""

    TEXT = "string"
    NUMBER = "number"
    INTEGER = "integer"
    TIME = "datetime"
    DATE = "date"
    YES_NO = "boolean"
    JSON = "object"  # an object or a list as JSON text


@dataclass(frozen=True, slots=True, kw_only=True)
class Column:
    """One column: its name in the book, its heading in the file."""

    name: str
    heading: str
    kind: Kind
    about: str
    refers: str | None = None  # the table whose id it is
    later: bool = False  # exports of earlier versions lack it


@dataclass(frozen=True, slots=True, kw_only=True)
class OpenTable:
    """One table of the book and its file."""

    table: str
    file: str  # without ".csv"
    about: str
    columns: tuple[Column, ...]

    @property
    def key(self) -> str:
        """The heading of the primary key."""
        return self.columns[0].heading


def _column(name: str, kind: Kind, about: str, heading: str | None = None) -> Column:
    return Column(name=name, heading=heading or name, kind=kind, about=about)


def _text(name: str, about: str, heading: str | None = None) -> Column:
    return _column(name, Kind.TEXT, about, heading)


def _number(name: str, about: str, heading: str | None = None) -> Column:
    return _column(name, Kind.NUMBER, about, heading)


def _later(column: Column) -> Column:
    return replace(column, later=True)


def _integer(name: str, about: str, heading: str | None = None) -> Column:
    return _column(name, Kind.INTEGER, about, heading)


def _time(name: str, about: str, heading: str | None = None) -> Column:
    return _column(name, Kind.TIME, about, heading)


def _yes_no(name: str, about: str, heading: str | None = None) -> Column:
    return _column(name, Kind.YES_NO, about, heading)


def _json(name: str, about: str) -> Column:
    return _column(name, Kind.JSON, about, f"{name}_json")


def _id(table: str) -> Column:
    return Column(name="id", heading=f"{table}_id", kind=Kind.INTEGER, about="number of the row in the book")


def _ref(table: str, about: str = "", name: str | None = None) -> Column:
    name = name or table
    return Column(
        name=name, heading=f"{name}_id", kind=Kind.INTEGER, about=about or f"the {table}", refers=table
    )


NOTE = _text("note", "the grower's note")
SEATING = _text("seating", "how a mat sits: in the tray, or on an upturned tray")
WATERING = _text("watering", "top, bottom or both")
FEED = _text("feed", "which feed, how diluted, how often")

TABLES: tuple[OpenTable, ...] = (
    OpenTable(
        table="medium",
        file="media",
        about="What the seed lies on",
        columns=(
            _id("medium"), _text("name", "the medium"), _text("kind", "loose, mat, ..."),
            _yes_no("trusted", "the medium that others are held against"), SEATING, WATERING, FEED, NOTE,
        ),
    ),
    OpenTable(
        table="crop",
        file="crops",
        about="Crops and what the grower usually does with them",
        columns=(
            _id("crop"), _text("name", "the crop"), _text("variety", "the variety"),
            _number("sowing_rate_g", "dry seed a tray"),
            _number("soak_hours", "soaking before sowing", "soak_h"),
            _number("blackout_days", "days under cover after sowing"),
            _yes_no("stacked", "trays press on each other under cover"), _text("light", "kind of light"),
            _number("cut_from_day", "days since sowing from which it is cut"),
            _number("cut_to_day", "days since sowing until which it is cut"),
            _number("base_c", "temperature below which it does not grow", "base_temperature_c"), NOTE,
        ),
    ),
    OpenTable(
        table="tray_type",
        file="tray_types",
        about="Tray types",
        columns=(
            _id("tray_type"), _text("name", "the kind"),
            _number("outer_long_mm", "outer length of the rim"),
            _number("outer_short_mm", "outer width of the rim"),
            _number("inner_long_mm", "length of the inner area"),
            _number("inner_short_mm", "width of the inner area"),
            _number("rim_height_mm", "height of the rim's top above the bench"),
        ),
    ),
    OpenTable(
        table="seed_lot",
        file="seed_lots",
        about="The bags that the seed came from",
        columns=(
            _id("seed_lot"), _ref("crop"), _text("name", "the lot"), _text("received_on", "day of arrival"),
            _number("germination_pct", "share that germinates, as declared"),
            _number("thousand_seed_g", "mass of a thousand seeds"), NOTE,
        ),
    ),
    OpenTable(
        table="trial",
        file="trials",
        about="Trials",
        columns=(
            _id("trial"), _text("name", "the trial"), _text("question", "what it asks"),
            _ref("medium", "the trusted medium", "trusted"),
            _number("margin_points", "difference that still counts as good, points of the canopy score"),
            _time("margin_set_at", "when the margin was set"), _text("began_on", "first day"), NOTE,
        ),
    ),
    OpenTable(
        table="plan",
        file="plans",
        about="Every version of a trial's plan that was kept; the first stands from before sowing",
        columns=(
            _id("plan"), _ref("trial"), _json("body", "the whole plan"), _time("kept_at", "when it was kept"),
            _text("why", "why it was changed"),
        ),
    ),
    OpenTable(
        table="draw",
        file="draws",
        about="Every drawing of places, with its seed",
        columns=(
            _id("draw"), _ref("plan"), _integer("seed", "seed of the random numbers"),
            _json("body", "which tray stands where"), _time("drawn_at", "when it was drawn"),
            _text("why", "why it was drawn again"),
        ),
    ),
    OpenTable(
        table="block",
        file="blocks",
        about="Trays that share place and sowing; comparisons are made within blocks",
        columns=(_id("block"), _ref("trial"), _text("name", "the block"), NOTE),
    ),
    OpenTable(
        table="tray",
        file="trays",
        about="One physical tray and what grows in it from sowing to cut: the experimental unit",
        columns=(
            _id("tray"), _text("code", "the tray's code"), _ref("trial"), _ref("block"), _ref("crop"),
            _ref("medium"),
            _ref("tray_type"), _ref("seed_lot"), SEATING, _number("sowing_rate_g", "dry seed a tray"),
            _number("soak_hours", "soaking before sowing", "soak_h"), _time("sown_at", "sowing"),
            _time("blackout_from", "begin of the cover"), _time("blackout_to", "end of the cover"),
            _yes_no("stacked", "trays pressed on each other under cover"), WATERING, FEED,
            _yes_no("heat_mat", "a heat mat below"), _text("shelf", "the shelf"),
            _integer("position", "place along the shelf, from 1"), _text("light", "kind of light"),
            _integer("tag_number", "number of the printed tag"), _time("done_at", "end of the tray"),
            _text("ended", "how it ended: cut or thrown away"), _text("ended_why", "why it was thrown away"),
            NOTE,
        ),
    ),
    OpenTable(
        table="photo",
        file="photos",
        about="Photographs; the files stay with the book, their SHA-256 tells them apart",
        columns=(
            _id("photo"), _text("digest", "SHA-256 of the file", "sha256"), _text("name", "name of the file"),
            _text("suffix", "kind of file"), _time("added_at", "when it was brought in"),
            _time("taken_at", "when it was taken"),
            _text("taken_from", "whose clock says so: camera or file"),
            _integer("tag_number", "number of the tag that was read"), _ref("tray"),
            _text("matched_by", "how its tray is known: tag, walk or person"),
            _yes_no("needs_corners", "the tray was not found for sure"),
            _text("refusal", "why it is not used"), _time("left_out_at", "when a person left it out"),
        ),
    ),
    OpenTable(
        table="score",
        file="scores",
        about="What one version of the method measured in a photograph; empty where it was not to be had",
        columns=(
            _id("score"), _ref("photo"),
            _text("method", "version of the method; versions are never compared"),
            _yes_no("sure", "the tray was found for sure"),
            _yes_no("mended", "a person has mended the canopy"),
            _time("made_at", "when it was scored"),
            _number("coverage", "canopy share", "coverage_pct"),
            _number("coverage_sd", "standard uncertainty of the coverage", "coverage_sd_pct"),
            _number("green", "green canopy share", "green_pct"),
            _number("pale", "pale shoots' share", "pale_pct"),
            _number("red", "red canopy share", "red_pct"),
            _number("uniformity", "Christiansen's coefficient over the cells", "uniformity_pct"),
            _number("low_quarter", "distribution uniformity of the low quarter of cells", "low_quarter_pct"),
            _later(_number("bed_share", "canopy share of the growing bed: neither rim nor wall",
                           "bed_share_pct")),
            _later(_number("bed_uniformity", "Christiansen's coefficient over the cells' shares of their bed",
                           "bed_uniformity_pct")),
            _number("variation", "coefficient of variation of the cells", "variation_pct"),
            _number("clumping", "Moran's I of the cells"),
            _number("edge_deficit", "core minus the outer 25 mm", "edge_deficit_points"),
            _number("gradient_x", "along the long side", "gradient_x_points_per_100mm"),
            _number("gradient_y", "along the short side", "gradient_y_points_per_100mm"),
            _number("gap_share", "pieces of at least 4 cm2 without canopy", "gap_share_pct"),
            _json("gaps", "the gaps"),
            _number("lightness", "CIELAB L* of the canopy"), _number("a", "CIELAB a* of the canopy"),
            _number("b", "CIELAB b* of the canopy"), _number("chroma", "CIELAB chroma of the canopy"),
            _number("hue", "CIELAB hue of the canopy", "hue_deg"),
            _number("dark_green", "dark green colour index"),
            _number("dark_green_clipped", "canopy of a hue beyond that index", "dark_green_clipped_pct"),
            _number("spread", "spread of colour within the canopy (CIELAB)", "colour_spread"),
            _text("corners_from", "how the tray was found: station, frame, hand or whole"),
            _number("frame_confidence", "0-1"),
            _json("corners_px", "the inner area's corners in the photograph"),
            _json("corners", "the same with lens and camera, for scoring again"),
            _number("px_per_mm", "scale of the photograph"), _number("tilt_deg", "tilt of the camera"),
            _number("exposure", "mean L* of the top view"), _number("clipped_pct", "burnt out"),
            _number("dark_pct", "too dark"), _number("glare_pct", "glare"),
            _number("sharpness", "variance of the Laplacian"), _number("blur_mm", "width of the blur"),
            _number("colour_cast", "distance of the light's colour from white"),
            _text("corrected_by", "how colours were corrected"),
            _number("seconds", "time it took", "seconds_s"),
            _json("reasons", "why a number is missing"), _json("notes", "doubts that go for the whole score"),
        ),
    ),
    OpenTable(
        table="suspect",
        file="suspects",
        about="Patches that may be mold; a flag is a reason to look, no finding, and no flag is no proof",
        columns=(
            _id("suspect"), _ref("score"), _number("x_mm", "centre along the long side"),
            _number("y_mm", "centre along the short side"), _number("area_cm2", "area"),
            _number("confidence", "0-1"), _text("why", "what speaks for it"), _json("outline", "outline, mm"),
            _text("said", "what a person said: mold or not mold"), _time("said_at", "when"),
            _time("closed_at", "when it closed itself"), _text("closed_why", "why"),
        ),
    ),
    OpenTable(
        table="bench_test",
        file="bench_tests",
        about="Tests of a medium without a tray of seed: wetting, cooling, break-down",
        columns=(
            _id("bench_test"), _text("kind", "wetting, cooling or breakdown"), _ref("medium"),
            _ref("tray_type"), SEATING,
            WATERING, _text("place", "where"), _time("begun_at", "begin"), NOTE,
        ),
    ),
    OpenTable(
        table="heap_photo",
        file="heap_photos",
        about="Photographs of used media, beside their break-down test",
        columns=(
            _id("heap_photo"), _ref("bench_test"), _text("digest", "SHA-256 of the file"),
            _text("suffix", "kind of file"), _text("name", "name of the file"), _time("taken_at", "when"),
        ),
    ),
    OpenTable(
        table="reading",
        file="readings",
        about="Dated numbers from a person, a scale or a logger",
        columns=(
            _id("reading"), _ref("tray"), _text("shelf", "the shelf, where it is no tray's"),
            _ref("bench_test"),
            _text("kind", "what was measured"), _number("value", "in the unit beside it"),
            _text("unit", "unit of the value"), _time("taken_at", "when"),
            _text("source", "person, or a logger's file"),
            NOTE,
        ),
    ),
    OpenTable(
        table="event",
        file="events",
        about="What was done and what happened",
        columns=(
            _id("event"), _ref("tray"), _text("shelf", "the shelf, where it is no tray's"),
            _text("kind", "what"),
            _time("at", "when"), NOTE,
        ),
    ),
    OpenTable(
        table="eye_round",
        file="eye_rounds",
        about="Rounds of scoring by eye, in drawn order and without names",
        columns=(
            _id("eye_round"), _ref("trial"), _text("rater", "who"), _integer("seed", "seed of the order"),
            _json("body", "the order"), _time("begun_at", "when"),
        ),
    ),
    OpenTable(
        table="eye_score",
        file="eye_scores",
        about="Scores by eye",
        columns=(
            _id("eye_score"), _ref("tray"), _ref("photo"), _text("rater", "who"), _number("value", "points"),
            _yes_no("blind", "without knowing the medium"), _time("given_at", "when"),
            _ref("eye_round", "the round", "round"), _integer("place", "place in the round's order"),
        ),
    ),
    OpenTable(
        table="material_factor",
        file="material_factors",
        about="Properties of media with their range and source",
        columns=(
            _id("material_factor"), _ref("medium"), _text("name", "the property"),
            _number("value", "in the unit beside it"),
            _number("low", "lower end"), _number("high", "upper end"), _text("unit", "unit"),
            _text("source", "where from"),
            _integer("year", "year of the source"), _text("who", "who entered it"),
            _time("entered_at", "when"),
        ),
    ),
    OpenTable(
        table="look_entry",
        file="look_entries",
        about="What stood on the look list, from when to when, and why it went away",
        columns=(
            _id("look_entry"), _ref("tray"), _text("what", "what it was"),
            _column("since", Kind.DATE, "since when"),
            _integer("urgency", "0 now, 1 today, 2 soon"), _text("sentence", "the numbers behind it"),
            _column("first_on", Kind.DATE, "first shown"), _column("last_on", Kind.DATE, "last shown"),
            _column("gone_on", Kind.DATE, "gone since"), _text("gone_why", "why it went away"),
        ),
    ),
)  # fmt: skip

CELL_HEADINGS: Mapping[tuple[int, int], str] = {
    (row, column): f"row{row + 1}_column{column + 1:02}_pct" for row in range(6) for column in range(12)
}
