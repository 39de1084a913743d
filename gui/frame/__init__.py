"""Frame: what surrounds every place of the window: top row, keys, bands, progress, foot, help."""
