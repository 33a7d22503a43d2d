"""The only place that reads a clock. Everything else is handed the time."""

import time
from collections.abc import Callable
from datetime import UTC, date, datetime
from zoneinfo import ZoneInfo

Clock = Callable[[], datetime]
"""Answers the present instant, aware, in UTC."""


def system_clock() -> datetime:
    """Answer the machine's time in UTC, cut to whole milliseconds.

    Milliseconds are what a browser can read and what UUIDv7 holds, so that a time survives every round trip.
    """
    now = datetime.now(UTC)
    return now.replace(microsecond=now.microsecond // 1000 * 1000)


def monotonic_s() -> float:
    """Answer seconds of a clock that never jumps, for limits and waits."""
    return time.monotonic()


def local_date(instant: datetime, time_zone: str) -> date:
    """Answer the calendar day of an aware instant in an IANA time zone.

    Raises:
        zoneinfo.ZoneInfoNotFoundError: the zone is unknown.
    """
    return instant.astimezone(ZoneInfo(time_zone)).date()
