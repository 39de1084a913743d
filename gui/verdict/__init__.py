"""Verdict: a trial is answered; its weights, and scoring by eye; begin with `screen.py`."""
