"""Mend: the canopy of a photo, mended with a brush; begin with `desk.py`."""
