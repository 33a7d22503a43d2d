"""The end of a history: faults stop, phones sync, and everything that anybody was promised is looked for."""

import json
from datetime import datetime
from typing import Any

from steadfoot import operations
from tests.sync.model import practice
from tests.sync.model.template import PEOPLE
from tests.sync.model.world import Handset, World, plain

ROUNDS = 3
"""After so many calls without a fault, every phone and the practice say the same."""
_DERIVED = ("session_rollup", "pain_entry", "finding", "client_sheet", "screening")


def check(world: World, *, deep: bool = True) -> None:
    """Stop the faults, sync, and hold the world to the promise; deep: by the practice's pages, with a rebuild."""
    world.service.point.left = None
    world.network.plan = []
    world.deliver_late()
    for handset in world.handsets.values():
        _drain(world, handset)
    for person in sorted({handset.person for handset in world.handsets.values()}):
        _person(world, person, *(_shown if deep else _on_file)(world, person))
    if deep:
        for person in sorted({handset.person for handset in world.handsets.values()}):
            _same_fold(world, person)
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
        # Something on the way said in the practice's words that it takes no such entry: the phone says so.
        world.phones.call("try_again" if look["unsendable"] else "send", phone=handset.name, page=page)
        look = world.look(handset, page)
    assert (look["connection"], look["received"]) == ("ready", look["saved"]), look
    assert look["waiting_since"] is None, look


Item = tuple[str, str, str, str]
"""An entry's id, kind, recorded_at and body."""


def _on_file(world: World, person: str) -> tuple[list[Item], list[dict[str, Any]]]:
    """Answer what the database has of a person: accepted entries, and items kept aside as they came."""
    client = world.template.clients[person]
    taken = world.service.rows("SELECT id, kind, recorded_at, body FROM event WHERE client_id = ?", client)
    query = "SELECT raw FROM refused_event WHERE client_id = ? AND accepted_at IS NULL"
    aside = [json.loads(raw) for (raw,) in world.service.rows(query, client)]
    return [(event_id, kind, at, plain(json.loads(body))) for event_id, kind, at, body in taken], aside


def _shown(world: World, person: str) -> tuple[list[Item], list[dict[str, Any]]]:
    """Answer the same as the practice's pages show it."""
    path = f"/clients/{world.template.clients[person]}"
    items: list[Item] = []
    cursor: str | None = ""
    while cursor is not None:
        found = world.get(PEOPLE[person], f"{path}/timeline?limit=200" + (f"&cursor={cursor}" if cursor else ""))
        items += [(one["event_id"], one["kind"], one["at"], plain(one["body"])) for one in found["items"]]
        cursor = found["next_cursor"]
    aside = world.get(PEOPLE[person], f"{path}/refused-events")["items"]
    return items, [json.loads(one["raw"]) for one in aside]


def _person(world: World, person: str, items: list[Item], aside: list[dict[str, Any]]) -> None:
    """Everything once, nothing made up, nothing silent, and the same on the phone."""
    ids = [item[0] for item in items]
    assert len(ids) == len(set(ids)), "an entry is there twice"
    for _, kind, _, body in items:
        assert (person, kind, body) in world.entered, f"nobody entered {kind} {body}"
    there, kept_aside = set(ids), {one["id"] for one in aside}
    known = {(event_id, at, body) for event_id, _, at, body in items}
    known |= {(one["id"], one["recorded_at"], plain(one["body"])) for one in aside}
    for handset in world.handsets.values():
        if handset.person == person:
            _phone(world, handset, there, kept_aside, known)
    _acknowledged(world, person, there | kept_aside)


def _moment(at: str) -> datetime:
    return datetime.fromisoformat(at)


def _phone(world: World, handset: Handset, ids: set[str], aside: set[str], known: set[tuple[str, str, str]]) -> None:
    """What the phone holds (A1) is at the practice, taken or visibly kept aside; and the phone says which."""
    stored = world.stored(handset)
    here = {event["id"] for event in stored["events"]}
    lost = here - ids - aside
    assert not lost, f"{handset.name} holds what the practice has not: {lost}"
    moments = {(event_id, _moment(at), body) for event_id, at, body in known}
    for event in stored["events"]:
        said = (event["id"], _moment(event["recorded_at"]), plain(event["body"]))
        assert said in moments, f"{handset.name} says otherwise: {event}"
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
    mine = {one for whose, one in world.held if whose == person}
    assert mine <= there, f"acknowledged and gone: {mine - there}"


def _same_fold(world: World, person: str) -> None:
    """What the phone's code makes of all entries is what the practice tells a phone."""
    handset = next(one for one in world.handsets.values() if one.person == person)
    device = dict(world.stored(handset)["keep"])["device"]
    heard = world.service.ask("GET", "/api/v1/history", {"Authorization": f"Bearer {device['token']}"})
    assert heard is not None
    query = "SELECT id, seq, kind, recorded_at, body FROM event WHERE client_id = ?"
    columns = ("id", "seq", "kind", "recorded_at", "body")
    rows = [dict(zip(columns, row, strict=True)) for row in world.service.rows(query, world.template.clients[person])]
    mine = world.phones.call("fold", events=[row | {"body": json.loads(row["body"])} for row in rows])
    told = [_as_folded(one) for one in heard.json()["items"]]
    since = heard.json()["since"]
    recent = [one for one in mine if one["planned_id"].removeprefix("extra.")[:10] >= since]
    assert sorted(recent, key=_planned) == sorted(told, key=_planned)


def _planned(one: dict[str, Any]) -> str:
    return str(one["planned_id"])


def _as_folded(one: dict[str, Any]) -> dict[str, Any]:
    return {"sets_done" if key == "sets" else key: value for key, value in one.items() if key != "day"}


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
