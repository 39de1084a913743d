"""Growing: what a crop needs and how it comes on: conditions, climate, the day of the cut."""
