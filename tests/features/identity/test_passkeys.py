"""Passkeys: beside the password, or alone where they have verified their holder; each answer once, at this site."""

from typing import Any

import httpx
import pytest
from sqlmodel import select
from webauthn.helpers import bytes_to_base64url as text

from steadfoot.core.database import Database
from steadfoot.identity.passkeys import Site, site_of
from steadfoot.identity.tables import Practitioner, SpentChallenge
from tests.authenticator import Authenticator
from tests.builders import API, House
from tests.conftest import StandingClock
from tests.features.identity.second import RIGHT, add_passkey, challenge, code_of, sign_in, visitor

NESTED = text(b"[" * 5900)
"""JSON that no reader gets to the end of: lists in lists."""


@pytest.fixture
def key(house: House) -> Authenticator:
    """The practitioner's passkey."""
    found = Authenticator()
    add_passkey(house, found)
    return found


def _alone(house: House, answer: dict[str, str]) -> httpx.Response:
    return visitor(house.app).post(f"{API}/sign-in/passkeys", json={"passkey": answer})


def test_a_passkey_signs_in_alone_and_is_asked_for_beside_the_password(house: House, key: Authenticator) -> None:
    options = challenge(house.app)
    assert (options["rpId"], options["userVerification"]) == ("steadfoot.test", "required")
    assert options.get("allowCredentials", []) == []
    signed_in = _alone(house, key.answer(options))
    assert signed_in.json()["practitioner"]["id"] == house.practitioner_id
    asked = sign_in(house.app)
    assert (code_of(asked), asked.json()["ways"]) == ("second-factor-needed", ["passkey", "recovery_code"])
    options = challenge(house.app, RIGHT)
    assert len(options["allowCredentials"]) == 1
    assert sign_in(house.app, passkey=key.answer(options)).status_code == 200
    (row,) = house.get("/account")["passkeys"]
    assert (row["name"], row["last_used_at"]) == ("Key", "2026-06-10T08:00:00Z")


def test_only_who_knows_the_password_learns_which_passkeys_there_are(house: House, key: Authenticator) -> None:
    wrong = visitor(house.app).post(f"{API}/sign-in/challenges", json={**RIGHT, "password": "not the password"})
    assert (wrong.status_code, code_of(wrong)) == (401, "wrong-sign-in")


def test_beside_the_password_holding_it_is_enough_alone_it_is_not(house: House, key: Authenticator) -> None:
    key.verifies = False
    assert code_of(_alone(house, key.answer(challenge(house.app)))) == "passkey-refused"
    assert sign_in(house.app, passkey=key.answer(challenge(house.app, RIGHT))).status_code == 200


def test_an_answer_works_once(house: House, key: Authenticator) -> None:
    key.count = -1  # an authenticator without a counter: it always says 0
    answer = key.answer(challenge(house.app))
    assert _alone(house, answer).status_code == 200
    assert code_of(_alone(house, answer)) == "passkey-refused"


def test_a_counter_that_falls_back_is_a_copy_and_refused(house: House, key: Authenticator) -> None:
    assert _alone(house, key.answer(challenge(house.app))).status_code == 200
    key.count = 0
    assert code_of(_alone(house, key.answer(challenge(house.app)))) == "passkey-refused"


@pytest.mark.parametrize(
    "wrong",
    [{"origin": "https://evil.example"}, {"origin": "http://steadfoot.test"}, {"rp_id": "evil.example"}],
)
def test_an_answer_for_another_site_is_refused(house: House, key: Authenticator, wrong: dict[str, str]) -> None:
    for name, value in wrong.items():
        setattr(key, name, value)
    assert code_of(_alone(house, key.answer(challenge(house.app)))) == "passkey-refused"
    assert code_of(sign_in(house.app, passkey=key.answer(challenge(house.app, RIGHT)))) == "passkey-refused"


def test_a_challenge_is_good_for_five_minutes_and_what_was_spent_is_then_forgotten(
    house: House, key: Authenticator, clock: StandingClock, database: Database
) -> None:
    late, in_time = challenge(house.app), challenge(house.app)
    clock.forward(minutes=4, seconds=59)
    assert _alone(house, key.answer(in_time)).status_code == 200
    clock.forward(seconds=1)
    assert code_of(_alone(house, key.answer(late))) == "passkey-refused"
    assert _alone(house, key.answer(challenge(house.app))).status_code == 200
    with database.read() as session:
        assert len(session.exec(select(SpentChallenge)).all()) == 1


def test_a_challenge_of_another_purpose_person_or_maker_is_refused(house: House, key: Authenticator) -> None:
    colleague = house.colleague("practitioner")
    theirs = Authenticator()
    add_passkey(colleague, theirs)
    made_up = {"challenge": "A" * 70}
    for options in (
        house.post("/account/confirmation-challenges")["public_key"],
        house.post("/account/passkey-challenges")["public_key"],
        challenge(house.app, RIGHT),
        made_up,
    ):
        assert code_of(_alone(house, key.answer(options))) == "passkey-refused"
    assert code_of(sign_in(house.app, passkey=key.answer(challenge(house.app)))) == "passkey-refused"
    assert code_of(sign_in(house.app, passkey=theirs.answer(challenge(house.app, RIGHT)))) == "passkey-refused"


def test_an_unknown_key_and_a_forged_signature_get_the_same_answer(house: House, key: Authenticator) -> None:
    forger = Authenticator(id=key.id)
    unknown = _alone(house, Authenticator().answer(challenge(house.app)))
    forged = _alone(house, forger.answer(challenge(house.app)))
    assert unknown.content == forged.content
    assert (forged.status_code, code_of(forged)) == (401, "passkey-refused")


def test_bytes_that_are_no_answer_are_refused_without_a_fault(house: House, key: Authenticator) -> None:
    for part in ("client_data", "authenticator_data", "signature"):
        for value in ("A", "AAAA", "eyJ9", "-_-_" * 40, NESTED):
            answer = key.answer(challenge(house.app)) | {part: value}
            assert code_of(_alone(house, answer)) == "passkey-refused", (part, value)


def test_who_was_disabled_signs_in_by_no_way(house: House, database: Database) -> None:
    key = Authenticator()
    colleague = house.colleague("practitioner")
    add_passkey(colleague, key)
    with database.write() as session:
        person = session.exec(select(Practitioner).where(Practitioner.id == colleague.practitioner_id)).one()
        person.disabled_at = house.clock()
        session.add(person)
    assert code_of(_alone(house, key.answer(challenge(house.app)))) == "passkey-refused"
    colleague.get("/me", status=401)


def test_a_passkey_is_made_for_its_person_once_and_from_a_challenge_of_its_own(house: House) -> None:
    key = Authenticator()
    options = house.post("/account/passkey-challenges")["public_key"]
    assert options["rp"]["id"] == "steadfoot.test"
    assert options["authenticatorSelection"]["residentKey"] == "preferred"
    body = key.make(options)
    colleague = house.colleague("practitioner")
    assert colleague.post("/account/passkeys", body, status=422)["code"] == "passkey-not-valid"
    assert len(house.post("/account/passkeys", body)["recovery_codes"]) == 10
    assert house.post("/account/passkeys", body, status=422)["code"] == "passkey-not-valid"
    again = key.make(house.post("/account/passkey-challenges")["public_key"])
    assert house.post("/account/passkeys", again, status=409)["code"] == "passkey-known"
    assert len(house.get("/account")["passkeys"]) == 1


def test_what_is_no_passkey_is_not_added(house: House) -> None:
    for fault in ({"attestation": "AAAA"}, {"client_data": "AAAA"}, {"client_data": NESTED}, {"id": "AAAA"}):
        body: dict[str, Any] = Authenticator().make(house.post("/account/passkey-challenges")["public_key"]) | fault
        assert house.post("/account/passkeys", body, status=422)["code"] == "passkey-not-valid"
    assert house.get("/account")["passkeys"] == []


@pytest.mark.parametrize(
    "public",
    [
        [],
        7,
        {1: 2, 3: -7, -1: 1, -2: b"", -3: b""},
        {1: 2, 3: -7, -1: 1, -2: bytes(32), -3: bytes(32)},
        {1: 3, 3: -257, -1: "n", -2: "e"},
        {1: 1, 3: -8, -1: 6, -2: bytes(31)},
    ],
)
def test_a_passkey_whose_key_could_check_nothing_is_not_added(
    house: House, monkeypatch: pytest.MonkeyPatch, public: Any
) -> None:
    key = Authenticator()
    monkeypatch.setattr(key, "_public", lambda: public)
    body = key.make(house.post("/account/passkey-challenges")["public_key"])
    assert house.post("/account/passkeys", body, status=422)["code"] == "passkey-not-valid"


def test_ten_passkeys_are_enough(house: House) -> None:
    for _ in range(10):
        add_passkey(house, Authenticator())
    options = house.post("/account/passkey-challenges")["public_key"]
    assert house.post("/account/passkeys", Authenticator().make(options), status=409)["code"] == "too-many-passkeys"


def test_a_passkey_that_was_removed_lets_nobody_in_and_the_last_takes_the_recovery_codes_with_it(
    house: House, key: Authenticator
) -> None:
    (row,) = house.get("/account")["passkeys"]
    assert house.http.delete(f"{API}/account/passkeys/{row['id']}").status_code == 204
    assert house.http.delete(f"{API}/account/passkeys/{row['id']}").status_code == 404
    assert code_of(_alone(house, key.answer(challenge(house.app)))) == "passkey-refused"
    assert house.get("/account")["recovery_codes_left"] == 0
    assert sign_in(house.app).status_code == 200


@pytest.mark.parametrize(
    ("address", "rp_id", "origin", "possible"),
    [
        ("https://steadfoot.example", "steadfoot.example", "https://steadfoot.example", True),
        ("https://desk.example:8443/", "desk.example", "https://desk.example:8443", True),
        ("http://localhost:8000", "localhost", "http://localhost:8000", True),
        ("http://127.0.0.1:8000", "127.0.0.1", "http://127.0.0.1:8000", False),
        ("http://[::1]:8000", "::1", "http://[::1]:8000", False),
        ("http://steadfoot.example", "steadfoot.example", "http://steadfoot.example", False),
    ],
)
def test_the_site_is_the_address_that_is_set(address: str, rp_id: str, origin: str, possible: bool) -> None:
    site = site_of(address)
    assert (site, site.possible) == (Site(rp_id, origin), possible)
