"""A code becomes a phone's token: once, in time, and never by looking at it."""

import re
import threading
from datetime import timedelta
from pathlib import Path
from typing import Any

import httpx
import pytest
from fastapi.testclient import TestClient
from sqlalchemy import text

from steadfoot.core.database import Database
from steadfoot.schema import METADATA
from tests.builders import API, House
from tests.conftest import StandingClock
from tests.sync.live import listening

NEUTRAL = "This code does not work. It may be mistyped, used or too old: ask the practice for a new one."


@pytest.fixture
def client_id(house: House) -> str:
    """A client of the practice."""
    return house.new_client()


def _pair(house: House, code: str, **more: Any) -> httpx.Response:
    return TestClient(house.app, base_url="https://testserver").post(f"{API}/pairings", json={"code": code, **more})


def _sync(house: House, token: str) -> httpx.Response:
    headers = {"Authorization": f"Bearer {token}"}
    return TestClient(house.app, base_url="https://testserver").post(f"{API}/sync", json={}, headers=headers)


def _by_link(house: House, client_id: str) -> dict[str, Any]:
    paired: dict[str, Any] = _pair(house, house.invite(client_id, "link")["code"]).json()
    return paired


def test_a_code_has_128_bits_and_is_in_the_links_fragment_only(house: House, client_id: str) -> None:
    found = [house.invite(client_id) for _ in range(50)]
    codes = {invitation["code"].replace("-", "") for invitation in found}
    assert len(codes) == 50
    assert all(re.fullmatch(r"[0-7][0-9A-HJKMNP-TV-Z]{25}", code) for code in codes)
    for invitation in found:
        before, _, fragment = invitation["url"].partition("#")
        assert before == "https://steadfoot.test/app/"
        assert fragment == "pair=" + invitation["code"].replace("-", "")
        assert invitation["qr_svg"].startswith("<svg")


@pytest.mark.parametrize(
    ("delivery", "lifetime"), [("in_person", timedelta(minutes=10)), ("link", timedelta(hours=72))]
)
def test_a_code_works_until_its_time_is_over_and_not_a_moment_longer(
    house: House, client_id: str, clock: StandingClock, delivery: str, lifetime: timedelta
) -> None:
    early, late = house.invite(client_id, delivery), house.invite(client_id, delivery)
    clock.now += lifetime - timedelta(milliseconds=1)
    assert _pair(house, early["code"]).status_code == 201
    clock.forward(milliseconds=1)
    assert _pair(house, late["code"]).status_code == 404


def test_a_wrong_a_used_and_an_old_code_get_the_same_answer(house: House, client_id: str, clock: StandingClock) -> None:
    used, old = house.invite(client_id)["code"], house.invite(client_id)["code"]
    assert _pair(house, used).status_code == 201
    clock.forward(minutes=11)
    answers = [_pair(house, code) for code in (used, old, "0" * 26, "x", "☃", "\x00", "a" * 100)]
    assert {answer.status_code for answer in answers} == {404}
    assert len({answer.content for answer in answers}) == 1
    assert (answers[0].json()["code"], answers[0].json()["detail"]) == ("code-not-valid", NEUTRAL)


def test_a_code_may_be_typed_in_any_of_the_ways_that_people_type(house: House, client_id: str) -> None:
    ways = [str.lower, lambda c: c.replace("-", " "), lambda c: c.replace("-", ""), lambda c: f"  {c} \n"]
    ways += [lambda c: c.replace("0", "O").replace("1", "l"), lambda c: c.replace("0", "o").replace("1", "I")]
    for way in ways:
        assert _pair(house, way(house.invite(client_id)["code"])).status_code == 201


def test_looking_at_a_link_never_uses_it_up(house: House, client_id: str) -> None:
    invitation = house.invite(client_id, "link")
    visitor = TestClient(house.app, base_url="https://testserver", raise_server_exceptions=False)
    for _ in range(25):
        for path in ("/app/", f"{API}/pairings", f"{API}/pairings?code={invitation['code']}"):
            visitor.get(path)
            visitor.head(path)
    assert _pair(house, invitation["code"]).status_code == 201


def test_neither_code_nor_token_is_anywhere_in_the_database(
    house: House, client_id: str, database: Database, tmp_path: Path
) -> None:
    code = house.invite(client_id)["code"]
    token = _pair(house, code, label="Emil's phone").json()["token"]
    assert len(token) >= 43  # 256 bits in base 64
    with database.read() as session:
        rows = [str(row) for table in METADATA.sorted_tables for row in session.execute(table.select())]
    kept = "\n".join(rows).encode() + b"".join(file.read_bytes() for file in tmp_path.glob("steadfoot.db*"))
    assert b"Emil's phone" in kept
    for secret in (code, code.replace("-", ""), token, house.http.cookies["__Host-steadfoot"]):
        assert secret.encode() not in kept


@pytest.mark.server
def test_of_fifty_phones_that_try_one_code_at_once_exactly_one_gets_in(house: House, client_id: str) -> None:
    code, start = house.invite(client_id)["code"], threading.Barrier(50)
    answers: list[int] = []

    def attempt(address: str) -> None:
        with httpx.Client(timeout=60, verify=False) as http:
            start.wait()
            answers.append(http.post(f"{address}{API}/pairings", json={"code": code}).status_code)

    with listening(house.app) as address:
        threads = [threading.Thread(target=attempt, args=(address,)) for _ in range(50)]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
    assert len(answers) == 50
    assert answers.count(201) == 1
    assert set(answers) <= {201, 404, 429}
    assert len(house.get(f"/clients/{client_id}/devices")["items"]) == 1


def test_guessing_codes_is_slowed_and_the_wait_is_named(house: House, client_id: str) -> None:
    assert [_pair(house, "0" * 26).status_code for _ in range(20)] == [404] * 20
    refused = _pair(house, house.invite(client_id)["code"])
    assert refused.status_code == 429
    assert 0 < int(refused.headers["Retry-After"]) <= 3600


def test_a_phone_paired_in_person_is_heard_at_once_and_knows_whose_it_is(house: House, client_id: str) -> None:
    paired = _pair(house, house.invite(client_id)["code"], label="Emil's phone").json()
    assert paired["status"] == "active"
    assert (paired["client_name"], paired["practice_name"]) == ("Emil Tarrow", "Thornwater Physical Therapy")
    assert paired["practitioner_name"] == "Maren Brandvold"
    assert _sync(house, paired["token"]).status_code == 200
    assert house.get("/pairings")["items"] == []
    device = house.get(f"/clients/{client_id}/devices")["items"][0]
    assert (device["label"], device["waiting"], device["revoked_at"]) == ("Emil's phone", None, None)


def test_a_phone_paired_by_link_waits_until_its_number_was_compared(house: House, client_id: str) -> None:
    paired = _by_link(house, client_id)
    assert paired["status"] == "awaiting_confirmation"
    assert re.fullmatch(r"\d{4}", paired["check_number"])
    waiting = _sync(house, paired["token"])
    assert (waiting.status_code, waiting.json()["code"]) == (403, "pairing-not-confirmed")
    listed = house.get("/pairings")["items"]
    assert [(item["id"], item["check_number"]) for item in listed] == [(paired["pairing_id"], paired["check_number"])]
    wrong = f"{(int(paired['check_number']) + 1) % 10_000:04d}"
    path = f"/pairings/{paired['pairing_id']}/confirmations"
    assert house.post(path, {"check_number": wrong}, status=422)["code"] == "check-number-differs"
    assert _sync(house, paired["token"]).status_code == 403
    house.post(path, {"check_number": "12"}, status=422)
    assert house.post(path, {"check_number": paired["check_number"]})["waiting"] is None
    assert _sync(house, paired["token"]).status_code == 200
    assert house.get("/pairings")["items"] == []


def test_a_refused_phone_stays_out_even_if_it_is_confirmed_later(house: House, client_id: str) -> None:
    paired = _by_link(house, client_id)
    assert house.post(f"/pairings/{paired['pairing_id']}/refusals")["revoked_at"] is not None
    assert house.get("/pairings")["items"] == []
    house.post(f"/pairings/{paired['pairing_id']}/confirmations", {"check_number": paired["check_number"]})
    answer = _sync(house, paired["token"])
    assert (answer.status_code, answer.json()["code"]) == (401, "device-revoked")


def test_a_revoked_phone_is_not_heard_and_what_it_sent_stays(house: House, client_id: str) -> None:
    phone = house.pair(client_id)
    phone.log("note_written", {"text": "before"})
    phone.sync()
    first = house.post(f"/devices/{phone.device_id}/revocations")
    assert house.post(f"/devices/{phone.device_id}/revocations") == first
    phone.log("note_written", {"text": "after"})
    refused = phone.send(phone.events)
    assert (refused.status_code, refused.json()["code"]) == (401, "device-revoked")
    assert [item["body"]["text"] for item in house.get(f"/clients/{client_id}/timeline")["items"]] == ["before"]
    again = house.pair(client_id)
    again.events = [{**event, "seq": number} for number, event in enumerate(phone.events, 1)]
    assert again.sync()["acknowledged_through"] == 2
    assert len(house.get(f"/clients/{client_id}/timeline")["items"]) == 2


def test_a_successor_has_numbers_of_its_own_and_the_first_phone_is_still_heard(house: House, client_id: str) -> None:
    phone = house.pair(client_id)
    phone.log("note_written", {"text": "x"})
    phone.sync()
    headers = {"Authorization": f"Bearer {phone.token}"}
    response = phone.http.post(f"{API}/devices/current/successors", headers=headers)
    assert response.status_code == 201
    fresh = response.json()
    assert fresh["device_id"] != phone.device_id
    assert _sync(house, fresh["token"]).json()["acknowledged_through"] == 0
    assert phone.send([]).json()["acknowledged_through"] == 1
    house.post(f"/devices/{phone.device_id}/revocations")
    assert phone.http.post(f"{API}/devices/current/successors", headers=headers).status_code == 401


@pytest.mark.parametrize("header", ["", "Bearer", "Bearer ", "Bearer wrong", "Basic eDp5", "bearer \u00e9"])
def test_a_call_without_a_phones_token_is_told_so(house: House, header: str) -> None:
    visitor = TestClient(house.app, base_url="https://testserver")
    response = visitor.post(f"{API}/sync", json={}, headers={"Authorization": header.encode()})  # type: ignore[dict-item]
    assert (response.status_code, response.json()["code"]) == (401, "not-signed-in")
    assert response.headers["WWW-Authenticate"] == "Bearer"


def test_a_label_is_as_long_as_its_column_and_no_longer(house: House, client_id: str) -> None:
    assert _pair(house, house.invite(client_id)["code"], label="l" * 121).status_code == 422
    assert _pair(house, house.invite(client_id)["code"], label="l" * 120).status_code == 201


def test_no_answer_about_phones_tells_a_secret(house: House, client_id: str, database: Database) -> None:
    _by_link(house, client_id)
    pages = [f"/clients/{client_id}/devices", "/pairings", f"/clients/{client_id}", "/me"]
    shown = "".join(house.http.get(f"{API}{page}").text for page in pages)
    with database.read() as session:
        digests = session.execute(text("SELECT token_digest FROM device UNION SELECT code_digest FROM invitation"))
        assert not [digest for (digest,) in digests if digest in shown]
    assert "token" not in shown
