"""Signing in: the cookie, what a wrong guess is told, how often one may guess, and how the session ends."""

import time
from datetime import timedelta

import pytest
from fastapi import FastAPI
from fastapi.testclient import TestClient
from pwdlib import PasswordHash
from pwdlib.hashers.argon2 import Argon2Hasher
from sqlmodel import select

from steadfoot.core.database import Database
from steadfoot.core.ids import digest_of
from steadfoot.core.problems import Invalid, Problem
from steadfoot.identity import passwords
from steadfoot.identity import service as identity
from steadfoot.identity.access import COOKIE, IDLE_LIMIT, SESSION_LIMIT
from steadfoot.identity.tables import Practitioner, SignIn
from tests.builders import API, PASSWORD, House
from tests.conftest import StandingClock

RIGHT = {"email": "maren@thornwater.example", "password": PASSWORD}
WRONG = {**RIGHT, "password": "not the password"}


def _visitor(app: FastAPI) -> TestClient:
    return TestClient(app, base_url="https://testserver")


def _me(house: House, token: str) -> int:
    visitor = _visitor(house.app)
    visitor.cookies.set(COOKIE, token)
    return visitor.get(f"{API}/me").status_code


def _token(house: House) -> str:
    return str(house.http.cookies[COOKIE])


def test_the_cookie_is_bound_to_the_host_and_out_of_reach_of_scripts(house: House) -> None:
    response = _visitor(house.app).post(f"{API}/sign-in", json=RIGHT)
    guards = {"path=/", "secure", "httponly", "samesite=strict"}
    cookies = [line.partition("=") for line in response.headers.get_list("set-cookie")]
    assert [name for name, _, _ in cookies] == ["__Host-steadfoot", "__Host-steadfoot-known"]
    for _, _, attributes in cookies:
        token, *parts = [part.strip() for part in attributes.split(";")]
        assert {part.lower() for part in parts} - {"max-age=31536000"} == guards
        assert len(token) >= 43  # 256 bits in base 64
        assert token not in response.text
    assert response.json()["practice"]["name"] == "Thornwater Physical Therapy"


def test_the_database_holds_only_the_digest_of_the_cookie(house: House, database: Database) -> None:
    with database.read() as session:
        kept = session.exec(select(SignIn.token_digest)).all()
    assert kept == [digest_of(_token(house))]


def test_a_wrong_password_and_an_unknown_address_get_the_same_answer(house: House) -> None:
    visitor = _visitor(house.app)
    wrong = visitor.post(f"{API}/sign-in", json=WRONG)
    unknown = visitor.post(f"{API}/sign-in", json={**RIGHT, "email": "nobody@thornwater.example"})
    assert wrong.status_code == unknown.status_code == 401
    assert wrong.content == unknown.content
    assert "Set-Cookie" not in wrong.headers
    numbered = {"x-request-id"}
    assert {*wrong.headers.items()} ^ {*unknown.headers.items()} <= {
        (name, answer.headers[name]) for name in numbered for answer in (wrong, unknown)
    }


def test_the_address_is_read_in_any_case_and_with_spaces_around_it(house: House) -> None:
    body = {**RIGHT, "email": "  Maren@THORNWATER.example "}
    assert _visitor(house.app).post(f"{API}/sign-in", json=body).status_code == 200


def test_the_eleventh_guess_has_to_wait_even_if_it_is_right_and_others_need_not(
    house: House, other_house: House
) -> None:
    visitor = _visitor(house.app)
    assert [visitor.post(f"{API}/sign-in", json=WRONG).status_code for _ in range(10)] == [401] * 10
    for body in (WRONG, RIGHT):
        refused = visitor.post(f"{API}/sign-in", json=body)
        assert (refused.status_code, refused.json()["code"]) == (429, "too-many-tries")
        assert 0 < int(refused.headers["Retry-After"]) <= 900
    other = {**RIGHT, "email": "someone@farvalley.example"}
    assert visitor.post(f"{API}/sign-in", json=other).status_code == 200


def test_a_right_password_forgives_the_guesses_before_it(house: House) -> None:
    visitor = _visitor(house.app)
    for _ in range(3):
        for _ in range(9):
            visitor.post(f"{API}/sign-in", json=WRONG)
        assert visitor.post(f"{API}/sign-in", json=RIGHT).status_code == 200


def test_signing_out_ends_the_session_on_the_server(house: House) -> None:
    stolen = _token(house)
    response = house.http.post(f"{API}/sign-out")
    assert response.status_code == 204
    assert response.headers["Set-Cookie"].startswith(f'{COOKIE}=""; expires=')
    assert COOKIE not in house.http.cookies
    assert _me(house, stolen) == 401
    assert _visitor(house.app).post(f"{API}/sign-out").status_code == 204


def test_an_hour_without_a_sign_of_life_ends_the_session_and_a_sign_of_life_keeps_it(
    house: House, clock: StandingClock
) -> None:
    for _ in range(3):
        clock.now += IDLE_LIMIT
        house.get("/me")
    clock.now += IDLE_LIMIT + timedelta(seconds=1)
    house.get("/me", status=401)


def test_twelve_hours_end_the_session_whatever_was_done(house: House, clock: StandingClock) -> None:
    end = clock.now + SESSION_LIMIT
    while clock.now < end:
        house.get("/me")
        clock.forward(minutes=30)
    house.get("/me")
    clock.forward(seconds=1)
    house.get("/me", status=401)


def test_a_cookie_that_was_planted_is_replaced_and_an_old_one_dies(house: House) -> None:
    planted, old = _visitor(house.app), _token(house)
    planted.cookies.set(COOKIE, "planted-by-a-stranger")
    assert planted.post(f"{API}/sign-in", json=RIGHT).status_code == 200
    assert _me(house, "planted-by-a-stranger") == 401
    house.http.post(f"{API}/sign-in", json=RIGHT)
    assert _me(house, old) == 401
    house.get("/me")


def test_the_eleventh_session_ends_the_oldest(house: House, clock: StandingClock) -> None:
    tokens = []
    for _ in range(11):
        clock.forward(seconds=1)
        visitor = _visitor(house.app)
        visitor.post(f"{API}/sign-in", json=RIGHT)
        tokens.append(visitor.cookies[COOKIE])
    assert [_me(house, token) for token in tokens] == [401] + [200] * 10
    assert len(set(tokens)) == 11


def test_real_passwords_are_hashed_as_rfc_9106_advises() -> None:
    kept = PasswordHash((Argon2Hasher(),)).hash(PASSWORD)
    _, variant, _, cost, *_ = kept.split("$")
    memory_kib, passes, lanes = (int(part.partition("=")[2]) for part in cost.split(","))
    assert variant == "argon2id"
    assert (memory_kib, passes, lanes) == (64 * 1024, 3, 4)
    assert PasswordHash((Argon2Hasher(),)).verify(PASSWORD, kept)


@pytest.mark.parametrize("length", [0, 1, 11, 257])
def test_a_password_of_another_length_is_refused(length: int) -> None:
    with pytest.raises(Invalid):
        passwords.hashed("p" * length)


def test_an_address_signs_in_one_person_only(house: House, database: Database) -> None:
    with database.write() as session:
        practice = identity.create_practice(session, "Third", "UTC", house.clock())
        with pytest.raises(Problem, match="already"):
            identity.add_practitioner(session, practice, RIGHT["email"], "Twin", PASSWORD, house.clock())


def test_no_password_is_kept_as_it_was_typed(house: House, database: Database) -> None:
    with database.read() as session:
        kept = session.exec(select(Practitioner.password_hash)).all()
    assert all(text.startswith("$argon2id$") and PASSWORD not in text for text in kept)


@pytest.mark.parametrize(
    "body",
    [{}, {"email": "x"}, {**RIGHT, "email": "x"}, {**RIGHT, "password": ""}, {**RIGHT, "password": 5}]
    + [{**RIGHT, "remember": True}, {**RIGHT, "password": "p" * 257}, {**RIGHT, "email": "a\x00@b"}],
)
def test_a_sign_in_that_is_none_is_refused_by_its_fields_and_echoes_nothing(house: House, body: object) -> None:
    response = _visitor(house.app).post(f"{API}/sign-in", json=body)
    assert response.status_code == 422
    assert response.json()["errors"]
    assert PASSWORD not in response.text


def test_an_unknown_address_takes_as_long_as_a_known_one(house: House) -> None:
    def seconds(person_hash: str | None) -> float:
        start = time.perf_counter()
        passwords.is_right("guess", person_hash)
        return time.perf_counter() - start

    known = passwords.hashed(PASSWORD)
    rounds = sorted((seconds(known), seconds(None)) for _ in range(15))
    fastest = [min(pair[place] for pair in rounds) for place in (0, 1)]
    assert 0.2 < fastest[0] / fastest[1] < 5  # the same work, on a machine that others share
