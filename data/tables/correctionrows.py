"""Correction rows: questions about mended and repeated scores, by name; values are bound by name.

In    nothing
Out   SQL as constants
Not   running them (`chapters/corrections.py`, `chapters/changes.py`), all other questions (`queries.py`)
"""

__all__ = [
    "CANOPY_OF_PHOTO",
    "DRAWN_PHOTOS",
    "NEWER_SCORE",
    "NEWER_SCORE_OF_SUSPECT",
    "PHOTOS_WITHOUT",
    "SECONDS_TAKEN",
]

CANOPY_OF_PHOTO = """
    SELECT k.body
      FROM correction k
     WHERE k.photo = :photo AND k.kind = 'canopy'
       AND (SELECT s.mended FROM score s WHERE s.photo = :photo ORDER BY s.id DESC LIMIT 1) = 1
     ORDER BY k.id DESC
     LIMIT 1
"""
DRAWN_PHOTOS = """
    SELECT DISTINCT k.photo
      FROM correction k
      JOIN score s ON s.id = (SELECT max(z.id) FROM score z WHERE z.photo = k.photo)
     WHERE k.kind = 'canopy' AND s.mended = 1
     ORDER BY k.photo
"""
PHOTOS_WITHOUT = """
    SELECT p.id
      FROM tray t
      JOIN tray_type y ON y.id = t.tray_type
      CROSS JOIN photo p ON p.tray = t.id
     WHERE (:growing = 0 OR t.done_at IS NULL) AND p.kept = 1 AND p.refusal IS NULL AND p.left_out_at IS NULL
       AND EXISTS (SELECT 1 FROM score z WHERE z.photo = p.id)
       AND NOT EXISTS (
             SELECT 1
               FROM score z
              WHERE z.photo = p.id AND z.method = :method AND z.bed_cells IS NOT NULL
                AND z.inner_long_mm = y.inner_long_mm AND z.inner_short_mm = y.inner_short_mm)
     ORDER BY t.done_at IS NOT NULL, p.taken_at DESC, p.id DESC
"""
SECONDS_TAKEN = """
    SELECT seconds FROM score WHERE id > (SELECT max(id) FROM score) - 50 AND seconds IS NOT NULL
"""
NEWER_SCORE = """
    SELECT z.id
      FROM score s
      JOIN score z ON z.photo = s.photo AND z.id > s.id
     WHERE s.id = :id
     LIMIT 1
"""
NEWER_SCORE_OF_SUSPECT = """
    SELECT z.id
      FROM suspect u
      JOIN score s ON s.id = u.score
      JOIN score z ON z.photo = s.photo AND z.id > s.id
     WHERE u.id = :id
     LIMIT 1
"""
