"""Language: what the window says, in the language of its person."""
