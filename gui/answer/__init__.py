"""Answer: what a trial says, as text without Qt and as charts, for the screen and for the report."""
