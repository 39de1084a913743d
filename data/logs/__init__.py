"""Logs: files of loggers and scales, and old notes, read into readings and trays."""
