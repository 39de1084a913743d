"""First steps: the tables that books of the first versions were made with.

In    a `sqlite_utils.Database`: empty, or with the step before behind it
Out   the tables after the step
Not   later steps and their order (`steps.py`)

These steps have left the house: they are never edited.
"""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from sqlite_utils import Database

__all__ = ["m001_first_tables", "m002_doubt_of_coverage"]

FIRST_TABLES = (
    """
    CREATE TABLE medium (
        id INTEGER PRIMARY KEY,
        name TEXT NOT NULL UNIQUE,
        kind TEXT NOT NULL DEFAULT '',
        trusted INTEGER NOT NULL DEFAULT 0 CHECK (trusted IN (0, 1)),
        note TEXT NOT NULL DEFAULT ''
    ) STRICT
    """,
    """
    CREATE TABLE crop (
        id INTEGER PRIMARY KEY,
        name TEXT NOT NULL UNIQUE,
        variety TEXT NOT NULL DEFAULT '',
        soak_hours REAL,
        blackout_days REAL,
        cut_from_day REAL,
        cut_to_day REAL,
        note TEXT NOT NULL DEFAULT ''
    ) STRICT
    """,
    """
    CREATE TABLE tray_type (
        id INTEGER PRIMARY KEY,
        name TEXT NOT NULL UNIQUE,
        outer_long_mm REAL NOT NULL CHECK (outer_long_mm > 0),
        outer_short_mm REAL NOT NULL CHECK (outer_short_mm > 0),
        inner_long_mm REAL NOT NULL CHECK (inner_long_mm > 0),
        inner_short_mm REAL NOT NULL CHECK (inner_short_mm > 0),
        rim_height_mm REAL NOT NULL CHECK (rim_height_mm > 0)
    ) STRICT
    """,
    """
    CREATE TABLE seed_lot (
        id INTEGER PRIMARY KEY,
        crop INTEGER NOT NULL REFERENCES crop (id),
        name TEXT NOT NULL,
        received_on TEXT,
        germination_pct REAL CHECK (germination_pct BETWEEN 0 AND 100),
        thousand_seed_g REAL CHECK (thousand_seed_g > 0),
        note TEXT NOT NULL DEFAULT '',
        UNIQUE (crop, name)
    ) STRICT
    """,
    """
    CREATE TABLE trial (
        id INTEGER PRIMARY KEY,
        name TEXT NOT NULL UNIQUE,
        question TEXT NOT NULL DEFAULT '',
        trusted INTEGER REFERENCES medium (id),
        margin_points REAL,
        margin_set_at TEXT,
        began_on TEXT,
        note TEXT NOT NULL DEFAULT ''
    ) STRICT
    """,
    """
    CREATE TABLE block (
        id INTEGER PRIMARY KEY,
        trial INTEGER REFERENCES trial (id),
        name TEXT NOT NULL,
        note TEXT NOT NULL DEFAULT '',
        UNIQUE (trial, name)
    ) STRICT
    """,
    """
    CREATE TABLE tray (
        id INTEGER PRIMARY KEY,
        code TEXT NOT NULL CHECK (code <> ''),
        trial INTEGER REFERENCES trial (id),
        block INTEGER REFERENCES block (id),
        crop INTEGER NOT NULL REFERENCES crop (id),
        medium INTEGER NOT NULL REFERENCES medium (id),
        tray_type INTEGER NOT NULL REFERENCES tray_type (id),
        seed_lot INTEGER REFERENCES seed_lot (id),
        seating TEXT NOT NULL DEFAULT 'in the tray' CHECK (seating IN ('in the tray', 'on an upturned tray')),
        sowing_rate_g REAL CHECK (sowing_rate_g > 0),
        soak_hours REAL CHECK (soak_hours >= 0),
        sown_at TEXT NOT NULL,
        blackout_from TEXT,
        blackout_to TEXT,
        stacked INTEGER CHECK (stacked IN (0, 1)),
        watering TEXT CHECK (watering IN ('top', 'bottom', 'both')),
        feed TEXT,
        heat_mat INTEGER CHECK (heat_mat IN (0, 1)),
        shelf TEXT NOT NULL DEFAULT '',
        position INTEGER NOT NULL,
        light TEXT,
        tag_number INTEGER CHECK (tag_number BETWEEN 10 AND 586),
        done_at TEXT,
        note TEXT NOT NULL DEFAULT ''
    ) STRICT
    """,
    "CREATE INDEX tray_growing ON tray (shelf, position) WHERE done_at IS NULL",
    "CREATE UNIQUE INDEX tray_tag ON tray (tag_number) WHERE done_at IS NULL",
    "CREATE INDEX tray_by_tag ON tray (tag_number, sown_at)",
    "CREATE INDEX tray_block ON tray (block, crop)",
    """
    CREATE TABLE photo (
        id INTEGER PRIMARY KEY,
        digest TEXT NOT NULL UNIQUE CHECK (length(digest) = 64),
        name TEXT NOT NULL,
        suffix TEXT NOT NULL,
        kept INTEGER NOT NULL CHECK (kept IN (0, 1)),
        added_at TEXT NOT NULL,
        taken_at TEXT NOT NULL,
        taken_from TEXT NOT NULL CHECK (taken_from IN ('camera', 'file')),
        tag_number INTEGER,
        tray INTEGER REFERENCES tray (id),
        matched_by TEXT CHECK (matched_by IN ('tag', 'walk', 'person')),
        needs_corners INTEGER NOT NULL DEFAULT 0 CHECK (needs_corners IN (0, 1)),
        refusal TEXT,
        left_out_at TEXT
    ) STRICT
    """,
    "CREATE INDEX photo_of_tray ON photo (tray, taken_at)",
    "CREATE INDEX photo_taken ON photo (taken_at)",
    "CREATE INDEX photo_waiting ON photo (taken_at) WHERE tray IS NULL",
    """
    CREATE TABLE score (
        id INTEGER PRIMARY KEY,
        photo INTEGER NOT NULL REFERENCES photo (id),
        method TEXT NOT NULL,
        made_at TEXT NOT NULL,
        sure INTEGER NOT NULL CHECK (sure IN (0, 1)),
        coverage REAL, green REAL, pale REAL, red REAL,
        cells BLOB NOT NULL CHECK (length(cells) = 144),
        uniformity REAL, low_quarter REAL, variation REAL, clumping REAL,
        edge_deficit REAL, gradient_x REAL, gradient_y REAL,
        gap_share REAL, gaps TEXT NOT NULL,
        lightness REAL, a REAL, b REAL, chroma REAL, hue REAL, dark_green REAL, dark_green_clipped REAL,
        spread REAL,
        corners TEXT, corners_from TEXT, frame_confidence REAL, corners_px TEXT,
        px_per_mm REAL, tilt_deg REAL,
        exposure REAL, clipped_pct REAL, dark_pct REAL, glare_pct REAL,
        sharpness REAL, blur_mm REAL, colour_cast REAL, corrected_by TEXT,
        seconds REAL,
        reasons TEXT NOT NULL,
        notes TEXT NOT NULL,
        UNIQUE (photo, method)
    ) STRICT
    """,
    """
    CREATE TABLE suspect (
        id INTEGER PRIMARY KEY,
        score INTEGER NOT NULL REFERENCES score (id),
        x_mm REAL, y_mm REAL, area_cm2 REAL,
        confidence REAL NOT NULL CHECK (confidence BETWEEN 0 AND 1),
        why TEXT NOT NULL,
        outline TEXT NOT NULL,
        said TEXT CHECK (said IN ('mold', 'not mold')),
        said_at TEXT
    ) STRICT
    """,
    "CREATE INDEX suspect_of_score ON suspect (score)",
    "CREATE INDEX suspect_open ON suspect (score) WHERE said IS NULL",
    """
    CREATE TABLE correction (
        id INTEGER PRIMARY KEY,
        photo INTEGER NOT NULL REFERENCES photo (id),
        kind TEXT NOT NULL CHECK (kind IN ('corners', 'canopy')),
        body TEXT NOT NULL,
        made_at TEXT NOT NULL
    ) STRICT
    """,
    "CREATE INDEX correction_of_photo ON correction (photo, kind)",
    """
    CREATE TABLE reading (
        id INTEGER PRIMARY KEY,
        tray INTEGER REFERENCES tray (id),
        shelf TEXT,
        kind TEXT NOT NULL,
        value REAL NOT NULL,
        unit TEXT NOT NULL,
        taken_at TEXT NOT NULL,
        source TEXT NOT NULL DEFAULT 'person',
        note TEXT NOT NULL DEFAULT ''
    ) STRICT
    """,
    "CREATE INDEX reading_of_tray ON reading (tray, kind, taken_at)",
    """
    CREATE TABLE event (
        id INTEGER PRIMARY KEY,
        tray INTEGER REFERENCES tray (id),
        kind TEXT NOT NULL,
        at TEXT NOT NULL,
        note TEXT NOT NULL DEFAULT ''
    ) STRICT
    """,
    "CREATE INDEX event_of_tray ON event (tray, at)",
    """
    CREATE TABLE eye_score (
        id INTEGER PRIMARY KEY,
        tray INTEGER NOT NULL REFERENCES tray (id),
        photo INTEGER REFERENCES photo (id),
        rater TEXT NOT NULL,
        value REAL NOT NULL,
        blind INTEGER NOT NULL CHECK (blind IN (0, 1)),
        given_at TEXT NOT NULL
    ) STRICT
    """,
    "CREATE INDEX eye_score_of_tray ON eye_score (tray)",
    """
    CREATE TABLE material_factor (
        id INTEGER PRIMARY KEY,
        medium INTEGER REFERENCES medium (id),
        name TEXT NOT NULL,
        value REAL,
        low REAL,
        high REAL,
        unit TEXT NOT NULL,
        source TEXT NOT NULL
    ) STRICT
    """,
    "CREATE TABLE setting (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT",
    """
    CREATE TABLE change (
        id INTEGER PRIMARY KEY,
        made_at TEXT NOT NULL,
        text TEXT NOT NULL,
        images TEXT NOT NULL,
        undone INTEGER NOT NULL DEFAULT 0 CHECK (undone IN (0, 1))
    ) STRICT
    """,
    """
    INSERT INTO tray_type (name, outer_long_mm, outer_short_mm, inner_long_mm, inner_short_mm, rim_height_mm)
    VALUES ('10 x 20 inch', 545, 278, 508, 254, 61)
    """,
)


def m001_first_tables(db: "Database") -> None:
    """Trays, photos, scores and what a person says of them."""
    for statement in FIRST_TABLES:
        db.execute(statement)


def m002_doubt_of_coverage(db: "Database") -> None:
    """How far coverage may be off; scores kept earlier do not know it."""
    db.execute("ALTER TABLE score ADD COLUMN coverage_sd REAL")
