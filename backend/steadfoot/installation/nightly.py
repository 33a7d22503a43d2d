"""When the next backup is due, and the thread that has it made in a process of its own."""

import logging
import subprocess
import sys
import threading
from collections.abc import Callable
from datetime import datetime, time, timedelta
from pathlib import Path

from steadfoot.core.clock import Clock
from steadfoot.installation import record

_log = logging.getLogger(__name__)
_LOOK_EVERY_S = 60.0
_SETTLED = timedelta(minutes=5)
"""A night that was slept through is made up for, minutes after the start. House value."""
_COMMAND = (sys.executable, "-m", "steadfoot.cli", "backup")


def due_at(last: datetime | None, started: datetime, at: time) -> datetime:
    """Answer when the next backup is due: the first such time of day (UTC) after the last one.

    It is never before the server has run for some minutes.
    """
    if last is None:
        return started + _SETTLED
    first = last.replace(hour=at.hour, minute=at.minute, second=0, microsecond=0)
    due = first if first > last else first + timedelta(days=1)
    return max(due, started + _SETTLED)


def make_one() -> None:
    """Run the command in a process of its own: what it reads and packs must not slow an answer down."""
    if subprocess.run(_COMMAND, check=False, stdout=subprocess.DEVNULL).returncode:  # noqa: S603  our own module
        _log.error("The backup failed; the status page and last-backup.json say why.")


class Nightly:
    """Makes a backup a day until closed."""

    def __init__(self, folder: Path, at: time, clock: Clock, make: Callable[[], None] = make_one) -> None:
        self._folder, self._at, self._clock, self._make = folder, at, clock, make
        self._end = threading.Event()
        self._thread = threading.Thread(target=self._run, name="nightly backup", daemon=True)

    def start(self) -> None:
        """Begin to look at the clock."""
        self._thread.start()

    def close(self) -> None:
        """Make no further one; one under way is not waited for: half of it counts for nothing."""
        self._end.set()

    def _run(self) -> None:
        started = self._clock()
        while not self._end.wait(_LOOK_EVERY_S):
            last = record.read(self._folder)
            if self._clock() >= due_at(last.at if last else None, started, self._at):
                self._make()
