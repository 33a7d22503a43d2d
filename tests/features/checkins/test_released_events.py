"""What phones of every build ever released write is taken for ever: one of them may have been silent since.

A field or a word that is new gets a new file in ``tests/vectors/events``; a file that is there is never changed.
"""

import hashlib
import json
from pathlib import Path
from typing import Any

import pytest

from steadfoot.checkins.bodies import ADAPTERS
from steadfoot.core.database import Database
from steadfoot.migrations import HEAD
from steadfoot.migrations import upgrade as steps
from steadfoot.rules.screening_questions import QUESTIONS
from tests.builders import House, Phone
from tests.features.operation.test_schema import FIRST, _to

_FOLDER = Path(__file__).parents[2] / "vectors" / "events"
RELEASED = {
    "2026-11-25": "7f05fb5b279830f072ff30d7326cc50cedeba78024c664bf179eebd24053b42d",
    "2026-11-28": "9c753c5b26b3f0df8bfdad49161318cd68a25840764bcfdb6a1fddcab3cedb00",
}
"""Each file and the digest it had on the day it was made."""
_IN_PARTS = 40


def _events(name: str) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = json.loads((_FOLDER / f"{name}.json").read_text(encoding="utf-8"))["events"]
    return found


def test_no_recorded_file_was_changed_and_none_is_left_out() -> None:
    digests = {file.stem: hashlib.sha256(file.read_bytes()).hexdigest() for file in _FOLDER.glob("*.json")}
    assert digests == RELEASED


def _words(schema: dict[str, Any], definitions: dict[str, Any]) -> set[str]:
    if "$ref" in schema:
        return _words(definitions[schema["$ref"].rpartition("/")[2]], definitions)
    found = {str(word) for word in schema.get("enum", [])}
    for part in (*schema.get("anyOf", []), *([schema["items"]] if "items" in schema else [])):
        found |= _words(part, definitions)
    return found


def _known() -> set[tuple[str, str, str]]:
    """Every kind, field and word (``""`` where any may stand) that an entry may have today."""
    found = set()
    for kind, adapter in ADAPTERS.items():
        schema = adapter.json_schema()
        for name, field in schema["properties"].items():
            found |= {(kind, name, word) for word in _words(field, schema.get("$defs", {}))} or {(kind, name, "")}
    asked = {("screening_answered", "details", question.code) for question in QUESTIONS}
    return found - {("screening_answered", "details", "")} | asked


def _said(event: dict[str, Any]) -> set[tuple[str, str, str]]:
    found = set()
    for name, value in event["body"].items():
        words = value if isinstance(value, list) else [value]
        found |= {(event["kind"], name, str(word)) for word in words} | {(event["kind"], name, "")}
    return found


def test_every_field_and_every_word_that_an_entry_may_have_was_recorded() -> None:
    recorded = {said for name in RELEASED for event in _events(name) for said in _said(event)}
    assert _known() - recorded == set(), "record what is new in a new file of tests/vectors/events"


def _send(phone: Phone, events: list[dict[str, Any]]) -> None:
    answer = phone.send(events).json()
    assert answer["refused"] == []
    assert answer["acknowledged_through"] == events[-1]["seq"]


@pytest.mark.parametrize("name", RELEASED)
def test_every_entry_ever_released_is_taken_word_for_word_also_after_the_practice_was_upgraded_under_it(
    house: House, database: Database, client_id: str, phone: Phone, name: str
) -> None:
    events = _events(name)
    _send(phone, events[:_IN_PARTS])  # before: the practice runs an older schema, the rest waits on the phone
    _to(database, FIRST, up=False)
    steps.upgrade(database)
    with database.reader.connect() as connection:
        assert steps.revision_of(connection) == HEAD
    _send(phone, events[_IN_PARTS // 2 :])  # the last reply was lost: some come twice
    items = house.get(f"/clients/{client_id}/timeline", limit=200)["items"]
    assert {one["event_id"]: one["body"] for one in items} == {event["id"]: event["body"] for event in events}
    assert len(items) == len(events)
    for page in ("overview", "adherence", "screenings"):
        house.get(f"/clients/{client_id}/{page}")


def test_an_old_build_on_a_new_practice_and_a_new_build_after_it_count_as_one_phone(
    house: House, client_id: str, phone: Phone
) -> None:
    old, new = (_events(name) for name in sorted(RELEASED)[:2])
    _send(phone, old)
    later = [{**event, "seq": event["seq"] + len(old)} for event in new]
    _send(phone, later)
    assert house.get(f"/clients/{client_id}/refused-events")["items"] == []
