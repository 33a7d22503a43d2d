"""Runs histories: one server's folder, one process of phones, many worlds."""

import shutil
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

from tests.conftest import START, StandingClock
from tests.sync.model import template
from tests.sync.model.phones import FRONTEND, phones_from
from tests.sync.model.service import Service, repeatable, without_threads
from tests.sync.model.world import World

_IN_MEMORY = Path("/dev/shm")
"""Where there is one, a flush costs nothing; that commits are flushed is held by tests of their own."""


@contextmanager
def worlds(frontend: Path = FRONTEND) -> Iterator[Callable[[], World]]:
    """Answer what makes a fresh world."""
    folder = Path(tempfile.mkdtemp(dir=_IN_MEMORY if _IN_MEMORY.is_dir() else None))
    (folder / "server").mkdir()
    service = Service(folder / "server", StandingClock(START))
    try:
        with phones_from(frontend) as phones, without_threads(), repeatable(service.chance), service.point.watching():
            begin = template.build(folder, service, phones)
            yield lambda: World(begin, service, phones)
    finally:
        service.close()
        shutil.rmtree(folder, ignore_errors=True)
