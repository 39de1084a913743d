"""Growing: what a crop needs and how it comes on: conditions, climate, germination, the day of the cut."""
