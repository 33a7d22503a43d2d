"""What every history begins with: two practices, three people, four phones that were paired."""

import shutil
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any

from fastapi.testclient import TestClient

from steadfoot.migrations.upgrade import upgrade
from tests.builders import API, PASSWORD, House, circuit, content, found_house, step_down
from tests.conftest import START
from tests.sync.model.phones import Phones
from tests.sync.model.service import Service

PRACTICES = ("alder", "birch")
"""Each one's word stands in every name and text of it, and so betrays itself where it does not belong."""
PEOPLE = {"emil": "alder", "nora": "alder", "odd": "birch"}
HANDSETS = {"emil-1": "emil", "emil-2": "emil", "nora-1": "nora", "odd-1": "odd"}
EMPTY: dict[str, Any] = {"version": 0, "events": [], "keep": []}
MONDAY = date(2026, 6, 8)


@dataclass(frozen=True)
class Template:
    """A database file, and what is known of it."""

    file: Path
    clients: dict[str, str]
    """Person to client id."""
    stored: dict[str, Any]
    """Handset to the contents of its storage."""
    cookies: dict[str, str]
    """Practice's word to the cookie of its practitioner."""


def program(word: str, number: int = 0, start: date = MONDAY) -> dict[str, Any]:
    """A small program whose title names the practice."""
    sessions = [circuit(rounds=2, prescriptions=[step_down("p1"), step_down("p2")])]
    return content(start, weeks=2, sessions=sessions, weekdays=(2,)) | {"title": f"{word} legs {number}"}


def setting(name: str, stored: Any, locks: bool = True) -> dict[str, Any]:
    """A phone as it is switched on; another name, another chance."""
    seed = sum(ord(letter) * 257**place for place, letter in enumerate(name)) % 2**31
    return {"now": int(START.timestamp() * 1000), "ahead": 120, "seed": seed, "locks": locks, "stored": stored}


def email_of(word: str) -> str:
    """The address that a practice's practitioner signs in with."""
    return f"maren@{word}.example"


def _paired(phones: Phones, house: House, name: str, client_id: str) -> Any:
    phones.call("phone", phone=name, setting=setting(name, EMPTY))
    page = phones.call("open", phone=name, build=0)
    phones.call("pair", phone=name, page=page, code=house.invite(client_id)["code"])
    phones.call("pass", phone=name, ms=600_000)
    look = phones.call("look", phone=name, page=page)
    assert look["connection"] == "ready", look
    return phones.call("contents", phone=name)


def _over(service: Service) -> Any:
    def network(ask: dict[str, Any]) -> dict[str, Any]:
        heard = service.ask(ask["method"], ask["path"], ask["headers"], ask["body"].encode())
        assert heard is not None
        return {"status": heard.status, "headers": heard.headers, "text": heard.text}

    return network


def build(folder: Path, service: Service, phones: Phones) -> Template:
    """Found both practices and pair the phones, through HTTP and the real pages."""
    service.start()
    assert service.database is not None
    upgrade(service.database)
    phones.network = _over(service)
    clients: dict[str, str] = {}
    stored: dict[str, Any] = {}
    for word in PRACTICES:
        assert service.app is not None
        with found_house(service.app, service.clock, f"{word} practice", email_of(word)) as house:
            for person in (name for name, practice in PEOPLE.items() if practice == word):
                clients[person] = house.new_client(f"{person} {word}")
                house.publish(clients[person], program(word))
            for name in (name for name, person in HANDSETS.items() if PEOPLE[person] == word):
                stored[name] = _paired(phones, house, name, clients[HANDSETS[name]])
    cookies = {word: sign_in(service, word) for word in PRACTICES}
    service.stop()
    target = folder / "template.db"
    shutil.copyfile(service.file, target)
    return Template(target, clients, stored, cookies)


def sign_in(service: Service, word: str) -> str:
    """Answer the cookie of a practice's practitioner."""
    assert service.app is not None
    http = TestClient(service.app, base_url="https://testserver")
    body = {"email": email_of(word), "password": PASSWORD}
    response = http.post(f"{API}/sign-in", json=body)
    assert response.status_code == 200, response.text
    return f"__Host-steadfoot={http.cookies['__Host-steadfoot']}"
