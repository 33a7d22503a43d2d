"""The caseload of 200 people after eight weeks: alone, and with a hundred times as much of other practices beside it.

Run as ``python -m tests.bench.caseload [COPIES]``; 100 copies need some minutes and GB. Prints milliseconds and the
ratio of the second to the first, and never fails on time.
"""

import sys
from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path
from random import Random
from statistics import median
from tempfile import TemporaryDirectory
from time import perf_counter

from fastapi.testclient import TestClient

from steadfoot.app import create_app
from steadfoot.core.database import Database
from steadfoot.core.settings import Settings
from steadfoot.demo import generate
from steadfoot.demo.people import EMAIL, PEOPLE
from steadfoot.migrations.upgrade import upgrade
from steadfoot.monitoring import caseload
from tests.bench.crowd import copy_all

NOW = datetime(2026, 6, 10, 8, 0, tzinfo=UTC)
GROUPS, COPIES, ROUNDS = 9, 100, 30


def _milliseconds(ask: Callable[[], object]) -> float:
    took = []
    for _ in range(ROUNDS):
        begun = perf_counter()
        ask()
        took.append((perf_counter() - begun) * 1000)
    return median(took)


def _many() -> tuple[generate.Person, ...]:
    return tuple(replace(one, name=f"{one.name} {group}") for group in range(GROUPS) for one in PEOPLE)


def _invent(file: Path) -> generate.Invented:
    database = Database(f"sqlite:///{file}")
    upgrade(database)
    generate.PEOPLE = _many()
    found = generate.invent(database, NOW, Random(7), lambda _name: None)
    database.close()
    return found


def _look(file: Path, invented: generate.Invented) -> dict[str, float]:
    """Answer the milliseconds of the queries alone, of the whole page, and of the page over HTTP."""
    database = Database(f"sqlite:///{file}")
    app = create_app(Settings(data_dir=file.parent, public_url="https://steadfoot.test"), database, lambda: NOW)
    http = TestClient(app, base_url="https://testserver")
    signed = http.post("/api/v1/sign-in", json={"email": EMAIL, "password": generate.PASSWORD})
    signed.raise_for_status()
    with database.read() as session:
        practice_id = invented.access.practice_id
        found = {
            "queries": _milliseconds(lambda: caseload._everyone(session, practice_id, NOW)),
            "page": _milliseconds(lambda: caseload.caseload_json(session, invented.access, NOW)),
        }
    found["over HTTP"] = _milliseconds(lambda: http.get("/api/v1/caseload").raise_for_status())
    database.close()
    return found


def main() -> None:
    """Measure, copy, measure again."""
    copies = int(sys.argv[1]) if len(sys.argv) > 1 else COPIES
    with TemporaryDirectory() as name:
        file = Path(name) / "steadfoot.db"
        invented = _invent(file)
        alone = _look(file, invented)
        rows = copy_all(file, copies)
        beside = _look(file, invented)
        size_mb = file.stat().st_size / 1e6
    print(f"{len(invented.client_ids)} people; beside them {copies} copies: {rows:,} rows, {size_mb:,.0f} MB")
    for what in alone:
        ratio = beside[what] / alone[what]
        print(f"{what}: alone {alone[what]:.1f} ms, beside {beside[what]:.1f} ms, ratio {ratio:.2f}")


if __name__ == "__main__":
    main()
