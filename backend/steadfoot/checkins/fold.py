"""Folds the set of a client's events into what pages show. Pure; the order of arrival plays no part (decision 0001)."""

import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date, datetime
from typing import Any

from steadfoot.core.texts import canonical

SESSION_KINDS = frozenset(
    {
        "session_started",
        "set_ticked",
        "set_unticked",
        "set_left_out",
        "variant_swapped",
        "session_finished",
        "walk_logged",
    }
)
_WALK_FIELDS = ("distance_km", "ascent_m", "descent_m", "minutes", "pack_kg")
_EXTRA = "extra."


@dataclass(frozen=True, slots=True)
class Fact:
    """An event as the fold needs it."""

    id: str
    seq: int
    kind: str
    instant: datetime
    local_day: date
    planned_id: str | None
    body: Mapping[str, Any]

    def order(self) -> tuple[datetime, int, str]:
        """Answer what puts two events about the same thing in order, whenever they arrive."""
        return self.instant, self.seq, self.id


@dataclass(slots=True)
class SessionFold:
    """What the events say of one planned session."""

    planned_id: str
    planned_day: date
    last_day: date
    program_version: int | None = None
    done: set[tuple[str, int]] = field(default_factory=set)
    left_out: dict[tuple[str, int], str] = field(default_factory=dict)
    swaps: dict[str, str] = field(default_factory=dict)
    minutes: int | None = None
    effort: int | None = None
    finished: bool = False
    walk: dict[str, Any] | None = None

    def row(self) -> dict[str, Any]:
        """Answer the columns of a rollup row; JSON as canonical text."""
        return {
            "planned_id": self.planned_id,
            "planned_day": self.planned_day,
            "last_day": self.last_day,
            "program_version": self.program_version,
            "sets_done": len(self.done),
            "sets": canonical(sorted([key, turn] for key, turn in self.done)),
            "left_out": canonical(sorted([key, turn, why] for (key, turn), why in self.left_out.items())),
            "swaps": canonical(self.swaps),
            "minutes": self.minutes,
            "effort": self.effort,
            "finished": self.finished,
            "walk": None if self.walk is None else canonical(self.walk),
        }


def session_key(kind: str, planned_id: str | None, local_day: date) -> str | None:
    """Answer which planned session an event belongs to; one outside the plan goes to its day's extras."""
    if kind not in SESSION_KINDS:
        return None
    return planned_id or f"{_EXTRA}{local_day.isoformat()}"


def planned_day(key: str) -> date:
    """Answer the day in a planned id or an extras key."""
    return date.fromisoformat(key.removeprefix(_EXTRA)[:10])


def withdrawn_ids(facts: Iterable[Fact]) -> frozenset[str]:
    """Answer the ids of entries that were taken back."""
    return frozenset(str(fact.body["event_id"]) for fact in facts if fact.kind == "entry_withdrawn")


def fold_session(key: str, facts: Iterable[Fact], withdrawn: frozenset[str]) -> SessionFold | None:
    """Answer what one planned session's events say; None when nothing is left of them."""
    kept = sorted((f for f in facts if f.kind in SESSION_KINDS and f.id not in withdrawn), key=Fact.order)
    if not kept:
        return None
    fold = SessionFold(key, planned_day(key), max(fact.local_day for fact in kept))
    for fact in kept:
        _STEPS[fact.kind](fold, fact.body)
        version = fact.body.get("program_version")
        if version is not None:
            fold.program_version = max(fold.program_version or 0, version)
    return fold


def _set_key(body: Mapping[str, Any]) -> tuple[str, int]:
    return str(body["prescription"]), int(body["round"])


def _tick(fold: SessionFold, body: Mapping[str, Any]) -> None:
    fold.done.add(_set_key(body))
    fold.left_out.pop(_set_key(body), None)


def _untick(fold: SessionFold, body: Mapping[str, Any]) -> None:
    fold.done.discard(_set_key(body))
    fold.left_out.pop(_set_key(body), None)


def _leave_out(fold: SessionFold, body: Mapping[str, Any]) -> None:
    fold.done.discard(_set_key(body))
    fold.left_out[_set_key(body)] = str(body["reason"])


def _swap(fold: SessionFold, body: Mapping[str, Any]) -> None:
    """Of another movement (decision 0007) it is ``exercise/variant``: codes have no slash."""
    variant, exercise = str(body["to_variant"]), body.get("exercise")
    fold.swaps[str(body["prescription"])] = variant if exercise is None else f"{exercise}/{variant}"


def _finish(fold: SessionFold, body: Mapping[str, Any]) -> None:
    fold.finished = True
    fold.minutes, fold.effort = int(body["minutes"]), int(body["effort"])


def _walk(fold: SessionFold, body: Mapping[str, Any]) -> None:
    fold.finished = True
    fold.walk = {name: body[name] for name in _WALK_FIELDS}
    fold.minutes = int(body["minutes"])
    if body.get("effort") is not None:
        fold.effort = int(body["effort"])


def _start(fold: SessionFold, body: Mapping[str, Any]) -> None:
    """A start by itself says nothing more than that the row exists."""


_STEPS = {
    "session_started": _start,
    "set_ticked": _tick,
    "set_unticked": _untick,
    "set_left_out": _leave_out,
    "variant_swapped": _swap,
    "session_finished": _finish,
    "walk_logged": _walk,
}


def pain_row(fact: Fact) -> dict[str, Any]:
    """Answer the columns of a pain entry."""
    body = fact.body
    return {
        "event_id": fact.id,
        "day": fact.local_day,
        "instant": fact.instant,
        "rating": int(body["rating"]),
        "region": body["region"],
        "side": body["side"],
        "aspect": body.get("aspect"),
        "felt": body["when"],
        "feels": canonical(sorted(body.get("feels", []))),
        "planned_id": fact.planned_id,
        "prescription": body.get("prescription"),
    }


def parsed(body_text: str) -> Mapping[str, Any]:
    """Answer an event's stored body."""
    answer: Mapping[str, Any] = json.loads(body_text)
    return answer
