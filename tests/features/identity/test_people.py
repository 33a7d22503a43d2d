"""The people of a practice: joining by a link, roles, disabling, resetting a lost second factor, requiring one."""

import threading

import httpx

from steadfoot.core.database import Database
from steadfoot.core.problems import Conflict
from steadfoot.identity import people
from steadfoot.identity.access import PractitionerAccess, practitioner_of
from steadfoot.identity.account_schemas import ColleagueChange
from steadfoot.identity.cookies import COOKIE
from steadfoot.identity.roles import Role
from tests.authenticator import Authenticator
from tests.builders import API, PASSWORD, House
from tests.conftest import StandingClock
from tests.features.identity.second import add_passkey, add_totp, code_of, visitor
from tests.sync.live import listening

LIA = {"email": "lia@thornwater.example", "display_name": "Lia Fenn", "role": "practitioner"}


def _code(house: House, **more: str) -> str:
    return str(house.post("/practice/invitations", {**LIA, **more})["url"].partition("#join=")[2])


def _join(house: House, code: str, **more: str) -> httpx.Response:
    body = {"code": code, "display_name": "Lia Fenn", "password": PASSWORD, **more}
    return visitor(house.app).post(f"{API}/practice/people", json=body)


def _sign_in(house: House, email: str = LIA["email"]) -> httpx.Response:
    return visitor(house.app).post(f"{API}/sign-in", json={"email": email, "password": PASSWORD})


def _change(house: House, person: House, **change: object) -> httpx.Response:
    return house.http.patch(f"{API}/practice/people/{person.practitioner_id}", json=change)


def test_a_colleague_joins_by_a_link_that_works_once(house: House, clock: StandingClock) -> None:
    link = house.post("/practice/invitations", LIA)
    clock.forward(seconds=1)
    assert link["url"].startswith("https://steadfoot.test/desk/#join=")
    assert link["expires_at"] == "2026-06-13T08:00:00Z"
    code = link["url"].partition("#join=")[2]
    welcome = visitor(house.app).post(f"{API}/practice/welcomes", json={"code": code}).json()
    assert welcome == {"practice_name": "Thornwater Physical Therapy", **LIA, "returning": False}
    joined = _join(house, code, display_name="Lia Fenn-Berg")
    assert (joined.status_code, joined.json()["practitioner"]["role"]) == (201, "practitioner")
    assert joined.json()["practitioner"]["display_name"] == "Lia Fenn-Berg"
    assert code_of(_join(house, code)) == "link-not-valid"
    assert _sign_in(house).status_code == 200
    found = house.get("/practice/people")
    assert [(one["display_name"], one["role"]) for one in found["items"]] == [
        ("Maren Brandvold", "owner"),
        ("Lia Fenn-Berg", "practitioner"),
    ]
    assert found["waiting"] == []


def test_a_link_that_is_old_withdrawn_replaced_or_made_up_gets_one_answer(house: House, clock: StandingClock) -> None:
    replaced, withdrawn = _code(house), _code(house)
    (waiting,) = house.get("/practice/people")["waiting"]
    assert house.http.delete(f"{API}/practice/invitations/{waiting['id']}").status_code == 204
    assert house.http.delete(f"{API}/practice/invitations/{waiting['id']}").status_code == 404
    old = _code(house)
    clock.forward(hours=72)
    answers = [_join(house, code) for code in (replaced, withdrawn, old, "0" * 26, "?")]
    assert {(answer.status_code, answer.content) for answer in answers} == {(404, answers[0].content)}
    assert visitor(house.app).post(f"{API}/practice/welcomes", json={"code": old}).status_code == 404


def test_of_fifty_who_use_one_link_at_once_one_joins(house: House) -> None:
    code, start = _code(house), threading.Barrier(50)
    answers: list[int] = []

    def attempt(address: str) -> None:
        body = {"code": code, "display_name": "Lia Fenn", "password": PASSWORD}
        with httpx.Client(timeout=60, verify=False) as http:
            start.wait()
            answers.append(http.post(f"{address}{API}/practice/people", json=body).status_code)

    with listening(house.app) as address:
        threads = [threading.Thread(target=attempt, args=(address,)) for _ in range(50)]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
    assert sorted(answers) == [201] + [404] * 49
    assert len(house.get("/practice/people")["items"]) == 2


def test_an_address_that_signs_in_already_is_not_invited(house: House, other_house: House) -> None:
    refused = house.post("/practice/invitations", {**LIA, "email": "someone@farvalley.example"}, status=409)
    assert refused["code"] == "email-taken"
    mine, theirs = _code(house), other_house.post("/practice/invitations", LIA)["url"].partition("#join=")[2]
    assert _join(house, mine).status_code == 201
    assert code_of(_join(house, theirs)) == "email-taken"


def test_a_weak_password_leaves_the_link_good(house: House) -> None:
    code = _code(house)
    assert [code_of(_join(house, code, password=weak)) for weak in ("short", "Lia.Fenn.2026!")] == [
        "password-length",
        "password-guessed",
    ]
    assert _join(house, code).status_code == 201


def test_a_new_role_counts_from_the_next_request_and_its_sessions_begin_anew(house: House) -> None:
    lia = house.colleague("practitioner")
    assert _change(house, lia, role="read_only").json()["role"] == "read_only"
    lia.get("/me", status=401)
    lia.http.post(f"{API}/sign-in", json={"email": LIA["email"], "password": PASSWORD})
    assert lia.post("/clients", {"display_name": "Emil"}, status=403)["code"] == "read-only"
    assert lia.get("/clients")["items"] == []
    _change(house, lia, role="owner")
    lia.http.post(f"{API}/sign-in", json={"email": LIA["email"], "password": PASSWORD})
    assert len(lia.get("/practice/people")["items"]) == 2


def test_who_is_disabled_is_out_at_once_and_told_no_more_than_a_stranger(house: House) -> None:
    lia = house.colleague("practitioner")
    assert _change(house, lia, disabled=True).json()["disabled_at"] == "2026-06-10T08:00:00Z"
    lia.get("/me", status=401)
    assert _sign_in(house).content == _sign_in(house, "nobody@thornwater.example").content
    assert _change(house, lia, disabled=False).json()["disabled_at"] is None
    assert _sign_in(house).status_code == 200
    lia.get("/me", status=401)


def test_the_last_owner_stays_one(house: House) -> None:
    for change in ({"role": "practitioner"}, {"role": "read_only"}, {"disabled": True}):
        assert code_of(_change(house, house, **change)) == "last-owner"
    lia = house.colleague("owner")
    _change(house, lia, disabled=True)
    assert code_of(_change(house, house, role="practitioner")) == "last-owner"
    _change(house, lia, disabled=False)
    assert _change(house, house, role="practitioner").status_code == 200


def test_of_two_owners_who_remove_each_other_at_once_one_stays(house: House, database: Database) -> None:
    both = [house, house.colleague("owner")]
    # Both got past the door before either was removed.
    inside = [practitioner_of(database, one.http.cookies[COOKIE], one.clock()) for one in both]
    start, outcomes = threading.Barrier(2), []

    def demote(by: PractitionerAccess | None, whom: House) -> None:
        assert by is not None
        start.wait()
        try:
            with database.write() as session:
                body = ColleagueChange(role=Role.PRACTITIONER)
                people.change(session, by, whom.practitioner_id, body, whom.clock())
            outcomes.append("done")
        except Conflict as refused:
            outcomes.append(refused.code)

    threads = [threading.Thread(target=demote, args=pair) for pair in zip(inside, reversed(both), strict=True)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert sorted(outcomes) == ["done", "last-owner"]


def test_an_owner_resets_a_lost_second_factor_but_not_their_own_so(house: House) -> None:
    lia = house.colleague("practitioner")
    add_totp(lia)
    add_passkey(lia, Authenticator())
    assert code_of(_sign_in(house)) == "second-factor-needed"
    told = {one["id"]: one["second_factor"] for one in house.get("/practice/people")["items"]}
    assert told == {house.practitioner_id: False, lia.practitioner_id: True}
    reset = house.post(f"/practice/people/{lia.practitioner_id}/second-factor-resets")
    assert reset["second_factor"] is False
    lia.get("/me", status=401)
    assert _sign_in(house).status_code == 200
    own = house.post(f"/practice/people/{house.practitioner_id}/second-factor-resets", status=409)
    assert own["code"] == "own-account"


def test_a_practice_that_requires_a_second_factor_leads_everyone_to_it(house: House) -> None:
    security = f"{API}/practice/security"
    assert code_of(house.http.patch(security, json={"requires_second_factor": True})) == "own-first"
    add_totp(house)
    lia = house.colleague("practitioner")
    assert house.http.patch(security, json={"requires_second_factor": True}).json() == {"requires_second_factor": True}
    assert lia.get("/caseload", status=403)["code"] == "second-factor-required"
    assert (lia.get("/me")["must_set_up_second_factor"], lia.get("/account")["required"]) == (True, True)
    add_totp(lia)
    assert lia.get("/me")["must_set_up_second_factor"] is False
    lia.get("/caseload")
    assert code_of(lia.http.delete(f"{API}/account/totp")) == "last-second-factor"
    add_passkey(lia, Authenticator())
    assert lia.http.delete(f"{API}/account/totp").status_code == 204
    (row,) = lia.get("/account")["passkeys"]
    assert code_of(lia.http.delete(f"{API}/account/passkeys/{row['id']}")) == "last-second-factor"
    assert lia.get("/account")["recovery_codes_left"] == 10
    house.http.patch(security, json={"requires_second_factor": False})
    assert lia.http.delete(f"{API}/account/passkeys/{row['id']}").status_code == 204


def test_a_role_that_is_none_is_refused(house: House) -> None:
    for role in ("boss", "", None):
        house.post("/practice/invitations", {**LIA, "role": role}, status=422)
