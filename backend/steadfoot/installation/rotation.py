"""Which backups are kept: the newest of each of the last days, and of each of the last months."""

import re
from collections.abc import Iterable
from datetime import datetime

DAYS, MONTHS = 30, 12
"""A month back to any day, a year back to any month. House values."""
_NAME = re.compile(r"^steadfoot-(\d{4}-\d{2}-\d{2})T\d{6}Z\.(?:db|db\.enc|dump)$")
_MONTH_SIGNS = 7


def name_of(at: datetime) -> str:
    """Answer the file name of a backup made at an instant in UTC. Names sort as their times do."""
    return f"steadfoot-{at:%Y-%m-%dT%H%M%S}Z.db"


def _newest(names: list[str], signs: int | None, most: int) -> set[str]:
    """``names`` with the newest first; one is kept for each beginning of the day's text of that many signs."""
    kept: dict[str, str] = {}
    for name in names:
        found = _NAME.match(name)
        assert found is not None
        kept.setdefault(found[1][:signs], name)
    return set(list(kept.values())[:most])


def superseded(names: Iterable[str], days: int = DAYS, months: int = MONTHS) -> list[str]:
    """Answer the names of backups that need not be kept; any other file is nobody's business here."""
    ours = sorted((name for name in names if _NAME.match(name)), reverse=True)
    kept = _newest(ours, None, days) | _newest(ours, _MONTH_SIGNS, months)
    return [name for name in ours if name not in kept]
