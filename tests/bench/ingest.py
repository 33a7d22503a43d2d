"""Check-ins taken in by a real server, against the raw database doing the same durable inserts.

Run as ``python -m tests.bench.ingest``; prints events a second and ratios, and never fails on time. The baseline writes
the same rows (event and receipt) with the pragmas that the server uses, one commit a batch, in one thread; it reads
nothing and derives nothing.
"""

import sqlite3
import threading
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass
from datetime import UTC, datetime, time, timedelta
from pathlib import Path
from tempfile import TemporaryDirectory
from time import perf_counter
from typing import Any

import httpx

from steadfoot.app import create_app
from steadfoot.core.database import _PRAGMAS, Database
from steadfoot.core.ids import derived_uuid7, uuid7
from steadfoot.core.settings import Settings
from steadfoot.migrations.upgrade import upgrade
from tests.builders import House, Phone, circuit, content, found_house, step_down
from tests.conftest import START, StandingClock
from tests.sync.histories import DAY_ONE
from tests.sync.server import running

BATCHES, BATCH = 30, 100
PHONES_AT_ONCE, SINGLES_EACH = 16, 40


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


def post(http: httpx.Client, address: str, phone: Phone, events: list[dict[str, Any]]) -> None:
    """Send a batch and insist that all of it is held afterwards."""
    headers = {"Authorization": f"Bearer {phone.token}"}
    answer = http.post(f"{address}/api/v1/sync", json={"cursor": 0, "events": events}, headers=headers)
    answer.raise_for_status()
    assert answer.json()["acknowledged_through"] >= events[-1]["seq"], answer.text


def batches_a_second(address: str, phone: Phone, events: list[dict[str, Any]]) -> float:
    """Answer events a second in batches, from one phone."""
    with httpx.Client(timeout=60) as http:
        begun = perf_counter()
        for at in range(0, len(events), BATCH):
            post(http, address, phone, events[at : at + BATCH])
        return len(events) / (perf_counter() - begun)


def singles_a_second(address: str, phones: list[Phone], logs: list[list[dict[str, Any]]]) -> float:
    """Answer events a second when many phones send one event a call, all at once."""

    def one(phone: Phone, log: list[dict[str, Any]]) -> None:
        with httpx.Client(timeout=60) as http:
            for event in log:
                post(http, address, phone, [event])

    threads = [threading.Thread(target=one, args=pair) for pair in zip(phones, logs, strict=True)]
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
    copy = file.with_name(f"raw-{at_once}.db")
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


def _measured(title: str, phones: int, at_once: int, send: Callable[[str, list[Phone]], float]) -> None:
    with bench(phones) as found:
        with running(found.folder) as server:
            rate = send(server.address, found.phones)
            server.stop()
        raw = raw_a_second(found.folder / "steadfoot.db", at_once)
    print(f"{title}: {rate:,.0f} events a second; raw database {raw:,.0f}; ratio {rate / raw:.2f}")


def main() -> None:
    """Measure both ways of sending and print them."""
    batches = events_of(0, BATCHES * BATCH)
    _measured(
        f"{BATCHES} batches of {BATCH} from one phone",
        1,
        BATCH,
        lambda address, phones: batches_a_second(address, phones[0], batches),
    )
    logs = [events_of(phone, SINGLES_EACH) for phone in range(PHONES_AT_ONCE)]
    _measured(
        f"{SINGLES_EACH} single events from each of {PHONES_AT_ONCE} phones at once",
        PHONES_AT_ONCE,
        1,
        lambda address, phones: singles_a_second(address, phones, logs),
    )


if __name__ == "__main__":
    main()
