"""Work that comes again and again in a thread of its own."""

import logging
import threading
from collections.abc import Callable

_log = logging.getLogger(__name__)


class Recurring:
    """Waits, works, and waits again until closed. A time that fails is told in the log, and the next one comes."""

    def __init__(self, name: str, wait_s: Callable[[], float], work: Callable[[], object]) -> None:
        """``wait_s`` is asked before each time; ``name`` is the thread's, and the log's for what failed."""
        self._name, self._wait_s, self._work = name, wait_s, work
        self._end = threading.Event()
        self._thread = threading.Thread(target=self._run, name=name, daemon=True)

    def start(self) -> None:
        """Begin to wait."""
        self._thread.start()

    def close(self) -> None:
        """Begin no further time."""
        self._end.set()

    def join(self, within_s: float) -> None:
        """Wait for a time that is under way, after ``close``."""
        self._thread.join(within_s)

    def _run(self) -> None:
        while not self._end.wait(self._wait_s()):
            try:
                self._work()
            except Exception:  # noqa: BLE001  whatever it was, the server goes on and so does this
                _log.exception("Not done this time: %s", self._name)
