"""Kills the primary of two PostgreSQL servers while phones send, promotes the standby, counts what was acknowledged.

``sh deploy/drill.sh failover``; ends with 1 if one acknowledged check-in is missing, or one is there twice. On one
machine it shows that no commit is answered before both servers have it; a real pair stands on two machines.
"""

import sys
import threading
import time
from pathlib import Path
from tempfile import TemporaryDirectory

import httpx
import psycopg

from deploy.drills.pair import Pair, running_pair
from tests.bench.ingest import bench, events_of
from tests.sync.server import Sender, running

PHONES, EVENTS_EACH, BATCH = 6, 4_000, 10
UNDER_LOAD_S, AGAIN_S = 4.0, 0.2
_ENDS_WITHIN_S = 300


def _send_all(sender: Sender, address: str) -> None:
    """Send as a phone does: what got no answer is sent again."""
    with httpx.Client(timeout=10) as http:
        while sender.acknowledged < len(sender.events):
            batch = sender.events[sender.acknowledged :][:BATCH]
            if sender.send(address, batch, http) is None:
                time.sleep(AGAIN_S)


def _total(senders: list[Sender]) -> int:
    return sum(sender.acknowledged for sender in senders)


def _ids(server_socket: str) -> list[str]:
    with psycopg.connect(host=server_socket, user="postgres", dbname="postgres") as connection:
        return [found for (found,) in connection.execute("SELECT id FROM event").fetchall()]


def _fail_over(pair: Pair, senders: list[Sender]) -> tuple[set[str], float]:
    """Kill and promote; answer what had been acknowledged when the primary died, and seconds until the next answer."""
    time.sleep(UNDER_LOAD_S)
    pair.kill_primary()
    died = time.monotonic()
    acknowledged = {event["id"] for sender in senders for event in sender.events[: sender.acknowledged]}
    pair.promote()
    before, until = _total(senders), died + _ENDS_WITHIN_S
    while _total(senders) <= before and time.monotonic() < until:
        time.sleep(0.02)
    return acknowledged, time.monotonic() - died


def drill() -> int:
    """Do it, print what was counted, and answer the exit code."""
    with TemporaryDirectory() as name, running_pair(Path(name)) as pair, bench(PHONES, pair.url) as found:
        senders = [Sender(phone.token, events_of(at, EVENTS_EACH)) for at, phone in enumerate(found.phones)]
        with running(found.folder, pair.url) as server:
            threads = [threading.Thread(target=_send_all, args=(one, server.address), daemon=True) for one in senders]
            for thread in threads:
                thread.start()
            acknowledged, away_s = _fail_over(pair, senders)
            for thread in threads:
                thread.join(_ENDS_WITHIN_S)
            server.stop()
        held = _ids(pair.standby.get_postmaster_info().socket_dir)
    sent = {event["id"] for sender in senders for event in sender.events}
    lost, doubled = acknowledged - set(held), len(held) - len(set(held))
    print(f"{PHONES} phones, {len(sent)} check-ins; {len(acknowledged)} were acknowledged when the primary was killed.")
    print(f"Promoted; the first answer came {away_s:.1f} s after the kill.")
    print(f"Acknowledged and lost: {len(lost)}. Twice: {doubled}. Missing in the end: {len(sent - set(held))}.")
    return 1 if lost or doubled or sent != set(held) else 0


if __name__ == "__main__":
    sys.exit(drill())
