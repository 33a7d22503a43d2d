"""Who may ask what: the whole OpenAPI document, walked as everybody it was not written for.

``POLICY`` has one row for each operation. A new operation without a row fails here before it is ever asked.
"""

import re
from dataclasses import dataclass
from typing import Any

import httpx
import pytest
from fastapi import FastAPI
from fastapi.testclient import TestClient

from steadfoot.identity.access import COOKIE
from tests.builders import API, House, Phone, circuit, content
from tests.conftest import START

OPEN, BY_COOKIE, BY_PHONE, BY_EITHER = "open", "cookie", "phone", "either"
"""Nobody need sign in; a practitioner's session; a phone's token; one of the two."""
NONE, FOUND, OWN = "none", "not found", "own"
"""For another practice: no id in the path; this practice's id is not found there; only its own rows are answered."""
MARKER = "Marker-7f3a"
"""In every text of the practice whose walls are tested."""

POLICY: dict[str, tuple[str, str]] = {
    "signIn": (OPEN, NONE),
    "signOut": (OPEN, NONE),
    "pairPhone": (OPEN, NONE),
    "isAlive": (OPEN, NONE),
    "isReady": (OPEN, NONE),
    "readMetrics": (OPEN, NONE),
    "readMe": (BY_COOKIE, OWN),
    "listen": (BY_COOKIE, NONE),
    "listClients": (BY_COOKIE, OWN),
    "createClient": (BY_COOKIE, NONE),
    "readClient": (BY_COOKIE, FOUND),
    "updateClient": (BY_COOKIE, FOUND),
    "inviteClient": (BY_COOKIE, FOUND),
    "listDevices": (BY_COOKIE, FOUND),
    "revokeDevice": (BY_COOKIE, FOUND),
    "listWaitingPairings": (BY_COOKIE, OWN),
    "confirmPairing": (BY_COOKIE, FOUND),
    "refusePairing": (BY_COOKIE, FOUND),
    "succeedDevice": (BY_PHONE, NONE),
    "listScreeningQuestions": (BY_EITHER, NONE),
    "listScreenings": (BY_COOKIE, FOUND),
    "screenClient": (BY_COOKIE, FOUND),
    "recordClearance": (BY_COOKIE, FOUND),
    "listTests": (BY_COOKIE, NONE),
    "readClientTests": (BY_COOKIE, FOUND),
    "recordTest": (BY_COOKIE, FOUND),
    "withdrawTest": (BY_COOKIE, FOUND),
    "rateActivities": (BY_COOKIE, FOUND),
    "withdrawRating": (BY_COOKIE, FOUND),
    "sync": (BY_PHONE, NONE),
    "listExercises": (BY_EITHER, OWN),
    "readExercise": (BY_EITHER, NONE),
    "listTemplates": (BY_COOKIE, OWN),
    "createTemplate": (BY_COOKIE, NONE),
    "updateTemplate": (BY_COOKIE, FOUND),
    "deleteTemplate": (BY_COOKIE, FOUND),
    "layOutTemplate": (BY_COOKIE, FOUND),
    "readDraft": (BY_COOKIE, FOUND),
    "saveDraft": (BY_COOKIE, FOUND),
    "dropDraft": (BY_COOKIE, FOUND),
    "checkProgram": (BY_COOKIE, FOUND),
    "publishProgram": (BY_COOKIE, FOUND),
    "listPrograms": (BY_COOKIE, FOUND),
    "readCurrentProgram": (BY_COOKIE, FOUND),
    "readProgram": (BY_COOKIE, FOUND),
    "readTimeline": (BY_COOKIE, FOUND),
    "listRefusedEvents": (BY_COOKIE, FOUND),
    "retryRefusedEvent": (BY_COOKIE, FOUND),
    "readCaseload": (BY_COOKIE, OWN),
    "readAdherence": (BY_COOKIE, FOUND),
    "readOverview": (BY_COOKIE, FOUND),
    "readHistory": (BY_PHONE, NONE),
    "listSuggestions": (BY_COOKIE, FOUND),
    "decideProgressions": (BY_COOKIE, FOUND),
    "readLoad": (BY_COOKIE, FOUND),
    "listSources": (BY_EITHER, NONE),
    "listFlags": (BY_COOKIE, OWN),
    "decideFlag": (BY_COOKIE, FOUND),
    "listMessages": (BY_COOKIE, FOUND),
    "sendMessage": (BY_COOKIE, FOUND),
}

_WELL = {
    "regular_activity": True,
    "known_disease": False,
    "signs_or_symptoms": False,
    "intensity": "light_to_moderate",
}


def _template(name: str) -> dict[str, Any]:
    return {"name": name, "sessions": [circuit()], "weeks": [[{"weekday": "mon", "session": "s1"}]]}


def _bodies() -> dict[str, Any]:
    """A body that is in order, where an operation reads one before it looks at the path."""
    program = content(START.date())
    return {
        "createClient": {"display_name": "Somebody"},
        "updateClient": {"note": "changed from outside"},
        "inviteClient": {"delivery": "link"},
        "createTemplate": _template("Ours"),
        "updateTemplate": {"name": "Taken over"},
        "layOutTemplate": {"template": "descent-legs", "starts_on": "2026-06-15"},
        "saveDraft": {"content": program},
        "checkProgram": {"content": program},
        "publishProgram": {"content": program},
        "screenClient": {"answers": _WELL},
        "recordClearance": {"given_by": "Somebody"},
        "recordTest": {"code": "chair-stand-30s", "value": 12},
        "rateActivities": {"activities": [{"name": "stairs", "rating": 4}]},
        "decideFlag": {"action": "acknowledge"},
        "decideProgressions": {
            "program_number": 1,
            "decisions": [{"suggestion_id": "0" * 32, "action": "decline", "reason": "from outside"}],
        },
        "sendMessage": {"text": "from outside"},
        "signIn": {"email": "a@b.example", "password": "x"},
        "pairPhone": {"code": "x"},
    }


@dataclass(frozen=True)
class Operation:
    """One method of one path."""

    name: str
    method: str
    path: str


def _operations(app: FastAPI) -> list[Operation]:
    methods = {"get", "post", "put", "patch", "delete"}
    paths = app.openapi()["paths"]
    return [
        Operation(operation["operationId"], method.upper(), path)
        for path, found in paths.items()
        for method, operation in found.items()
        if method in methods
    ]


@dataclass
class Practice:
    """A practice whose every text is marked, with the ids that its paths need."""

    house: House
    phone: Phone
    ids: dict[str, str]

    def ask(self, http: httpx.Client, operation: Operation, **headers: str) -> httpx.Response:
        """Ask an operation about this practice's things, with whatever rights ``http`` has."""
        path = operation.path.format(**self.ids)
        body = None if operation.method == "GET" else _bodies().get(operation.name)
        return http.request(operation.method, path, json=body, headers=headers)


@pytest.fixture
def practice(house: House) -> Practice:
    """A practice with a client, a program, a draft, a flag, messages and a phone that waits."""
    client_id = house.new_client(f"Emil {MARKER}", note=MARKER)
    program = {**content(START.date()), "title": MARKER}
    house.publish(client_id, program)
    house.http.put(f"{API}/clients/{client_id}/programs/draft", json={"content": program})
    template = house.post("/templates", _template(MARKER))
    house.post(f"/clients/{client_id}/messages", {"text": MARKER})
    house.post(f"/clients/{client_id}/screenings", {"answers": _WELL})
    house.post(f"/clients/{client_id}/clearances", {"given_by": MARKER, "note": MARKER})
    result = house.post(f"/clients/{client_id}/tests", {"code": "chair-stand-30s", "value": 14, "note": MARKER})
    rating = house.post(f"/clients/{client_id}/functional-scales", {"activities": [{"name": MARKER, "rating": 3}]})
    phone = house.pair(client_id)
    phone.log("note_written", {"text": MARKER})
    phone.log("symptom_reported", {"symptom": "chest_pain", "note": MARKER})
    bad = phone.log("dreamt", {"text": MARKER})
    phone.sync()
    visitor = TestClient(house.app, base_url="https://testserver")
    waiting = visitor.post(f"{API}/pairings", json={"code": house.invite(client_id, "link")["code"]}).json()
    flag = house.get("/flags")["items"][0]
    ids = {
        "client_id": client_id,
        "device_id": phone.device_id,
        "pairing_id": waiting["pairing_id"],
        "event_id": bad["id"],
        "flag_id": flag["id"],
        "template_id": template["id"],
        "result_id": result["id"],
        "scale_id": rating["id"],
        "number": "1",
        "code": "step-down",
    }
    return Practice(house, phone, ids)


def _named(app: FastAPI, *who: str) -> list[Operation]:
    return [operation for operation in _operations(app) if POLICY[operation.name][0] in who]


def _nobody(app: FastAPI) -> TestClient:
    return TestClient(app, base_url="https://testserver")


def test_every_operation_has_a_row_and_every_row_an_operation(app: FastAPI) -> None:
    assert {operation.name for operation in _operations(app)} == set(POLICY)


def test_the_document_asks_for_the_same_that_the_policy_does(app: FastAPI) -> None:
    asks = {OPEN: set(), BY_COOKIE: {"APIKeyCookie"}, BY_PHONE: {"HTTPBearer"}}
    asks[BY_EITHER] = asks[BY_COOKIE] | asks[BY_PHONE]
    for operation in _operations(app):
        found = app.openapi()["paths"][operation.path][operation.method.lower()].get("security", [])
        assert {name for scheme in found for name in scheme} == asks[POLICY[operation.name][0]], operation.name


def test_nobody_gets_past_the_door(practice: Practice, app: FastAPI) -> None:
    for operation in _named(app, BY_COOKIE, BY_PHONE, BY_EITHER):
        response = practice.ask(_nobody(app), operation)
        assert (response.status_code, response.json()["code"]) == (401, "not-signed-in"), operation
        assert MARKER not in response.text


def test_a_cookie_or_a_token_that_is_made_up_gets_no_further(practice: Practice, app: FastAPI) -> None:
    stranger = _nobody(app)
    stranger.cookies.set(COOKIE, "made-up")
    for operation in _named(app, BY_COOKIE, BY_PHONE, BY_EITHER):
        assert practice.ask(stranger, operation).status_code == 401, operation
        assert practice.ask(_nobody(app), operation, Authorization="Bearer made-up").status_code == 401, operation


def test_a_phone_is_no_practitioner(practice: Practice, app: FastAPI) -> None:
    for operation in _named(app, BY_COOKIE):
        response = practice.ask(_nobody(app), operation, Authorization=f"Bearer {practice.phone.token}")
        assert response.status_code == 401, operation
        assert MARKER not in response.text


def test_a_practitioner_is_no_phone(practice: Practice, app: FastAPI) -> None:
    for operation in _named(app, BY_PHONE):
        assert practice.ask(practice.house.http, operation).status_code == 401, operation


def test_another_practice_finds_nothing_and_changes_nothing(
    practice: Practice, other_house: House, app: FastAPI
) -> None:
    before = _everything(practice)
    for operation in _named(app, BY_COOKIE, BY_EITHER):
        if operation.name == "listen":  # an answer without an end; what it carries has a test of its own
            continue
        response = practice.ask(other_house.http, operation)
        wall = POLICY[operation.name][1]
        assert response.status_code < 500, operation
        assert (response.status_code == 404) == (wall == FOUND), (operation, response.text)
        assert MARKER not in response.text, operation
        for secret in (practice.ids["client_id"], practice.house.practice_id):
            assert secret not in response.text.replace(f'"instance":"{response.request.url.path}"', ""), operation
    assert _everything(practice) == before


def _everything(practice: Practice) -> dict[str, str]:
    client = f"{API}/clients/{practice.ids['client_id']}"
    paths = [client, f"{API}/clients", f"{API}/pairings", f"{API}/flags", f"{API}/caseload", f"{API}/templates"]
    paths += [f"{client}/{page}" for page in ("devices", "timeline", "refused-events", "overview", "programs/draft")]
    paths += [f"{client}/{page}" for page in ("programs", "programs/current", "messages", "screenings", "tests")]
    found = {path: practice.house.http.get(path) for path in paths}
    assert {path: answer.status_code for path, answer in found.items()} == dict.fromkeys(paths, 200)
    return {path: answer.text for path, answer in found.items()}


def test_the_practice_itself_gets_an_answer_everywhere(practice: Practice, app: FastAPI) -> None:
    """Guards the tests above: a path that nobody can ask would pass them all."""
    for operation in _named(app, BY_COOKIE, BY_EITHER):
        if operation.name == "listen" or operation.method not in ("GET", "POST"):
            continue
        response = practice.ask(practice.house.http, operation)
        # 412: an earlier operation of this walk has published meanwhile.
        assert response.status_code in (200, 201, 204, 409, 412, 422), (operation, response.text)


def test_every_write_from_another_site_is_refused(practice: Practice, app: FastAPI) -> None:
    for operation in _operations(app):
        if operation.method == "GET":
            continue
        for headers in ({"Origin": "https://evil.example"}, {"Origin": "null"}, {"Sec-Fetch-Site": "cross-site"}):
            response = practice.ask(practice.house.http, operation, **headers)
            assert (response.status_code, response.json()["code"]) == (403, "cross-site"), operation


def test_a_method_that_a_path_does_not_have_is_answered_with_all_that_it_has(app: FastAPI) -> None:
    methods: dict[str, set[str]] = {}
    for operation in _operations(app):
        methods.setdefault(operation.path, set()).add(operation.method)
    for path, found in methods.items():
        asked = re.sub(r"\{\w+\}", "1", path)
        for method in {"DELETE", "PATCH", "PUT", "POST", "GET"} - found:
            response = _nobody(app).request(method, asked)
            if response.status_code == 405:
                allowed = {name.strip() for name in response.headers["Allow"].split(",")}
                assert allowed - {"HEAD", "OPTIONS"} >= found, (method, path)
                assert set(response.json()) >= {"type", "title", "status", "code", "detail"}
            else:  # another pattern takes this very path, as {number} takes "draft"
                assert response.status_code == 401, (method, path)


def test_every_error_is_a_problem_of_one_shape(practice: Practice, app: FastAPI) -> None:
    errors = [practice.ask(_nobody(app), operation) for operation in _named(app, BY_COOKIE, BY_PHONE)]
    errors += [_nobody(app).get(path) for path in ("/nothing", f"{API}/nothing", "/app/missing.js")]
    errors += [practice.house.http.post(f"{API}/clients", json={"display_name": 1}), _nobody(app).post("/healthz")]
    errors += [practice.house.http.get(f"{API}/clients/nobody")]
    for response in errors:
        assert response.status_code >= 400
        assert response.headers["Content-Type"] == "application/problem+json"
        problem = response.json()
        assert {"type", "title", "status", "code", "detail"} <= set(problem), response.url
        assert set(problem) <= {"type", "title", "status", "code", "detail", "instance", "errors"}
        assert problem["status"] == response.status_code


def test_no_refusal_repeats_a_value_that_was_sent(practice: Practice, app: FastAPI) -> None:
    for operation in _operations(app):
        if operation.method == "GET":
            continue
        names = _bodies().get(operation.name) or {}
        odd = {name: {"said": "Secret-Value-91"} for name in names} | {"unknown": "Secret-Value-91"}
        path = operation.path.format(**practice.ids)
        headers = {} if POLICY[operation.name][0] != BY_PHONE else {"Authorization": f"Bearer {practice.phone.token}"}
        response = practice.house.http.request(operation.method, path, json=odd, headers=headers)
        assert response.status_code < 500, operation
        assert "Secret-Value-91" not in response.text, operation
