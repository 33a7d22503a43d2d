"""What became of the last backup, as a file: a restored database must not bring back an older story."""

import json
from dataclasses import asdict, dataclass
from datetime import datetime
from pathlib import Path
from typing import Any

LAST, LAST_GOOD = "last-backup.json", "last-good-backup.json"


@dataclass(frozen=True)
class BackupRecord:
    """One attempt. ``verified_at`` is when its copy had been restored and counted; None if it never was."""

    at: datetime
    ok: bool
    file: str
    size_bytes: int
    verified_at: datetime | None
    problem: str


def write(folder: Path, record: BackupRecord) -> None:
    """Keep the last attempt, and beside it the last good one. Each is replaced in one step."""
    text = json.dumps(asdict(record), default=datetime.isoformat)
    for name in (LAST, LAST_GOOD) if record.ok else (LAST,):
        fresh = folder / f".{name}"
        fresh.write_text(text + "\n", encoding="utf-8")
        fresh.replace(folder / name)


def _time(value: Any) -> datetime | None:
    return None if value is None else datetime.fromisoformat(value)


def read(folder: Path, name: str = LAST) -> BackupRecord | None:
    """Answer the last attempt, or the last good one; None if there is none that can be read."""
    try:
        found = json.loads((folder / name).read_text(encoding="utf-8"))
        at = datetime.fromisoformat(found["at"])
        verified = _time(found["verified_at"])
        return BackupRecord(at, found["ok"], found["file"], int(found["size_bytes"]), verified, found["problem"])
    except (OSError, ValueError, KeyError, TypeError):
        return None
