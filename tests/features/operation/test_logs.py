"""A log line says what happened to a request, and nothing about anybody."""

import json
import logging
from collections.abc import Iterator
from io import StringIO
from urllib.parse import quote

import pytest
from fastapi.testclient import TestClient

from steadfoot.app import create_app
from steadfoot.core import logs
from tests.builders import API, House

MARKER = "Marker-7f3a"
NASTY = '\r\n{"level": "forged"}\x1b[31m\u2028${jndi:ldap://x}'


@pytest.fixture
def written() -> Iterator[StringIO]:
    """What a server at level debug writes."""
    found, ours = StringIO(), logging.getLogger("steadfoot")
    handler = logging.StreamHandler(found)
    handler.setFormatter(logs.JsonLines())
    before = ours.level
    ours.setLevel(logging.DEBUG)
    ours.addHandler(handler)
    yield found
    ours.removeHandler(handler)
    ours.setLevel(before)


def _lines(written: StringIO) -> list[dict[str, object]]:
    return [json.loads(line) for line in written.getvalue().splitlines()]


def test_a_request_is_one_line_with_operation_status_time_and_the_id_that_the_reply_has(
    house: House, written: StringIO
) -> None:
    response = house.http.get(f"{API}/clients")
    (line,) = _lines(written)
    assert (line["operation"], line["method"], line["status"]) == ("listClients", "GET", 200)
    assert line["request_id"] == response.headers["X-Request-Id"]
    assert line["ms"] >= 0  # type: ignore[operator]
    assert str(line["time"]).endswith("+00:00")


def test_a_practice_has_the_same_pseudonym_by_cookie_and_by_phone_and_never_its_id(
    house: House, other_house: House, written: StringIO
) -> None:
    phone = house.pair(house.new_client("Emil"))
    phone.sync()
    house.get("/clients")
    other_house.get("/clients")
    named = [line["practice"] for line in _lines(written) if line["operation"] in ("sync", "listClients")]
    assert named[0] == named[1] != named[2]
    assert None not in named
    assert house.practice_id not in written.getvalue()


def test_nothing_of_anybody_is_in_a_log_whatever_is_asked_and_however_it_fails(house: House, written: StringIO) -> None:
    client_id = house.new_client(MARKER, note=MARKER)
    phone = house.pair(client_id)
    phone.log("note_written", {"text": MARKER})
    phone.log("dreamt", {"text": MARKER})
    phone.sync()
    visitor = TestClient(house.app, base_url="https://testserver", raise_server_exceptions=False)
    visitor.post(f"{API}/sign-in", json={"email": f"{MARKER}@b.example", "password": MARKER})
    visitor.get(f"{API}/caseload?name={MARKER}", headers={"Authorization": f"Bearer {MARKER}", "User-Agent": MARKER})
    visitor.get(f"/{MARKER}/{quote(NASTY)}")
    visitor.request(MARKER, "/")
    house.http.post(f"{API}/clients", json={"display_name": MARKER, "usual_pain": MARKER})
    app = create_app(house.app.state.settings, house.app.state.database, house.clock)
    app.add_api_route("/boom", _boom)
    visitor = TestClient(app, base_url="https://testserver", raise_server_exceptions=False)
    assert visitor.get("/boom").status_code == 500
    for secret in (MARKER, client_id, phone.token, phone.device_id, "maren", "Thornwater", "/api"):
        assert secret not in written.getvalue()


def _boom() -> None:
    raise ValueError(f"could not read {MARKER}")


def test_an_error_is_its_type_and_its_places_without_its_words() -> None:
    record = None
    try:
        _boom()
    except ValueError as error:
        record = logging.LogRecord("uvicorn.error", logging.ERROR, "", 0, "failed", (), (ValueError, error, None))
    assert record is not None
    line = json.loads(logs.JsonLines().format(record))
    assert line["error"] == "ValueError"
    assert any("_boom" in place for place in line["where"])
    assert MARKER not in json.dumps(line)


def test_nobody_can_write_a_line_of_their_own() -> None:
    record = logging.LogRecord("steadfoot.x", logging.INFO, "", 0, "said %s", (NASTY,), None)
    text = logs.JsonLines().format(record)
    assert len(text.splitlines()) == 1
    assert text.isascii()
    assert "\x1b" not in text
    assert json.loads(text)["level"] == "info"


def test_what_another_library_fills_into_its_words_is_left_out() -> None:
    record = logging.LogRecord("sqlalchemy.engine", logging.WARNING, "", 0, "row %s", (MARKER,), None)
    assert json.loads(logs.JsonLines().format(record))["message"] == "row %s"


def test_machines_that_ask_every_few_seconds_do_not_fill_the_log(house: House, written: StringIO) -> None:
    TestClient(house.app).get("/healthz")
    (line,) = _lines(written)
    assert (line["operation"], line["level"]) == ("isAlive", "debug")
