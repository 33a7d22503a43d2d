"""Runs histories: one server's folder, one process of phones, many worlds."""

import logging
import shutil
import tempfile
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path

from tests.conftest import START, StandingClock
from tests.sync.model import template
from tests.sync.model.phones import FRONTEND, phones_from
from tests.sync.model.service import Service, repeatable, without_threads
from tests.sync.model.template import Template
from tests.sync.model.world import World

_IN_MEMORY = Path("/dev/shm")
"""Where there is one, a flush costs nothing; that commits are flushed is held by tests of their own."""


@contextmanager
def _without_logs() -> Iterator[None]:
    """A history is read from its steps; logs, each death with its stack, would cost more."""
    logging.disable(logging.CRITICAL)
    try:
        yield
    finally:
        logging.disable(logging.NOTSET)


@contextmanager
def _service() -> Iterator[Service]:
    """A server on a folder of its own, whose ids come the same each time."""
    folder = Path(tempfile.mkdtemp(dir=_IN_MEMORY if _IN_MEMORY.is_dir() else None))
    service = Service(folder, StandingClock(START))
    try:
        with _without_logs(), without_threads(), repeatable(service.chance), service.point.watching():
            yield service
    finally:
        service.close()
        shutil.rmtree(folder, ignore_errors=True)


@contextmanager
def begun(frontend: Path = FRONTEND) -> Iterator[Template]:
    """Answer what histories begin with; its file is gone at the end."""
    with tempfile.TemporaryDirectory() as folder, _service() as service, phones_from(frontend) as phones:
        yield template.build(Path(folder), service, phones)


@contextmanager
def worlds(frontend: Path = FRONTEND, begin: Template | None = None) -> Iterator[Callable[[], World]]:
    """Answer what makes a fresh world; phones may be of another frontend folder, beginning where others were."""
    with ExitStack() as stack:
        known = begin or stack.enter_context(begun(frontend))
        service, phones = stack.enter_context(_service()), stack.enter_context(phones_from(frontend))
        yield lambda: World(known, service, phones)
