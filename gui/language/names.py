"""Names: the languages that Evenstand speaks, each by its own name; no Qt.

In    nothing
Out   `LANGUAGES`
Not   their texts (`translations`), choosing and loading one (`language.py`)
"""

__all__ = ["ENGLISH", "LANGUAGES"]

ENGLISH = "en"
LANGUAGES = ((ENGLISH, "English"), ("de", "Deutsch"))
