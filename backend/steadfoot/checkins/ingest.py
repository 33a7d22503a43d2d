"""Decides what becomes of each item of a batch. Pure: it is told what is held, and answers what to store."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any

from steadfoot.checkins.reading import Item, Reading, problem

_REUSED = "This id came before with other content. Both are kept; a person has to look."
_TAKEN = "This number is held by another entry: two phones count as one. The phone needs numbers of its own."


@dataclass(slots=True)
class Held:
    """What the practice holds that a batch can meet."""

    client_id: str
    digests: dict[str, tuple[str, str]]
    """Event id to client id and content digest."""
    numbers: dict[int, str]
    """The phone's numbers to event ids."""
    refused: dict[str, set[str]]
    """Event id to content digests of items kept aside under it."""


@dataclass(slots=True)
class Outcome:
    """What to store, and what to say."""

    accepted: list[Reading] = field(default_factory=list)
    receipts: dict[int, str] = field(default_factory=dict)
    refused: list[tuple[Item, dict[str, Any]]] = field(default_factory=list)


def _conflict(item: Item, held: Held) -> dict[str, Any] | None:
    """Answer why an item cannot be what it claims, given what is held; None if nothing stands against it."""
    known = held.digests.get(item.event_id)
    if known == (held.client_id, item.digest):
        return None  # a repeat, under whatever number: a late one must not be kept aside for something that is held
    if item.seq is not None and held.numbers.get(item.seq, item.event_id) != item.event_id:
        return problem("number-taken", _TAKEN)
    if known is not None:
        return problem("id-reused", _REUSED)
    before = held.refused.get(item.event_id)
    return None if before is None or item.digest in before else problem("id-reused", _REUSED)


def _take(item: Item, held: Held, outcome: Outcome) -> None:
    assert item.event is not None, "only readable items are taken"
    if item.event_id not in held.digests:
        held.digests[item.event_id] = (held.client_id, item.event.digest)
        outcome.accepted.append(item.event)


def decide(items: Sequence[Item], held: Held) -> Outcome:
    """Judge each item in turn; later items of the batch see what earlier ones did.

    A number that was free is held afterwards in every case, refused items included: that is what lets
    ``acknowledged_through`` move past an item that will never be accepted.
    """
    outcome = Outcome()
    for item in items:
        found = _conflict(item, held) or item.problem
        if found is None:
            _take(item, held, outcome)
        else:
            outcome.refused.append((item, found))
            if item.event_id:
                held.refused.setdefault(item.event_id, {item.digest})
        if item.seq is not None and item.seq not in held.numbers:
            held.numbers[item.seq] = outcome.receipts[item.seq] = item.event_id
    return outcome
