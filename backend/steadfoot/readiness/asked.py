"""What the client's trip asks, day by day, as the rules of readiness take it."""

from dataclasses import dataclass
from typing import Any

from sqlmodel import Session

from steadfoot.rules.readiness_facts import Trip


@dataclass(frozen=True, slots=True)
class Asked:
    """A trip with its name, and the names of its days."""

    name: str | None
    names: tuple[str, ...]
    trip: Trip


def asked_of(session: Session, client: Any) -> Asked | None:
    """Answer the trip, None while no day of it is known."""
    return None
