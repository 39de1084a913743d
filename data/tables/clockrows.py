"""Clock rows: questions about the times of photos, by name; values are bound by name.

In    nothing
Out   SQL as constants
Not   running them (`chapters/clockbook.py`), all other questions (`queries.py`)
"""

__all__ = ["CLOCKS", "CLOCK_OF_PHOTO", "GROWN"]

CLOCKS = """
    SELECT p.id, p.taken_at, p.file_at, p.added_at, p.camera,
           t.id IS NOT NULL AND date(t.sown_at) <= date(p.taken_at)
               AND (t.done_at IS NULL OR p.taken_at <= t.done_at) AS fits
      FROM photo p
      LEFT JOIN tray t ON t.id = p.tray
     WHERE p.id > (SELECT max(id) FROM photo) - :most
       AND p.taken_from = 'camera' AND p.clock_at IS NULL AND p.left_out_at IS NULL
"""
GROWN = "SELECT DISTINCT date(sown_at) AS sown, date(done_at) AS done FROM tray"
CLOCK_OF_PHOTO = "SELECT taken_at, clock_at, tag_number, tray, matched_by FROM photo WHERE id = :photo"
