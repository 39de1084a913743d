"""Gui: what a person touches, windows, command line and printing; imports `data` and `vision`."""
