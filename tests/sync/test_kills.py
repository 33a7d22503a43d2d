"""The server is killed (-9) while phones send: nothing acknowledged is lost, nothing counts twice, pages are the same.

A kill is no power cut; that commits are flushed is held by the pragmas that each connection is tested for.
``STEADFOOT_TEST_KILLS`` sets how many times it is killed, ``STEADFOOT_TEST_SEED`` which histories are sent meanwhile.
"""

import os
import shutil
import sqlite3
import threading
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path
from random import Random
from typing import Any

import httpx
import pytest
from fastapi import FastAPI

from steadfoot.app import create_app
from steadfoot.core.database import Database
from steadfoot.core.settings import Settings
from tests.builders import API, House, Phone
from tests.conftest import StandingClock
from tests.sync.histories import history, shuffled_batches
from tests.sync.laboratory import Laboratory
from tests.sync.server import Sender, Server, forking

KILLS = int(os.environ.get("STEADFOOT_TEST_KILLS", "60"))
SEED = int(os.environ.get("STEADFOOT_TEST_SEED", "20260610"))
PHONES = 3
EVENTS = 30 * KILLS
WINDOW = 40
"""A phone has so many entries to send at once: few enough for some to be left at the last kill."""
_AT_MOST_S = 0.3
_ANSWER_WITHIN_S = 30


@contextmanager
def _house_on(file: Path, laboratory: Laboratory, clock: StandingClock) -> Iterator[Laboratory]:
    """The same client, as an app sees them in another database file."""
    database = Database(f"sqlite:///{file}")
    app: FastAPI = create_app(Settings(data_dir=file.parent, public_url="https://steadfoot.test"), database, clock)
    old = laboratory.house
    house = House(_moved(old.http, app), app, clock, old.practice_id, old.practitioner_id)
    phones = [Phone(_moved(phone.http, app), phone.token, phone.device_id, clock) for phone in laboratory.phones]
    yield Laboratory(house, laboratory.client_id, phones)
    database.close()


def _moved(http: Any, app: FastAPI) -> Any:
    from fastapi.testclient import TestClient

    fresh = TestClient(app, base_url="https://testserver")
    fresh.cookies.update(http.cookies)
    return fresh


def _round(server: Server, senders: list[Sender], rng: Random, *, after_an_answer: bool) -> None:
    """Let every phone send at once what is not acknowledged, and kill the server in the middle of it."""
    end, answered = threading.Event(), threading.Event()
    threads = []
    for sender in senders:
        waiting = sender.events[sender.acknowledged :][:WINDOW] or rng.sample(sender.events, WINDOW)
        batches = [batch for _, batch in shuffled_batches(rng, [waiting], repeats=20)]
        threads.append(threading.Thread(target=sender.drain, args=(server.address, batches, answered, end)))
    for thread in threads:
        thread.start()
    if after_an_answer:
        assert answered.wait(_ANSWER_WITHIN_S)
    end.wait(rng.uniform(0, _AT_MOST_S))
    server.kill()
    end.set()
    for thread in threads:
        thread.join()


def _ids(file: Path) -> list[str]:
    with closing(sqlite3.connect(file)) as connection:
        return [found for (found,) in connection.execute("SELECT id FROM event")]


def _whole(file: Path) -> None:
    with closing(sqlite3.connect(file)) as connection:
        assert connection.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        assert connection.execute("PRAGMA foreign_key_check").fetchall() == []


def _pages(laboratory: Laboratory) -> dict[str, str]:
    for phone in laboratory.phones:
        phone.sync()
    http = laboratory.house.http
    paths = [f"clients/{laboratory.client_id}/timeline?limit=200", f"clients/{laboratory.client_id}/overview"]
    paths += [f"clients/{laboratory.client_id}/adherence?from=2026-05-11&to=2026-06-14", "caseload", "flags"]
    paths += [f"clients/{laboratory.client_id}/devices", f"clients/{laboratory.client_id}/refused-events"]
    found = {}
    for path in paths:
        response = http.get(f"{API}/{path}")
        assert response.status_code == 200, response.text
        found[path] = response.text
    return found


@pytest.mark.server
def test_a_server_killed_while_phones_send_loses_nothing_and_doubles_nothing(
    on_file: Laboratory, clock: StandingClock, tmp_path: Path
) -> None:
    rng = Random(SEED)
    logs = history(rng, EVENTS, PHONES)
    file, reference = tmp_path / "steadfoot.db", tmp_path / "reference.db"
    shutil.copy(file, reference)
    senders = [Sender(phone.token, log) for phone, log in zip(on_file.phones, logs, strict=True)]
    with forking(tmp_path) as server:
        for turn in range(KILLS):
            if turn:
                server.start()
            _round(server, senders, rng, after_an_answer=turn % 2 == 0)
            acknowledged = {event["id"] for sender in senders for event in sender.events[: sender.acknowledged]}
            assert acknowledged <= set(_ids(file))
        server.start()
        with httpx.Client(timeout=20) as http:
            for sender in senders:
                while sender.acknowledged < len(sender.events):
                    rest = sender.events[sender.acknowledged :][:200]
                    assert sender.send(server.address, rest, http) is not None
        server.stop()
    _whole(file)
    logged = sorted(event["id"] for log in logs for event in log)
    assert sorted(_ids(file)) == logged
    with _house_on(reference, on_file, clock) as undisturbed:
        for phone, log in zip(undisturbed.phones, logs, strict=True):
            for start in range(0, len(log), 500):
                assert phone.send(log[start : start + 500]).status_code == 200
        expected = _pages(undisturbed)
    with _house_on(file, on_file, clock) as survivor:
        assert _pages(survivor) == expected
