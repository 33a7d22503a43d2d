"""The chain of the log: nothing can be changed, dropped or put in between without its being told."""

import hashlib
import json
import threading
from collections.abc import Callable
from typing import Any

import pytest
from sqlalchemy import text
from sqlalchemy.exc import DatabaseError

from steadfoot.audit import service
from steadfoot.audit.entries import said
from steadfoot.audit.service import Act, Actor, ActorKind, Verdict
from steadfoot.core.database import Database
from tests.builders import API, House
from tests.conftest import START
from tests.features.audit.rows import rows

PRACTICE = "practice-1"


def _fill(database: Database, count: int, practice_id: str = PRACTICE) -> None:
    actor = Actor(ActorKind.PRACTITIONER, practice_id, "someone")
    for number in range(count):
        with database.write() as session:
            service.record(session, Act(actor, "readClient", START, f"request-{number}", "client-1"))


def _verdict(database: Database, noted: dict[int, str] | None = None) -> Verdict:
    with database.read() as session:
        return service.verify(session, PRACTICE, noted)


def _tamper(database: Database, *statements: str) -> None:
    """Do what someone with the file and without scruple can: switch the triggers off first."""
    with database.writer.begin() as connection:
        if database.is_sqlite:
            found = connection.execute(text("SELECT name FROM sqlite_master WHERE type = 'trigger'")).scalars().all()
            for name in found:
                connection.execute(text(f"DROP TRIGGER {name}"))
        else:
            connection.execute(text("SET LOCAL session_replication_role = replica"))
        for statement in statements:
            connection.execute(text(statement))


def test_an_empty_chain_and_one_of_many_rows_are_whole(database: Database) -> None:
    assert _verdict(database).rows == 0
    _fill(database, 30)
    found = _verdict(database)
    assert (found.rows, found.broken_at) == (30, None)
    assert found.head == rows(database, PRACTICE)[-1]["digest"]


@pytest.mark.parametrize(
    ("statements", "broken_at", "why"),
    [
        (("UPDATE audit_entry SET subject_id = 'other' WHERE number = 4",), 4, "content was changed"),
        (("UPDATE audit_entry SET times = 2 WHERE number = 1",), 1, "content was changed"),
        (("DELETE FROM audit_entry WHERE number = 5",), 5, "a row is missing"),
        (("DELETE FROM audit_entry WHERE number = 1",), 1, "a row is missing"),
        (("DELETE FROM audit_entry WHERE number = 9",), 9, "newest rows are missing"),
        (("DELETE FROM audit_entry",), 1, "newest rows are missing"),
        (("UPDATE audit_entry SET number = 0 - number WHERE number IN (3, 4)",
          "UPDATE audit_entry SET number = 7 + number WHERE number < 0"), 3, "does not follow"),
    ],
)  # fmt: skip
def test_the_first_row_that_does_not_fit_is_named(
    database: Database, statements: tuple[str, ...], broken_at: int, why: str
) -> None:
    _fill(database, 9)
    _tamper(database, *statements)
    found = _verdict(database)
    assert found.broken_at == broken_at
    assert why in found.why


def test_a_chain_that_was_written_anew_with_its_head_is_told_by_a_head_noted_elsewhere(database: Database) -> None:
    _fill(database, 5)
    noted = {5: rows(database, PRACTICE)[-1]["digest"]}
    assert _verdict(database, noted).broken_at is None
    _tamper(database, "DELETE FROM audit_entry", "DELETE FROM audit_head")
    _fill(database, 4)
    assert _verdict(database).broken_at is None
    assert _verdict(database, noted).broken_at == 5
    _fill(database, 2)
    assert _verdict(database, {5: "f" * 64}).broken_at == 5


@pytest.mark.parametrize(
    "statement",
    [
        "UPDATE audit_entry SET action = 'x'",
        "DELETE FROM audit_entry",
        "DELETE FROM audit_head",
        "UPDATE audit_head SET number = 1",
    ],
)
def test_the_database_itself_refuses_a_change(database: Database, statement: str) -> None:
    _fill(database, 3)
    with pytest.raises(DatabaseError, match="only ever added to"), database.writer.begin() as connection:
        connection.execute(text(statement))
    assert _verdict(database).broken_at is None


def test_sqlite_and_postgresql_refuse_their_own_ways_around(database: Database) -> None:
    _fill(database, 3)
    way = (
        "INSERT OR REPLACE INTO audit_entry SELECT practice_id, number, at, 'x', actor_id, subject_id, action, outcome,"
        " request_id, times, previous, digest FROM audit_entry WHERE number = 2"
        if database.is_sqlite
        else "TRUNCATE audit_entry"
    )
    with pytest.raises(DatabaseError, match="only ever added to"), database.writer.begin() as connection:
        connection.execute(text(way))
    assert _verdict(database).broken_at is None


def _at_once(count: int, work: Callable[[int], None]) -> None:
    threads = [threading.Thread(target=work, args=(number,)) for number in range(count)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()


def test_writers_at_once_never_fork_the_chain(database: Database) -> None:
    failed: list[Exception] = []

    def work(number: int) -> None:
        try:
            _fill(database, 10, PRACTICE if number % 2 else "practice-2")
        except Exception as error:  # noqa: BLE001
            failed.append(error)

    _at_once(8, work)
    assert failed == []
    assert (_verdict(database).rows, _verdict(database).broken_at) == (40, None)
    assert len(rows(database, "practice-2")) == 40


def test_reads_and_changes_over_http_at_once_make_one_chain(house: House, database: Database) -> None:
    client_id = house.new_client()
    before = len(rows(database, house.practice_id))

    def work(number: int) -> None:
        for turn in range(3):
            if number % 2:
                house.http.get(f"{API}/clients/{client_id}")
            else:
                house.http.patch(f"{API}/clients/{client_id}", json={"note": f"{number}-{turn}"})

    _at_once(6, work)
    with database.read() as session:
        found = service.verify(session, house.practice_id)
    assert (found.rows - before, found.broken_at) == (18, None)


def test_an_outsider_can_check_a_row_with_nothing_but_a_hash_function(database: Database) -> None:
    _fill(database, 3)
    previous = "0" * 64
    for row in rows(database, PRACTICE):
        line: dict[str, Any] = json.loads(json.dumps(said(row) | {"digest": row["digest"]}))
        digest = line.pop("digest")
        assert line["previous"] == previous
        packed = json.dumps(line, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
        assert hashlib.sha256(packed.encode()).hexdigest() == digest
        previous = digest
