"""A file beside the database that says who was erased: a backup that is older than an erasure does not know of it.

One line of JSON for each: ids and digests of phones' keys, nothing that names anybody. Only ever added to.
"""

import json
import os
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path


@dataclass(frozen=True, slots=True)
class Entry:
    """One erasure. ``phones`` are the digests of the keys that must be told."""

    practice_id: str
    subject_id: str
    phones: tuple[str, ...]
    erased_at: datetime


def append(path: Path, entry: Entry) -> None:
    """Write a line and wait until it is on the disk."""
    path.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
    line = {
        "practice_id": entry.practice_id,
        "subject_id": entry.subject_id,
        "phones": list(entry.phones),
        "erased_at": entry.erased_at.astimezone(UTC).isoformat(),
    }
    handle = os.open(path, os.O_RDWR | os.O_APPEND | os.O_CREAT, 0o600)
    try:
        begins = b"" if _ends_whole(handle) else b"\n"
        os.write(handle, begins + json.dumps(line, sort_keys=True).encode() + b"\n")
        os.fsync(handle)
    finally:
        os.close(handle)


def _ends_whole(handle: int) -> bool:
    """Answer whether the file is empty or its last line is complete: a cut one must not swallow the next."""
    size = os.fstat(handle).st_size
    return size == 0 or os.pread(handle, 1, size - 1) == b"\n"


def entries(path: Path) -> Sequence[Entry]:
    """Answer every erasure there was, oldest first. A line that was cut by a crash was never told to anybody."""
    found = []
    for line in path.read_text().splitlines() if path.exists() else ():
        try:
            said = json.loads(line)
            at = datetime.fromisoformat(said["erased_at"])
            found.append(Entry(said["practice_id"], said["subject_id"], tuple(said["phones"]), at))
        except (ValueError, KeyError, TypeError):
            continue
    return found
