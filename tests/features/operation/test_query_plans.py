"""What a practice waits for does not grow with other practices: no query reads through a whole table."""

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date
from typing import Any

import pytest
from sqlalchemy import event

from steadfoot.core.database import Database
from steadfoot.schema import METADATA
from tests.builders import House, Phone, content

GROWING = set(METADATA.tables) - {"server_epoch"}
"""That one holds a single row."""


@contextmanager
def asked_of(database: Database) -> Iterator[list[tuple[str, Any]]]:
    """The statements that reach the database meanwhile, with their values."""
    found: list[tuple[str, Any]] = []

    def note(_connection: Any, _cursor: Any, statement: str, values: Any, _context: Any, many: bool) -> None:
        found.append((statement, values[0] if many else values))

    for engine in {database.reader, database.writer}:
        event.listen(engine, "before_cursor_execute", note)
    yield found
    for engine in {database.reader, database.writer}:
        event.remove(engine, "before_cursor_execute", note)


def read_through(database: Database, asked: list[tuple[str, Any]]) -> set[str]:
    """Answer the steps of SQLite's plans that read a whole table or a whole index, each with its statement."""
    found = set()
    with database.reader.connect() as connection:
        for statement, values in asked:
            if not statement.startswith(("SELECT", "UPDATE", "DELETE")):
                continue
            plan = connection.exec_driver_sql(f"EXPLAIN QUERY PLAN {statement}", values)
            steps = [step.detail.split() for step in plan]
            found |= {f"{' '.join(step)}: {statement}" for step in steps if step[0] == "SCAN" and step[1] in GROWING}
    return found


@pytest.fixture
def phone(house: House, database: Database) -> Phone:
    """A phone that has told of a session, of pain and of something that nobody understands."""
    if not database.is_sqlite:
        pytest.skip("reads SQLite's plans")
    client_id = house.new_client()
    house.publish(client_id, content(date(2026, 6, 1)))
    phone = house.pair(client_id)
    phone.log("session_finished", {"minutes": 30, "effort": 5, "planned_id": "2026-06-10.1"})
    phone.log("pain_reported", {"rating": 8, "region": "knee", "side": "left", "when": "during"})
    phone.log("dreamt", {})
    phone.sync()
    return phone


def test_the_caseload_and_a_person_are_found_by_index(house: House, phone: Phone, database: Database) -> None:
    (row,) = house.get("/caseload")["items"]
    with asked_of(database) as asked:
        house.get("/caseload")
        house.get(f"/clients/{row['client']['id']}")
        house.get(f"/clients/{row['client']['id']}/timeline")
        house.get("/flags")
    assert len(asked) > 20
    assert read_through(database, asked) == set()


def test_taking_check_ins_in_finds_everything_by_index(phone: Phone, database: Database) -> None:
    phone.log("set_ticked", {"planned_id": "2026-06-10.1", "prescription": "p1", "round": 1})
    phone.log("entry_withdrawn", {"event_id": phone.events[1]["id"]})
    with asked_of(database) as asked:
        phone.sync()
    assert len(asked) > 10
    assert read_through(database, asked) == set()
