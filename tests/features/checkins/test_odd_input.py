"""A whole call that is odd is answered in plain words with a 4xx; it never brings the server down (T18, T19)."""

import gzip
import json
from typing import Any

import pytest
from httpx import Response

from tests.builders import API, Phone


def _post(phone: Phone, content: bytes, **headers: str) -> Response:
    given = {"Authorization": f"Bearer {phone.token}", "Content-Type": "application/json", **headers}
    return phone.http.post(f"{API}/sync", content=content, headers=given)


def _batch(events: list[Any]) -> bytes:
    return json.dumps({"cursor": 0, "events": events}).encode()


@pytest.mark.parametrize(
    ("content", "status", "code"),
    [
        (b"", 422, "validation"),
        (b"not json", 400, "unreadable"),
        (b'{"cursor": 0, "events": [', 400, "unreadable"),
        (b"[]", 422, "validation"),
        (b"null", 422, "validation"),
        (b'"text"', 422, "validation"),
        (b"\xff\xfe", 400, "unreadable"),
        (b'{"events": {}}', 422, "validation"),
        (b'{"events": null}', 422, "validation"),
        (b'{"cursor": "7"}', 422, "validation"),
        (b'{"cursor": true}', 422, "validation"),
        (b'{"cursor": -1}', 422, "validation"),
        (b'{"cursor": 1.5}', 422, "validation"),
        (b'{"cursor": NaN}', 422, "validation"),
        (b'{"cursor": 1e999}', 422, "validation"),
        (b'{"cursor": 9007199254740992}', 422, "validation"),
        (b'{"unknown": 1}', 422, "validation"),
    ],
)
def test_a_call_that_is_no_sync_is_refused_in_words(phone: Phone, content: bytes, status: int, code: str) -> None:
    response = _post(phone, content)
    assert (response.status_code, response.json()["code"]) == (status, code)
    assert response.headers["Content-Type"] == "application/problem+json"
    assert response.json()["detail"]


@pytest.mark.parametrize("number", ["NaN", "Infinity", "1e999", "-1e999", "1" * 400, "9223372036854775808", "-0.5"])
@pytest.mark.parametrize(("kind", "field"), [("session_finished", "minutes"), ("walk_logged", "distance_km")])
def test_a_number_that_no_column_holds_is_refused_alone(phone: Phone, number: str, kind: str, field: str) -> None:
    least = {"distance_km": 1, "ascent_m": 1, "descent_m": 1, "minutes": 1, "pack_kg": 1}
    body = least if kind == "walk_logged" else {"minutes": 1, "effort": 1}
    event = phone.log(kind, {**body, field: "HERE"})
    good = phone.log("note_written", {"text": "good"})
    response = _post(phone, _batch([event, good]).replace(b'"HERE"', number.encode()))
    assert response.status_code == 200
    assert [(found["seq"], found["problem"]["errors"][0]["pointer"]) for found in response.json()["refused"]] == [
        (1, f"/{field}")
    ]
    assert response.json()["acknowledged_through"] == 2


@pytest.mark.parametrize("text", ['"\\ud800"', '"\\udfff\\ud800"', '"\\u0000"', '"x\\ud83dx"'])
def test_text_that_no_database_holds_is_refused_alone(phone: Phone, text: str) -> None:
    event, good = phone.log("note_written", {"text": "HERE"}), phone.log("note_written", {"text": "good"})
    response = _post(phone, _batch([event, good]).replace(b'"HERE"', text.encode()))
    assert response.status_code == 200
    assert [found["seq"] for found in response.json()["refused"]] == [1]
    assert response.json()["acknowledged_through"] == 2


def test_a_field_whose_name_is_odd_is_refused_alone(phone: Phone) -> None:
    for name in ("\ud800", "\x00", "/", "~", "", "n" * 10_000, "__proto__"):
        phone.log("note_written", {"text": "x", name: 1})
    response = _post(phone, _batch(phone.events))
    assert response.status_code == 200
    assert len(response.json()["refused"]) == len(phone.events)
    assert response.json()["acknowledged_through"] == len(phone.events)


def test_an_entry_nested_deeper_than_anyone_can_read_is_refused(phone: Phone) -> None:
    phone.log("note_written", {"text": "DEEP"})
    for depth in (50, 400, 5_000, 100_000):
        response = _post(phone, _batch(phone.events).replace(b'"DEEP"', b"[" * depth + b"]" * depth))
        assert response.status_code in (200, 400), depth
    assert phone.send([]).status_code == 200


def test_a_call_takes_500_events_and_refuses_501(phone: Phone) -> None:
    for _ in range(501):
        phone.log("session_started", {})
    assert phone.send(phone.events).status_code == 422
    assert phone.send(phone.events[:500]).json()["acknowledged_through"] == 500


def test_a_body_of_more_than_two_million_bytes_is_refused_and_one_just_below_is_read(phone: Phone) -> None:
    event = phone.log("note_written", {"text": "x" * 1_999_000})
    response = _post(phone, _batch([event]))
    assert response.status_code == 200
    assert response.json()["refused"][0]["problem"]["code"] == "body"
    assert _post(phone, _batch([event]) + b" " * 2_000_000).status_code == 413


def test_a_packed_body_is_taken_as_if_it_were_not(phone: Phone) -> None:
    phone.log("note_written", {"text": "packed"})
    packed = gzip.compress(_batch(phone.events))
    assert _post(phone, packed, **{"Content-Encoding": "gzip"}).json()["acknowledged_through"] == 1
    assert phone.send(phone.events).json()["refused"] == []


def test_a_small_packed_body_that_swells_is_refused(phone: Phone) -> None:
    bomb = gzip.compress(b" " * 200_000_000)
    assert len(bomb) < 250_000
    assert _post(phone, bomb, **{"Content-Encoding": "gzip"}).status_code == 413


@pytest.mark.parametrize("cut", [0, 5, 15, 60])
def test_a_packed_body_that_is_cut_or_no_gzip_is_refused(phone: Phone, cut: int) -> None:
    phone.log("note_written", {"text": "packed and cut"})
    packed = gzip.compress(_batch(phone.events))[:cut] or b"plain"
    assert _post(phone, packed, **{"Content-Encoding": "gzip"}).status_code in (400, 422)


@pytest.mark.parametrize("content_type", ["text/plain", "application/x-www-form-urlencoded", "multipart/form-data"])
def test_a_body_that_a_form_could_send_is_refused(phone: Phone, content_type: str) -> None:
    response = _post(phone, _batch([]), **{"Content-Type": content_type})
    assert response.status_code in (415, 422)


@pytest.mark.parametrize(
    ("once", "twice"),
    [
        (b'"rating": 4', b'"rating": 4, "rating": 9'),
        (b'"seq": 1', b'"seq": 1, "seq": 2'),
        (b'"cursor": 0', b'"cursor": 0, "cursor": 0'),
        (b'"rating": 4', b'"rating": 4, "r\\u0061ting": 4'),
    ],
)
def test_a_call_that_names_a_field_twice_is_refused_whole_and_stores_nothing(
    phone: Phone, once: bytes, twice: bytes
) -> None:
    phone.log("pain_reported", {"rating": 4, "region": "knee", "side": "left", "when": "during"})
    content = _batch(phone.events)
    response = _post(phone, content.replace(once, twice))
    assert twice in content.replace(once, twice)
    assert (response.status_code, response.json()["code"]) == (400, "repeated-name")
    assert phone.send([]).json()["acknowledged_through"] == 0
    assert _post(phone, content).json()["acknowledged_through"] == 1
