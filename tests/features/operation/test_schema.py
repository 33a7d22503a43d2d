"""Schema steps: a filled database of every released schema keeps every row, is what the tables say, and is served."""

from collections.abc import Callable, Iterator
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest
from fastapi.testclient import TestClient

from steadfoot.app import create_app
from steadfoot.core.database import Database
from steadfoot.core.ids import uuid7
from steadfoot.core.settings import Settings
from steadfoot.migrations import HEAD
from steadfoot.migrations import upgrade as steps
from steadfoot.schema import METADATA
from tests.builders import API, PASSWORD
from tests.conftest import START, server_database
from tests.features.operation.released import Rows, fill, revisions, rows_of
from tests.features.operation.steps import narrowed, schemas

_SIGN_IN = "Nobody can sign in at a server of the release before until it is stopped; whoever is signed in goes on."
GIVEN_UP: dict[str, str] = {
    "0010 sign_in: confirmed_at is new and must be given": _SIGN_IN,
    "0010 sign_in: id is new and must be given": _SIGN_IN,
    "0010 sign_in: new rule: unique ['id']": _SIGN_IN,
    "0011 colleague_invitation: new rule: key ['practitioner_id']": "The release before leaves it empty.",
}
"""What a step takes away or narrows (as ``narrowed`` words it), and why no release that still runs misses it."""
REWRITTEN: dict[str, str] = {}
"""Columns (``table.column``) whose contents a step changes, and why."""


@pytest.fixture
def empty(server_url: str | None, tmp_path: Path, request: pytest.FixtureRequest) -> Iterator[Database]:
    """A database without a schema, of this test's own."""
    name = f"upgrade_{request.node.callspec.id}" if hasattr(request.node, "callspec") else "upgrade"
    url = server_database(server_url, name) if server_url else f"sqlite:///{tmp_path / 'old.db'}"
    database = Database(url)
    yield database
    database.close()


def kept_columns(after: Rows, before: Rows) -> Rows:
    """Answer the rows with the columns that were there before, without those that a step rewrites."""
    found = {}
    for table, rows in before.items():
        names = {name for name in rows[0] if f"{table}.{name}" not in REWRITTEN}
        found[table] = sorted(({n: v for n, v in row.items() if n in names} for row in after[table]), key=repr)
    return found


def differences(database: Database) -> list[Any]:
    """Answer what tells the database's schema from the tables of the program."""
    from alembic.autogenerate import compare_metadata
    from alembic.migration import MigrationContext

    with database.reader.connect() as connection:
        context = MigrationContext.configure(connection, opts={"compare_type": True})
        return list(compare_metadata(context, METADATA))


def serve(database: Database, folder: Path, record: dict[str, Any]) -> None:
    """Start the program on it: the practitioner signs in and sees, the phone goes on where it was."""
    settings = Settings(data_dir=folder, public_url="https://steadfoot.test")
    later = START + timedelta(hours=1)
    app = create_app(settings, database, lambda: later)
    http = TestClient(app, base_url="https://testserver")
    ask: Callable[[str], Any] = lambda path: http.get(f"{API}{path}").raise_for_status().json()  # noqa: E731
    http.post(f"{API}/sign-in", json={"email": record["email"], "password": PASSWORD}).raise_for_status()
    assert {row["client"]["display_name"] for row in ask("/caseload")["items"]} == {"Emil Tarrow", "Ada Flint"}
    person = f"/clients/{record['client_id']}"
    assert ask(person)["display_name"] == "Emil Tarrow"
    told = {"rating": 7, "region": "knee", "side": "left", "when": "after"}
    number = record["acknowledged_through"] + 1
    new = {"id": uuid7(later), "seq": number, "kind": "pain_reported", "recorded_at": later.isoformat(), "body": told}
    phone = {"Authorization": f"Bearer {record['token']}"}
    answer = http.post(f"{API}/sync", json={"cursor": 0, "events": [new]}, headers=phone).raise_for_status().json()
    assert (answer["acknowledged_through"], answer["refused"]) == (number, [])
    shown = {item["event_id"] for item in ask(f"{person}/timeline?limit=200")["items"]}
    assert shown >= {event["id"] for event in record["rows"]["event"]} | {new["id"]}


@pytest.mark.parametrize("revision", revisions())
def test_every_row_of_a_released_schema_is_kept_and_served(revision: str, empty: Database, tmp_path: Path) -> None:
    record = fill(empty, revision)
    before = rows_of(empty)
    assert [table for table, rows in before.items() if not rows] == []
    steps.upgrade(empty)
    after = rows_of(empty)
    assert {table: len(after[table]) for table in before} == {table: len(rows) for table, rows in before.items()}
    assert kept_columns(after, before) == kept_columns(before, before)
    assert differences(empty) == []
    with empty.reader.connect() as connection:
        assert steps.revision_of(connection) == HEAD
    serve(empty, tmp_path, record)


def test_steps_only_add_or_say_why_not() -> None:
    """A server of the release before may still run on the database while the next one starts."""
    found = [line for before, after in schemas() for line in narrowed(before, after)]
    assert found == list(GIVEN_UP)


def test_a_database_of_a_newer_release_is_left_alone(database: Database) -> None:
    with database.writer.begin() as connection:
        connection.exec_driver_sql("UPDATE alembic_version SET version_num = '9999'")
    before = rows_of(database)
    with pytest.raises(steps.NewerSchema, match="schema 9999"):
        steps.upgrade(database)
    assert rows_of(database) == before
    with database.writer.begin() as connection:  # the next test has the same database
        connection.exec_driver_sql(f"UPDATE alembic_version SET version_num = '{HEAD}'")
