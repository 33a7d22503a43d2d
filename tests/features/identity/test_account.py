"""One's own account: where one is signed in, the password, and what asks first whether it is really oneself."""

import time
from datetime import timedelta

import httpx
import pytest
from fastapi import FastAPI
from fastapi.testclient import TestClient

from steadfoot.identity.access import CONFIRMED_FOR
from steadfoot.identity.browsers import words_of
from steadfoot.identity.cookies import COOKIE, KNOWN
from steadfoot.identity.guessed import is_guessed_first
from tests.authenticator import Authenticator
from tests.builders import API, PASSWORD, House
from tests.conftest import StandingClock
from tests.features.identity.second import EMAIL, RIGHT, add_passkey, add_totp, code_at, code_of, sign_in, visitor
from tests.sync.live import listening

FIREFOX = "Mozilla/5.0 (X11; Linux x86_64; rv:140.0) Gecko/20100101 Firefox/140.0"
AGENTS = {
    FIREFOX: ("firefox", "linux"),
    "Mozilla/5.0 (Windows NT 10.0) AppleWebKit/537.36 Chrome/140.0 Safari/537.36 Edg/140.0": ("edge", "windows"),
    "Mozilla/5.0 (Windows NT 10.0) AppleWebKit/537.36 Chrome/140.0 Safari/537.36": ("chrome", "windows"),
    "Mozilla/5.0 (iPhone; CPU iPhone OS 18_0 like Mac OS X) Version/18.0 Safari/604.1": ("safari", "ios"),
    "Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7) Version/18.0 Safari/605.1.15": ("safari", "macos"),
    "Mozilla/5.0 (Linux; Android 15) AppleWebKit/537.36 Chrome/140.0 Mobile Safari/537.36": ("chrome", "android"),
    "curl/8": ("unknown", "unknown"),
}
CONFIRMED_ONLY = [
    ("POST", "/account/totp", None),
    ("DELETE", "/account/totp", None),
    ("POST", "/account/recovery-codes", None),
    ("POST", "/account/passkey-challenges", None),
    ("DELETE", "/account/passkeys/x", None),
    ("POST", "/practice/invitations", {"email": "n@b.example", "display_name": "N", "role": "owner"}),
    ("PATCH", "/practice/people/x", {"role": "owner"}),
    ("POST", "/practice/people/x/second-factor-resets", None),
    ("PATCH", "/practice/security", {"requires_second_factor": False}),
]


def _browser(app: FastAPI, agent: str = FIREFOX) -> TestClient:
    browser = visitor(app, **{"User-Agent": agent})
    assert browser.post(f"{API}/sign-in", json=RIGHT).status_code == 200
    return browser


def _status(browser: TestClient) -> int:
    return browser.get(f"{API}/me").status_code


def test_a_browser_is_told_in_two_words(house: House) -> None:
    assert {agent: words_of(agent) for agent in AGENTS} == AGENTS
    _browser(house.app, FIREFOX)
    told = [(one["browser"], one["system"]) for one in house.get("/account/sessions")["items"] if not one["here"]]
    assert told == [("firefox", "linux")]


def test_one_session_is_ended_and_only_that_one(house: House) -> None:
    first, second = _browser(house.app), _browser(house.app)
    (other,) = [one for one in first.get(f"{API}/account/sessions").json()["items"] if one["here"]]
    assert second.delete(f"{API}/account/sessions/{other['id']}").status_code == 204
    assert [_status(browser) for browser in (first, second, house.http)] == [401, 200, 200]
    assert second.delete(f"{API}/account/sessions/{other['id']}").status_code == 404
    assert len(house.get("/account/sessions")["items"]) == 2


def test_a_colleague_can_neither_see_nor_end_my_sessions(house: House) -> None:
    colleague = house.colleague("owner")
    (mine,) = house.get("/account/sessions")["items"]
    assert [one["here"] for one in colleague.get("/account/sessions")["items"]] == [True]
    assert colleague.http.delete(f"{API}/account/sessions/{mine['id']}").status_code == 404
    assert _status(house.http) == 200


@pytest.mark.parametrize(("query", "here"), [("", 200), ("?here=true", 401)])
def test_signing_out_everywhere_works_at_the_next_request(house: House, query: str, here: int) -> None:
    others = [_browser(house.app) for _ in range(3)]
    colleague, stolen = house.colleague("practitioner"), house.http.cookies[COOKIE]
    assert house.http.delete(f"{API}/account/sessions{query}").status_code == 204
    assert [_status(browser) for browser in others] == [401] * 3
    thief = visitor(house.app)
    thief.cookies.set(COOKIE, stolen)
    assert _status(thief) == here
    assert _status(colleague.http) == 200


def test_an_open_stream_of_news_ends_with_its_session(house: House) -> None:
    pulse, cookie = house.app.state.pulse, f"{COOKIE}={house.http.cookies[COOKIE]}"
    headers = {"Cookie": cookie}
    with listening(house.app) as at, httpx.stream("GET", f"{at}{API}/live", headers=headers, timeout=30) as news:
        lines = news.iter_lines()
        assert next(lines) == "retry: 3000"
        while not pulse._queues.get(house.practice_id):
            time.sleep(0.01)
        pulse.beat(house.practice_id, "client-1")
        assert [next(lines) for _ in range(3)] == ["", "event: changed", "data: client-1"]
        house.http.delete(f"{API}/account/sessions?here=true")
        pulse.beat(house.practice_id, "client-2")
        assert list(lines) == [""]


def test_the_list_leaves_out_what_is_over_and_tells_when_each_was_used(house: House, clock: StandingClock) -> None:
    _browser(house.app)
    clock.forward(minutes=50)
    house.get("/me")
    clock.forward(minutes=20)
    (only,) = house.get("/account/sessions")["items"]
    assert only["here"] is True
    assert (only["signed_in_at"], only["last_seen_at"]) == ("2026-06-10T08:00:00Z", "2026-06-10T09:10:00Z")


def test_the_password_is_changed_by_who_knows_it_and_ends_the_other_sessions(house: House) -> None:
    other, before = _browser(house.app), house.http.cookies[COOKIE]
    body = {"current": "not the password", "new": "  Seven Lakes, one pass \u2603 "}
    assert house.post("/account/password", body, status=401)["code"] == "wrong-password"
    house.post("/account/password", {**body, "current": PASSWORD}, status=204)
    assert (_status(other), _status(house.http)) == (401, 200)
    assert house.http.cookies[COOKIE] != before
    assert code_of(sign_in(house.app)) == "wrong-sign-in"
    assert code_of(sign_in(house.app, password=body["new"].strip())) == "wrong-sign-in"
    assert sign_in(house.app, password=body["new"]).status_code == 200


def test_a_new_password_that_is_weak_is_refused(house: House) -> None:
    for new, code in (
        ("short", "password-length"),
        ("x" * 11, "password-length"),
        ("x" * 257, "validation"),
        ("password1234", "password-guessed"),
        ("Maren.Brandvold.1", "password-guessed"),
        ("Thornwater2026!", "password-guessed"),
    ):
        assert house.post("/account/password", {"current": PASSWORD, "new": new}, status=422)["code"] == code
    assert sign_in(house.app).status_code == 200


@pytest.mark.parametrize(
    ("password", "guessed"),
    [
        ("P@ssw0rd2026!", True),
        ("passwordpassword", True),
        ("123456789012", True),
        ("aaaaaaaaaaaa", True),
        ("abcabcabcabc", True),
        ("qwertyuiopas", True),
        ("Steadfoot-2026", True),
        ("Sommer2026Sommer", True),
        ("Willkommen!!123", True),
        (PASSWORD, False),
        ("847261938471", False),
        ("correct gravel kettle", False),
        ("password of gravel", False),
        ("Zürich-Kessel-Kies", False),
    ],
)
def test_what_is_guessed_first_is_told_from_what_is_not(password: str, guessed: bool) -> None:
    assert is_guessed_first(password, ("Maren Brandvold",)) is guessed


def test_guessing_the_current_password_from_an_open_desk_is_slowed(house: House) -> None:
    body = {"current": "not the password", "new": "seven lakes and one pass"}
    assert [house.http.post(f"{API}/account/password", json=body).status_code for _ in range(10)] == [401] * 10
    assert house.post("/account/password", {**body, "current": PASSWORD}, status=429)["code"] == "too-many-tries"


def test_dangerous_things_ask_again_after_ten_minutes(house: House, clock: StandingClock) -> None:
    def refused() -> list[str]:
        answers = [house.http.request(method, f"{API}{path}", json=body) for method, path, body in CONFIRMED_ONLY]
        return [code_of(answer) for answer in answers if answer.status_code == 401]

    clock.now += CONFIRMED_FOR
    assert refused() == []
    clock.now += timedelta(seconds=1)
    assert refused() == ["confirm-first"] * len(CONFIRMED_ONLY)
    house.post("/account/confirmations", {"password": PASSWORD}, status=204)
    assert refused() == []


def test_confirming_asks_for_all_that_signing_in_does_and_renews_the_cookie(house: House, clock: StandingClock) -> None:
    secret, codes = add_totp(house)
    clock.forward(minutes=11)
    before = house.http.cookies[COOKIE]
    for shown, code in (
        ({"password": "not the password"}, "wrong-sign-in"),
        ({"password": PASSWORD}, "second-factor-needed"),
        ({"password": PASSWORD, "code": "000000"}, "wrong-code"),
    ):
        assert house.post("/account/confirmations", shown, status=401)["code"] == code
    house.post("/account/confirmations", {"code": code_at(house, secret)}, status=422)
    assert house.http.cookies[COOKIE] == before
    house.post("/account/confirmations", {"password": PASSWORD, "code": code_at(house, secret)}, status=204)
    thief = visitor(house.app)
    thief.cookies.set(COOKIE, before)
    assert (_status(thief), _status(house.http)) == (401, 200)
    clock.forward(minutes=11)
    house.post("/account/confirmations", {"password": PASSWORD, "recovery_code": codes[0]}, status=204)
    assert house.get("/account")["confirmed_until"] == (clock.now + CONFIRMED_FOR).isoformat().replace("+00:00", "Z")


def test_a_passkey_confirms_alone_only_if_it_verified_its_holder_and_is_ones_own(
    house: House, clock: StandingClock
) -> None:
    key, theirs = Authenticator(), Authenticator()
    colleague = house.colleague("practitioner")
    add_passkey(house, key)
    add_passkey(colleague, theirs)
    clock.forward(minutes=11)

    def confirm(maker: Authenticator, status: int) -> None:
        options = house.post("/account/confirmation-challenges")["public_key"]
        house.post("/account/confirmations", {"passkey": maker.answer(options)}, status=status)

    confirm(theirs, 401)
    confirm(key, 204)
    key.verifies = False
    confirm(key, 401)
    options = house.post("/account/confirmation-challenges")["public_key"]
    house.post("/account/confirmations", {"password": PASSWORD, "passkey": key.answer(options)}, status=204)
    colleague.post("/account/confirmations", {"password": PASSWORD}, status=401)


def test_a_stranger_who_guesses_does_not_lock_out_the_browser_that_is_known(house: House) -> None:
    wrong = {**RIGHT, "password": "not the password"}
    stranger = visitor(house.app)
    assert [stranger.post(f"{API}/sign-in", json=wrong).status_code for _ in range(11)] == [401] * 10 + [429]
    assert sign_in(house.app).status_code == 429
    assert house.http.post(f"{API}/sign-in", json=RIGHT).status_code == 200
    # Known for one address, and only with the sign that it was given: neither helps to guess.
    for value in (house.http.cookies[KNOWN][:-4] + "AAAA", "made-up", "\u2603".encode().hex()):
        forger = visitor(house.app)
        forger.cookies.set(KNOWN, value)
        assert forger.post(f"{API}/sign-in", json=RIGHT).status_code == 429
    colleague = house.colleague("practitioner")
    assert colleague.http.post(f"{API}/sign-in", json=RIGHT).status_code == 429
    assert [house.http.post(f"{API}/sign-in", json=wrong).status_code for _ in range(11)] == [401] * 10 + [429]
    assert EMAIL not in house.http.cookies[KNOWN]
