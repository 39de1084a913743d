"""Open files: how the book stands in an export, by open standards."""
