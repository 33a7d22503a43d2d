"""Readiness: what a trip asks beside what a person has shown, item by item, and whether the weeks left suffice.

It adds nothing up and decides nothing: a licensed practitioner reads it and signs a note. What is not known is said to
be unknown, and never taken for able or unable.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from enum import StrEnum

from steadfoot.rules.adherence import WEEK_DAYS
from steadfoot.rules.readiness_body import effort_item, pain_item, strength_items
from steadfoot.rules.readiness_facts import Known, Trip
from steadfoot.rules.readiness_items import Item
from steadfoot.rules.readiness_walks import walk_items
from steadfoot.rules.season import Phase, phases


class Verdict(StrEnum):
    """What a practitioner signs: go as planned, go with changes, or not yet."""

    GO = "go"
    ADAPT = "adapt"
    DEFER = "defer"


@dataclass(frozen=True, slots=True)
class Readiness:
    """The items in the order of a walk, with the whole weeks left and those of them before the taper; None without a
    date."""

    weeks_left: int | None
    weeks_to_build: int | None
    items: tuple[Item, ...]


def readiness(trip: Trip | None, known: Known) -> Readiness:
    """Answer every item; without a trip only those that need none: pain at rest, strength and balance."""
    items = tuple(_items(trip, known))
    if trip is None or trip.starts_on is None:
        return Readiness(None, None, items)
    left = max((trip.starts_on - known.today).days // WEEK_DAYS, 0)
    to_build = sum(phase is not Phase.TAPER for phase in phases(left))
    return Readiness(left, to_build, tuple(_timed(item, to_build) for item in items))


def _items(trip: Trip | None, known: Known) -> Iterator[Item]:
    if trip is not None:
        yield from walk_items(trip, known)
        yield effort_item(trip, known)
    yield pain_item(known)
    yield from strength_items(known)


def _timed(item: Item, weeks_to_build: int) -> Item:
    return replace(item, in_time=None if item.weeks is None else item.weeks <= weeks_to_build)
