"""Bench: the rack as it stands, and above it what needs a look now; begin with `screen.py`."""
