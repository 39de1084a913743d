"""Travel: whole books that come and go: packed, merged, brought back from an export."""
