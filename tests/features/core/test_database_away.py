"""A database that cannot be had for the moment: callers are told to come again, and no value reaches a log."""

import pytest
from fastapi import FastAPI
from fastapi.testclient import TestClient
from sqlalchemy import RootTransaction
from sqlalchemy.exc import OperationalError, ProgrammingError
from sqlmodel import Session, text

from steadfoot.core.database import Database
from tests.builders import API, House

SECRET = "a knee that hurts"


def test_callers_are_told_to_try_again_and_the_phone_keeps_what_it_has(
    house: House, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    phone = house.pair(house.new_client())
    phone.log("note_written", {"text": SECRET})

    def gone(_transaction: RootTransaction) -> None:
        raise OperationalError("INSERT INTO event", {"body": SECRET}, Exception("server closed the connection"), True)

    with monkeypatch.context() as patch:
        patch.setattr(RootTransaction, "commit", gone)
        answer = phone.send(phone.events)
    assert answer.status_code == 503
    assert answer.headers["Retry-After"] == "5"
    assert answer.json()["code"] == "database-away"
    assert "server closed the connection" in caplog.text
    assert SECRET not in caplog.text + answer.text
    assert phone.sync()["acknowledged_through"] == 1


def test_an_error_of_the_database_names_its_statement_and_not_its_values(database: Database, app: FastAPI) -> None:
    with pytest.raises((OperationalError, ProgrammingError)) as caught, database.write() as session:
        session.execute(text("SELECT * FROM no_such_table WHERE body = :body"), {"body": SECRET})
    assert "no_such_table" in str(caught.value)
    assert SECRET not in str(caught.value)


def test_a_page_that_only_reads_says_so_too(house: House, monkeypatch: pytest.MonkeyPatch) -> None:
    visitor = TestClient(house.app, base_url="https://testserver", raise_server_exceptions=False)
    visitor.cookies.update(house.http.cookies)

    def gone(*_given: object, **_more: object) -> None:
        raise OperationalError("SELECT", {}, Exception("starting up"))

    monkeypatch.setattr(Session, "exec", gone)
    assert visitor.get(f"{API}/caseload").status_code == 503
