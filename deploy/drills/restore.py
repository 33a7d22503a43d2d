"""Loses the disk of a practice after its last backup, restores, and lets the phones send what the backup had not.

``sh deploy/drill.sh restore``; ends with 1 if a check-in is missing or doubled when every phone has been in contact.
"""

import shutil
import sqlite3
import sys
import time
from contextlib import closing
from pathlib import Path
from tempfile import TemporaryDirectory

import httpx

from tests.bench.ingest import bench, events_of
from tests.sync.server import Sender, Server, command, running

PHONES, EVENTS_EACH, BATCH = 4, 600, 100


def _send(senders: list[Sender], server: Server, through: int) -> None:
    with httpx.Client(timeout=30) as http:
        for sender in senders:
            while sender.acknowledged < through:
                batch = sender.events[sender.acknowledged : through][:BATCH]
                if sender.send(server.address, batch, http) is None:
                    raise RuntimeError("the server did not take a batch")


def _ask_again(senders: list[Sender], server: Server) -> None:
    """The server names another epoch now: a phone then believes what it says, and not what it remembers."""
    with httpx.Client(timeout=30) as http:
        for sender in senders:
            sender.acknowledged = 0
            sender.send(server.address, [], http)


def _held(folder: Path) -> list[str]:
    with closing(sqlite3.connect(folder / "steadfoot.db")) as held:
        return [found for (found,) in held.execute("SELECT id FROM event")]


def _restored(folder: Path, copy: Path) -> float:
    """Answer the seconds that the command took on an empty folder."""
    shutil.rmtree(folder)
    folder.mkdir()
    begun = time.monotonic()
    done = command(folder, "restore", str(copy))
    if done.returncode:
        raise RuntimeError(done.stderr)
    return time.monotonic() - begun


def drill() -> int:
    """Do it, print what was counted, and answer the exit code."""
    with TemporaryDirectory() as name, bench(PHONES) as found:
        copy, half = Path(name) / "backup.db", EVENTS_EACH // 2
        senders = [Sender(phone.token, events_of(at, EVENTS_EACH)) for at, phone in enumerate(found.phones)]
        with running(found.folder) as server:
            _send(senders, server, half)
            if command(found.folder, "backup", str(copy)).returncode:
                raise RuntimeError("no backup was made")
            _send(senders, server, EVENTS_EACH)
        took_s = _restored(found.folder, copy)
        in_backup = len(_held(found.folder))
        with running(found.folder) as server:
            _ask_again(senders, server)
            _send(senders, server, EVENTS_EACH)
        held = _held(found.folder)
    sent = {event["id"] for sender in senders for event in sender.events}
    missing, doubled = len(sent - set(held)), len(held) - len(set(held))
    print(f"{PHONES} phones, {len(sent)} check-ins acknowledged; {in_backup} of them were in the backup.")
    print(f"The data folder was deleted and the backup restored in {took_s:.1f} s; each phone was in contact once.")
    print(f"Missing: {missing}. Twice: {doubled}.")
    return 1 if missing or doubled else 0


if __name__ == "__main__":
    sys.exit(drill())
