"""Notes: readings and events of a tray, typed, listed and corrected."""
