"""A colleague who lost password and second factor: an owner's link lets them in again, once."""

import pytest
from sqlalchemy import event, text

from steadfoot.core.database import Database
from tests.authenticator import Authenticator
from tests.builders import API, PASSWORD, House
from tests.conftest import StandingClock
from tests.features.identity.second import add_passkey, add_totp, visitor

LIA = "lia@thornwater.example"
FRESH = "seven cairns before the pass"


def _link(house: House, lia: House) -> str:
    made = house.post(f"/practice/people/{lia.practitioner_id}/welcome-links")
    return str(made["url"].partition("#join=")[2])


def _use(house: House, code: str, password: str = FRESH) -> tuple[int, str]:
    body = {"code": code, "display_name": "Somebody Else", "password": password}
    answer = visitor(house.app).post(f"{API}/practice/people", json=body)
    return answer.status_code, answer.json().get("code") or answer.json()["practitioner"]["id"]


def _sign_in(house: House, password: str) -> int:
    return visitor(house.app).post(f"{API}/sign-in", json={"email": LIA, "password": password}).status_code


@pytest.fixture
def lia(house: House) -> House:
    """A colleague with a password, an app and a passkey."""
    found = house.colleague("read_only", LIA)
    add_totp(found)
    add_passkey(found, Authenticator())
    return found


def test_whoever_lost_everything_chooses_a_new_password_by_a_link_that_works_once(
    house: House, lia: House, clock: StandingClock
) -> None:
    made = house.post(f"/practice/people/{lia.practitioner_id}/welcome-links")
    assert (made["url"].partition("#")[0], made["expires_at"]) == (
        "https://steadfoot.test/desk/",
        "2026-06-13T08:00:00Z",
    )
    code = made["url"].partition("#join=")[2]
    welcome = visitor(house.app).post(f"{API}/practice/welcomes", json={"code": code}).json()
    assert (welcome["email"], welcome["role"], welcome["returning"]) == (LIA, "read_only", True)
    assert [one["email"] for one in house.get("/practice/people")["waiting"]] == [LIA]
    clock.forward(seconds=1)
    assert _use(house, code) == (201, lia.practitioner_id)
    assert _use(house, code) == (404, "link-not-valid")
    assert (_sign_in(house, FRESH), _sign_in(house, PASSWORD)) == (200, 401)
    told = sorted((one["display_name"], one["role"]) for one in house.get("/practice/people")["items"])
    assert told == [("Lia Fenn", "read_only"), ("Maren Brandvold", "owner")]  # no third, and no other name or role


def test_the_link_and_whose_it_is_are_looked_up_once(house: House, lia: House, database: Database) -> None:
    code = _link(house, lia)
    asked: list[str] = []
    event.listen(database.reader, "before_cursor_execute", lambda *told: asked.append(told[2]))
    visitor(house.app).post(f"{API}/practice/welcomes", json={"code": code})
    assert [
        sum(f"FROM {table} " in one.replace("\n", " ") for one in asked)
        for table in ("practitioner", "colleague_invitation")
    ] == [1, 1]


def test_the_link_takes_away_at_once_what_may_be_in_strange_hands(house: House, lia: House, database: Database) -> None:
    _link(house, lia)
    lia.get("/me", status=401)
    assert _sign_in(house, PASSWORD) == 401
    assert [one["second_factor"] for one in house.get("/practice/people")["items"]] == [False, False]
    with database.read() as session:
        left = [
            session.execute(text(f"SELECT COUNT(*) FROM {name}")).scalar()
            for name in ("passkey", "totp_secret", "recovery_code")
        ]
    assert left == [0, 0, 0]


def test_a_link_that_is_old_withdrawn_replaced_or_of_somebody_disabled_lets_nobody_in(
    house: House, lia: House, clock: StandingClock
) -> None:
    replaced, withdrawn = _link(house, lia), _link(house, lia)
    (waiting,) = house.get("/practice/people")["waiting"]
    assert house.http.delete(f"{API}/practice/invitations/{waiting['id']}").status_code == 204
    of_disabled = _link(house, lia)
    house.http.patch(f"{API}/practice/people/{lia.practitioner_id}", json={"disabled": True})
    refused = [_use(house, code) for code in (replaced, withdrawn, of_disabled)]
    assert house.post(f"/practice/people/{lia.practitioner_id}/welcome-links", status=409)["code"] == "disabled"
    house.http.patch(f"{API}/practice/people/{lia.practitioner_id}", json={"disabled": False})
    assert _use(house, of_disabled, "short") == (422, "password-length")
    clock.forward(hours=72)
    assert {*refused, _use(house, of_disabled)} == {(404, "link-not-valid")}


def test_only_an_owner_makes_one_for_a_colleague_of_the_practice_and_not_for_themselves(
    house: House, lia: House, other_house: House
) -> None:
    own = house.post(f"/practice/people/{house.practitioner_id}/welcome-links", status=409)
    assert own["code"] == "own-account"
    other_house.post(f"/practice/people/{lia.practitioner_id}/welcome-links", status=404)
    practitioner = house.colleague("practitioner", "ada@thornwater.example")
    refused = practitioner.post(f"/practice/people/{lia.practitioner_id}/welcome-links", status=403)
    assert refused["code"] == "owner-only"
    lia.get("/me")  # none of it touched her


def test_it_is_confirmed_first_and_stands_in_the_log(house: House, lia: House, clock: StandingClock) -> None:
    clock.forward(minutes=11)
    path = f"/practice/people/{lia.practitioner_id}/welcome-links"
    assert house.post(path, status=401)["code"] == "confirm-first"
    house.post("/account/confirmations", {"password": PASSWORD}, status=204)
    code = _link(house, lia)
    assert _use(house, code)[0] == 201
    rows = [(row["action"], row["actor_name"]) for row in house.get("/audit")["items"]]
    assert ("welcomeBack", "Maren Brandvold") in rows
    assert ("joinPractice", "Lia Fenn") in rows


def test_a_practice_that_requires_a_second_factor_leads_who_comes_back_to_it(house: House, lia: House) -> None:
    add_totp(house)
    house.http.patch(f"{API}/practice/security", json={"requires_second_factor": True})
    body = {"code": _link(house, lia), "display_name": "Lia Fenn", "password": FRESH}
    me = visitor(house.app).post(f"{API}/practice/people", json=body).json()
    assert me["must_set_up_second_factor"] is True


def test_an_invitation_of_somebody_new_never_takes_over_who_joined_meanwhile(house: House) -> None:
    body = {"email": LIA, "display_name": "Lia Fenn", "role": "owner"}
    old = house.post("/practice/invitations", body)["url"].partition("#join=")[2]
    lia = house.colleague("practitioner", LIA)
    assert _use(house, old) == (404, "link-not-valid")
    lia.get("/me")
