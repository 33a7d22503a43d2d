"""Draws ahead what the pages show: a process of its own at the lowest priority, so that no answer waits for it."""

import os
import sys
from pathlib import Path

from steadfoot.exercises.gallery import Gallery

_LOWEST_PRIORITY = 19


def main(folder: str) -> None:
    """Draw into a folder what is not there yet, and end; earlier if the server that started this was killed."""
    server = os.getppid()
    if hasattr(os, "nice"):
        os.nice(_LOWEST_PRIORITY)
    Gallery(Path(folder)).draw_ahead(lambda: os.getppid() == server)


if __name__ == "__main__":
    main(sys.argv[1])
