"""Tells one story in a process that imports other sources: ``python -m tests.sync.model.tell NAME``."""

import logging
import sys
import warnings

from tests.quick import quick_passwords_now
from tests.sync.model.run import worlds
from tests.sync.model.stories import STORIES

CAUGHT = 3
"""Exit code of a story that found its promise broken."""


def main(name: str) -> int:
    """Answer 0 when the promise held, CAUGHT when it did not."""
    logging.disable(logging.CRITICAL)
    with quick_passwords_now(), worlds() as make:
        try:
            STORIES[name](make())
        except AssertionError as found:
            print(f"caught: {found}")
            return CAUGHT
    print("nothing found")
    return 0


if __name__ == "__main__":
    warnings.simplefilter("ignore")
    sys.exit(main(sys.argv[1]))
