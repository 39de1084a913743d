"""Old notes: the assistant that takes in a table of trays that was kept before."""
