"""`python -m gui ...`: the command line from a checkout."""

import signal
import sys

if signal.getsignal(signal.SIGINT) is signal.default_int_handler:
    # Ctrl+C while modules come in ends without a list of them; `main` takes it from there
    signal.signal(signal.SIGINT, signal.SIG_DFL)

from gui.command import main

if __name__ == "__main__":
    sys.exit(main())
