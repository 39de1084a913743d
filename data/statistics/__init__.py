"""Statistics: pure arithmetic, each formula with its source; nothing here knows a book."""
