"""Nobody's health, name or key reaches a log, an error or a count: all that is typed is marked, and looked for."""

import copy
import logging
import re
from collections.abc import Iterator
from typing import Any

import pytest
from fastapi import FastAPI
from fastapi.testclient import TestClient
from sqlalchemy import RootTransaction
from sqlalchemy.exc import IntegrityError, OperationalError

from steadfoot.identity.access import COOKIE
from tests.builders import API, HOST
from tests.features.access import BY_PHONE, MARKER, POLICY, Operation, Practice, bodies, operations, practice

__all__ = ["practice"]
FORGED = "\r\n2026-06-10 ERROR forged\x1b[31m ${jndi:ldap://x}"
MASS_KG, RATING = 83.4375, 7.0625
"""Numbers that nothing else here is."""


_ENDS = re.compile("listen|signOut|signIn|Session|Password|erase|Totp", re.IGNORECASE)


class _Ear(logging.Handler):
    """Hears every logger of the process. An error's own text is left to who writes lines: see operation/test_logs."""

    def __init__(self) -> None:
        super().__init__(logging.DEBUG)
        self.lines: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        self.lines.append(f"{record.name} {record.getMessage()} {record.__dict__.get('fields', '')}")


@pytest.fixture
def ear() -> Iterator[_Ear]:
    """Everything that is logged, at every level; statements of the database are, its rows would be asked for apart."""
    found, root = _Ear(), logging.getLogger()
    names = [*logging.root.manager.loggerDict, "steadfoot", "uvicorn", "sqlalchemy.engine"]
    kept = {name: logging.getLogger(name).level for name in names} | {"root": root.level}
    for name in names:
        logging.getLogger(name).setLevel(logging.INFO if name.startswith("sqlalchemy") else logging.DEBUG)
    root.addHandler(found)
    root.setLevel(logging.DEBUG)
    yield found
    root.removeHandler(found)
    for name, level in kept.items():
        logging.getLogger(name).setLevel(level)


def _marked(value: Any, mark: str) -> Any:
    """Answer a body with every text in it marked and every number made odd: most is then refused."""
    if isinstance(value, dict):
        return {key: _marked(part, mark) for key, part in value.items()}
    if isinstance(value, list):
        return [_marked(part, mark) for part in value]
    return f"{mark} {value}" if isinstance(value, str) else MASS_KG if isinstance(value, int | float) else value


def _visitor(practice: Practice, operation: Operation) -> TestClient:
    http = TestClient(practice.house.app, base_url=HOST, raise_server_exceptions=False)
    if POLICY[operation.name][0] == BY_PHONE:
        http.headers["Authorization"] = f"Bearer {practice.phone.token}"
    else:
        http.headers["Cookie"] = f"{COOKIE}={practice.house.http.cookies[COOKIE]}"
    return http


def _walk(practice: Practice, spoil: str | None = None) -> Iterator[Any]:
    """Ask everything once, what reads first; what would end the session of who asks is left out."""
    found = [one for one in operations(practice.house.app) if not _ENDS.search(one.name)]
    for operation in sorted(found, key=lambda one: (one.method != "GET", one.method == "DELETE")):
        body = copy.deepcopy(bodies().get(operation.name))
        if spoil is not None and body is not None:
            body = _marked(body, spoil)
        path = operation.path.format(**practice.ids)
        yield (
            operation,
            _visitor(practice, operation).request(
                operation.method, path, json=None if operation.method == "GET" else body
            ),
        )


def _unheard(ear: _Ear, practice: Practice) -> None:
    heard = "\n".join(ear.lines)
    secrets = [practice.phone.token, practice.house.http.cookies[COOKIE], "five huts over one ridge"]
    for mark in (MARKER, "forged", str(MASS_KG), str(RATING), "Emil", *secrets):
        assert mark not in heard, mark
    counted = practice.house.http.get("/metrics").text
    for mark in (MARKER, "forged", str(MASS_KG), "Emil", *practice.ids.values()):
        assert len(mark) < 3 or mark not in counted, mark


def test_a_walk_through_everything_leaves_no_mark(practice: Practice, ear: _Ear) -> None:
    practice.house.http.patch(
        f"{API}/clients/{practice.ids['client_id']}", json={"body_mass_kg": MASS_KG, "note": f"{MARKER}{FORGED}"}
    )
    practice.phone.log("note_written", {"text": f"{MARKER}{FORGED}"})
    practice.phone.log("pain_reported", {"rating": RATING, "region": MARKER, "side": "left", "when": "during"})
    practice.phone.sync()
    read = "".join(
        answer.text for _, answer in _walk(practice) if answer.headers.get("Content-Type") != "application/pdf"
    )
    assert MARKER in read
    assert str(MASS_KG) in read
    assert [line for line in ear.lines if line.startswith("sqlalchemy.engine")]
    _unheard(ear, practice)


def test_what_is_refused_is_not_repeated(practice: Practice, ear: _Ear) -> None:
    refused = 0
    for operation, answer in _walk(practice, f"{MARKER}{FORGED}"):
        if answer.status_code >= 400:
            assert MARKER not in answer.text, operation
            assert str(MASS_KG) not in answer.text, operation
            assert "forged" not in str(answer.headers), operation
            refused += 1
    assert refused > 25
    _unheard(ear, practice)


@pytest.mark.parametrize(
    ("error", "status"),
    [
        (IntegrityError("INSERT", {"note": MARKER}, Exception(f"unique\nDETAIL: Key (note)=({MARKER})")), 500),
        (OperationalError("INSERT", {"note": MARKER}, Exception(f"disk full\nDETAIL: {MARKER}{FORGED}")), 503),
    ],
)
def test_a_fault_in_the_midst_of_anything_tells_nothing(
    practice: Practice, ear: _Ear, monkeypatch: pytest.MonkeyPatch, error: Exception, status: int
) -> None:
    def broken(*_given: object, **_more: object) -> None:
        raise error

    with monkeypatch.context() as patch:
        patch.setattr(RootTransaction, "commit", broken)
        answers = [answer for operation, answer in _walk(practice) if operation.method != "GET"]
    assert [answer.status_code for answer in answers].count(status) > 15
    for answer in answers:
        assert MARKER not in answer.text
        assert "DETAIL" not in answer.text
    _unheard(ear, practice)


def test_who_may_ask_is_not_decided_by_an_error(
    practice: Practice, app: FastAPI, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Fails closed: where it cannot be told who asks, nothing is answered."""

    def broken(*_given: object, **_more: object) -> None:
        raise RuntimeError("who is it?")

    monkeypatch.setattr("steadfoot.identity.store.sign_in", broken)
    monkeypatch.setattr("steadfoot.identity.store.device_by_token", broken)
    for operation, answer in _walk(practice):
        if POLICY[operation.name][0] != "open":
            assert answer.status_code in (500, 401), operation
            assert MARKER not in answer.text, operation
