"""Upkeep: long work on a kept book: scored again, mended, logs kept, training data written."""
