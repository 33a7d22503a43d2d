"""Transactions that keep what they say they keep, on both databases (T2, T3, T5, T8)."""

import threading
from contextlib import suppress

import httpx
import pytest
from sqlalchemy import text, update
from sqlalchemy.exc import DBAPIError, OperationalError
from sqlmodel import col, select

from steadfoot.core.database import Database
from steadfoot.core.ids import uuid7
from steadfoot.identity import store
from steadfoot.identity.tables import Client
from tests.builders import API, House
from tests.sync.faulty import spoil
from tests.sync.live import listening

THREADS, TIMES = 16, 40


def test_sixteen_threads_that_read_and_then_write_lose_no_update(house: House, database: Database) -> None:
    client_id, errors = house.new_client(), []

    def count() -> None:
        try:
            for _ in range(TIMES):
                with database.write() as session:
                    store.lock_client(session, house.practice_id, client_id)
                    found = session.exec(select(Client).where(Client.id == client_id)).one()
                    found.change_head += 1
                    session.add(found)
        except Exception as error:  # a thread's error would be lost  # noqa: BLE001
            errors.append(error)

    threads = [threading.Thread(target=count) for _ in range(THREADS)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert errors == []
    with database.read() as session:
        found = session.exec(select(Client).where(Client.id == client_id)).one()
        assert found.change_head == 2 + THREADS * TIMES  # two changes came with the client


def test_whoever_overlooks_that_the_database_has_given_a_transaction_up_hears_of_it_at_the_commit(
    house: House, database: Database
) -> None:
    client_id = house.new_client()

    def overlook() -> None:
        with database.write() as session:
            session.exec(update(Client).where(col(Client.id) == client_id).values(note="never to be seen"))
            with suppress(DBAPIError):
                spoil(session, on_sqlite=database.is_sqlite)

    with pytest.raises(OperationalError, match="given the transaction up"):
        overlook()
    assert house.get(f"/clients/{client_id}")["note"] == ""


@pytest.mark.server
def test_of_colleagues_who_change_a_client_at_once_exactly_one_is_first(house: House) -> None:
    path = f"{API}/clients/{house.new_client()}"
    statuses: list[int] = []

    def change(address: str, number: int) -> None:
        cookie = f"__Host-steadfoot={house.http.cookies['__Host-steadfoot']}"
        with httpx.Client(timeout=60, verify=False, headers={"Cookie": cookie, "If-Match": '"v1"'}) as http:
            statuses.append(http.patch(f"{address}{path}", json={"note": str(number)}).status_code)

    with listening(house.app) as address:
        threads = [threading.Thread(target=change, args=(address, number)) for number in range(20)]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
    assert sorted(statuses) == [200] + [412] * 19
    assert house.http.get(path).json()["version"] == 2


def test_every_connection_of_an_sqlite_file_has_the_settings_that_keep_data(sqlite_house: House) -> None:
    database = sqlite_house.app.state.database
    wanted = {
        "journal_mode": "wal",
        "synchronous": 2,
        "foreign_keys": 1,
        "trusted_schema": 0,
        "secure_delete": 1,
        "busy_timeout": 10_000,
    }
    for engine in (database.writer, database.reader):
        connections = [engine.connect() for _ in range(5)]
        for connection in connections:
            found = {name: connection.exec_driver_sql(f"PRAGMA {name}").scalar() for name in wanted}
            assert found == wanted
            connection.rollback()
        for connection in connections:
            connection.close()


def test_a_row_without_its_parent_is_refused(house: House, database: Database) -> None:
    statement = text(
        "INSERT INTO receipt (device_id, seq, practice_id, event_id) VALUES ('nobody', 1, :practice, :event)"
    )
    with pytest.raises(Exception, match=r"(?i)foreign key"), database.write() as session:
        session.execute(statement, {"practice": house.practice_id, "event": uuid7(house.clock())})


def test_what_fails_inside_a_transaction_leaves_nothing_of_it(house: House, database: Database) -> None:
    client_id = house.new_client()

    def half_a_change() -> None:
        with database.write() as session:
            found = session.exec(select(Client).where(Client.id == client_id)).one()
            found.note = "half"
            session.add(found)
            session.flush()
            raise InterruptedError

    with pytest.raises(InterruptedError):
        half_a_change()
    assert house.get(f"/clients/{client_id}")["note"] == ""
