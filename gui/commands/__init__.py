"""Commands: the words of the command line, and what each does without a window."""
