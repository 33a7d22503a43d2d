"""What each set of a session came to: the fold of sessions, with the amounts kept. Pure, whatever came first."""

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime

from steadfoot.checkins.fold import Fact

KINDS = frozenset({"set_ticked", "set_unticked", "set_left_out"})
_NOT_MANAGED = frozenset({"pain", "too_hard"})


@dataclass(frozen=True, slots=True)
class SetDone:
    """One set as told: what it came to where that was said, or that it could not be managed.

    ``exercise`` is None for the prescribed movement.
    ``reps``, ``hold_s`` (seconds) and ``load_kg`` are None where the phone told no more than that it was done.
    """

    prescription: str
    round: int
    event_id: str
    day: date
    instant: datetime
    version: int | None
    exercise: str | None
    variant: str | None
    reps: int | None
    hold_s: int | None
    load_kg: float | None
    managed: bool = True


def fold_sets(facts: Iterable[Fact], withdrawn: frozenset[str]) -> dict[str, list[SetDone]]:
    """Answer the sets of each planned session by its id, in the order of their rounds.

    A set left out for pain, or because it was too hard, was not managed; one left out for another reason says nothing.
    """
    latest: dict[str, dict[tuple[str, int], Fact]] = defaultdict(dict)
    for fact in sorted(facts, key=Fact.order):
        if fact.kind in KINDS and fact.id not in withdrawn and fact.planned_id is not None:
            latest[fact.planned_id][str(fact.body["prescription"]), int(fact.body["round"])] = fact
    found = {planned_id: [_set(fact) for _, fact in sorted(sets.items())] for planned_id, sets in latest.items()}
    return {planned_id: [one for one in sets if one is not None] for planned_id, sets in found.items()}


def _set(fact: Fact) -> SetDone | None:
    body = fact.body
    managed = fact.kind == "set_ticked"
    if not managed and body.get("reason") not in _NOT_MANAGED:
        return None
    return SetDone(
        prescription=str(body["prescription"]),
        round=int(body["round"]),
        event_id=fact.id,
        day=fact.local_day,
        instant=fact.instant,
        version=body.get("program_version"),
        exercise=body.get("exercise"),
        variant=body.get("variant"),
        reps=body.get("reps"),
        hold_s=body.get("hold_s"),
        load_kg=body.get("load_kg"),
        managed=managed,
    )
