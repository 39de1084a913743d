"""Queries: every question to the book, by name; values are bound by name.

In    nothing
Out   SQL as constants; each is prepared against an empty book by a test, which also refuses a walk over all
      photos or all scores: what the Bench asks must depend on the trays that grow, not on the years kept
Not   running them (`book.py`), tables (`schema.py`)

A photo's score is the newest one: scores of older versions of the method are kept beside it. CROSS JOIN holds
SQLite to the order written: from the growing trays to their photos, never the other way round.
"""

__all__ = [
    "ALL_SCORINGS_OF_GROWING",
    "ALL_SCORINGS_OF_SOME",
    "ASKED_SCORE",
    "CHANGE_TO_REDO",
    "CHANGE_TO_UNDO",
    "CROP_NAMES",
    "DAYS_OF_TRAY",
    "FORGET_CARRIED",
    "LAST_ID",
    "LAST_OF_KIND",
    "LAST_POSITION",
    "MATES",
    "MEDIUM_NAMES",
    "METHODS_OF_GROWING",
    "METHODS_OF_SOME",
    "MOLD_SAID",
    "NEWEST_PHOTOS",
    "NEWEST_TRAY",
    "PEERS",
    "PEER_TRAYS",
    "PHOTO",
    "PHOTOS",
    "PHOTOS_OF_TRAY",
    "PHOTO_BY_DIGEST",
    "SCORES_OF_PHOTO",
    "SCORINGS_OF_GROWING",
    "SCORINGS_OF_SOME",
    "SETTING",
    "SURE_PHOTOS_BESIDE",
    "SUSPECT",
    "SUSPECTS_OF_GROWING",
    "SUSPECTS_OF_SCORE",
    "TRAY",
    "TRAYS_ALL",
    "TRAYS_ENDED",
    "TRAYS_GROWING",
    "TRAY_IDS_GROWING",
    "UNDONE_CHANGES",
]

# the score of photo p that a comparison by one version of the method uses; its newest one where it has none
ASKED_SCORE = """
    s.id = coalesce((SELECT z.id FROM score z WHERE z.photo = p.id AND z.method = :method),
                    (SELECT max(z.id) FROM score z WHERE z.photo = p.id))
"""

# --- trays

TRAY_COLUMNS = """
    SELECT t.id, t.code, c.name AS crop, m.name AS medium, t.sown_at, t.done_at, t.tag_number, t.shelf,
           t.position, r.name AS trial, b.name AS block, y.name AS tray_type, l.name AS seed_lot, t.seating,
           t.sowing_rate_g, t.soak_hours, t.blackout_from, t.blackout_to, t.stacked, t.watering, t.feed,
           t.heat_mat, t.light, t.note, t.ended, t.ended_why
      FROM tray t
      JOIN crop c ON c.id = t.crop
      JOIN medium m ON m.id = t.medium
      JOIN tray_type y ON y.id = t.tray_type
      LEFT JOIN trial r ON r.id = t.trial
      LEFT JOIN block b ON b.id = t.block
      LEFT JOIN seed_lot l ON l.id = t.seed_lot
"""
TRAYS_GROWING = TRAY_COLUMNS + " WHERE t.done_at IS NULL ORDER BY t.shelf, t.position, t.id"
TRAY_IDS_GROWING = "SELECT id FROM tray WHERE done_at IS NULL ORDER BY shelf, position, id"
TRAYS_ALL = TRAY_COLUMNS + " ORDER BY t.shelf, t.position, t.id"
TRAY = TRAY_COLUMNS + " WHERE t.id = :tray"

TRAYS_ENDED = TRAY_COLUMNS + " WHERE t.done_at IS NOT NULL ORDER BY t.done_at DESC, t.id DESC LIMIT :most"
LAST_OF_KIND = (
    TRAY_COLUMNS + " WHERE c.name = :crop AND m.name = :medium ORDER BY t.sown_at DESC, t.id DESC LIMIT 1"
)
NEWEST_TRAY = "SELECT code FROM tray ORDER BY sown_at DESC, id DESC LIMIT 1"
LAST_POSITION = "SELECT max(position) FROM tray WHERE shelf = :shelf AND done_at IS NULL"
CROP_NAMES = "SELECT name FROM crop ORDER BY name"
MEDIUM_NAMES = "SELECT name FROM medium ORDER BY name"

# --- the Bench: only growing trays

NEWEST_PHOTOS = f"""
    SELECT t.id AS tray, p.id AS photo, p.digest, p.taken_at, s.method, s.corners, s.coverage, s.sure
      FROM tray t
      LEFT JOIN photo p ON p.id = (
            SELECT q.id
              FROM photo q
             WHERE q.tray = t.id AND q.refusal IS NULL AND q.left_out_at IS NULL
               AND EXISTS (SELECT 1 FROM score z WHERE z.photo = q.id)
             ORDER BY q.taken_at DESC, q.id DESC
             LIMIT 1)
      LEFT JOIN score s ON {ASKED_SCORE}
     WHERE t.done_at IS NULL
"""
SUSPECTS_OF_GROWING = """
    SELECT t.id AS tray, p.id AS photo, p.taken_at, s.sure,
           u.id, u.x_mm, u.y_mm, u.area_cm2, u.confidence, u.said, u.closed_at, c.value AS carried
      FROM tray t INDEXED BY tray_growing
      CROSS JOIN photo y ON y.tray = t.id AND y.taken_at >= :since
      CROSS JOIN suspect u ON u.score = (SELECT max(z.id) FROM score z WHERE z.photo = y.id)
      CROSS JOIN photo p ON p.id = y.id  -- once more: few photos have suspects, and the index tells their ids
      CROSS JOIN score s ON s.id = u.score
      LEFT JOIN setting c ON c.name = 'carried ' || p.id
     WHERE t.done_at IS NULL AND p.left_out_at IS NULL AND p.refusal IS NULL
     ORDER BY t.id, p.taken_at, p.id, u.id
"""
MOLD_SAID = """
    SELECT DISTINCT t.id AS tray
      FROM tray t INDEXED BY tray_growing
      CROSS JOIN photo p ON p.tray = t.id
      CROSS JOIN score s ON s.id = (SELECT max(z.id) FROM score z WHERE z.photo = p.id)
      CROSS JOIN suspect u ON u.score = s.id
     WHERE t.done_at IS NULL AND p.left_out_at IS NULL AND u.said = 'mold'
"""


def _scorings(trays: str, which: str) -> tuple[str, str, str]:
    """The versions that scored some trays, from indexes alone; what each of them has; what any has."""
    seen = f"""
      FROM {trays}
      CROSS JOIN photo p ON p.tray = t.id AND p.taken_at >= :since
      CROSS JOIN score s ON s.photo = p.id
     WHERE {which}
"""
    scored = seen + " AND s.sure = 1 AND p.refusal IS NULL AND p.left_out_at IS NULL"
    each = "SELECT s.method, count(*) AS photos, count(DISTINCT p.tray) AS trays, max(s.id) AS newest"
    whole = "SELECT count(DISTINCT p.id) AS photos, count(DISTINCT p.tray) AS trays"
    return "SELECT DISTINCT s.method" + seen, each + scored + " GROUP BY s.method", whole + scored


METHODS_OF_GROWING, SCORINGS_OF_GROWING, ALL_SCORINGS_OF_GROWING = _scorings(
    "tray t INDEXED BY tray_growing", "t.done_at IS NULL"
)
METHODS_OF_SOME, SCORINGS_OF_SOME, ALL_SCORINGS_OF_SOME = _scorings(
    "(SELECT value AS id FROM json_each(:trays)) t", "1 = 1"
)
# block mates of one crop and sowing day; without a block those of the shelf, as the look list has it
MATES = """
    t.block IS me.block AND t.crop = me.crop AND date(t.sown_at) = date(me.sown_at)
    AND (me.block IS NOT NULL OR t.shelf = me.shelf)
"""
PEER_TRAYS = f"""
    SELECT t.id
      FROM tray me
      JOIN tray t ON {MATES}
     WHERE me.id = :tray
"""

# --- one tray

# which drawing of the canopy a mended score rests on
MEND = """
    (SELECT k.id || '-' || k.made_at
       FROM correction k
      WHERE k.photo = p.id AND k.kind = 'canopy' AND s.mended = 1
      ORDER BY k.id DESC
      LIMIT 1)
"""
DAYS_OF_TRAY = f"""
    SELECT p.id AS photo, p.digest, p.suffix, p.taken_at, p.taken_from, p.tray, p.refusal, p.needs_corners,
           p.left_out_at, s.*, {MEND} AS mend
      FROM photo p
      LEFT JOIN score s ON {ASKED_SCORE}
     WHERE p.tray = :tray
     ORDER BY p.taken_at, p.id
"""
PEERS = f"""
    SELECT t.id AS tray, t.code, m.name AS medium, t.sown_at, p.taken_at, s.coverage, s.method
      FROM tray me
      JOIN tray t ON {MATES}
      JOIN medium m ON m.id = t.medium
      JOIN photo p ON p.tray = t.id AND p.refusal IS NULL AND p.left_out_at IS NULL
      JOIN score s ON {ASKED_SCORE}
     WHERE me.id = :tray AND s.sure = 1 AND s.coverage IS NOT NULL
     ORDER BY t.shelf, t.position, t.id, p.taken_at
"""
SURE_PHOTOS_BESIDE = """
    SELECT p.id AS photo, date(p.taken_at) AS day
      FROM photo me
      JOIN photo p ON p.tray = me.tray
      JOIN score s ON s.id = (SELECT max(z.id) FROM score z WHERE z.photo = p.id)
     WHERE me.id = :photo AND s.sure = 1 AND p.refusal IS NULL AND p.left_out_at IS NULL
     ORDER BY p.taken_at, p.id
"""
SUSPECTS_OF_SCORE = "SELECT * FROM suspect WHERE score = :score ORDER BY confidence DESC, id"

# --- photos

PHOTO_BY_DIGEST = "SELECT id, name FROM photo WHERE digest = :digest"
PHOTO_COLUMNS = f"""
    SELECT p.id, p.digest, p.suffix, p.kept, p.name, p.added_at, p.taken_at, p.taken_from, p.tag_number,
           p.tray, t.code, p.matched_by, p.needs_corners, p.refusal, p.left_out_at,
           s.id AS score, s.method, s.corners, s.coverage, s.notes, s.mended, {MEND} AS mend
      FROM photo p
      LEFT JOIN tray t ON t.id = p.tray
      LEFT JOIN score s ON s.id = (SELECT max(z.id) FROM score z WHERE z.photo = p.id)
"""
PHOTO = PHOTO_COLUMNS + " WHERE p.id = :photo"
PHOTOS = PHOTO_COLUMNS + " WHERE p.id <= :newest ORDER BY p.id DESC LIMIT :most"
PHOTOS_OF_TRAY = "SELECT id, taken_at FROM photo WHERE tray = :tray ORDER BY id"
SCORES_OF_PHOTO = "SELECT * FROM score WHERE photo = :photo ORDER BY id DESC"
SUSPECT = """
    SELECT u.id, u.said, t.code
      FROM suspect u
      JOIN score s ON s.id = u.score
      JOIN photo p ON p.id = s.photo
      LEFT JOIN tray t ON t.id = p.tray
     WHERE u.id = :suspect
"""

# --- settings and changes

SETTING = "SELECT value FROM setting WHERE name = :name"
CHANGE_TO_UNDO = "SELECT id, text, made_at, images FROM change WHERE undone = 0 ORDER BY id DESC LIMIT 1"
CHANGE_TO_REDO = "SELECT id, text, made_at, images FROM change WHERE undone = 1 ORDER BY id LIMIT 1"
LAST_ID = {"reading": "SELECT max(id) FROM reading"}
UNDONE_CHANGES = "SELECT id FROM change WHERE undone = 1"
# what photos told of suspects from day to day, where one of the two photos has gone
FORGET_CARRIED = """
    DELETE FROM setting
     WHERE name GLOB 'carried [0-9]*'
       AND (NOT EXISTS (SELECT 1 FROM photo p WHERE p.id = CAST(substr(setting.name, 9) AS INTEGER))
            OR NOT EXISTS (
                SELECT 1 FROM photo p
                 WHERE p.id = CASE WHEN json_valid(value) THEN json_extract(value, '$.since') END
            ))
"""

# --- the file itself

ON_CONNECTING = (
    "PRAGMA foreign_keys = ON",
    "PRAGMA busy_timeout = {wait_ms:d}",
    "PRAGMA synchronous = FULL",  # a photo that was said to be stored is on the disk
)
READ_APPLICATION = "PRAGMA application_id"
READ_VERSION = "PRAGMA data_version"  # another one after each commit of another connection
WRITE_APPLICATION = "PRAGMA application_id = {number:d}"
WRITE_PAGE = "PRAGMA page_size = 8192"  # bytes; a score has 0.8 kB, and one with many reasons 1.2
WRITE_AHEAD = "PRAGMA journal_mode = WAL"
LATE_FOREIGN_KEYS = "PRAGMA defer_foreign_keys = ON"
GIVE_BACK_ROOM = "VACUUM"
QUICK_CHECK = "PRAGMA quick_check"
BEGIN_READING = "BEGIN DEFERRED"
BEGIN = "BEGIN IMMEDIATE"  # a plain BEGIN that reads and then writes fails as soon as somebody else writes

# --- a book in one file (travel/packing.py)

KEPT_ORIGINALS = """
    SELECT digest, suffix, min(name) AS name
      FROM (SELECT digest, suffix, name FROM photo WHERE kept = 1
            UNION ALL
            SELECT digest, suffix, name FROM heap_photo)
     GROUP BY digest, suffix
     ORDER BY digest
"""

# What no book of ours has: code that would run in the database, paths that would lead out of the folder.
STRANGE_IN_BOOK = """
    SELECT name FROM sqlite_master WHERE type IN ('trigger', 'view') OR sql LIKE 'CREATE VIRTUAL%'
    UNION ALL
    SELECT name FROM photo WHERE digest GLOB '*[^0-9a-f]*' OR suffix GLOB '*[^.a-z]*'
    LIMIT 1
"""
