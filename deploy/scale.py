"""What a practice, a chain and a health system would need, computed from what one client costs, measured here.

``.venv/bin/python -m deploy.scale`` measures SQLite and PostgreSQL for a minute and prints the tables of scale.md.
"""

import warnings
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory

import psutil
import psycopg

from tests.bench.ingest import bench, events_of, send_all
from tests.sync.server import Server, running

# What people do. House values: no practice of this kind has been counted yet.
CLIENTS_EACH = 30
"""Active clients a practitioner."""
EVENTS_A_DAY = 12
"""Four sessions a week of some twenty entries, over seven days."""
CALLS_A_DAY = 10
"""A phone with a network sends an entry as it is made; some are together."""
PEAK = 0.15 * 3
"""Share of a day's calls in its fullest hour, times how much fuller its fullest minutes are."""
OPEN_PAGES = 0.5
"""Share of practitioners with the caseload open in that hour."""
ASKS_EVERY_S = 60
"""An open page asks this often, and at news of its practice's clients."""
TOGETHER_S = 10
"""News that follows within this is asked about together (TOGETHER_MS in the practitioner's pages)."""
CASELOAD_CPU_MS = 20.0
"""216 people over HTTP: ``python -m tests.bench.caseload``. A practice of more is asked for proportionally more."""
CASELOAD_PEOPLE = 216
BUSY = 0.5
"""How much of a core may be used before answers begin to wait."""
PRACTICES = (("practice, 1", 1, 1), ("practice, 10", 10, 1), ("clinic chain", 200, 20), ("health system", 5000, 300))
"""Name, practitioners, practices that they belong to."""

_PHONES, _BATCHES, _BATCH, _SINGLES = 4, 6, 100, 60


@dataclass(frozen=True)
class Cost:
    """Of one event, on one database: bytes on the disk with everything derived from it, CPU of the server in ms."""

    bytes_an_event: float
    single_ms: float
    batched_ms: float


def _cpu_ms(server: Server) -> float:
    assert server.process is not None
    times = psutil.Process(server.process.pid).cpu_times()
    return 1000 * (times.user + times.system)


def _sqlite_bytes(folder: Path) -> int:
    return sum(file.stat().st_size for file in folder.glob("steadfoot.db*"))


def _postgresql_bytes(url: str) -> int:
    with psycopg.connect(url.replace("+psycopg", "")) as connection:
        statement = "SELECT sum(pg_total_relation_size(relid)) FROM pg_catalog.pg_statio_user_tables"
        ((found,),) = connection.execute(statement).fetchall()
    return int(found)


def _measured(url: str | None) -> Cost:
    with bench(_PHONES, url) as found, running(found.folder, url) as server:
        size = _sqlite_bytes if url is None else lambda _folder: _postgresql_bytes(url)
        logs = [events_of(at, _BATCHES * _BATCH + _SINGLES) for at in range(_PHONES)]
        before, begun = size(found.folder), _cpu_ms(server)
        for phone, log in zip(found.phones, logs, strict=True):
            send_all(server.address, phone, log[: _BATCHES * _BATCH], _BATCH)
        batched = _cpu_ms(server)
        for phone, log in zip(found.phones, logs, strict=True):
            send_all(server.address, phone, log[_BATCHES * _BATCH :], 1)
        single = _cpu_ms(server)
        server.stop()
        grown = size(found.folder) - before
    events = _PHONES * (_BATCHES * _BATCH + _SINGLES)
    return Cost(
        grown / events, (single - batched) / (_PHONES * _SINGLES), (batched - begun) / (_PHONES * _BATCHES * _BATCH)
    )


def _needs(practitioners: int, practices: int, cost: Cost) -> tuple[str, ...]:
    clients = practitioners * CLIENTS_EACH
    calls_a_second = clients * CALLS_A_DAY * PEAK / 3600
    pages, news_a_second = practitioners * OPEN_PAGES, calls_a_second / practices
    reads_a_second = pages * (1 / ASKS_EVERY_S + min(news_a_second, 1 / TOGETHER_S))
    read_ms = CASELOAD_CPU_MS * (clients / practices) / CASELOAD_PEOPLE
    taking_in = calls_a_second * cost.single_ms / 1000 / BUSY
    reading = reads_a_second * read_ms / 1000 / BUSY
    events = clients * EVENTS_A_DAY
    storage_gb = events * 365 * cost.bytes_an_event / 1e9
    return (
        f"{clients:,}",
        f"{events:,}",
        f"{calls_a_second:,.2f}",
        f"{reads_a_second:,.2f}",
        f"{storage_gb:,.1f} GB",
        f"{taking_in:,.2f}",
        f"{reading:,.2f}",
    )


def _tell(name: str, cost: Cost) -> None:
    print(
        f"\n{name}: {cost.bytes_an_event:,.0f} bytes an event; "
        f"{cost.single_ms:.1f} ms of CPU for one alone, {cost.batched_ms:.2f} in a batch of {_BATCH}.\n"
    )
    print(
        "| | clients | events a day | syncs a second | caseloads a second | a year | cores to take in | cores to show |"
    )
    print("| --- | --- | --- | --- | --- | --- | --- | --- |")
    for title, practitioners, practices in PRACTICES:
        print(f"| {title} | {' | '.join(_needs(practitioners, practices, cost))} |")


def main() -> None:
    """Measure both, print both tables."""
    _tell("SQLite", _measured(None))
    with TemporaryDirectory() as name, warnings.catch_warnings():
        warnings.simplefilter("ignore")  # the package warns of a missing runtime folder, which it then makes itself
        from tests.postgres import running_server

        with running_server(Path(name) / "data") as url:
            _tell("PostgreSQL", _measured(url))


if __name__ == "__main__":
    main()
