"""Trays: new trays, their kinds, their tags, and the station that they are photographed at."""
