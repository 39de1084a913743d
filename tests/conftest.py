"""Settings that hold for every test: no display is needed, and shared example pictures are found once."""

import os

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
