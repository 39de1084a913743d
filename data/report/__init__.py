"""Report: what stands in the report of a trial, as plain records in order."""
