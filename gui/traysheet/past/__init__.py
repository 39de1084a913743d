"""Past: trays that have ended, and what stood on the look list, to be found and opened again."""
