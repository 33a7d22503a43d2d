"""How long the steps from the first schema to this one take on a database with 200,000 check-ins.

Run as ``python -m tests.bench.upgrade [URL]``: on SQLite, or on an empty PostgreSQL database of that URL. Prints
seconds beside those of reading every check-in once, and never fails on time.
"""

import sys
from pathlib import Path
from tempfile import TemporaryDirectory
from time import perf_counter

from steadfoot.core.database import Database
from steadfoot.migrations.upgrade import upgrade
from tests.features.operation.released import fill, revisions

EVENTS = 200_000
_NUMBERS = "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < {times})"
_SHORT = 30
"""An id with a copy's number behind it has to fit into 36 characters."""
_SAME = "kind, recorded_at, instant, received_at, local_day, planned_id, body, content_digest"
_COPIED = {
    "event": (
        f"id, practice_id, client_id, device_id, seq, {_SAME}",
        f"substr(id, 1, {_SHORT}) || i, practice_id, client_id, device_id, seq + 1000 * i, {_SAME}",
    ),
    "receipt": (
        "device_id, seq, practice_id, event_id",
        f"device_id, seq + 1000 * i, practice_id, substr(event_id, 1, {_SHORT}) || i",
    ),
}
"""By table: the columns, and what a copy has in them. Made-up rows of the other practice stay as they are."""


def _multiply(database: Database) -> int:
    with database.writer.begin() as connection:
        held = connection.exec_driver_sql("SELECT count(*) FROM event").scalar_one()
        numbers = _NUMBERS.format(times=EVENTS // held + 1)
        for table, (names, values) in _COPIED.items():
            copies = f"SELECT {values} FROM {table}, n WHERE device_id LIKE '0%%'"
            connection.exec_driver_sql(f"INSERT INTO {table} ({names}) {numbers} {copies}")
        return int(connection.exec_driver_sql("SELECT count(*) FROM event").scalar_one())


def main() -> None:
    """Fill, upgrade and print."""
    with TemporaryDirectory() as folder:
        file = Path(folder) / "steadfoot.db"
        database = Database(sys.argv[1] if len(sys.argv) > 1 else f"sqlite:///{file}")
        fill(database, revisions()[0])
        events = _multiply(database)
        begun = perf_counter()
        with database.reader.connect() as connection:
            connection.exec_driver_sql("SELECT sum(length(body)) FROM event").scalar_one()
        read = perf_counter()
        upgrade(database)
        done = perf_counter()
        size = f", {file.stat().st_size / 1e6:.0f} MB" if file.exists() else ""
        print(f"{events:,} check-ins{size}: upgraded in {done - read:.2f} s; read once in {read - begun:.2f} s")
        database.close()


if __name__ == "__main__":
    main()
