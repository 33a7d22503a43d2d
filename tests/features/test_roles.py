"""What each role may ask: the whole OpenAPI document, walked as everyone a practice may have."""

import pytest
from fastapi import FastAPI
from sqlalchemy import text

from steadfoot.core.database import Database
from steadfoot.identity import roles
from steadfoot.schema import METADATA
from tests.builders import House
from tests.features.access import (
    BY_COOKIE,
    BY_EITHER,
    Operation,
    Practice,
    named,
    operations,
    practice,
)
from tests.features.access_roles import OWN_ACCOUNT, OWNERS_ONLY, STORES_NOTHING

__all__ = ["practice"]
_ENDLESS = "listen"


def _asked(app: FastAPI) -> list[Operation]:
    return [operation for operation in named(app, BY_COOKIE, BY_EITHER) if operation.name != _ENDLESS]


def _refusal(practice: Practice, house: House, operation: Operation) -> str | None:
    response = practice.ask(house.http, operation)
    # 412: an earlier operation of this walk has changed it meanwhile; 404: or removed it.
    assert response.status_code in (200, 201, 204, 403, 404, 409, 412, 422), (operation, response.text)
    return response.json()["code"] if response.status_code == 403 else None


def _dump(database: Database) -> dict[str, list[str]]:
    with database.read() as session:
        tables = [table for name, table in METADATA.tables.items() if not name.startswith("audit_")]
        return {table.name: sorted(map(repr, session.execute(table.select()).all())) for table in tables}


def test_who_may_only_read_gets_every_page_and_changes_nothing(
    practice: Practice, app: FastAPI, database: Database
) -> None:
    reader = practice.house.colleague("read_only", "reader@thornwater.example")
    before = _dump(database)  # the log of who saw what grows by seeing
    for operation in _asked(app):
        if operation.name in OWN_ACCOUNT:
            continue
        if operation.name in OWNERS_ONLY:
            expected = "owner-only"
        elif operation.method == "GET" or operation.name in STORES_NOTHING:
            expected = None
        else:
            expected = "read-only"
        assert _refusal(practice, reader, operation) == expected, operation
    assert _dump(database) == before


@pytest.mark.parametrize("role", ["read_only", "practitioner"])
def test_everyone_keeps_their_own_account_in_order(practice: Practice, app: FastAPI, role: str) -> None:
    person = practice.house.colleague(role, "own@thornwater.example")
    for operation in operations(app):
        if operation.name in OWN_ACCOUNT:
            assert _refusal(practice, person, operation) is None, operation


def test_a_practitioner_may_all_but_what_is_the_owners(practice: Practice, app: FastAPI) -> None:
    person = practice.house.colleague("practitioner", "own@thornwater.example")
    for operation in _asked(app):
        expected = "owner-only" if operation.name in OWNERS_ONLY else None
        assert _refusal(practice, person, operation) == expected, operation


def test_an_owner_is_refused_nothing(practice: Practice, app: FastAPI) -> None:
    owner = practice.house.colleague("owner", "second@thornwater.example")
    for operation in _asked(app):
        assert _refusal(practice, owner, operation) is None, operation


@pytest.mark.parametrize("role", ["read_only", "owner"])
def test_who_lacks_the_required_second_factor_can_only_set_one_up(
    practice: Practice, app: FastAPI, database: Database, role: str
) -> None:
    person = practice.house.colleague(role, "late@thornwater.example")
    with database.write() as session:
        session.execute(text("UPDATE practice SET requires_second_factor = (1 = 1)"))
    for operation in _asked(app):
        may = operation.name in OWN_ACCOUNT | {"readMe", "readAccount", "listSessions"}
        expected = None if may else "second-factor-required"
        assert _refusal(practice, person, operation) == expected, operation
    assert person.get("/me")["must_set_up_second_factor"] is True


def test_every_name_on_a_list_is_an_operation(app: FastAPI) -> None:
    """An operation that was renamed would fall off its list without a word."""
    assert roles.OWN_ACCOUNT - {"signOut"} == OWN_ACCOUNT
    assert (roles.OWNER_ONLY, roles.STORES_NOTHING) == (OWNERS_ONLY, STORES_NOTHING)
    assert {one.name for one in operations(app)} >= roles.SETTING_UP | roles.OWNER_ONLY | roles.STORES_NOTHING
