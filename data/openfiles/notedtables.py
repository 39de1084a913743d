"""Noted tables: what was photographed, measured, noted and told, column by column, as it stands in an export.

In    nothing
Out   `NOTED`: photos, scores, suspects, tests of media, readings, events, scores by eye, factors, look list
Not   what was sown (`growntables.py`)

Shares are % of the tray's inner area where not of its bed, lengths mm from the inner area's top left corner
as the top view shows it.
"""

from data.openfiles.columns import (
    NOTE,
    SEATING,
    WATERING,
    Kind,
    OpenTable,
    column,
    integer,
    json,
    later,
    number,
    ref,
    renamed,
    row_id,
    text,
    time,
    yes_no,
)

__all__ = ["NOTED"]

NOTED: tuple[OpenTable, ...] = (
    OpenTable(
        table="photo",
        file="photos",
        about="Photographs; the files stay with the book, their SHA-256 tells them apart",
        columns=(
            row_id("photo"), text("digest", "SHA-256 of the file", "sha256"),
            text("name", "name of the file"), text("suffix", "kind of file"),
            time("added_at", "when it was brought in"), time("taken_at", "when it was taken"),
            text("taken_from", "whose clock says so: camera or file"),
            integer("tag_number", "number of the tag that was read"), ref("tray"),
            text("matched_by", "how its tray is known: tag, walk or person"),
            yes_no("needs_corners", "the tray was not found for sure"),
            text("refusal", "why it is not used"), time("left_out_at", "when a person left it out"),
        ),
    ),
    OpenTable(
        table="score",
        file="scores",
        about="What one version of the method measured in a photograph; empty where it was not to be had",
        columns=(
            row_id("score"), ref("photo"),
            text("method", "version of the method; versions are never compared"),
            yes_no("sure", "the tray was found for sure"),
            yes_no("mended", "a person has mended the canopy"),
            time("made_at", "when it was scored"),
            number("coverage", "canopy share", "coverage_pct"),
            renamed(number("coverage_sd", "standard uncertainty of the coverage", "coverage_sd_points"),
                    once="coverage_sd_pct"),
            number("green", "green canopy share", "green_pct"),
            number("pale", "pale shoots' share", "pale_pct"),
            number("red", "red canopy share", "red_pct"),
            number("uniformity", "Christiansen's coefficient over the cells", "uniformity_pct"),
            number("low_quarter", "distribution uniformity of the low quarter of cells", "low_quarter_pct"),
            later(number("bed_share", "canopy share of the growing bed: neither rim nor wall",
                           "bed_share_pct")),
            later(number("bed_uniformity", "Christiansen's coefficient over the cells' shares of their bed",
                           "bed_uniformity_pct")),
            number("variation", "coefficient of variation of the cells", "variation_pct"),
            number("clumping", "Moran's I of the cells"),
            number("edge_deficit", "core minus the outer 25 mm", "edge_deficit_points"),
            number("gradient_x", "along the long side", "gradient_x_points_per_100mm"),
            number("gradient_y", "along the short side", "gradient_y_points_per_100mm"),
            number("gap_share", "pieces of at least 4 cm2 without canopy", "gap_share_pct"),
            json("gaps", "the gaps: centre x, y in mm, area in cm2; of earlier scores the outline too"),
            number("lightness", "CIELAB L* of the canopy"), number("a", "CIELAB a* of the canopy"),
            number("b", "CIELAB b* of the canopy"), number("chroma", "CIELAB chroma of the canopy"),
            number("hue", "CIELAB hue of the canopy", "hue_deg"),
            number("dark_green", "dark green colour index"),
            number("dark_green_clipped", "canopy of a hue beyond that index", "dark_green_clipped_pct"),
            number("spread", "spread of colour within the canopy (CIELAB)", "colour_spread"),
            text("corners_from", "how the tray was found: station, frame, hand or whole"),
            number("frame_confidence", "0-1"),
            json("corners_px", "the inner area's corners in the photograph"),
            json("corners", "the same with lens and camera, for scoring again"),
            number("px_per_mm", "scale of the photograph"), number("tilt_deg", "tilt of the camera"),
            number("exposure", "mean L* of the top view"), number("clipped_pct", "burnt out"),
            number("dark_pct", "too dark"), number("glare_pct", "glare"),
            number("sharpness", "variance of the Laplacian"), number("blur_mm", "width of the blur"),
            number("colour_cast", "distance of the light's colour from white"),
            text("corrected_by", "how colours were corrected"),
            number("seconds", "time it took", "seconds_s"),
            json("reasons", "why a number is missing"), json("notes", "doubts that go for the whole score"),
        ),
    ),
    OpenTable(
        table="suspect",
        file="suspects",
        about="Patches that may be mold; a flag is a reason to look, no finding, and no flag is no proof",
        columns=(
            row_id("suspect"), ref("score"), number("x_mm", "centre along the long side"),
            number("y_mm", "centre along the short side"), number("area_cm2", "area"),
            number("confidence", "0-1"), text("why", "what speaks for it"), json("outline", "outline, mm"),
            text("said", "what a person said: mold or not mold"), time("said_at", "when"),
            time("closed_at", "when it closed itself"), text("closed_why", "why"),
        ),
    ),
    OpenTable(
        table="bench_test",
        file="bench_tests",
        about="Tests of a medium without a tray of seed: wetting, cooling, break-down",
        columns=(
            row_id("bench_test"), text("kind", "wetting, cooling or breakdown"), ref("medium"),
            ref("tray_type"), SEATING,
            WATERING, text("place", "where"), time("begun_at", "begin"), NOTE,
        ),
    ),
    OpenTable(
        table="heap_photo",
        file="heap_photos",
        about="Photographs of used media, beside their break-down test",
        columns=(
            row_id("heap_photo"), ref("bench_test"), text("digest", "SHA-256 of the file"),
            text("suffix", "kind of file"), text("name", "name of the file"), time("taken_at", "when"),
        ),
    ),
    OpenTable(
        table="log_file",
        file="log_files",
        about="Files of loggers and scales, so that none is brought in twice",
        later=True,
        columns=(
            row_id("log_file"), text("digest", "SHA-256 of the file"), text("name", "name of the file"),
            time("added_at", "when it was brought in"), text("read_as", "how its columns were understood"),
        ),
    ),
    OpenTable(
        table="reading",
        file="readings",
        about="Dated numbers from a person, a scale or a logger",
        columns=(
            row_id("reading"), ref("tray"), text("shelf", "the shelf, where it is no tray's"),
            ref("bench_test"),
            text("kind", "what was measured"), number("value", "in the unit beside it"),
            text("unit", "unit of the value"), time("taken_at", "when"),
            text("source", "person, or a logger's file"),
            later(ref("log_file", "the file that brought it")), NOTE,
        ),
    ),
    OpenTable(
        table="event",
        file="events",
        about="What was done and what happened",
        columns=(
            row_id("event"), ref("tray"), text("shelf", "the shelf, where it is no tray's"),
            text("kind", "what"),
            time("at", "when"), NOTE,
        ),
    ),
    OpenTable(
        table="eye_round",
        file="eye_rounds",
        about="Rounds of scoring by eye, in drawn order and without names",
        columns=(
            row_id("eye_round"), ref("trial"), text("rater", "who"), integer("seed", "seed of the order"),
            json("body", "the order"), time("begun_at", "when"),
        ),
    ),
    OpenTable(
        table="eye_score",
        file="eye_scores",
        about="Scores by eye",
        columns=(
            row_id("eye_score"), ref("tray"), ref("photo"), text("rater", "who"), number("value", "points"),
            yes_no("blind", "without knowing the medium"), time("given_at", "when"),
            ref("eye_round", "the round", "round"), integer("place", "place in the round's order"),
        ),
    ),
    OpenTable(
        table="material_factor",
        file="material_factors",
        about="Properties of media with their range and source",
        columns=(
            row_id("material_factor"), ref("medium"), text("name", "the property"),
            number("value", "in the unit beside it"),
            number("low", "lower end"), number("high", "upper end"), text("unit", "unit"),
            text("source", "where from"),
            integer("year", "year of the source"), text("who", "who entered it"),
            time("entered_at", "when"),
        ),
    ),
    OpenTable(
        table="look_entry",
        file="look_entries",
        about="What stood on the look list, from when to when, and why it went away",
        columns=(
            row_id("look_entry"), ref("tray"), text("what", "what it was"),
            column("since", Kind.DATE, "since when"),
            integer("urgency", "1 now, 2 today, 3 soon"), text("sentence", "the numbers behind it"),
            column("first_on", Kind.DATE, "first shown"), column("last_on", Kind.DATE, "last shown"),
            column("gone_on", Kind.DATE, "gone since"), text("gone_why", "why it went away"),
        ),
    ),
    OpenTable(
        table="look_answer",
        file="look_answers",
        about="What was answered to a line of the look list",
        later=True,
        columns=(
            row_id("look_answer"), ref("tray"), text("what", "what it was about"),
            column("since", Kind.DATE, "since when it had been so"),
            text("answer", "seen, tomorrow"), integer("urgency", "1 now, 2 today, 3 soon"),
            number("size", "how large it was then, where it has a size"),
            column("answered_on", Kind.DATE, "when"),
        ),
    ),
)  # fmt: skip
