"""Tables: the steps that made the book's tables, questions to them, rows as records, the journal."""
