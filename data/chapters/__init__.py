"""Chapters: what the book can be asked and told, subject by subject; `book.py` binds them."""
