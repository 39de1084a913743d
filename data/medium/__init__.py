"""Medium: what is tested and noted of one medium, before any comparison."""
