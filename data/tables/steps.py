"""Steps: the numbered steps that lead from an empty file to the tables of today.

In    a `sqlite_utils.Database` that has all earlier steps behind it
Out   the tables after the step; `STEPS` in their order
Not   running them, which tables there are in the end (`schema.py`)

Rules. A step that has left the house is never edited, reordered or removed: changes are appended. A step uses
no record and no query of today. Every table is STRICT, so that a number stays a number. Times are text,
"2026-03-11T08:05:00", local time of the rack; shares %, lengths mm, areas cm2.
"""

from collections.abc import Callable
from typing import TYPE_CHECKING

from data.tables.firststeps import m001_first_tables, m002_doubt_of_coverage
from data.tables.packingstep import m006_packed_scores

if TYPE_CHECKING:
    from sqlite_utils import Database

__all__ = ["STEPS"]

BOOK_AND_TRIAL = (
    # what a new tray of its kind begins with
    "ALTER TABLE crop ADD COLUMN sowing_rate_g REAL CHECK (sowing_rate_g > 0)",
    "ALTER TABLE crop ADD COLUMN stacked INTEGER CHECK (stacked IN (0, 1))",
    "ALTER TABLE crop ADD COLUMN light TEXT",
    "ALTER TABLE crop ADD COLUMN base_c REAL",
    "ALTER TABLE medium ADD COLUMN seating TEXT CHECK (seating IN ('in the tray', 'on an upturned tray'))",
    "ALTER TABLE medium ADD COLUMN watering TEXT CHECK (watering IN ('top', 'bottom', 'both'))",
    "ALTER TABLE medium ADD COLUMN feed TEXT",
    "ALTER TABLE tray ADD COLUMN ended TEXT CHECK (ended IN ('cut', 'thrown away'))",
    "ALTER TABLE tray ADD COLUMN ended_why TEXT NOT NULL DEFAULT ''",
    # a score that a person's correction has replaced, as it was
    "ALTER TABLE score ADD COLUMN mended INTEGER NOT NULL DEFAULT 0 CHECK (mended IN (0, 1))",
    # the inner area that its mm and cm2 rest on; scores kept earlier took every tray for 508 x 254
    "ALTER TABLE score ADD COLUMN inner_long_mm REAL NOT NULL DEFAULT 508.0 CHECK (inner_long_mm > 0)",
    "ALTER TABLE score ADD COLUMN inner_short_mm REAL NOT NULL DEFAULT 254.0 CHECK (inner_short_mm > 0)",
    """
    CREATE TABLE old_score (
        id INTEGER PRIMARY KEY,
        score INTEGER NOT NULL REFERENCES score (id),
        correction INTEGER REFERENCES correction (id),
        body TEXT NOT NULL,
        replaced_at TEXT NOT NULL
    ) STRICT
    """,
    "CREATE INDEX old_score_of_score ON old_score (score)",
    "ALTER TABLE suspect ADD COLUMN closed_at TEXT",
    "ALTER TABLE suspect ADD COLUMN closed_why TEXT NOT NULL DEFAULT ''",
    # readings of loggers, and of a medium without a tray of seed
    """
    CREATE TABLE log_file (
        id INTEGER PRIMARY KEY,
        digest TEXT NOT NULL UNIQUE CHECK (length(digest) = 64),
        name TEXT NOT NULL,
        added_at TEXT NOT NULL,
        read_as TEXT NOT NULL
    ) STRICT
    """,
    """
    CREATE TABLE bench_test (
        id INTEGER PRIMARY KEY,
        kind TEXT NOT NULL CHECK (kind IN ('wetting', 'cooling', 'breakdown')),
        medium INTEGER NOT NULL REFERENCES medium (id),
        tray_type INTEGER REFERENCES tray_type (id),
        seating TEXT CHECK (seating IN ('in the tray', 'on an upturned tray')),
        watering TEXT CHECK (watering IN ('top', 'bottom', 'both')),
        place TEXT NOT NULL DEFAULT '',
        begun_at TEXT NOT NULL,
        note TEXT NOT NULL DEFAULT ''
    ) STRICT
    """,
    "CREATE INDEX bench_test_of_medium ON bench_test (medium, kind)",
    "ALTER TABLE reading ADD COLUMN log_file INTEGER REFERENCES log_file (id)",
    "ALTER TABLE reading ADD COLUMN bench_test INTEGER REFERENCES bench_test (id)",
    "CREATE INDEX reading_of_shelf ON reading (shelf, kind, taken_at) WHERE tray IS NULL",
    "CREATE INDEX reading_of_test ON reading (bench_test, kind, taken_at) WHERE bench_test IS NOT NULL",
    """
    CREATE UNIQUE INDEX reading_logged ON reading (coalesce(tray, 0), coalesce(shelf, ''), kind, taken_at)
    WHERE log_file IS NOT NULL
    """,
    "CREATE INDEX reading_logged_at ON reading (taken_at) WHERE log_file IS NOT NULL",
    """
    CREATE TABLE heap_photo (
        id INTEGER PRIMARY KEY,
        bench_test INTEGER NOT NULL REFERENCES bench_test (id),
        digest TEXT NOT NULL CHECK (length(digest) = 64),
        suffix TEXT NOT NULL,
        name TEXT NOT NULL,
        taken_at TEXT NOT NULL,
        UNIQUE (bench_test, digest)
    ) STRICT
    """,
    "ALTER TABLE event ADD COLUMN shelf TEXT",
    # the look list: what a person answered, what was shown and why it went away
    """
    CREATE TABLE look_answer (
        id INTEGER PRIMARY KEY,
        tray INTEGER NOT NULL REFERENCES tray (id),
        what TEXT NOT NULL,
        since TEXT NOT NULL,
        answer TEXT NOT NULL CHECK (answer IN ('seen', 'tomorrow')),
        urgency INTEGER NOT NULL,
        size REAL,
        answered_on TEXT NOT NULL
    ) STRICT
    """,
    "CREATE INDEX look_answer_of_tray ON look_answer (tray, what)",
    """
    CREATE TABLE look_entry (
        id INTEGER PRIMARY KEY,
        tray INTEGER NOT NULL REFERENCES tray (id),
        what TEXT NOT NULL,
        since TEXT NOT NULL,
        urgency INTEGER NOT NULL,
        sentence TEXT NOT NULL,
        first_on TEXT NOT NULL,
        last_on TEXT NOT NULL,
        gone_on TEXT,
        gone_why TEXT NOT NULL DEFAULT '',
        UNIQUE (tray, what, since)
    ) STRICT
    """,
    "CREATE INDEX look_entry_open ON look_entry (tray, what) WHERE gone_on IS NULL",
    # earlier trays of a crop, to hold a new one against
    "CREATE INDEX tray_of_crop ON tray (crop, sown_at)",
    # the time that the file carries, and what the camera said before its clock was mended
    "ALTER TABLE photo ADD COLUMN file_at TEXT",
    "ALTER TABLE photo ADD COLUMN clock_at TEXT",
    # a trial: every plan that was kept, every draw that was made, every round of scoring by eye
    """
    CREATE TABLE plan (
        id INTEGER PRIMARY KEY,
        trial INTEGER NOT NULL REFERENCES trial (id),
        body TEXT NOT NULL,
        kept_at TEXT NOT NULL,
        why TEXT NOT NULL DEFAULT ''
    ) STRICT
    """,
    "CREATE INDEX plan_of_trial ON plan (trial, kept_at)",
    """
    CREATE TABLE draw (
        id INTEGER PRIMARY KEY,
        plan INTEGER NOT NULL REFERENCES plan (id),
        seed INTEGER NOT NULL,
        body TEXT NOT NULL,
        drawn_at TEXT NOT NULL,
        why TEXT NOT NULL DEFAULT ''
    ) STRICT
    """,
    "CREATE INDEX draw_of_plan ON draw (plan, drawn_at)",
    """
    CREATE TABLE eye_round (
        id INTEGER PRIMARY KEY,
        trial INTEGER REFERENCES trial (id),
        rater TEXT NOT NULL,
        seed INTEGER NOT NULL,
        body TEXT NOT NULL,
        begun_at TEXT NOT NULL
    ) STRICT
    """,
    "ALTER TABLE eye_score ADD COLUMN round INTEGER REFERENCES eye_round (id)",
    "ALTER TABLE eye_score ADD COLUMN place INTEGER",
    "CREATE INDEX eye_score_of_round ON eye_score (round, place)",
    "ALTER TABLE material_factor ADD COLUMN year INTEGER",
    "ALTER TABLE material_factor ADD COLUMN who TEXT NOT NULL DEFAULT ''",
    "ALTER TABLE material_factor ADD COLUMN entered_at TEXT",
    "CREATE INDEX material_factor_by_name ON material_factor (name, medium)",
)


def m003_book_and_trial(db: "Database") -> None:
    """Defaults, readings of loggers, old scores, answers to the look list, plans and draws of a trial."""
    for statement in BOOK_AND_TRIAL:
        db.execute(statement)


SHARE_OF_BED = (
    # canopy as a share of the growing bed; scores kept earlier have none, so `bed_cells` says which they are
    "ALTER TABLE score ADD COLUMN bed_share REAL",
    "ALTER TABLE score ADD COLUMN bed_uniformity REAL",
    "ALTER TABLE score ADD COLUMN bed_cells BLOB CHECK (length(bed_cells) = 144)",
)


def m004_share_of_bed(db: "Database") -> None:
    """Canopy as a share of the growing bed, beside that of the inner area."""
    for statement in SHARE_OF_BED:
        db.execute(statement)


# maker and model, as the photo says; unknown of those that came in earlier
CAMERA_OF_PHOTO = "ALTER TABLE photo ADD COLUMN camera TEXT CHECK (camera <> '')"


def m005_camera_of_photo(db: "Database") -> None:
    """Which camera took a photo: photos of one camera share a clock."""
    db.execute(CAMERA_OF_PHOTO)


STEPS: tuple[Callable[["Database"], None], ...] = (
    m001_first_tables,
    m002_doubt_of_coverage,
    m003_book_and_trial,
    m004_share_of_bed,
    m005_camera_of_photo,
    m006_packed_scores,
)
