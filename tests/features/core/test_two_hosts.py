"""Phones and practitioners on hosts of their own: each answers its own app, and takes its own credential only."""

from collections.abc import Iterator
from pathlib import Path

import httpx
import pytest
from fastapi import FastAPI
from fastapi.testclient import TestClient
from pydantic import ValidationError

from steadfoot.app import create_app
from steadfoot.core.database import Database
from steadfoot.core.settings import Settings
from steadfoot.identity.access import COOKIE
from tests.builders import API, PASSWORD, House, found_house
from tests.conftest import StandingClock
from tests.features.access import BY_COOKIE, BY_EITHER, BY_PHONE, OPEN, Practice, bodies, furnished, named

PHONES, PRACTICE = "https://walk.thornwater.example", "https://desk.thornwater.example:8443"


@pytest.fixture
def app(database: Database, clock: StandingClock, tmp_path: Path, figures: Path) -> FastAPI:
    settings = Settings(data_dir=tmp_path, public_url=PHONES, practice_url=f"{PRACTICE}/", figures_dir=figures)
    return create_app(settings, database, clock)


@pytest.fixture
def house(app: FastAPI, clock: StandingClock, monkeypatch: pytest.MonkeyPatch) -> Iterator[House]:
    """A practice that signs in where practices do."""
    monkeypatch.setattr("tests.builders.HOST", PRACTICE)
    with found_house(app, clock, "Thornwater Physical Therapy", "maren@thornwater.example") as found:
        yield found


@pytest.fixture
def practice(house: House, monkeypatch: pytest.MonkeyPatch) -> Practice:
    """One of everything, paired where phones are."""
    monkeypatch.setattr("tests.builders.HOST", PHONES)
    monkeypatch.setattr("tests.features.access.HOST", PHONES)
    return furnished(house)


def at(app: FastAPI, address: str) -> TestClient:
    return TestClient(app, base_url=address, follow_redirects=False)


def test_a_practitioner_works_and_a_phone_is_heard_each_at_their_own_host(practice: Practice) -> None:
    assert practice.house.get("/me")["practice"]["name"] == "Thornwater Physical Therapy"
    assert practice.phone.sync()["acknowledged_through"] == 3


def test_a_session_is_nothing_at_the_phones_host_and_a_token_nothing_at_the_practices(
    practice: Practice, app: FastAPI
) -> None:
    cookie = f"{COOKIE}={practice.house.http.cookies[COOKIE]}"
    token = f"Bearer {practice.phone.token}"
    for address, proof, theirs in (
        (PHONES, {"Cookie": cookie}, (BY_COOKIE, BY_EITHER)),
        (PRACTICE, {"Authorization": token}, (BY_PHONE, BY_EITHER)),
    ):
        for operation in named(app, *theirs):
            assert practice.ask(at(app, address), operation, **proof).status_code in (401, 404), operation
    assert practice.ask(at(app, PHONES), named(app, BY_PHONE)[-1], Authorization=token).status_code == 200


def test_each_way_in_is_at_one_host_only(practice: Practice, app: FastAPI) -> None:
    for operation in named(app, OPEN):
        if operation.method == "GET":
            continue
        body = bodies().get(operation.name)
        answers = [at(app, host).request(operation.method, operation.path, json=body) for host in (PHONES, PRACTICE)]
        refused = [answer.json()["detail"] for answer in answers if answer.status_code == 404]
        assert refused.count("There is no such thing at this address.") == 1, operation
    code = practice.house.invite(practice.ids["client_id"])["code"]
    assert at(app, PRACTICE).post(f"{API}/pairings", json={"code": code}).status_code == 404
    assert at(app, PHONES).post(f"{API}/pairings", json={"code": code}).status_code == 201


def test_links_lead_to_the_phones_host(practice: Practice) -> None:
    assert practice.house.invite(practice.ids["client_id"])["url"].startswith(f"{PHONES}/app/#pair=")


@pytest.mark.parametrize(
    ("asked", "leads"),
    [
        (f"{PHONES}/", "/app/"),
        (f"{PRACTICE}/", "/desk/"),
        (f"{PHONES}/desk/clients", f"{PRACTICE}/desk/clients"),
        (f"{PRACTICE}/app/", f"{PHONES}/app/"),
        (f"{PHONES}/desk//elsewhere.example/%0d%0aX:%20y", f"{PRACTICE}/desk//elsewhere.example/%0D%0AX:%20y"),
    ],
)
def test_a_page_of_the_other_host_leads_there(app: FastAPI, asked: str, leads: str) -> None:
    answer = at(app, "https://unused").get(asked)
    assert (answer.status_code, answer.headers["Location"]) == (307, leads)
    assert answer.headers["X-Content-Type-Options"] == "nosniff"


@pytest.mark.parametrize("path", ["/", "/app/", "/desk/", f"{API}/me", f"{API}/drawings", "/openapi.json"])
@pytest.mark.parametrize(
    "host", ["evil.example", "", "walk.thornwater.example.evil.example", "127.0.0.1", "[", "a:b:c"]
)
def test_an_unknown_name_is_refused(app: FastAPI, path: str, host: str) -> None:
    answer = at(app, PHONES).get(path, headers={"Host": host})
    assert (answer.status_code, answer.json()["code"]) == (421, "unknown-host")
    assert "Content-Security-Policy" in answer.headers


@pytest.mark.parametrize("path", ["/healthz", "/readyz", "/metrics"])
def test_probes_are_answered_under_any_name(app: FastAPI, path: str) -> None:
    machine = TestClient(app, base_url="http://10.0.0.7:8000", client=("127.0.0.1", 1))
    assert machine.get(path).status_code == 200


@pytest.mark.parametrize("headers", [{"Origin": PHONES}, {"Origin": PHONES, "Sec-Fetch-Site": "same-site"}])
def test_a_page_of_the_phones_host_cannot_write_at_the_practices(house: House, headers: dict[str, str]) -> None:
    answer = house.http.post(f"{API}/clients", json={"display_name": "Somebody"}, headers=headers)
    assert (answer.status_code, answer.json()["code"]) == (403, "cross-site")
    assert not [name for name in answer.headers if name.lower().startswith("access-control")]


def test_the_cookie_goes_to_the_practices_host_and_no_further(app: FastAPI, house: House) -> None:
    email = house.get("/me")["practitioner"]["email"]
    answer = at(app, PRACTICE).post(f"{API}/sign-in", json={"email": email, "password": PASSWORD})
    said = answer.headers["Set-Cookie"].lower()
    assert said.startswith("__host-")
    assert "domain" not in said


@pytest.mark.parametrize(
    ("public", "practice"),
    [
        ("https://a.example", "https://a.example:8443"),
        ("", "https://a.example"),
        ("https://a.example", "https://A.example/"),
    ],
)
def test_two_addresses_of_one_host_are_no_two_hosts(public: str, practice: str) -> None:
    with pytest.raises(ValidationError, match="two different hosts"):
        Settings(public_url=public, practice_url=practice)


def test_one_address_twice_is_one_host(house: House, database: Database, clock: StandingClock) -> None:
    settings = Settings(public_url="https://a.example", practice_url="https://a.example/")
    answer: httpx.Response = TestClient(create_app(settings, database, clock), base_url="https://b.example").get(
        "/app/"
    )
    assert answer.status_code in (200, 503)
