"""What a practitioner does meanwhile. A server that dies under it leaves it done or not done, never half."""

from collections.abc import Callable
from contextlib import suppress
from datetime import timedelta
from typing import Any

from tests.sync.model.phones import Failed
from tests.sync.model.service import Heard
from tests.sync.model.template import EMPTY, MONDAY, PEOPLE, program
from tests.sync.model.world import Handset, World

ANSWERED_BADLY = 500


def _fine(heard: Heard | None, *also: int) -> bool:
    """Answer whether it was done; a server that died, or whose disk failed, leaves it unknown."""
    assert heard is None or heard.status in (200, 201, *also) or heard.status >= ANSWERED_BADLY, heard
    return heard is not None and heard.status in (200, 201)


def _first(world: World, word: str, path: str, number: int) -> Any:
    """Answer one item of a list, or None."""
    heard = world.ask(word, "GET", path)
    items = heard.json()["items"] if heard is not None and heard.status == 200 else []
    return items[number % len(items)] if items else None


def publish(world: World, person: str, number: int) -> None:
    """Publish a version."""
    word, client = PEOPLE[person], world.template.clients[person]
    content = program(word, number, MONDAY + timedelta(days=number % 3))
    _fine(world.ask(word, "POST", f"/clients/{client}/programs", {"content": content}), 409, 422)


def message(world: World, person: str, number: int) -> None:
    """Send words."""
    word, client = PEOPLE[person], world.template.clients[person]
    heard = world.ask(word, "POST", f"/clients/{client}/messages", {"text": f"{word} says {number}"})
    if _fine(heard):
        assert heard is not None
        world.sent[heard.json()["id"]] = person


def answer(world: World, person: str, number: int) -> None:
    """Answer a flag, if there is one."""
    word = PEOPLE[person]
    flag = _first(world, word, f"/flags?client_id={world.template.clients[person]}", number)
    if flag is None:
        return
    choices = ({"action": "acknowledge"}, {"action": "message", "message": f"{word} answers"}, {"action": "ease_off"})
    _fine(world.ask(word, "POST", f"/flags/{flag['id']}/decisions", choices[number % 3]), 409, 422)


def threshold(world: World, person: str, number: int) -> None:
    """Set another stop for pain: what was reported is judged again."""
    client = world.template.clients[person]
    body = {"thresholds": {"pain_stop": 3 + number % 5}}
    _fine(world.ask(PEOPLE[person], "PATCH", f"/clients/{client}", body), 422)


def retry(world: World, person: str, number: int) -> None:
    """Try an entry again that was kept aside."""
    client = world.template.clients[person]
    item = _first(world, PEOPLE[person], f"/clients/{client}/refused-events", number)
    if item is not None:
        path = f"/clients/{client}/refused-events/{item['event_id']}/retries"
        _fine(world.ask(PEOPLE[person], "POST", path))


def revoke(world: World, person: str, number: int) -> None:
    """Unpair a phone: what it had sent stays, what it holds stays on it."""
    client = world.template.clients[person]
    device = _first(world, PEOPLE[person], f"/clients/{client}/devices", number)
    if device is not None:
        _fine(world.ask(PEOPLE[person], "POST", f"/devices/{device['id']}/revocations"), 404, 409)


def new_phone(world: World, person: str, number: int) -> None:
    """Give somebody a phone that has nothing of theirs."""
    name = f"{person}-new-{len(world.handsets)}"
    pair(world, world.switch_on(name, person, EMPTY, locks=number % 2 == 0))


def pair(world: World, handset: Handset) -> bool:
    """Pair a phone, for the first time or again; answer whether the practice could give a code."""
    path = f"/clients/{world.template.clients[handset.person]}/invitations"
    heard = world.ask(handset.word, "POST", path, {"delivery": "in_person"})
    if not _fine(heard):
        return False
    assert heard is not None
    page = world.page(handset)
    world.network.plan = []
    with suppress(Failed):
        world.phones.call("pair", phone=handset.name, page=page, code=heard.json()["code"])
    return True


ACTS: tuple[Callable[[World, str, int], None], ...] = (
    publish,
    message,
    answer,
    threshold,
    retry,
    revoke,
    new_phone,
)
