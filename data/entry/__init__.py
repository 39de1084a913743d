"""Entry: what a person types, in which unit, whether it may be a slip, and which trays it means."""
