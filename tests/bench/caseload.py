"""The caseload of 200 people after eight weeks: alone, and with a hundred times as much of other practices beside it.

Run as ``python -m tests.bench.caseload [COPIES]``; 100 copies need some minutes and GB. Prints milliseconds and the
ratio of the second to the first, and never fails on time. Both are asked in turns, so that what else the machine does
hits both alike.
"""

import shutil
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from pathlib import Path
from random import Random
from statistics import median
from tempfile import TemporaryDirectory
from time import perf_counter

from fastapi.testclient import TestClient

from steadfoot.app import create_app
from steadfoot.checkins.tables import Event, RefusedEvent
from steadfoot.core.database import Database, scoped
from steadfoot.core.settings import Settings
from steadfoot.demo import generate
from steadfoot.demo.people import EMAIL, PEOPLE
from steadfoot.migrations.upgrade import upgrade
from steadfoot.monitoring import caseload
from tests.bench.crowd import copy_all

NOW = datetime(2026, 6, 10, 8, 0, tzinfo=UTC)
GROUPS, COPIES, ROUNDS = 9, 100, 60
ONE_IN = 100
"""Of so many check-ins one is kept aside: more than happens, so that looking for them shows."""


def _many() -> tuple[generate.Person, ...]:
    return tuple(replace(one, name=f"{one.name} {group}") for group in range(GROUPS) for one in PEOPLE)


def _kept_aside(event: Event) -> RefusedEvent:
    problem = {"code": "unknown-kind", "detail": "This kind of entry is not known here."}
    same = {name: getattr(event, name) for name in ("practice_id", "client_id", "device_id", "content_digest", "seq")}
    own = {"event_id": event.id, "raw": event.body, "problem": problem, "accepted_at": None}
    return RefusedEvent(digest=event.content_digest, received_at=event.received_at, **same, **own)


def _invent(file: Path) -> generate.Invented:
    database = Database(f"sqlite:///{file}")
    upgrade(database)
    generate.PEOPLE = _many()
    found = generate.invent(database, NOW, Random(7), lambda _name: None)
    with database.write() as session:
        events = session.exec(scoped(Event, found.access.practice_id)).all()
        session.add_all([_kept_aside(event) for event in events[::ONE_IN]])
    database.close()
    return found


Ways = dict[str, Callable[[], object]]
"""Of asking one database for the caseload, by name."""


@contextmanager
def _open(file: Path, invented: generate.Invented) -> Iterator[Ways]:
    """Yield the queries alone, the whole page, and the page over HTTP."""
    database = Database(f"sqlite:///{file}")
    app = create_app(Settings(data_dir=file.parent, public_url="https://steadfoot.test"), database, lambda: NOW)
    http = TestClient(app, base_url="https://testserver")
    signed = http.post("/api/v1/sign-in", json={"email": EMAIL, "password": generate.PASSWORD})
    signed.raise_for_status()
    practice_id = invented.access.practice_id
    with database.read() as session:
        yield {
            "queries": lambda: caseload._everyone(session, practice_id, NOW),
            "page": lambda: caseload.caseload_json(session, invented.access, NOW),
            "over HTTP": lambda: http.get("/api/v1/caseload").raise_for_status(),
        }
    database.close()


def _milliseconds(ask: Callable[[], object]) -> float:
    begun = perf_counter()
    ask()
    return (perf_counter() - begun) * 1000


def _in_turns(alone: Ways, beside: Ways, way: str) -> tuple[float, float]:
    asks = (alone[way], beside[way])
    for ask in asks:
        ask()  # what is worked out once is not measured
    took = [[_milliseconds(ask) for ask in asks] for _ in range(ROUNDS)]
    return median(pair[0] for pair in took), median(pair[1] for pair in took)


@dataclass(frozen=True)
class Measured:
    """Milliseconds alone and beside the copies, by way of asking."""

    people: int
    rows: int
    size_mb: float
    ms: dict[str, tuple[float, float]]


def measure(copies: int) -> Measured:
    """Fill, copy, and ask both in turns."""
    with TemporaryDirectory() as name:
        alone, crowded = Path(name) / "alone" / "steadfoot.db", Path(name) / "crowded" / "steadfoot.db"
        for file in (alone, crowded):
            file.parent.mkdir()
        invented = _invent(alone)
        shutil.copy(alone, crowded)
        rows = copy_all(crowded, copies)
        with _open(alone, invented) as few, _open(crowded, invented) as many:
            ms = {way: _in_turns(few, many, way) for way in few}
        return Measured(len(invented.client_ids), rows, crowded.stat().st_size / 1e6, ms)


def main() -> None:
    """Measure and print."""
    copies = int(sys.argv[1]) if len(sys.argv) > 1 else COPIES
    found = measure(copies)
    print(f"{found.people} people; beside them {copies} copies: {found.rows:,} rows, {found.size_mb:,.0f} MB")
    for way, (alone, beside) in found.ms.items():
        print(f"{way}: alone {alone:.1f} ms, beside {beside:.1f} ms, ratio {beside / alone:.2f}")


if __name__ == "__main__":
    main()
