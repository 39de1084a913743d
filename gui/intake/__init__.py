"""Intake: photos come in, and each one's fate stands in a row; begin with `screen.py`."""
