"""What is acknowledged and not yet looked at: no reader goes before it, no kill loses it, two workers share it."""

import asyncio
import sqlite3
import threading
from collections.abc import Callable
from contextlib import closing
from datetime import date
from pathlib import Path
from time import monotonic
from typing import Any

import httpx
import pytest
from fastapi.dependencies.models import Dependant
from fastapi.routing import APIRoute
from fastapi.testclient import TestClient
from sqlalchemy import text
from sqlmodel import Session

from steadfoot.app import create_app
from steadfoot.checkins.service import Listener
from steadfoot.checkins.settling import Settling
from steadfoot.core.database import Database, _write_turn
from steadfoot.core.settings import Settings
from steadfoot.identity.access import current_practitioner, signed_in
from steadfoot.monitoring.service import refresh_findings
from tests.builders import API, House, Phone, content
from tests.sync.laboratory import Laboratory
from tests.sync.server import Sender, running

WITHIN_S = 10.0
PAGES = ("overview", "adherence", "screenings", "suggestions", "load", "messages", "trip", "tests", "season-plan")


def _due(database: Database) -> int:
    with database.read() as session:
        return int(session.execute(text("SELECT count(*) FROM due")).scalar_one())


def _limping(house: House, people: int = 1) -> list[tuple[str, Phone]]:
    """Clients whose phones reported a pain that stops; it is held, and nobody has looked."""
    clients = [house.new_client(f"Person {number}") for number in range(people)]
    for client_id in clients:
        house.publish(client_id, content(date(2026, 6, 8)))
    found = [(client_id, house.pair(client_id)) for client_id in clients]
    for _, phone in found:
        phone.log("pain_reported", {"rating": 9, "region": "knee", "side": "left", "when": "during"})
        phone.sync()
    return found


def test_whoever_reads_a_person_first_finds_everything_looked_at(house: House, database: Database) -> None:
    ((client_id, phone),) = _limping(house)
    for page in PAGES:
        phone.log("note_written", {"text": page})
        phone.sync()
        assert _due(database) > 0, page
        assert house.http.get(f"{API}/clients/{client_id}/{page}").status_code == 200, page
        assert _due(database) == 0, page


@pytest.mark.parametrize("page", ["caseload", "flags"])
def test_whoever_reads_a_practice_first_finds_everyone_looked_at(house: House, database: Database, page: str) -> None:
    people = {client_id for client_id, _ in _limping(house, 2)}
    assert _due(database) == 2
    flagged = house.get(f"/{page}")["items"]
    assert {one.get("client_id") or one["client"]["id"] for one in flagged} == people
    assert all(one.get("open_flags", ["a flag"]) for one in flagged)
    assert _due(database) == 0


def test_another_practice_does_not_wait_for_this_one(house: House, other_house: House, database: Database) -> None:
    _limping(house)
    other_house.get("/caseload")
    assert _due(database) == 1


def test_a_new_phone_that_asks_for_the_history_gets_all_of_it(house: House) -> None:
    ((client_id, phone),) = _limping(house)
    phone.log("session_finished", {"minutes": 30, "effort": 5, "planned_id": "2026-06-10.1"})
    phone.sync()
    fresh = house.pair(client_id)
    found = fresh.http.get(f"{API}/history", headers={"Authorization": f"Bearer {fresh.token}"}).json()
    assert [(one["planned_id"], one["finished"]) for one in found["items"]] == [("2026-06-10.1", True)]


def _calls(dependant: Dependant) -> list[Any]:
    return [call for one in dependant.dependencies for call in (*_calls(one), one.call)]


def _routes(routes: Any) -> list[APIRoute]:
    found = [one for one in routes if isinstance(one, APIRoute)]
    for one in routes:
        inner = getattr(one, "original_router", None) or getattr(one, "router", None)
        found += _routes(inner.routes) if inner is not None else []
    return found


def test_nobody_signed_in_is_answered_before_the_look_and_nobody_waits_for_it_with_a_turn_in_hand(house: House) -> None:
    asked = [_calls(route.dependant) for route in _routes(house.app.routes)]
    signed = [calls for calls in asked if signed_in in calls]
    assert len(signed) > 40
    for calls in signed:
        assert current_practitioner in calls
        if _write_turn in calls:
            assert calls.index(current_practitioner) < calls.index(_write_turn)


class Looks:
    """Monitoring's look, counted by client."""

    def __init__(self) -> None:
        self.at: list[str] = []
        self._lock = threading.Lock()

    def __call__(self, session: Session, practice_id: str, client_id: str) -> None:
        refresh_findings(session, practice_id, client_id)
        with self._lock:
            self.at.append(client_id)


async def _work(ready: Callable[[], bool], *workers: Settling) -> None:
    """Let workers run until it is so, and a moment longer."""
    tasks = [asyncio.create_task(worker.run()) for worker in workers]
    until = monotonic() + WITHIN_S
    while not ready() and monotonic() < until:
        await asyncio.sleep(0.01)
    await asyncio.sleep(0.1)
    assert not any(task.done() for task in tasks)
    for task in tasks:
        task.cancel()
    await asyncio.gather(*tasks, return_exceptions=True)


def test_two_workers_look_at_each_person_once(house: House, database: Database, database_url: str) -> None:
    people = [client_id for client_id, _ in _limping(house, 6)]
    looks, other = Looks(), Database(database_url)
    workers = [Settling(one, (looks,), lambda *_: None, quiet_s=0.02) for one in (database, other)]
    asyncio.run(_work(lambda: _due(database) == 0, *workers))
    other.close()
    assert _due(database) == 0
    assert sorted(looks.at) == sorted(people)
    assert len(house.get("/flags")["items"]) == len(people)


def test_a_burst_is_looked_at_once_and_pages_hear_of_it_afterwards(house: House, database: Database) -> None:
    ((client_id, phone),) = _limping(house)
    house.get("/caseload")
    looks, beats = Looks(), list[int]()
    listener: Listener = looks
    settling = Settling(database, (listener,), lambda *_: beats.append(_due(database)), quiet_s=0.1)

    async def burst() -> None:
        worker = asyncio.create_task(_work(lambda: bool(beats), settling))
        await asyncio.sleep(0)
        for _ in range(5):
            phone.log("note_written", {"text": "more"})
            await asyncio.to_thread(phone.sync)
            settling.noted(house.practice_id, client_id)
        await worker

    asyncio.run(burst())
    assert looks.at == [client_id]
    assert beats == [0]


def test_a_look_that_fails_keeps_its_mark_and_ends_no_worker(house: House, database: Database) -> None:
    (first, _), (second, _) = _limping(house, 2)
    looks = Looks()

    def failing(session: Session, practice_id: str, client_id: str) -> None:
        looks(session, practice_id, client_id)
        if client_id == first:
            raise ValueError("nobody foresaw this")

    settling = Settling(database, (failing,), lambda *_: None, quiet_s=0.01)
    asyncio.run(_work(lambda: set(looks.at) == {first, second}, settling))
    assert _due(database) == 1
    assert {flag["client_id"] for flag in house.get("/flags")["items"]} == {first, second}


@pytest.mark.server
def test_a_kill_between_the_answer_and_the_look_loses_no_look(on_file: Laboratory, tmp_path: Path) -> None:
    file, phone = tmp_path / "steadfoot.db", on_file.phones[0]
    phone.log("pain_reported", {"rating": 9, "region": "knee", "side": "left", "when": "during"})
    with running(tmp_path) as server, httpx.Client(timeout=20) as http:
        answer = Sender(phone.token, phone.events).send(server.address, phone.events, http)
        server.kill()
    assert answer is not None
    assert answer["acknowledged_through"] == 1
    assert _counts(file) == (1, 0)
    settings = Settings(data_dir=tmp_path, public_url="https://steadfoot.test")
    with TestClient(create_app(settings, clock=on_file.house.clock), base_url="https://testserver"):
        until = monotonic() + WITHIN_S
        while _counts(file) != (0, 1) and monotonic() < until:
            threading.Event().wait(0.02)
    assert _counts(file) == (0, 1)


def _counts(file: Path) -> tuple[int, int]:
    """Marks, and pains that were folded."""
    with closing(sqlite3.connect(file)) as connection:
        ask = connection.execute("SELECT (SELECT count(*) FROM due), (SELECT count(*) FROM pain_entry)")
        due, folded = ask.fetchone()
        return due, folded
