"""What is acknowledged is on the disk: the commit comes before the reply, and its failure is no 200 (T1)."""

import threading
import time
from typing import Any

import httpx
import pytest
from fastapi.testclient import TestClient
from sqlalchemy import RootTransaction, text

from steadfoot.core.database import Database
from tests.builders import API, House, Phone
from tests.sync.live import listening

DELAY_S = 0.5


@pytest.fixture
def client_id(house: House) -> str:
    """A client of the practice."""
    return house.new_client()


@pytest.fixture
def phone(house: House, client_id: str) -> Phone:
    """The client's phone, with one entry to send."""
    found = house.pair(client_id)
    found.log("note_written", {"text": "x"})
    return found


def test_a_commit_that_fails_is_no_acknowledgement_on_any_route_that_writes(
    house: House, client_id: str, phone: Phone, monkeypatch: pytest.MonkeyPatch
) -> None:
    visitor = TestClient(house.app, base_url="https://testserver", raise_server_exceptions=False)
    visitor.cookies.update(house.http.cookies)
    code = house.invite(client_id)["code"]
    calls: list[tuple[str, Any, dict[str, str]]] = [
        ("/sync", {"events": phone.events}, {"Authorization": f"Bearer {phone.token}"}),
        ("/devices/current/successors", None, {"Authorization": f"Bearer {phone.token}"}),
        ("/pairings", {"code": code}, {}),
        ("/clients", {"display_name": "Somebody"}, {}),
        (f"/clients/{client_id}/invitations", {"delivery": "link"}, {}),
        (f"/clients/{client_id}/messages", {"text": "hello"}, {}),
        (f"/devices/{phone.device_id}/revocations", None, {}),
        ("/sign-in", {"email": "maren@thornwater.example", "password": "five huts over one ridge"}, {}),
    ]

    def failing(_transaction: RootTransaction) -> None:
        raise OSError("the disk is full")

    with monkeypatch.context() as patch:
        patch.setattr(RootTransaction, "commit", failing)
        for path, body, headers in calls:
            response = visitor.post(f"{API}{path}", json=body, headers=headers)
            assert response.status_code == 500, path
            assert "Set-Cookie" not in response.headers
            assert "acknowledged_through" not in response.text
    assert house.get(f"/clients/{client_id}/timeline")["items"] == []
    assert len(house.get("/clients")["items"]) == 1
    assert phone.sync()["acknowledged_through"] == 1
    assert TestClient(house.app).post(f"{API}/pairings", json={"code": code}).status_code == 201


@pytest.mark.server
def test_the_reply_comes_after_the_commit_over_a_real_socket(
    house: House, client_id: str, phone: Phone, database: Database, monkeypatch: pytest.MonkeyPatch
) -> None:
    commit, done = RootTransaction.commit, threading.Event()

    def slow(transaction: RootTransaction) -> None:
        time.sleep(DELAY_S)
        commit(transaction)
        done.set()

    monkeypatch.setattr(RootTransaction, "commit", slow)
    headers = {"Authorization": f"Bearer {phone.token}"}
    with listening(house.app) as address, httpx.Client(timeout=20) as http:
        start = time.monotonic()
        with http.stream("POST", f"{address}{API}/sync", json={"events": phone.events}, headers=headers) as response:
            assert done.is_set(), "the first byte of the reply came before the commit"
            assert time.monotonic() - start >= DELAY_S
            assert response.status_code == 200
            with database.read() as session:
                assert session.execute(text("SELECT count(*) FROM event")).scalar() == 1


@pytest.mark.server
def test_one_event_from_fifty_connections_at_once_is_stored_once_and_acknowledged_to_each(
    house: House, client_id: str, phone: Phone
) -> None:
    answers: list[dict[str, Any]] = []
    headers = {"Authorization": f"Bearer {phone.token}"}

    def send(address: str) -> None:
        with httpx.Client(timeout=60, verify=False) as http:
            response = http.post(f"{address}{API}/sync", json={"events": phone.events}, headers=headers)
            assert response.status_code == 200
            answers.append(response.json())

    with listening(house.app) as address:
        threads = [threading.Thread(target=send, args=(address,)) for _ in range(50)]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
    assert [(answer["acknowledged_through"], answer["refused"]) for answer in answers] == [(1, [])] * 50
    assert len(house.get(f"/clients/{client_id}/timeline")["items"]) == 1


@pytest.mark.server
def test_phones_of_one_client_that_send_at_once_lose_nothing_to_each_other(house: House, client_id: str) -> None:
    phones = [house.pair(client_id) for _ in range(4)]
    for number, phone in enumerate(phones):
        for turn in range(1, 11):
            phone.log("set_ticked", {"planned_id": "2026-06-10.1", "prescription": f"p{number}", "round": turn})

    def send(address: str, phone: Phone) -> None:
        with httpx.Client(timeout=60, verify=False) as http:
            for event in phone.events:
                headers = {"Authorization": f"Bearer {phone.token}"}
                assert http.post(f"{address}{API}/sync", json={"events": [event]}, headers=headers).status_code == 200

    with listening(house.app) as address:
        threads = [threading.Thread(target=send, args=(address, phone)) for phone in phones]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
    house.get("/caseload")  # whoever reads finds all of it folded
    with house.app.state.database.read() as session:
        assert session.execute(text("SELECT sets_done FROM session_rollup")).scalars().all() == [40]
    assert [phone.sync()["acknowledged_through"] for phone in phones] == [10] * 4
