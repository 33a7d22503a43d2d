"""From what the last sessions say to a verdict, with what depends on the day: plan, adherence, open flags. Pure."""

import hashlib
import json
from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from functools import cached_property
from typing import Any

from steadfoot.core.texts import canonical
from steadfoot.monitoring.flags import FlagStatus, Standing
from steadfoot.monitoring.held import Held
from steadfoot.monitoring.movements import Movement
from steadfoot.monitoring.person_schemas import RatioOut
from steadfoot.monitoring.sheet import Sheet
from steadfoot.rules.adherence import WEEK_DAYS, Ratio
from steadfoot.rules.dose import HEAVY_EFFORT
from steadfoot.rules.findings import CARDS, Rule
from steadfoot.rules.progression import Facts, decide, hard_weeks_running
from steadfoot.rules.progression_words import Reason, Suggested, Verdict
from steadfoot.rules.words import day_words

_PAIN_RULES = frozenset(
    {
        Rule.PAIN_TOO_HIGH,
        Rule.PAIN_NEXT_MORNING,
        Rule.PAIN_RISING,
        Rule.PAIN_AFTER,
        Rule.PAIN_MOVED,
        Rule.USUAL_PAIN_UP,
    }
)
_DIGEST_LETTERS = 32


@dataclass(frozen=True)
class Standpoint:
    """One client's program as of a day: the sheet, the day, adherence over 28 days, open flags, what is answered."""

    client_id: str
    sheet: Sheet
    today: date
    adherence: RatioOut
    open_flags: Sequence[Standing[Any, Any]]
    answered: Collection[str]

    @cached_property
    def _sessions(self) -> list[Held]:
        return self.sheet.sessions(date.min, self.today + timedelta(days=WEEK_DAYS))

    @cached_property
    def _hard_days(self) -> list[date]:
        return [one.done_on for one in self._sessions if one.done_on and (one.effort or 0) >= HEAVY_EFFORT]

    @cached_property
    def _done(self) -> set[str]:
        return {one.planned_id for one in self._sessions if one.done_on}

    def next_day(self, circuit: str) -> date | None:
        """Answer the next planned day of a circuit that is not done yet."""
        planned = (one for one in self.sheet.circuits.get(circuit, ()) if one not in self._done)
        days = (date.fromisoformat(one.partition(".")[0]) for one in planned)
        return min((day for day in days if day >= self.today), default=None)

    def facts(self, movement: Movement) -> Facts:
        """Answer what the rules of progression take."""
        next_day = self.next_day(movement.session)
        found = self.adherence
        return movement.facts(
            adherence=Ratio(found.prescribed, found.done, found.low, found.high),
            next_day=next_day,
            hard_weeks=hard_weeks_running(self._hard_days, next_day or self.today),
            open_flag=self._flag_on(movement),
        )

    def _flag_on(self, movement: Movement) -> Reason | None:
        """Answer the first open flag that leads to the movement: pain there or in a place it loads, or a symptom."""
        for flag in self.open_flags:
            region, keys = flag.finding.subject.partition(".")[0], json.loads(flag.finding.suggestion)["keys"]
            pain = flag.rule in _PAIN_RULES and (movement.key in keys or region in movement.loads)
            if pain or flag.rule is Rule.RED_FLAG_SYMPTOM:
                since = day_words(flag.finding.since, self.today)
                words = f"{CARDS[flag.rule].title}, first reported {since}: the flag is open."
                return Reason(words, tuple(one.event_id for one in flag.evidence))
        return None

    def ready(self) -> list[Movement]:
        """Answer the movements that are ready for more and about which nothing has been decided yet."""
        return [
            one
            for one in self.sheet.movements(upward=True)
            if (verdict := decide(self.facts(one))).suggested is Suggested.PROGRESS
            and suggestion_id(self.client_id, one.key, verdict) not in self.answered
        ]


def open_ones(standings: Iterable[Standing[Any, Any]]) -> list[Standing[Any, Any]]:
    """Answer the flags that wait for an answer."""
    return [one for one in standings if one.status is FlagStatus.OPEN]


def suggestion_id(client_id: str, key: str, verdict: Verdict) -> str:
    """Name a suggestion by its rule and its evidence, so that the same evidence never asks twice.

    Reasons without a check-in are told apart by their words.
    """
    seen = sorted({event_id for reason in verdict.reasons for event_id in reason.event_ids})
    evidence = seen or [reason.words for reason in verdict.reasons]
    text = canonical([client_id, key, verdict.rule, evidence])
    return hashlib.sha256(text.encode()).hexdigest()[:_DIGEST_LETTERS]


def ready_sentence(ready: Sequence[Movement]) -> str | None:
    """Tell the first movement that is ready, and how many more there are."""
    if not ready:
        return None
    name = ready[0].name[0].lower() + ready[0].name[1:]
    more = f" and {len(ready) - 1} more" if len(ready) > 1 else ""
    return f"Ready for more: {name}{more}"
