"""Check-ins taken in by a real server, against the raw database doing the same durable inserts.

Run as ``python -m tests.bench.ingest``; prints events a second, ratios, where the time goes; never fails on time.
The baseline writes the same rows (event and receipt) with the pragmas that the server uses, one commit a batch, in one
thread; it reads nothing and derives nothing. It is run before and after, since a disk that others use is not the same
a minute later.
"""

import sqlite3
import threading
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass
from datetime import UTC, datetime, time, timedelta
from pathlib import Path
from tempfile import TemporaryDirectory
from time import perf_counter
from typing import Any

from steadfoot.app import create_app
from steadfoot.core.database import _PRAGMAS, Database
from steadfoot.core.ids import derived_uuid7, uuid7
from steadfoot.core.settings import Settings
from steadfoot.migrations.upgrade import upgrade
from tests.bench import ingest_split
from tests.bench.wire import Wire
from tests.builders import House, Phone, circuit, content, found_house, step_down
from tests.conftest import START, StandingClock
from tests.sync.histories import DAY_ONE
from tests.sync.server import running

BATCHES, BATCH = 30, 100
PHONES_AT_ONCE, SINGLES_EACH = 16, 120
BATCHING_PHONES = 4
FRESH_ROUNDS = 12


@dataclass
class Bench:
    """A data folder with a practice, and phones that were paired but have sent nothing."""

    folder: Path
    phones: list[Phone]


def _client_with_phone(house: House, number: int) -> Phone:
    client_id = house.new_client(f"Person {number}")
    house.publish(client_id, content(DAY_ONE, weeks=8, sessions=[circuit(prescriptions=[step_down("p1")])]))
    return house.pair(client_id)


@contextmanager
def bench(phones: int, database_url: str | None = None) -> Iterator[Bench]:
    """Found a practice, on a file of its own unless told where; each phone belongs to a client of its own."""
    with TemporaryDirectory() as name:
        folder = Path(name)
        database = Database(database_url or f"sqlite:///{folder / 'steadfoot.db'}")
        upgrade(database)
        clock = StandingClock(START - timedelta(days=34))
        app = create_app(Settings(data_dir=folder, public_url="https://steadfoot.test"), database, clock)
        with found_house(app, clock, "Thornwater Physical Therapy", "maren@thornwater.example") as house:
            found = [_client_with_phone(house, number) for number in range(phones)]
        database.close()
        yield Bench(folder, found)


def _session(number: int) -> Iterator[tuple[str, dict[str, Any]]]:
    planned = {"planned_id": f"{DAY_ONE + timedelta(days=number // 2)}.{number % 2 + 1}"}
    yield "session_started", planned
    for made in range(15):
        yield "set_ticked", {**planned, "prescription": f"p{made % 5}", "round": made // 5 + 1}
    yield "session_finished", {**planned, "minutes": 40, "effort": 5}
    if number % 3 == 0:
        yield "pain_reported", {**planned, "rating": 2, "region": "knee", "side": "left", "when": "after"}


def events_of(phone: int, count: int) -> list[dict[str, Any]]:
    """Answer one phone's events in the order they were logged, session after session."""
    moments = ((number, *what) for number in range(count) for what in _session(number))
    found = []
    for seq, (number, kind, body) in zip(range(1, count + 1), moments, strict=False):
        at = datetime.combine(DAY_ONE, time(7), UTC) + timedelta(hours=12 * number, seconds=40 * seq)
        event_id = derived_uuid7(uuid7(at), str(phone), str(seq))
        found.append({"id": event_id, "seq": seq, "kind": kind, "recorded_at": at.isoformat(), "body": body})
    return found


def send_all(address: str, phone: Phone, events: list[dict[str, Any]], at_once: int) -> None:
    """Send events, so many a call, and insist that each is held afterwards."""
    with Wire(address, phone.token) as wire:
        for at in range(0, len(events), at_once):
            wire.sync(events[at : at + at_once])


def events_a_second(address: str, phones: list[Phone], logs: list[list[dict[str, Any]]], at_once: int) -> float:
    """Answer events a second when phones send, all of them at once, each one call after the other."""
    threads = [
        threading.Thread(target=send_all, args=(address, phone, log, at_once))
        for phone, log in zip(phones, logs, strict=True)
    ]
    begun = perf_counter()
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    return sum(map(len, logs)) / (perf_counter() - begun)


def _rows(file: Path, table: str) -> tuple[str, list[tuple[Any, ...]]]:
    with closing(sqlite3.connect(file)) as held:
        rows = held.execute(f"SELECT * FROM {table} ORDER BY device_id, seq").fetchall()
        marks = ",".join("?" * len(rows[0]))
    return f"INSERT INTO {table} VALUES ({marks})", rows


def raw_a_second(file: Path, at_once: int) -> float:
    """Answer rows a second of the same inserts into an empty copy of the same schema, ``at_once`` events a commit."""
    (put_event, events), (put_receipt, receipts) = _rows(file, "event"), _rows(file, "receipt")
    copy = file.with_name(f"raw-{at_once}-{perf_counter()}.db")
    database = Database(f"sqlite:///{copy}")
    upgrade(database)
    database.close()
    with closing(sqlite3.connect(copy, isolation_level=None)) as raw:
        for pragma in (*_PRAGMAS, "foreign_keys=OFF"):  # people and phones are not copied
            raw.execute(f"PRAGMA {pragma}")
        begun = perf_counter()
        for at in range(0, len(events), at_once):
            raw.execute("BEGIN IMMEDIATE")
            raw.executemany(put_event, events[at : at + at_once])
            raw.executemany(put_receipt, receipts[at : at + at_once])
            raw.execute("COMMIT")
        return len(events) / (perf_counter() - begun)


def _held_rows(file: Path) -> int:
    with closing(sqlite3.connect(file)) as held:
        return int(held.execute("SELECT count(*) FROM event").fetchone()[0])


def _measured(title: str, phones: int, each: int, at_once: int) -> None:
    """A first round fills the file that the baseline copies, so that the baseline can stand before and after."""
    logs = [events_of(phone, 2 * each) for phone in range(phones)]
    with bench(phones) as found, running(found.folder) as server:
        file = found.folder / "steadfoot.db"
        events_a_second(server.address, found.phones, [log[:each] for log in logs], at_once)
        before = raw_a_second(file, at_once)
        calls = server_counts(server.address)
        rate = events_a_second(server.address, found.phones, [log[each:] for log in logs], at_once)
        together = tuple(after - first for after, first in zip(server_counts(server.address), calls, strict=True))
        raw = (before + raw_a_second(file, at_once)) / 2
        assert _held_rows(file) == 2 * phones * each
    print(f"{title}: {rate:,.0f} events a second; raw database {raw:,.0f}; ratio {rate / raw:.2f}", end="; ")
    print(f"{together[0] / together[1]:.1f} calls a commit")


def server_counts(address: str) -> tuple[float, float]:
    """Answer how many sync calls the server has answered, and in how many transactions."""
    with Wire(address) as wire:
        lines = dict(line.rsplit(" ", 1) for line in wire.get("/metrics").decode().splitlines() if line[0] != "#")
    return float(lines["steadfoot_sync_calls_total"]), float(lines["steadfoot_sync_transactions_total"])


def main() -> None:
    """Measure both ways of sending, how soon pages have it, and where the time goes; print them."""
    _measured(f"batches of {BATCH} from one phone", 1, BATCHES * BATCH, BATCH)
    _measured(f"batches of {BATCH} from {BATCHING_PHONES} phones at once", BATCHING_PHONES, BATCHES * BATCH // 2, BATCH)
    _measured(f"single events from {PHONES_AT_ONCE} phones at once", PHONES_AT_ONCE, SINGLES_EACH, 1)
    with bench(1) as found, running(found.folder) as server:
        asked, told = ingest_split.soon(server.address, found.phones[0], events_of(0, 2 * FRESH_ROUNDS))
    print(
        f"a single event to the caseload that has it: {asked:.0f} ms asked at once; open pages hear after {told:.0f} ms"
    )
    for phones, at_once in ((1, BATCH), (PHONES_AT_ONCE, 1)):
        with bench(phones) as found:
            logs = [events_of(phone, BATCHES * at_once) for phone in range(phones)]
            ingest_split.show(found.folder / "steadfoot.db", found.phones, logs, at_once)


if __name__ == "__main__":
    main()
