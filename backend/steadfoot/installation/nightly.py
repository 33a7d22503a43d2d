"""When the next backup is due, and what has it made in a process of its own."""

import logging
import subprocess
import sys
from collections.abc import Callable
from datetime import datetime, time, timedelta
from pathlib import Path

from steadfoot.core.clock import Clock
from steadfoot.core.recurring import Recurring
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


def nightly(folder: Path, at: time, clock: Clock, make: Callable[[], None] = make_one) -> Recurring:
    """Answer what makes a backup a day. Half of one that is under way at the end counts for nothing."""
    started = clock()

    def look() -> None:
        last = record.read(folder)
        if clock() >= due_at(last.at if last else None, started, at):
            make()

    return Recurring("nightly backup", lambda: _LOOK_EVERY_S, look)
