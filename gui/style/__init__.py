"""Style: colours, letters, spaces and icons, light and dark."""
