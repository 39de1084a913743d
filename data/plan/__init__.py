"""Plan: a trial while it is planned: blocks, size, drawing, and what it can show."""
