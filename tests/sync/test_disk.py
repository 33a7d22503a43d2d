"""The practice's disk is full or may not be written, or another process holds the database: phones come again later."""

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import event
from sqlalchemy.exc import IntegrityError, OperationalError
from sqlmodel import Session, select

from steadfoot.checkins import service
from steadfoot.checkins.schemas import SyncBody
from steadfoot.checkins.tables import Event
from steadfoot.checkins.taking import Call, Taken, Taking
from steadfoot.core.database import Database
from steadfoot.core.ids import digest_of
from steadfoot.core.limits import Limiter
from steadfoot.identity.tables import Client
from tests.builders import House, Phone
from tests.conftest import START
from tests.sync.faulty import interrupt


@contextmanager
def _set_on_every_connection(database: Database, pragma: str) -> Iterator[None]:
    """Give each connection a setting when it begins to write, and take it away at the end."""

    def begin(connection: Any) -> None:
        connection.exec_driver_sql(f"PRAGMA {pragma}")

    event.listen(database.writer, "begin", begin)
    try:
        yield
    finally:
        event.remove(database.writer, "begin", begin)
        database.writer.dispose()  # the setting goes with the connection


@pytest.fixture
def phone(sqlite_house: House) -> Phone:
    """A phone of a client of a practice on an SQLite file."""
    return sqlite_house.pair(sqlite_house.new_client())


@pytest.mark.parametrize("pragma", ["max_page_count=1", "query_only=1"], ids=["full disk", "read-only"])
def test_a_disk_that_takes_nothing_is_said_nothing_is_acknowledged_and_later_everything_is_taken(
    sqlite_house: House, phone: Phone, pragma: str
) -> None:
    for number in range(300):  # more than fits into the pages that are there
        phone.log("note_written", {"text": f"{number} " + "x" * 500})
    assert phone.send(phone.events[:1]).json()["acknowledged_through"] == 1
    with _set_on_every_connection(sqlite_house.app.state.database, pragma):
        refused = phone.send(phone.events)
        assert (refused.status_code, refused.json()["code"]) == (503, "database-away")
        assert refused.headers["Retry-After"] == "5"
    assert phone.send([]).json()["acknowledged_through"] == 1
    assert phone.send(phone.events).json()["acknowledged_through"] == 300
    assert phone.send([]).json()["refused"] == []


def test_a_database_that_another_process_holds_is_waited_for_and_then_said_to_be_away(
    sqlite_house: House, phone: Phone, tmp_path: Path
) -> None:
    phone.log("note_written", {"text": "x"})
    database: Database = sqlite_house.app.state.database

    def impatient(connection: Any, _record: Any) -> None:
        connection.execute("PRAGMA busy_timeout=50")

    event.listen(database.writer, "connect", impatient)
    database.writer.dispose()
    with closing(sqlite3.connect(tmp_path / "steadfoot.db", isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        answer = phone.send(phone.events)
        assert (answer.status_code, answer.json()["code"]) == (503, "database-away")
        other.execute("ROLLBACK")
    assert phone.send(phone.events).json()["acknowledged_through"] == 1


def test_a_phone_that_was_silent_for_ninety_days_is_heard_without_pairing_it_again(
    sqlite_house: House, phone: Phone
) -> None:
    clock: Any = sqlite_house.clock
    for _ in range(90):
        clock.now += timedelta(days=1)
        phone.log("session_finished", {"minutes": 20, "effort": 4, "day": f"{clock.now:%Y-%m-%d}"})
    answer = phone.sync()
    assert (answer["acknowledged_through"], answer["refused"]) == (90, [])


def test_a_commit_that_fails_holds_up_nobody_who_comes_after(sqlite_house: House, phone: Phone, tmp_path: Path) -> None:
    database: Database = sqlite_house.app.state.database
    phone.log("note_written", {"text": "afterwards"})

    def fail_at_the_commit() -> None:
        with database.write() as session:
            session.connection().exec_driver_sql("PRAGMA defer_foreign_keys=ON")  # asked about at the commit only
            for client in session.exec(select(Client)).all():
                client.practice_id = "nobody's"
                session.add(client)

    with pytest.raises(IntegrityError):
        fail_at_the_commit()
    assert phone.send(phone.events).json()["acknowledged_through"] == 1
    with pytest.raises(IntegrityError):
        fail_at_the_commit()
    with closing(sqlite3.connect(tmp_path / "steadfoot.db", timeout=0)) as other:
        other.execute("BEGIN IMMEDIATE")  # the file is free


def test_nothing_is_acknowledged_of_a_transaction_that_the_database_has_ended_by_itself(
    sqlite_house: House, monkeypatch: pytest.MonkeyPatch
) -> None:
    database: Database = sqlite_house.app.state.database
    phones, sync = [sqlite_house.pair(sqlite_house.new_client(f"Person {number}")) for number in range(4)], service.sync
    for phone in phones:
        phone.log("note_written", {"text": "x"})
    for phone in phones[1::2]:
        phone.events[0]["seq"] = 7  # a gap, so that the call is judged by itself, in the transaction of the others

    def interrupted(session: Session, access: Any, *said: Any) -> Any:
        if access.device_id == phones[3].device_id:
            raise ValueError("nobody foresaw this")
        interrupt(session)
        return sync(session, access, *said)

    monkeypatch.setattr(service, "sync", interrupted)
    taking = Taking(database, Limiter(10_000, 60))
    calls = [Call.of(digest_of(phone.token), SyncBody(events=phone.events), START) for phone in phones]
    taken = taking.take(calls)
    with database.read() as session:
        held = set(session.exec(select(Event.id)).all())
    told = {
        phone.events[0]["id"]
        for phone, one in zip(phones, taken, strict=True)
        if isinstance(one, Taken) and one.answer.acknowledged_through
    }
    assert told <= held, f"acknowledged and gone: {told - held}"
    assert isinstance(taken[1], OperationalError)
    monkeypatch.undo()
    assert all(isinstance(one, Taken) for one in taking.take(calls))
