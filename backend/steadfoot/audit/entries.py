"""What a row of the log says, and the digest that chains it to the row before."""

import hashlib
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from enum import StrEnum
from typing import Any

from steadfoot.core.texts import canonical

BEGINNING = "0" * 64
"""What stands for the row before the first."""
INSTALLATION = "installation"
"""In the place of a practice: what nobody known did, and what belongs to no practice."""
FIELDS = (
    "practice_id", "number", "at", "actor_kind", "actor_id", "subject_id", "action", "outcome", "request_id", "times",
    "previous",
)  # fmt: skip


class ActorKind(StrEnum):
    """Who acted."""

    PRACTITIONER = "practitioner"
    PHONE = "phone"
    NOBODY = "nobody"
    """Not signed in."""
    SERVER = "server"
    """The command line, or a job."""


class Outcome(StrEnum):
    """What became of it."""

    DONE = "done"
    NOT_SIGNED_IN = "not_signed_in"
    NOT_ALLOWED = "not_allowed"
    NOT_FOUND = "not_found"
    TOO_MANY = "too_many"
    FAILED = "failed"


@dataclass(frozen=True, slots=True)
class Actor:
    """Who acts, in which practice. ``id`` is a practitioner's or a phone's."""

    kind: ActorKind
    practice_id: str
    id: str | None = None


NOBODY = Actor(ActorKind.NOBODY, INSTALLATION)


@dataclass(frozen=True, slots=True)
class Act:
    """A row to be added. ``action`` is an operation's id, or a word of ``DEVELOPERS.md``; never a text of a person."""

    actor: Actor
    action: str
    at: datetime
    request_id: str
    subject_id: str | None = None
    outcome: Outcome = Outcome.DONE
    times: int = 1

    def row(self, number: int, previous: str) -> dict[str, Any]:
        """Answer the row at its place in the chain."""
        found: dict[str, Any] = {
            "practice_id": self.actor.practice_id,
            "number": number,
            "at": self.at,
            "actor_kind": self.actor.kind.value,
            "actor_id": self.actor.id,
            "subject_id": self.subject_id,
            "action": self.action,
            "outcome": self.outcome.value,
            "request_id": self.request_id,
            "times": self.times,
            "previous": previous,
        }
        return found | {"digest": digest_of(said(found))}


def said(row: Mapping[str, Any]) -> dict[str, Any]:
    """Answer the row as JSON values, without its digest: what the digest is of."""
    at = row["at"].astimezone(UTC).isoformat(timespec="milliseconds").replace("+00:00", "Z")
    return {name: row[name] for name in FIELDS} | {"at": at}


def digest_of(values: Mapping[str, Any]) -> str:
    """Answer the SHA-256 of the values as JSON with sorted keys, without spaces, in UTF-8."""
    return hashlib.sha256(canonical(dict(values)).encode()).hexdigest()
