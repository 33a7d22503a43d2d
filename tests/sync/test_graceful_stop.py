"""SIGTERM under load: what is under way is answered, what was acknowledged is in the file, and it takes seconds."""

import json
import sqlite3
import threading
import time
from contextlib import closing
from pathlib import Path

import httpx
import pytest

from tests.builders import API, PASSWORD
from tests.sync.laboratory import Laboratory
from tests.sync.server import Sender, running

pytestmark = pytest.mark.server
_PHONES, _EACH, _BATCH = 3, 400, 5
_STOPS_WITHIN_S = 12


class _Counting(Sender):
    """Tells an answer that broke off, or says that the server failed, from a server that is no longer there."""

    def __init__(self, token: str, events: list[dict[str, object]]) -> None:
        super().__init__(token, events)
        self.broken: list[str] = []

    def until_gone(self, address: str) -> None:
        with httpx.Client(timeout=20, headers={"Authorization": f"Bearer {self.token}"}) as http:
            for at in range(0, len(self.events), _BATCH):
                try:
                    body = {"cursor": 0, "events": self.events[at : at + _BATCH]}
                    response = http.post(f"{address}{API}/sync", json=body)
                except httpx.ConnectError:
                    return
                except httpx.TransportError as error:
                    # An idle line that the server has closed is no answer that broke off: nothing was read of the call.
                    self.broken.append(type(error).__name__)
                    return
                if response.status_code != 200:
                    self.broken.append(str(response.status_code))
                    return
                self.acknowledged = response.json()["acknowledged_through"]


def _listen(address: str, began: threading.Event, ended: threading.Event) -> None:
    with httpx.Client(timeout=30) as http:
        http.post(f"{address}{API}/sign-in", json={"email": "maren@thornwater.example", "password": PASSWORD})
        cookie = {"Cookie": "; ".join(f"{name}={value}" for name, value in http.cookies.items())}
        with http.stream("GET", f"{address}{API}/live", headers=cookie) as stream:
            assert stream.status_code == 200
            for _ in stream.iter_text():
                began.set()
    ended.set()


def test_a_stop_under_load_loses_nothing_that_was_acknowledged_and_leaves_a_whole_file(
    on_file: Laboratory, tmp_path: Path
) -> None:
    file = tmp_path / "steadfoot.db"
    for phone in on_file.phones[:_PHONES]:
        for number in range(_EACH):
            phone.log("note_written", {"text": str(number)})
    senders = [_Counting(phone.token, phone.events) for phone in on_file.phones[:_PHONES]]
    began, ended = threading.Event(), threading.Event()
    with running(tmp_path) as server:
        page = threading.Thread(target=_listen, args=(server.address, began, ended), daemon=True)
        threads = [threading.Thread(target=one.until_gone, args=(server.address,), daemon=True) for one in senders]
        for thread in (page, *threads):
            thread.start()
        assert began.wait(20)
        _wait_for_load(senders)
        asked = time.monotonic()
        server.stop()
        took_s = time.monotonic() - asked
        for thread in threads:
            thread.join(20)
        assert ended.wait(5), "an open page would hold up the stop"
    assert took_s < _STOPS_WITHIN_S
    assert any(sender.acknowledged < _EACH for sender in senders), "it was stopped in the middle"
    log = tmp_path / "steadfoot.db-wal"
    assert not log.exists() or log.stat().st_size == 0, "what the log held is in the file"
    with closing(sqlite3.connect(file)) as held:
        for sender in senders:
            device = _device(held, sender)
            found = {seq for (seq,) in held.execute("SELECT seq FROM receipt WHERE device_id = ?", (device,))}
            assert set(range(1, sender.acknowledged + 1)) <= found
        assert held.execute("PRAGMA integrity_check").fetchone() == ("ok",)
    # No status but 200. A line that the server closed before it read of the call reads as "disconnected".
    assert {word for sender in senders for word in sender.broken} <= {"RemoteProtocolError", "ReadError", "WriteError"}


def _wait_for_load(senders: list[_Counting]) -> None:
    until = time.monotonic() + 20
    while time.monotonic() < until and not all(sender.acknowledged >= 2 * _BATCH for sender in senders):
        time.sleep(0.01)


def _device(held: sqlite3.Connection, sender: Sender) -> str:
    first = sender.events[0]["id"]
    ((device,),) = held.execute("SELECT device_id FROM event WHERE id = ?", (first,))
    return str(device)


def test_every_request_of_a_server_leaves_one_line_of_json(on_file: Laboratory, tmp_path: Path) -> None:
    with running(tmp_path, more={"STEADFOOT_LOG_LEVEL": "info"}, stderr=tmp_path / "server.log") as server:
        sender = Sender(on_file.phones[0].token, [])
        with httpx.Client(timeout=20) as http:
            assert sender.send(server.address, [], http) is not None
            http.get(f"{server.address}/nowhere?token=secret")
        server.stop()
    lines = [json.loads(line) for line in (tmp_path / "server.log").read_text().splitlines()]
    asked = [(line["operation"], line["status"]) for line in lines if line["message"] == "request"]
    assert asked == [("sync", 200), ("none", 404)]
    assert "secret" not in (tmp_path / "server.log").read_text()
