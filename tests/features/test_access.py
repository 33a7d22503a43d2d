"""Who may ask what: the whole OpenAPI document, walked as everybody it was not written for."""

import re

from fastapi import FastAPI

from steadfoot.identity.access import COOKIE
from tests.builders import API, House
from tests.features.access import (
    BY_COOKIE,
    BY_EITHER,
    BY_PHONE,
    FOUND,
    MARKER,
    OPEN,
    POLICY,
    Practice,
    bodies,
    named,
    nobody,
    operations,
    practice,
)

__all__ = ["practice"]


def test_every_operation_has_a_row_and_every_row_an_operation(app: FastAPI) -> None:
    assert {operation.name for operation in operations(app)} == set(POLICY)


def test_the_document_asks_for_the_same_that_the_policy_does(app: FastAPI) -> None:
    asks = {OPEN: set(), BY_COOKIE: {"APIKeyCookie"}, BY_PHONE: {"HTTPBearer"}}
    asks[BY_EITHER] = asks[BY_COOKIE] | asks[BY_PHONE]
    for operation in operations(app):
        found = app.openapi()["paths"][operation.path][operation.method.lower()].get("security", [])
        assert {name for scheme in found for name in scheme} == asks[POLICY[operation.name][0]], operation.name


def test_nobody_gets_past_the_door(practice: Practice, app: FastAPI) -> None:
    for operation in named(app, BY_COOKIE, BY_PHONE, BY_EITHER):
        response = practice.ask(nobody(app), operation)
        assert (response.status_code, response.json()["code"]) == (401, "not-signed-in"), operation
        assert MARKER not in response.text


def test_a_cookie_or_a_token_that_is_made_up_gets_no_further(practice: Practice, app: FastAPI) -> None:
    stranger = nobody(app)
    stranger.cookies.set(COOKIE, "made-up")
    for operation in named(app, BY_COOKIE, BY_PHONE, BY_EITHER):
        assert practice.ask(stranger, operation).status_code == 401, operation
        assert practice.ask(nobody(app), operation, Authorization="Bearer made-up").status_code == 401, operation


def test_a_phone_is_no_practitioner(practice: Practice, app: FastAPI) -> None:
    for operation in named(app, BY_COOKIE):
        response = practice.ask(nobody(app), operation, Authorization=f"Bearer {practice.phone.token}")
        assert response.status_code == 401, operation
        assert MARKER not in response.text


def test_a_practitioner_is_no_phone(practice: Practice, app: FastAPI) -> None:
    for operation in named(app, BY_PHONE):
        assert practice.ask(practice.house.http, operation).status_code == 401, operation


def test_another_practice_finds_nothing_and_changes_nothing(
    practice: Practice, other_house: House, app: FastAPI
) -> None:
    before = _everything(practice)
    for operation in named(app, BY_COOKIE, BY_EITHER):
        if operation.name == "listen":  # an answer without an end; what it carries has a test of its own
            continue
        response = practice.ask(other_house.http, operation)
        wall = POLICY[operation.name][1]
        assert response.status_code < 500, operation
        assert (response.status_code == 404) == (wall == FOUND), (operation, response.text)
        assert MARKER not in response.text, operation
        if "audit" in operation.path:  # its own log has the ids that it has just asked for, and was refused
            assert practice.house.practice_id not in response.text
            continue
        for secret in (practice.ids["client_id"], practice.ids["own_code"], practice.house.practice_id):
            assert secret not in response.text.replace(f'"instance":"{response.request.url.path}"', ""), operation
    assert _everything(practice) == before


def _everything(practice: Practice) -> dict[str, str]:
    client = f"{API}/clients/{practice.ids['client_id']}"
    paths = [client, f"{API}/clients", f"{API}/pairings", f"{API}/flags", f"{API}/caseload", f"{API}/templates"]
    paths += [f"{API}/exercises", f"{API}/exercises/own/{practice.ids['own_code']}"]
    paths += [f"{client}/{page}" for page in ("devices", "timeline", "refused-events", "overview", "programs/draft")]
    paths += [f"{client}/{page}" for page in ("programs", "programs/current", "messages", "screenings", "tests")]
    paths += [f"{client}/{page}" for page in ("trip", "trip/demand", "readiness")]
    found = {path: practice.house.http.get(path) for path in paths}
    assert {path: answer.status_code for path, answer in found.items()} == dict.fromkeys(paths, 200)
    return {path: answer.text for path, answer in found.items()}


def test_the_practice_itself_gets_an_answer_everywhere(practice: Practice, app: FastAPI) -> None:
    """Guards the tests above: a path that nobody can ask would pass them all."""
    for operation in named(app, BY_COOKIE, BY_EITHER):
        if operation.name == "listen" or operation.method not in ("GET", "POST"):
            continue
        response = practice.ask(practice.house.http, operation)
        # 412: an earlier operation of this walk has published meanwhile.
        assert response.status_code in (200, 201, 204, 409, 412, 422), (operation, response.text)


def test_every_write_from_another_site_is_refused(practice: Practice, app: FastAPI) -> None:
    for operation in operations(app):
        if operation.method == "GET":
            continue
        for headers in ({"Origin": "https://evil.example"}, {"Origin": "null"}, {"Sec-Fetch-Site": "cross-site"}):
            response = practice.ask(practice.house.http, operation, **headers)
            assert (response.status_code, response.json()["code"]) == (403, "cross-site"), operation


def test_a_method_that_a_path_does_not_have_is_answered_with_all_that_it_has(app: FastAPI) -> None:
    methods: dict[str, set[str]] = {}
    for operation in operations(app):
        methods.setdefault(operation.path, set()).add(operation.method)
    for path, found in methods.items():
        asked = re.sub(r"\{\w+\}", "1", path)
        for method in {"DELETE", "PATCH", "PUT", "POST", "GET"} - found:
            response = nobody(app).request(method, asked)
            if response.status_code == 405:
                allowed = {name.strip() for name in response.headers["Allow"].split(",")}
                assert allowed - {"HEAD", "OPTIONS"} >= found, (method, path)
                assert set(response.json()) >= {"type", "title", "status", "code", "detail"}
            else:  # another pattern takes this very path, as {number} takes "draft"
                assert response.status_code == 401, (method, path)


def test_every_error_is_a_problem_of_one_shape(practice: Practice, app: FastAPI) -> None:
    errors = [practice.ask(nobody(app), operation) for operation in named(app, BY_COOKIE, BY_PHONE)]
    errors += [nobody(app).get(path) for path in ("/nothing", f"{API}/nothing", "/app/missing.js")]
    errors += [practice.house.http.post(f"{API}/clients", json={"display_name": 1}), nobody(app).post("/healthz")]
    errors += [practice.house.http.get(f"{API}/clients/nobody")]
    for response in errors:
        assert response.status_code >= 400
        assert response.headers["Content-Type"] == "application/problem+json"
        problem = response.json()
        assert {"type", "title", "status", "code", "detail"} <= set(problem), response.url
        assert set(problem) <= {"type", "title", "status", "code", "detail", "instance", "errors"}
        assert problem["status"] == response.status_code


def test_no_refusal_repeats_a_value_that_was_sent(practice: Practice, app: FastAPI) -> None:
    for operation in operations(app):
        if operation.method == "GET":
            continue
        names = bodies().get(operation.name) or {}
        odd = {name: {"said": "Secret-Value-91"} for name in names} | {"unknown": "Secret-Value-91"}
        path = operation.path.format(**practice.ids)
        headers = {} if POLICY[operation.name][0] != BY_PHONE else {"Authorization": f"Bearer {practice.phone.token}"}
        response = practice.house.http.request(operation.method, path, json=odd, headers=headers)
        assert response.status_code < 500, operation
        assert "Secret-Value-91" not in response.text, operation
