"""Data: the trial book and its statistics. No Qt; imports `vision` only."""
