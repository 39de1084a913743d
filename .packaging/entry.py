"""Where the built program begins; worker processes that it starts begin here too."""

import ctypes
import multiprocessing
import sys

import launch

MISSING = 3
# These belong to the graphics driver, so no folder brings them along.
OF_THE_SYSTEM = ("libGL.so.1", "libEGL.so.1", "libxcb.so.1")


def main() -> int:
    """Run the program; where the system lacks one of its own libraries, say how to get it."""
    try:
        for name in OF_THE_SYSTEM if sys.platform == "linux" else ():
            ctypes.CDLL(name)
    except OSError as error:
        print(
            f"A library of the system is missing ({error}). This line brings it on Debian and Ubuntu:\n"
            f"sudo apt install --no-install-recommends {launch.LIBRARIES}",
            file=sys.stderr,
        )
        return MISSING
    from gui.command import main

    return main()


if __name__ == "__main__":
    multiprocessing.freeze_support()
    sys.exit(main())
