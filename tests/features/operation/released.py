"""Databases as each released schema had them, filled.

``released/NNNN.json`` holds every row that the newest program of that schema wrote for a small practice: recorded once,
by that program, never changed. A schema without a record of its own gets the newest earlier one, upgraded to it. Beside
it every table has one made-up row of another practice, so that a table that nobody thought of is filled too.
"""

import json
import re
from collections.abc import Iterator
from datetime import UTC, date, datetime
from functools import cache
from pathlib import Path
from typing import Any

from sqlalchemy import (
    JSON,
    Boolean,
    Column,
    Connection,
    Date,
    DateTime,
    Float,
    Integer,
    LargeBinary,
    MetaData,
    Table,
    inspect,
    select,
    text,
)

from steadfoot.core.database import Database
from steadfoot.migrations import upgrade as steps

_RECORDS = Path(__file__).parent / "released"
_MOMENT = datetime(2026, 5, 1, 8, 0, tzinfo=UTC)
_OWN_WORDS = {"time_zone": "Europe/Vienna"}
Rows = dict[str, list[dict[str, Any]]]


@cache
def revisions() -> list[str]:
    """Answer every released schema, oldest first."""
    from alembic.script import ScriptDirectory

    script = ScriptDirectory(str(Path(steps.__file__).parent))
    return [found.revision for found in reversed(list(script.walk_revisions()))]


def record_of(revision: str) -> tuple[str, dict[str, Any]]:
    """Answer the newest record that is not newer than a schema, and which schema it is of."""
    known = {path.stem: path for path in _RECORDS.glob("*.json")}
    base = max((one for one in revisions()[: revisions().index(revision) + 1] if one in known), key=revisions().index)
    return base, json.loads(known[base].read_text())


def migrate(database: Database, revision: str) -> None:
    """Take a database up to a schema."""
    from alembic import command
    from alembic.config import Config

    config = Config()
    config.set_main_option("script_location", str(Path(steps.__file__).parent))
    with steps._locked(database) as connection:
        config.attributes["connection"] = connection
        command.upgrade(config, revision)


def fill(database: Database, revision: str) -> dict[str, Any]:
    """Make an empty database one of that schema with rows in every table; answer the record they come from."""
    base, record = record_of(revision)
    migrate(database, base)
    _put(database, record["rows"])
    if base != revision:
        migrate(database, revision)
    with database.writer.begin() as connection:
        for table in _tables(connection):
            _make_up(connection, table)
    return record


def rows_of(database: Database) -> Rows:
    """Answer every row of every table as the driver gives it."""
    with database.reader.connect() as connection:
        names = sorted(set(inspect(connection).get_table_names()) - {"alembic_version"})
        found = {name: connection.execute(text(f'SELECT * FROM "{name}"')).mappings() for name in names}
        return {name: sorted((dict(row) for row in rows), key=repr) for name, rows in found.items()}


def _tables(connection: Connection) -> list[Table]:
    metadata = MetaData()
    metadata.reflect(connection)
    return [table for table in metadata.sorted_tables if table.name != "alembic_version"]


def _put(database: Database, rows: Rows) -> None:
    with database.writer.begin() as connection:
        for table in _tables(connection):
            for row in rows.get(table.name, []):
                values = {name: _read(table.c[name], value) for name, value in row.items()}
                connection.execute(table.insert().values(values))


def _read(column: Column[Any], value: Any) -> Any:
    """Answer a recorded value as its column takes it: the records were read from SQLite without types."""
    if value is None:
        return None
    kind = column.type
    if isinstance(kind, JSON):
        return json.loads(value)
    if isinstance(kind, DateTime):
        return datetime.fromisoformat(value).replace(tzinfo=UTC if kind.timezone else None)
    if isinstance(kind, Date):
        return date.fromisoformat(value)
    return bool(value) if isinstance(kind, Boolean) else value


def _make_up(connection: Connection, table: Table) -> None:
    """One row of a practice that nobody looks at. What belongs to no practice holds one row for all, as recorded."""
    filled = connection.execute(select(table).limit(1)).first() is not None
    if filled and table.name != "practice" and "practice_id" not in table.c:
        return
    checks = " ".join(str(one["sqltext"]) for one in inspect(connection).get_check_constraints(table.name))
    connection.execute(table.insert().values({column.name: _value(column, checks) for column in table.c}))


def _value(column: Column[Any], checks: str) -> Any:
    for key in column.foreign_keys:
        return _value(key.column, "")
    named = re.search(rf"\b{column.name}\b[^']*\bIN\b[^']*'([^']+)'", checks, re.IGNORECASE)
    return named[1] if named else _of_kind(column)


def _of_kind(column: Column[Any]) -> Any:
    kind = column.type
    moment = _MOMENT if getattr(kind, "timezone", False) else _MOMENT.replace(tzinfo=None)
    for known, value in _plain(moment):
        if isinstance(kind, known):
            return value
    words = _OWN_WORDS.get(column.name, f"{column.table.name} {column.name}")
    return words[: getattr(kind, "length", None)]


def _plain(moment: datetime) -> Iterator[tuple[Any, Any]]:
    yield JSON, {"kept": ["whole", 1, None, "ü"]}
    yield Boolean, True
    yield DateTime, moment
    yield Date, moment.date()
    yield Float, 1.5
    yield Integer, 7
    yield LargeBinary, b"\x00kept"
