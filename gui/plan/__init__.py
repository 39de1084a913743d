"""Plan: a fair trial, planned step by step; begin with `screen.py`."""
