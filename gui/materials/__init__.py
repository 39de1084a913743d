"""Materials: the media side by side, and the tests that fill the table; begin with `screen.py`."""
