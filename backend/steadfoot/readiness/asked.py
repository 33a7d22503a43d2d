"""What the client's trip asks, day by day, as the rules of readiness take it."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from sqlmodel import Session

from steadfoot.rules.readiness_facts import Trip, TripDay
from steadfoot.trips import service as trips

_REST = TripDay(0, None, None, None)


@dataclass(frozen=True, slots=True)
class Asked:
    """A trip with its name, and the names of its days; a day of rest has none."""

    name: str | None
    names: tuple[str, ...]
    trip: Trip


def asked_of(session: Session, client: Any) -> Asked | None:
    """Answer the trip, its legs added up by day and the days between them as rest; None while no leg is known."""
    found = trips.trip_of(session, client.practice_id, client.id)
    if found is None:
        return None
    first, last = found.legs[0].day, found.legs[-1].day
    by_day = [[leg for leg in found.legs if leg.day == day] for day in range(first, last + 1)]
    names = tuple(" · ".join(leg.name for leg in legs if leg.name) for legs in by_day)
    return Asked(found.name, names, Trip(found.starts_on, tuple(_day(legs) for legs in by_day)))


def _day(legs: Sequence[trips.Leg]) -> TripDay:
    if not legs:
        return _REST
    return TripDay(
        sum(leg.distance_km for leg in legs),
        _sum([leg.ascent_m for leg in legs]),
        _sum([leg.descent_m for leg in legs]),
        # Nobody walks for days with nothing on the back: 0 is a field that was left as it came.
        max(leg.pack_kg for leg in legs) or None,
    )


def _sum(parts: Sequence[float | None]) -> float | None:
    """Add up; unknown as soon as one part is."""
    known = [part for part in parts if part is not None]
    return sum(known) if len(known) == len(parts) else None
