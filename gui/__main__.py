"""`python -m gui ...`: the command line from a checkout."""

import sys

from gui.command import main

if __name__ == "__main__":
    sys.exit(main())
