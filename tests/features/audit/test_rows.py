"""Each read of a person, each change and each refusal has one row, and no row says more than ids."""

from datetime import date

import pytest
from fastapi import FastAPI
from fastapi.testclient import TestClient
from sqlalchemy.exc import OperationalError

from steadfoot.audit import service, trail, writer
from steadfoot.audit.flood import ROWS_A_MINUTE, Flood
from steadfoot.audit.service import INSTALLATION, NOBODY, Act, Outcome
from steadfoot.core.database import Database
from tests.builders import API, PASSWORD, House, content
from tests.conftest import START
from tests.features.access import (
    BY_COOKIE,
    BY_EITHER,
    BY_PHONE,
    FOUND,
    MARKER,
    POLICY,
    Practice,
    named,
    nobody,
    operations,
    practice,
)
from tests.features.audit.rows import rows, said

__all__ = ["practice"]


def test_a_read_says_who_saw_whom_when_and_by_which_call(house: House, database: Database) -> None:
    client_id = house.new_client()
    before = len(rows(database, house.practice_id))
    house.get(f"/clients/{client_id}/overview")
    (row,) = rows(database, house.practice_id)[before:]
    assert (row["actor_kind"], row["actor_id"], row["subject_id"]) == ("practitioner", house.practitioner_id, client_id)
    assert (row["action"], row["outcome"], row["at"], row["times"]) == ("readOverview", "done", START, 1)
    assert len(row["request_id"]) == 16


def test_every_call_of_a_practitioner_has_one_row_but_for_those_that_show_no_person(
    practice: Practice, app: FastAPI, database: Database
) -> None:
    house, answered = practice.house, 0
    for operation in named(app, BY_COOKIE, BY_EITHER):
        if operation.name == "listen":
            continue
        before = len(rows(database, house.practice_id))
        status = practice.ask(house.http, operation).status_code
        found = said(database, house.practice_id, before)
        is_asked = (status < 400 and operation.name not in trail.ABOUT_NOBODY) or status == 404
        assert [name for name, _ in found] == [operation.name] * is_asked, (operation, status)
        answered += status < 400
    assert answered > 45, "else the walk would prove little"


def test_what_is_not_recorded_names_no_person_and_is_still_there(app: FastAPI) -> None:
    known = {operation.name: operation for operation in operations(app)}
    assert set(known) >= trail.ABOUT_NOBODY
    assert set(known) >= trail.OF_PHONES
    for name in trail.ABOUT_NOBODY:
        assert not any(f"{{{part}_id}}" in known[name].path for part in ("client", "flag", "device", "pairing"))
        assert known[name].method in ("GET", "POST")


def test_each_refusal_has_a_row_of_whoever_asked_and_the_other_practice_has_none(
    practice: Practice, other_house: House, app: FastAPI, database: Database
) -> None:
    theirs = len(rows(database, practice.house.practice_id))
    for operation in named(app, BY_COOKIE):
        if POLICY[operation.name][1] != FOUND:
            continue
        before = len(rows(database, other_house.practice_id))
        assert practice.ask(other_house.http, operation).status_code == 404
        assert said(database, other_house.practice_id, before) == [(operation.name, "not_found")]
    assert len(rows(database, practice.house.practice_id)) == theirs


def test_who_is_not_signed_in_has_rows_of_the_installation(
    practice: Practice, app: FastAPI, database: Database
) -> None:
    for operation in named(app, BY_COOKIE, BY_PHONE, BY_EITHER):
        before = len(rows(database, INSTALLATION))
        assert practice.ask(nobody(app), operation).status_code == 401
        assert said(database, INSTALLATION, before) == [(operation.name, "not_signed_in")]


def test_no_row_holds_a_name_a_text_or_what_a_stranger_put_in_the_address(
    practice: Practice, database: Database
) -> None:
    practice.house.get(f"/clients/{MARKER}", status=404)
    practice.house.http.get(f"{API}/clients/{MARKER}-%27%3B--/timeline?cursor={MARKER}")
    found = [*rows(database, practice.house.practice_id), *rows(database, INSTALLATION)]
    assert len(found) > 15
    assert MARKER not in repr(found)
    assert found[len(rows(database, practice.house.practice_id)) - 1]["subject_id"] is None


def test_signing_in_and_out_and_a_wrong_password_are_the_practices_own_rows(
    house: House, app: FastAPI, database: Database
) -> None:
    before = len(rows(database, house.practice_id))
    visitor = TestClient(app, base_url="https://testserver")
    email = house.get("/me")["practitioner"]["email"]
    visitor.post(f"{API}/sign-in", json={"email": email, "password": "not this one"})
    visitor.post(f"{API}/sign-in", json={"email": email, "password": PASSWORD})
    visitor.post(f"{API}/sign-out")
    assert said(database, house.practice_id, before) == [
        ("signIn", "not_signed_in"),
        ("signIn", "done"),
        ("signOut", "done"),
    ]
    assert {row["actor_id"] for row in rows(database, house.practice_id)[before:]} == {house.practitioner_id}
    visitor.post(f"{API}/sign-in", json={"email": "who@nowhere.example", "password": PASSWORD})
    assert said(database, INSTALLATION)[-1] == ("signIn", "not_signed_in")


def test_of_a_phone_its_pairing_is_recorded_and_not_each_sync(house: House, database: Database) -> None:
    client_id = house.new_client()
    phone = house.pair(client_id)
    row = rows(database, house.practice_id)[-1]
    assert (row["action"], row["actor_kind"], row["actor_id"]) == ("pairPhone", "phone", phone.device_id)
    assert row["subject_id"] == client_id
    phone.log("note_written", {"text": "a line"})
    phone.sync()
    assert rows(database, house.practice_id)[-1] == row
    house.post(f"/devices/{phone.device_id}/revocations")
    last = rows(database, house.practice_id)[-1]
    assert (last["action"], last["subject_id"]) == ("revokeDevice", client_id)


def test_a_change_and_its_row_are_kept_together_or_not_at_all(
    house: House, database: Database, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = rows(database, house.practice_id)

    def breaks(*_: object) -> None:
        raise OperationalError("insert", {}, Exception("the disk is full"))

    monkeypatch.setattr(trail, "record", breaks)
    assert house.http.post(f"{API}/clients", json={"display_name": "Nobody"}).status_code == 503
    monkeypatch.undo()
    assert house.get("/clients")["items"] == []
    assert rows(database, house.practice_id)[:-1] == before


def test_what_cannot_be_recorded_is_not_shown(house: House, monkeypatch: pytest.MonkeyPatch) -> None:
    client_id = house.new_client("Emil Tarrow")

    def breaks(*_: object) -> None:
        raise OperationalError("insert", {}, Exception("the disk is full"))

    monkeypatch.setattr(writer, "record_all", breaks)
    answer = house.http.get(f"{API}/clients/{client_id}")
    assert (answer.status_code, answer.json()["code"]) == (503, "log-away")
    assert answer.headers["Retry-After"] == "5"
    assert answer.headers["Content-Security-Policy"]
    assert "Tarrow" not in answer.text


def test_whom_a_change_is_about_is_known_where_the_address_does_not_say_it(house: House, database: Database) -> None:
    client_id = house.new_client()
    house.publish(client_id, content(date(2026, 6, 10)))
    phone = house.pair(client_id)
    phone.log("pain_reported", {"rating": 8, "region": "knee", "side": "left", "when": "during"})
    phone.sync()
    (flag,) = house.get("/flags", client_id=client_id)["items"]
    house.post(f"/flags/{flag['id']}/decisions", {"action": "acknowledge"})
    taken = house.post(f"/clients/{client_id}/tests", {"code": "chair-stand-30s", "value": 14})
    house.post(f"/tests/{taken['id']}/withdrawals")
    asked = {"createClient", "inviteClient", "listFlags", "decideFlag", "recordTest", "withdrawTest", "publishProgram"}
    found = {row["action"]: row["subject_id"] for row in rows(database, house.practice_id) if row["action"] in asked}
    assert found == dict.fromkeys(asked, client_id)


def test_a_flood_of_refusals_is_counted_and_does_not_fill_the_disk() -> None:
    now = [0.0]
    flood = Flood(lambda: now[0])
    act = Act(NOBODY, "readClient", START, "1", outcome=Outcome.NOT_SIGNED_IN)
    kept = [flood.let_through(act) for _ in range(1000)]
    assert [one.times for one in kept if one] == [1] * ROWS_A_MINUTE
    other = flood.let_through(Act(NOBODY, "readClient", START, "2", outcome=Outcome.NOT_FOUND))
    assert other is not None, "another kind has a count of its own"
    now[0] += 60
    again = flood.let_through(act)
    assert again is not None
    assert again.times == 1 + 1000 - ROWS_A_MINUTE


def test_rows_of_several_practices_go_in_together(house: House, other_house: House, database: Database) -> None:
    acts = [Act(NOBODY, "readClient", START, "1"), Act(service.Actor(service.ActorKind.SERVER, "a"), "x", START, "2")]
    with database.write() as session:
        service.record_all(session, [acts[0], acts[1], acts[0]])
    assert len(rows(database, "a")) == 1
    assert [row["number"] for row in rows(database, INSTALLATION)[-2:]] == [1, 2]
