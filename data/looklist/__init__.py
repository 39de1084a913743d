"""Look list: each reason to look at a tray by itself; `watch.py` makes the list of them."""
