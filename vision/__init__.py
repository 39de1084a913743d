"""Vision: from one photo to numbers. No Qt, no database; imports nothing else of the project."""
