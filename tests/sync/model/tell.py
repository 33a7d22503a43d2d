"""Tells one story, in a process that imported a planted copy of the server. Prints what caught it."""

import logging
import pickle
from pathlib import Path

from tests.quick import quick_passwords_now
from tests.sync.model.run import worlds
from tests.sync.model.stories import STORIES

CAUGHT = 3
"""Exit code of a story that found its promise broken."""


def main(name: str, begin: str) -> int:
    """Answer 0 when the promise held, CAUGHT when it did not; ``begin`` is a pickled template."""
    logging.disable(logging.CRITICAL)
    with quick_passwords_now(), worlds(begin=pickle.loads(Path(begin).read_bytes())) as make:
        try:
            STORIES[name](make())
        except AssertionError as found:
            print(f"caught: {found}")
            return CAUGHT
    print("nothing found")
    return 0
