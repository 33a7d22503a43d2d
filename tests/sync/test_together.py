"""Calls that are taken in together: each gets what it would have got alone, whatever the others carry."""

import shutil
from datetime import datetime
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import RootTransaction, text
from sqlalchemy.dialects.sqlite import dialect
from sqlmodel import Session

from steadfoot.checkins import service
from steadfoot.checkins.reading import content_digest, read
from steadfoot.checkins.schemas import SyncBody
from steadfoot.checkins.tables import Event
from steadfoot.checkins.taking import Call, Taken, Taking
from steadfoot.core.bulk import Bulk
from steadfoot.core.database import Database
from steadfoot.core.ids import digest_of
from steadfoot.core.limits import Limiter
from steadfoot.core.problems import NotSignedIn
from tests.builders import House, Phone
from tests.conftest import START
from tests.sync.histories import history, shuffled_batches
from tests.sync.laboratory import Laboratory, seeded

_TABLES = ("event", "receipt", "refused_event", "due", "device")


def _taking(database: Database) -> Taking:
    return Taking(database, Limiter(10_000, 60))


def _call(phone: Phone, events: list[Any]) -> Call:
    return Call.of(digest_of(phone.token), SyncBody(events=events), START)


def _held(database: Database) -> dict[str, list[str]]:
    with database.read() as session:
        return {name: sorted(map(repr, session.execute(text(f"SELECT * FROM {name}")))) for name in _TABLES}


def _phones(house: House, count: int) -> list[Phone]:
    found = [house.pair(house.new_client(f"Person {number}")) for number in range(count)]
    for phone in found:
        phone.log("note_written", {"text": "first"})
        phone.log("note_written", {"text": "second"})
    return found


def _acknowledged(taken: list[Taken | Exception]) -> list[int | type[Exception]]:
    return [one.answer.acknowledged_through if isinstance(one, Taken) else type(one) for one in taken]


@pytest.mark.parametrize("seed", range(3))
def test_in_groups_or_alone_the_same_is_held_and_answered(on_file: Laboratory, tmp_path: Path, seed: int) -> None:
    rng = seeded(seed)
    batches = shuffled_batches(rng, history(rng, 120, phones=3), repeats=20)
    batches += [(phone, log) for phone, log in enumerate(history(rng, 90, phones=3))]  # numbers that are taken
    shutil.copy(tmp_path / "steadfoot.db", tmp_path / "alone.db")
    grouped, alone = Database(f"sqlite:///{tmp_path / 'steadfoot.db'}"), Database(f"sqlite:///{tmp_path / 'alone.db'}")
    take, answers, expected = _taking(grouped).take, [], []
    while batches:
        size = rng.randint(1, 8)
        group, batches = batches[:size], batches[size:]
        answers += take([_call(on_file.phones[phone], events) for phone, events in group])
        for phone, events in group:
            with alone.write() as session:
                expected.append(service.sync(session, on_file.access(phone), 0, list(map(read, events)), START))
    assert all(isinstance(one, Taken) for one in answers), answers
    # A phone's first call of a group goes before another phone's second one: what is refused may differ in between.
    assert _held(grouped)["receipt"] == _held(alone)["receipt"]
    assert _held(grouped)["event"] == _held(alone)["event"]
    assert answers[-1].answer == expected[-1]
    grouped.close()
    alone.close()


def test_a_batch_that_cannot_be_stored_spoils_no_other(
    house: House, database: Database, monkeypatch: pytest.MonkeyPatch
) -> None:
    phones, sync = _phones(house, 4), service.sync
    phones[1].events[1]["seq"] = 7  # a gap, so that the batch is judged by itself

    def poisoned(session: Session, access: Any, *said: Any) -> Any:
        answer = sync(session, access, *said)
        if access.device_id == phones[1].device_id:
            raise ValueError("nobody foresaw this")
        return answer

    monkeypatch.setattr(service, "sync", poisoned)
    calls = [_call(phone, phone.events) for phone in phones]
    assert _acknowledged(_taking(database).take(calls)) == [2, ValueError, 2, 2]
    assert len(_held(database)["event"]) == 6
    monkeypatch.undo()
    assert _acknowledged(_taking(database).take(calls)) == [2, 1, 2, 2]
    assert len(_held(database)["event"]) == 8


def test_an_id_that_another_holds_is_refused_and_the_rest_of_the_group_is_taken(
    house: House, database: Database
) -> None:
    phones = _phones(house, 3)
    phones[0].sync()
    phones[1].events[0]["id"] = phones[0].events[0]["id"]
    taken = _taking(database).take([_call(phone, phone.events) for phone in phones[1:]])
    assert _acknowledged(taken) == [2, 2]
    assert [[one.problem["code"] for one in found.answer.refused] for found in taken if isinstance(found, Taken)] == [
        ["id-reused"],
        [],
    ]


def test_two_calls_of_one_phone_and_a_stranger_in_one_group(house: House, database: Database) -> None:
    (phone,) = _phones(house, 1)
    stranger = Call.of(digest_of("made up"), SyncBody(), START)
    calls = [_call(phone, phone.events[:1]), stranger, _call(phone, phone.events), _call(phone, phone.events[1:])]
    assert _acknowledged(_taking(database).take(calls)) == [1, NotSignedIn, 2, 2]
    assert len(_held(database)["event"]) == 2


def test_a_commit_that_fails_for_all_is_tried_for_each(
    house: House, database: Database, monkeypatch: pytest.MonkeyPatch
) -> None:
    phones, commit, tries = _phones(house, 3), RootTransaction.commit, []

    def once_too_big(transaction: RootTransaction) -> None:
        tries.append(transaction.connection.execute(text("SELECT count(*) FROM event")).scalar())
        if len(tries) in (1, 3):
            raise OSError("no room for this one")
        commit(transaction)

    monkeypatch.setattr(RootTransaction, "commit", once_too_big)
    taken = _taking(database).take([_call(phone, phone.events) for phone in phones])
    monkeypatch.undo()
    assert _acknowledged(taken) == [2, OSError, 2]
    assert tries == [6, 2, 4, 4]
    assert len(_held(database)["event"]) == 4


@pytest.mark.parametrize(
    "at", ["2026-05-03T07:12:09+02:00", "1970-01-01T00:30:00.000001+14:00", "2200-12-31T23:59:59Z"]
)
def test_the_short_way_to_a_stored_time_is_the_long_one(at: str) -> None:
    instant, own = datetime.fromisoformat(at), dialect()
    bulk, columns = Bulk(Event, ("instant", "local_day"), own), Event.__table__.c  # type: ignore[attr-defined]
    for column, value in (("instant", instant), ("local_day", instant.date())):
        long_way = columns[column].type.dialect_impl(own).bind_processor(own)
        assert bulk.converter(column)(value) == long_way(value)


def test_the_short_way_to_a_digest_is_the_long_one() -> None:
    rng = seeded(1)
    events = [event for log in history(rng, 200, phones=2) for event in log]
    note = {**events[0], "kind": "note_written", "body": {"text": "Knie zwickt, \u00fcberm Grat \U0001f9b5 \x7f"}}
    for event in [*events, note]:
        item = read(event)
        assert item.event is not None
        assert item.digest == content_digest(event)
