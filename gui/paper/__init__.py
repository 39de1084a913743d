"""Paper: pages in millimetres, and what is printed on them for the rack."""
