"""Codes of an app: set up, asked for, right for half a minute, and each of them once."""

import json
import logging
import threading
from urllib.parse import parse_qs, urlsplit

import httpx
import pytest
from sqlmodel import select

from steadfoot.core.database import Database
from steadfoot.core.keyring import Keyring
from steadfoot.core.limits import Limiter
from steadfoot.identity import factors, service
from steadfoot.identity.access import COOKIE
from steadfoot.identity.sessions import open_session
from steadfoot.identity.tables import Practitioner, RecoveryCode, TotpSecret
from tests.builders import API, House
from tests.conftest import StandingClock
from tests.features.identity.second import EMAIL, RIGHT, add_totp, code_at, code_of, sign_in, visitor
from tests.sync.live import listening


def test_the_app_is_told_what_it_needs_and_nothing_counts_before_its_first_code(house: House) -> None:
    begun = house.post("/account/totp")
    asked = {name: values[0] for name, values in parse_qs(urlsplit(begun["uri"]).query).items()}
    assert asked["secret"] == begun["secret"]
    assert len(begun["secret"]) == 32  # 160 bits
    assert asked["issuer"] == "Steadfoot Thornwater Physical Therapy"
    assert asked.get("digits", "6") == "6"
    assert EMAIL in begun["uri"].replace("%40", "@")
    assert begun["qr_svg"].startswith('<svg xmlns="http://www.w3.org/2000/svg"')
    assert sign_in(house.app).status_code == 200
    house.post("/account/totp/activations", {"code": code_at(house, begun["secret"], 5)}, status=422)
    assert house.get("/account")["totp_since"] is None
    house.post("/account/totp/activations", {"code": code_at(house, begun["secret"])})
    assert house.get("/account")["totp_since"] == "2026-06-10T08:00:00Z"


def test_a_set_up_that_took_too_long_begins_again(house: House, clock: StandingClock) -> None:
    house.post("/account/totp/activations", {"code": "123456"}, status=409)
    secret = house.post("/account/totp")["secret"]
    clock.forward(minutes=15, seconds=1)
    refused = house.post("/account/totp/activations", {"code": code_at(house, secret)}, status=409)
    assert refused["code"] == "nothing-begun"


def test_the_password_alone_lets_nobody_in_any_more_and_says_so_only_to_who_knows_it(
    house: House, clock: StandingClock
) -> None:
    secret, _ = add_totp(house)
    clock.forward(seconds=30)
    asked = sign_in(house.app)
    assert (asked.status_code, code_of(asked)) == (401, "second-factor-needed")
    assert asked.json()["ways"] == ["code", "recovery_code"]
    assert "Set-Cookie" not in asked.headers
    wrong = sign_in(house.app, password="not the password", code=code_at(house, secret))
    assert (code_of(wrong), "ways" in wrong.json()) == ("wrong-sign-in", False)
    assert sign_in(house.app, code=code_at(house, secret)).status_code == 200


def test_a_code_is_right_one_step_early_and_one_late_and_no_further(house: House, clock: StandingClock) -> None:
    secret, _ = add_totp(house)
    clock.forward(minutes=5)
    results = {steps: sign_in(house.app, code=code_at(house, secret, steps)).status_code for steps in (-2, 2, -1, 0, 1)}
    assert results == {-2: 401, 2: 401, -1: 200, 0: 200, 1: 200}


def test_a_code_works_once_and_none_that_is_older(house: House, clock: StandingClock) -> None:
    secret, _ = add_totp(house)
    assert code_of(sign_in(house.app, code=code_at(house, secret))) == "wrong-code"  # used to set up
    clock.forward(seconds=60)
    code, older = code_at(house, secret), code_at(house, secret, -1)
    assert sign_in(house.app, code=f" {code[:3]} {code[3:]} ").status_code == 200
    assert [code_of(sign_in(house.app, code=again)) for again in (code, older)] == ["wrong-code"] * 2
    assert sign_in(house.app, code=code_at(house, secret, 1)).status_code == 200


@pytest.mark.parametrize("shown", ["code", "recovery_code"])
def test_of_fifty_sign_ins_at_once_with_one_code_one_gets_in(
    house: House, clock: StandingClock, shown: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Without their limits, which would stop most before they race."""
    monkeypatch.setattr(factors, "_CODE_TRIES", Limiter(1000, 1))
    monkeypatch.setattr(service, "_GUESSES", Limiter(1000, 1))
    secret, codes = add_totp(house)
    clock.forward(seconds=30)
    body = {**RIGHT, shown: code_at(house, secret) if shown == "code" else codes[0]}
    answers: list[int] = []
    start = threading.Barrier(50)

    def attempt(address: str) -> None:
        with httpx.Client(timeout=60, verify=False) as http:
            start.wait()
            answers.append(http.post(f"{address}{API}/sign-in", json=body).status_code)

    with listening(house.app) as address:
        threads = [threading.Thread(target=attempt, args=(address,)) for _ in range(50)]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
    assert sorted(answers) == [200] + [401] * 49


def test_the_sixth_guess_of_a_code_waits_even_if_right_but_a_browser_that_is_known_does_not(
    house: House, clock: StandingClock
) -> None:
    secret, codes = add_totp(house)
    clock.forward(minutes=1)
    known = visitor(house.app)
    assert known.post(f"{API}/sign-in", json={**RIGHT, "code": code_at(house, secret)}).status_code == 200
    clock.forward(minutes=1)
    wrong = [sign_in(house.app, code="000000").status_code for _ in range(5)]
    assert wrong == [401] * 5
    for shown in ({"code": code_at(house, secret)}, {"recovery_code": codes[0]}):
        assert sign_in(house.app, **shown).status_code == 429
    assert known.post(f"{API}/sign-in", json={**RIGHT, "code": code_at(house, secret)}).status_code == 200


def test_recovery_codes_work_once_each_in_any_spelling_and_new_ones_kill_the_old(house: House) -> None:
    _, codes = add_totp(house)
    assert len(set(codes)) == 10
    assert all(len(code.replace("-", "")) == 24 for code in codes)
    assert sign_in(house.app, recovery_code=codes[0].lower().replace("-", " ")).status_code == 200
    assert code_of(sign_in(house.app, recovery_code=codes[0])) == "wrong-code"
    assert house.get("/account")["recovery_codes_left"] == 9
    fresh = house.post("/account/recovery-codes")["recovery_codes"]
    assert code_of(sign_in(house.app, recovery_code=codes[1])) == "wrong-code"
    assert sign_in(house.app, recovery_code=fresh[1]).status_code == 200


def test_a_colleagues_recovery_code_is_none_of_mine(house: House) -> None:
    add_totp(house)
    _, theirs = add_totp(house.colleague("practitioner"))
    assert code_of(sign_in(house.app, recovery_code=theirs[0])) == "wrong-code"


def test_the_database_holds_nothing_that_signs_in(house: House, database: Database) -> None:
    secret, codes = add_totp(house)
    with database.read() as session:
        (row,) = session.exec(select(TotpSecret)).all()
        digests = session.exec(select(RecoveryCode.digest)).all()
    kept = json.dumps([row.sealed, *digests])
    assert secret not in kept
    assert not any(code in kept or code.replace("-", "") in kept for code in codes)
    assert all(len(digest) == 64 for digest in digests)


def test_a_sealed_secret_fits_no_other_person(house: House, database: Database, clock: StandingClock) -> None:
    secret, _ = add_totp(house)
    other = house.colleague("practitioner")
    add_totp(other)
    with database.write() as session:
        rows = {row.practitioner_id: row for row in session.exec(select(TotpSecret)).all()}
        rows[house.practitioner_id].sealed = rows[other.practitioner_id].sealed
        session.add(rows[house.practitioner_id])
    clock.forward(minutes=1)
    assert code_of(sign_in(house.app, code=code_at(house, secret))) == "code-not-readable"


def test_with_another_key_codes_say_why_they_fail_and_recovery_codes_still_work(
    house: House, clock: StandingClock, tmp_path_factory: pytest.TempPathFactory
) -> None:
    secret, codes = add_totp(house)
    clock.forward(minutes=1)
    house.app.state.keyring = Keyring(tmp_path_factory.mktemp("elsewhere") / "secret.key")
    assert code_of(sign_in(house.app, code=code_at(house, secret))) == "code-not-readable"
    assert sign_in(house.app, recovery_code=codes[0]).status_code == 200


def test_a_new_app_takes_the_place_of_the_old_with_its_first_code(house: House, clock: StandingClock) -> None:
    old, _ = add_totp(house)
    clock.forward(minutes=1)
    fresh = house.post("/account/totp")["secret"]
    assert sign_in(house.app, code=code_at(house, old)).status_code == 200
    activated = house.post("/account/totp/activations", {"code": code_at(house, fresh)})
    assert activated["recovery_codes"] == []  # those on paper stay good
    clock.forward(minutes=1)
    assert code_of(sign_in(house.app, code=code_at(house, old))) == "wrong-code"
    assert sign_in(house.app, code=code_at(house, fresh)).status_code == 200


def test_setting_up_and_turning_off_end_the_other_sessions_and_renew_this_one(house: House) -> None:
    for change in (lambda: add_totp(house), lambda: house.http.delete(f"{API}/account/totp")):
        other = visitor(house.app)
        with house.app.state.database.write() as session:
            person = session.exec(select(Practitioner).where(Practitioner.email == EMAIL)).one()
            other.cookies.set(COOKIE, open_session(session, person, house.clock()))
        before = house.http.cookies[COOKIE]
        assert other.get(f"{API}/me").status_code == 200
        change()
        assert other.get(f"{API}/me").status_code == 401
        assert house.http.cookies[COOKIE] != before
        house.get("/me")
    assert house.get("/account") | {"totp_since": None, "recovery_codes_left": 0} == house.get("/account")
    assert sign_in(house.app).status_code == 200


def test_events_are_noted_with_ids_and_without_a_secret(house: House, caplog: pytest.LogCaptureFixture) -> None:
    caplog.set_level(logging.INFO, "steadfoot.security")
    secret, codes = add_totp(house)
    sign_in(house.app, recovery_code=codes[0])
    sign_in(house.app, code="000000")
    lines = [json.loads(record.message) for record in caplog.records if record.name == "steadfoot.security"]
    kinds = [line["event"] for line in lines]
    assert kinds == ["totp_added", "recovery_code_used", "signed_in", "sign_in_refused"]
    assert lines[0] == {
        "event": "totp_added",
        "practice": house.practice_id,
        "practitioner": house.practitioner_id,
    }
    assert lines[3]["practitioner"] == house.practitioner_id
    for private in (secret, EMAIL, codes[0], codes[0].replace("-", ""), RIGHT["password"], "Maren"):
        assert private not in caplog.text
