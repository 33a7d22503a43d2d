"""The end of a history: faults stop, phones sync, and everything that anybody was promised is looked for."""

import json
from typing import Any

from steadfoot import operations
from tests.sync.model import practice
from tests.sync.model.template import PEOPLE
from tests.sync.model.world import Handset, World, content_of, plain

ROUNDS = 3
"""After so many calls without a fault, every phone and the practice say the same."""
_DERIVED = ("session_rollup", "pain_entry", "finding", "client_sheet", "screening")


def check(world: World) -> None:
    """Stop the faults, sync, and hold the world to the promise."""
    world.service.point.left = None
    world.network.plan = []
    world.deliver_late()
    for handset in world.handsets.values():
        _drain(world, handset)
    for person in sorted({handset.person for handset in world.handsets.values()}):
        _person(world, person)
    _rebuilt(world)


def _drain(world: World, handset: Handset) -> None:
    """Open the app anew; one that the practice does not know any more is paired again."""
    for page in handset.pages:
        world.phones.call("close", phone=handset.name, page=page)
    handset.pages = []
    page = world.open(handset, [])
    if world.look(handset, page)["connection"] in ("revoked", "unpaired"):
        assert practice.pair(world, handset)
    look = world.look(handset, page)
    for _ in range(ROUNDS - 1):
        if look["connection"] == "ready" and look["received"] == look["saved"]:
            break
        world.phones.call("send", phone=handset.name, page=page)
        look = world.look(handset, page)
    assert (look["connection"], look["received"]) == ("ready", look["saved"]), look
    assert look["waiting_since"] is None, look


def _timeline(world: World, person: str) -> list[dict[str, Any]]:
    path = f"/clients/{world.template.clients[person]}/timeline?limit=200"
    items, cursor = [], ""
    while cursor is not None:
        found = world.get(PEOPLE[person], path + (f"&cursor={cursor}" if cursor else ""))
        items += found["items"]
        cursor = found["next_cursor"]
    return items


def _person(world: World, person: str) -> None:
    """Everything once, nothing made up, nothing silent, and the same on the phone."""
    items = _timeline(world, person)
    aside = world.get(PEOPLE[person], f"/clients/{world.template.clients[person]}/refused-events")["items"]
    ids = [item["event_id"] for item in items]
    assert len(ids) == len(set(ids)), "an entry is there twice"
    for item in items:
        assert (person, item["kind"], plain(item["body"])) in world.entered, f"nobody entered {item}"
    kept = {content_of(person, json.loads(item["raw"])) for item in aside} | {
        (person, item["kind"], _as_written(item), plain(item["body"])) for item in items
    }
    for handset in world.handsets.values():
        if handset.person == person:
            _phone(world, handset, set(ids), {item["event_id"] for item in aside}, kept)
    _acknowledged(world, person, set(ids) | {item["event_id"] for item in aside})
    _same_fold(world, person, items)


def _as_written(item: dict[str, Any]) -> str:
    return str(item["at"])


def _phone(world: World, handset: Handset, ids: set[str], aside: set[str], kept: set[Any]) -> None:
    """What the phone holds (A1) is at the practice, taken or visibly kept aside; and the phone says which."""
    stored = world.stored(handset)
    here = {event["id"] for event in stored["events"]}
    lost = here - ids - aside
    assert not lost, f"{handset.name} holds what the practice has not: {lost}"
    assert handset.told <= here, f"{handset.name} said saved and has not: {handset.told - here}"
    seqs = [event["seq"] for event in stored["events"]]
    assert seqs == list(range(1, len(seqs) + 1)), f"numbers with a gap: {seqs}"
    look = world.look(handset, handset.pages[0])
    silent = (here - ids) - set(look["refused"])
    assert not silent, f"{handset.name} does not say that these were not taken: {silent}"
    assert set(look["ids"]) == here
    messages = {one for one, to in world.sent.items() if to == handset.person}
    assert messages <= set(look["messages"]), f"{handset.name} lacks a message"
    assert len(look["messages"]) == len(set(look["messages"])), "a message is there twice"


def _acknowledged(world: World, person: str, there: set[str]) -> None:
    """What was acknowledged (A2) is there, unless a restore lost it together with its phone's storage."""
    mine = {one for one in world.held if any(content[0] == person for content in world.entries.get(one, []))}
    assert mine <= there, f"acknowledged and gone: {mine - there}"


def _same_fold(world: World, person: str, items: list[dict[str, Any]]) -> None:
    """What the phone's code makes of all entries is what the practice tells a phone."""
    handset = next(one for one in world.handsets.values() if one.person == person)
    device = dict(world.stored(handset)["keep"])["device"]
    heard = world.service.ask("GET", "/api/v1/history", {"Authorization": f"Bearer {device['token']}"})
    assert heard is not None
    seqs = {row[0]: row[1] for row in world.service.rows("SELECT id, seq FROM event")}
    events = [
        {"id": item["event_id"], "seq": seqs[item["event_id"]], "recorded_at": item["at"], **_said(item)}
        for item in items
    ]
    told = [{"sets_done" if key == "sets" else key: value for key, value in one.items()} for one in heard.json()["items"]]
    for one in told:
        del one["day"]
    mine = world.phones.call("fold", events=events)
    assert sorted(mine, key=lambda one: one["planned_id"]) == sorted(told, key=lambda one: one["planned_id"])


def _said(item: dict[str, Any]) -> dict[str, Any]:
    return {"kind": item["kind"], "body": item["body"]}


def _derived(world: World) -> list[list[tuple[Any, ...]]]:
    return [sorted(world.service.rows(f"SELECT * FROM {table}"), key=repr) for table in _DERIVED]


def _rebuilt(world: World) -> None:
    """Derived rows are, byte for byte, what a rebuild makes of the facts, once a reader has asked."""
    for word in sorted({handset.word for handset in world.handsets.values()}):
        world.get(word, "/caseload")
    before = _derived(world)
    assert world.service.database is not None
    operations.rebuild(world.service.database)
    assert _derived(world) == before, "a rebuild makes other rows than upkeep did"
