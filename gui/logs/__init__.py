"""Logs: the assistant that takes in files of loggers and scales."""
