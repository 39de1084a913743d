"""Swap rows: questions about what two trays were photographed and noted since a day, by name.

In    nothing
Out   SQL as constants
Not   running them (`chapters/swapbook.py`)
"""

__all__ = ["EVENTS", "PHOTOS", "READINGS"]

PHOTOS = """
    SELECT id, tray
      FROM photo
     WHERE tray IN (:one, :other) AND taken_at >= :since AND left_out_at IS NULL
     ORDER BY taken_at, id
"""
READINGS = """
    SELECT id, tray, log_file
      FROM reading
     WHERE tray IN (:one, :other) AND taken_at >= :since
     ORDER BY id
"""
EVENTS = "SELECT id, tray, kind FROM event WHERE tray IN (:one, :other) AND at >= :since ORDER BY id"
