"""Tray sheet: one tray, its picture, its days, its numbers; begin with `screen.py`."""
