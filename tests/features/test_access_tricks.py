"""Ids in disguise, ids where they do not belong, fields that nobody may set, and secrets that nobody is told."""

import copy
from collections.abc import Iterator
from typing import Any
from urllib.parse import quote

import httpx
import pytest
from fastapi import FastAPI
from sqlalchemy import text

from steadfoot.core.database import Database
from steadfoot.core.ids import uuid7
from steadfoot.schema import METADATA
from tests.builders import API, House, circuit, content, step_down
from tests.conftest import START
from tests.features.access import (
    BY_COOKIE,
    BY_EITHER,
    BY_PHONE,
    FOUND,
    OPEN,
    POLICY,
    Operation,
    Practice,
    bodies,
    furnished,
    named,
    nobody,
    operations,
)

_NOT_ASKED = ("listen",)
_COUNTED = ("number",)
"""Part of a path that is no id."""
_SECRET_COLUMNS = {"password_hash", "token_digest", "code_digest", "content_digest"}


@pytest.fixture
def practice(house: House) -> Practice:
    return furnished(house)


def _ask(http: httpx.Client, operation: Operation, ids: dict[str, str]) -> httpx.Response:
    path = operation.path.format(**ids)
    body = None if operation.method == "GET" else bodies().get(operation.name)
    return http.request(operation.method, path, json=body)


def _without_path(response: httpx.Response) -> tuple[int, Any]:
    return response.status_code, {name: value for name, value in response.json().items() if name != "instance"}


def test_another_practices_id_and_one_that_never_was_get_the_same_answer(
    practice: Practice, other_house: House, app: FastAPI
) -> None:
    nowhere = {name: uuid7(START) if name != "number" else "1" for name in practice.ids}
    nowhere["own_code"] = practice.ids["own_code"][:-4] + "zzzz"
    for operation in named(app, BY_COOKIE):
        if POLICY[operation.name][1] == FOUND:
            foreign, missing = (_ask(other_house.http, operation, ids) for ids in (practice.ids, nowhere))
            assert _without_path(foreign) == _without_path(missing), operation
            assert foreign.status_code == 404, operation


_DISGUISES = {
    "large letters": str.upper,
    "a space before": lambda one: f"%20{one}",
    "a space after": lambda one: f"{one}%20",
    "a line's end": lambda one: f"{one}%0A",
    "a way around": lambda one: f"{one}%2F..%2F{one}",
    "no hyphens": lambda one: one.replace("-", ""),
    "braces": lambda one: quote(f"{{{one}}}"),
    "a wildcard": lambda one: f"{one[:-1]}%25",
    "or everything": lambda one: quote(f"{one}' OR '1'='1"),
    "two": lambda one: f"{one},{one}",
}


def test_an_id_in_disguise_is_no_id(practice: Practice, app: FastAPI) -> None:
    for operation in named(app, BY_COOKIE):
        names = [name for name in practice.ids if f"{{{name}}}" in operation.path and name not in _COUNTED]
        for disguise in _DISGUISES.values() if POLICY[operation.name][1] == FOUND else ():
            changed = {name: disguise(practice.ids[name]) for name in names}
            if changed != {name: practice.ids[name] for name in names}:
                answer = _ask(practice.house.http, operation, {**practice.ids, **changed})
                assert answer.status_code in (404, 405), (operation, changed, answer.text)


def test_an_id_of_another_kind_is_no_id(practice: Practice, app: FastAPI) -> None:
    kinds = [name for name in practice.ids if name not in ("number", "code")]
    turned = dict(zip(kinds, [practice.ids[name] for name in kinds[1:] + kinds[:1]], strict=True))
    for operation in named(app, BY_COOKIE):
        if POLICY[operation.name][1] == FOUND:
            assert _ask(practice.house.http, operation, {**practice.ids, **turned}).status_code == 404, operation


@pytest.fixture
def theirs(other_house: House) -> Practice:
    """Another practice, with one of everything too."""
    return furnished(other_house)


def _naming(mine: Practice, theirs: Practice) -> Iterator[tuple[str, str, Any]]:
    """Answer requests about this practice that name another one's things in query or body."""
    client = f"/clients/{mine.ids['client_id']}"
    own = step_down(exercise=theirs.ids["own_code"], variant="up")
    program = content(START.date(), sessions=[circuit(prescriptions=[own])])
    lay = {"template": theirs.ids["template_id"], "starts_on": "2026-06-15", "ends_on": "2026-07-26"}
    yield "POST", f"{client}/programs/drafts/from-template", lay
    yield "POST", f"{client}/programs", {"content": program}
    yield "POST", "/class-sheets", {"title": "x", "movements": [{"exercise": theirs.ids["own_code"], "variant": "up"}]}
    yield "GET", f"/flags?client_id={theirs.ids['client_id']}", None
    yield "GET", f"/exercises/{theirs.ids['own_code']}", None
    yield "GET", f"/exercises/{theirs.ids['own_code']}/alternatives", None
    yield "GET", f"/exercises/{theirs.ids['own_code']}/poses?variant=up&key=up", None
    yield "POST", f"{client}/refused-events/{theirs.ids['event_id']}/retries", None
    yield "GET", f"/flags?client_id={mine.ids['client_id']}&client_id={theirs.ids['client_id']}", None


def test_what_belongs_to_another_practice_can_be_named_nowhere(practice: Practice, theirs: Practice) -> None:
    before = _everything(theirs)
    for method, path, body in _naming(practice, theirs):
        answer = practice.house.http.request(method, f"{API}{path}", json=body)
        assert answer.status_code in (404, 409, 422), (path, answer.text)
    assert _everything(theirs) == before


def _everything(practice: Practice) -> list[str]:
    client = f"/clients/{practice.ids['client_id']}"
    paths = [
        "/flags",
        "/templates",
        "/exercises",
        client,
        f"{client}/timeline",
        f"{client}/messages",
        f"{client}/overview",
    ]
    return [practice.house.http.get(f"{API}{path}").text for path in paths]


def test_entries_about_another_client_between_good_ones_change_only_what_is_ones_own(
    practice: Practice, theirs: Practice
) -> None:
    before = _everything(theirs)
    event = theirs.phone.events[0]
    message = theirs.house.get(f"/clients/{theirs.ids['client_id']}/messages")["items"][0]["id"]
    phone = practice.phone
    phone.log("note_written", {"text": "good"})
    phone.log("entry_withdrawn", {"event_id": event["id"]})
    phone.log("message_read", {"message_id": message})
    phone.log("note_written", {"text": "x", "client_id": theirs.ids["client_id"]})
    phone.events[-1]["practice_id"] = theirs.house.practice_id
    phone.log("note_written", {"text": "x"})
    phone.events[-1]["id"] = event["id"]
    phone.log("note_written", {"text": "good"})
    answer = phone.sync()
    assert answer["acknowledged_through"] == len(phone.events)
    assert {found["seq"] for found in answer["refused"]} >= {7, 8}
    assert not {4, 9} & {found["seq"] for found in answer["refused"]}
    assert _everything(theirs) == before
    assert theirs.phone.sync()["acknowledged_through"] == len(theirs.phone.events)


_COLUMNS = sorted({column.name for table in METADATA.sorted_tables for column in table.columns} | {"role", "is_admin"})


_WANTED = ["practice_id", "client_id", "created_at", "password_hash", "recorded_by", "role"]


def _spots(body: Any, way: str = "/body") -> Iterator[tuple[str, dict[str, Any]]]:
    """Answer every object inside a body, with its pointer."""
    if isinstance(body, dict):
        yield way, body
    inside = body.items() if isinstance(body, dict) else enumerate(body) if isinstance(body, list) else ()
    for key, part in inside:
        yield from _spots(part, f"{way}/{key}")


def test_no_column_can_be_set_by_naming_it(practice: Practice, app: FastAPI) -> None:
    """What a body does not declare is refused by name: every column at its top, the most wanted in each object."""
    tried = 0
    for operation in operations(app):
        ready = bodies().get(operation.name)
        for place in range(len(list(_spots(ready)))):
            body = copy.deepcopy(ready)
            pointer, spot = list(_spots(body))[place]
            added = {column for column in (_COLUMNS if pointer == "/body" else _WANTED) if column not in spot}
            spot.update(dict.fromkeys(added, "Taken over"))
            path = operation.path.format(**practice.ids)
            answer = practice.house.http.request(operation.method, path, json=body)
            assert answer.status_code == 422, (operation, pointer, answer.text)
            refused = {error["pointer"].rpartition("/")[2] for error in answer.json()["errors"]}
            assert added - refused <= (_declared(app, operation) if pointer == "/body" else set()), (operation, pointer)
            tried += 1
    assert tried > 60


def _declared(app: FastAPI, operation: Operation) -> set[str]:
    found = app.openapi()["paths"][operation.path][operation.method.lower()]["requestBody"]["content"]
    schema = found["application/json"]["schema"]
    one = schema.get("$ref") or next(part["$ref"] for part in schema["anyOf"] if "$ref" in part)
    return set(app.openapi()["components"]["schemas"][one.rpartition("/")[2]]["properties"])


def test_no_column_can_be_set_by_an_entry_of_a_phone(practice: Practice) -> None:
    for column in _COLUMNS:
        practice.phone.log("note_written", {"text": "x", **({} if column == "text" else {column: "Taken over"})})
    answer = practice.phone.sync()
    allowed = {"text", "planned_id", "day", "program_version"}
    assert len(answer["refused"]) >= len([column for column in _COLUMNS if column not in allowed])


def _keys(value: Any) -> Iterator[str]:
    for spot in (found for _, found in _spots(value)):
        yield from spot


def test_no_answer_has_a_secret_in_it(practice: Practice, app: FastAPI, database: Database) -> None:
    with database.read() as session:
        hashes = [
            row[0]
            for table, column in (("practitioner", "password_hash"), ("sign_in", "token_digest"))
            for row in session.execute(text(f"SELECT {column} FROM {table}"))
        ]
        hashes += [row[0] for row in session.execute(text("SELECT token_digest FROM device"))]
        hashes += [row[0] for row in session.execute(text("SELECT code_digest FROM invitation"))]
    token = {"Authorization": f"Bearer {practice.phone.token}"}
    answers = []
    for operation in operations(app):
        if operation.name not in _NOT_ASKED and operation.method == "GET":
            as_phone = POLICY[operation.name][0] in (BY_PHONE, BY_EITHER)
            answers.append(practice.ask(practice.house.http, operation))
            answers += [practice.ask(nobody(app), operation, **token)] if as_phone else []
    answers.append(practice.phone.send([]))
    for answer in answers:
        assert not [secret for secret in hashes if secret in answer.text], answer.url
        if answer.headers.get("Content-Type") == "application/json":
            assert not _SECRET_COLUMNS & set(_keys(answer.json())), answer.url
    assert len(hashes) >= 5


def test_a_phone_is_told_nothing_that_only_the_practice_knows(practice: Practice) -> None:
    """The practitioner's own notes on a client, and everybody else's names."""
    http = nobody(practice.house.app)
    token = {"Authorization": f"Bearer {practice.phone.token}"}
    practice.house.new_client("Somebody Else", note="Somebody else's note")
    said = practice.phone.send([]).text + http.get(f"{API}/history", headers=token).text
    client = practice.house.get(f"/clients/{practice.ids['client_id']}")
    assert client["note"]
    keys = set(_keys(practice.phone.send([]).json()))
    assert not keys & {"note_of_practitioner", "birth_year", "body_mass_kg", "email", "password_hash", "practice_id"}
    assert "Somebody" not in said
    assert practice.house.get("/me")["practitioner"]["email"] not in said


def test_what_is_open_to_all_names_nobody(practice: Practice, app: FastAPI) -> None:
    for operation in named(app, OPEN):
        answer = practice.ask(nobody(app), operation)
        assert practice.ids["client_id"] not in answer.text, operation
        assert practice.house.practice_id not in answer.text, operation
