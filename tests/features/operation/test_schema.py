"""Schema steps: a filled database keeps every row, and migrating makes what the tables say."""

from datetime import date
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import Connection, inspect, text

from steadfoot.core.database import Database
from steadfoot.migrations import HEAD
from steadfoot.migrations import upgrade as steps
from steadfoot.schema import METADATA
from tests.builders import House, content

FIRST = "0001"


def _to(database: Database, revision: str, up: bool = True) -> None:
    from alembic import command
    from alembic.config import Config

    config = Config()
    config.set_main_option("script_location", str(Path(steps.__file__).parent))
    with steps._locked(database) as connection:
        config.attributes["connection"] = connection
        (command.upgrade if up else command.downgrade)(config, revision)


def _rows(connection: Connection) -> dict[str, list[dict[str, Any]]]:
    tables = sorted(set(inspect(connection).get_table_names()) - {"alembic_version"})
    found = {}
    for table in tables:
        rows = connection.execute(text(f'SELECT * FROM "{table}"')).mappings()
        found[table] = sorted((dict(row) for row in rows), key=repr)
    return found


@pytest.fixture
def filled(house: House, database: Database) -> dict[str, list[dict[str, Any]]]:
    """A database of the first schema with rows in most of its tables."""
    client_id = house.new_client(birth_year=1961)
    house.publish(client_id, content(date(2026, 6, 10)))
    phone = house.pair(client_id)
    phone.log("pain_reported", {"rating": 8, "region": "knee", "side": "left", "when": "during"})
    phone.log("session_finished", {"minutes": 30, "effort": 5, "planned_id": "2026-06-10.1"})
    phone.log("dreamt", {})
    phone.sync()
    (flag,) = house.get("/flags")["items"]
    house.post(f"/flags/{flag['id']}/decisions", {"action": "message", "message": "How is the knee?"})
    _to(database, FIRST, up=False)
    with database.reader.connect() as connection:
        return _rows(connection)


def test_every_row_of_the_first_schema_is_there_after_the_steps_and_what_is_new_is_not_known(
    filled: dict[str, list[dict[str, Any]]], database: Database
) -> None:
    assert sum(len(rows) > 0 for rows in filled.values()) > 12
    steps.upgrade(database)
    with database.reader.connect() as connection:
        assert steps.revision_of(connection) == HEAD
        after = _rows(connection)
    for table, rows in filled.items():
        names = set(rows[0]) if rows else set()
        kept = [{name: value for name, value in row.items() if name in names} for row in after[table]]
        assert sorted(kept, key=repr) == rows, table
    (client,) = after["client"]
    assert (client["sex"], client["height_cm"], client["body_mass_kg"]) == (None, None, None)
    assert all(after[table] == [] for table in set(after) - set(filled))


def test_the_steps_make_the_tables_that_the_program_reads(database: Database) -> None:
    from alembic.autogenerate import compare_metadata
    from alembic.migration import MigrationContext

    with database.reader.connect() as connection:
        context = MigrationContext.configure(connection, opts={"compare_type": True})
        assert compare_metadata(context, METADATA) == []
