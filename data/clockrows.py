"""Clock rows: questions about the times of photos, by name; values are bound by name.

In    nothing
Out   SQL as constants
Not   running them (`clockbook.py`), all other questions (`queries.py`)
"""

__all__ = ["CLOCKS", "CLOCK_OF_PHOTO"]

CLOCKS = """
    SELECT id, taken_at, file_at, added_at
      FROM photo
     WHERE id > (SELECT max(id) FROM photo) - :most
       AND taken_from = 'camera' AND clock_at IS NULL AND left_out_at IS NULL
"""
CLOCK_OF_PHOTO = "SELECT taken_at, clock_at, tag_number, tray, matched_by FROM photo WHERE id = :photo"
