"""Simulated people: a seeded course of weeks with a known truth, seen through noise as a phone would tell it."""

from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum
from random import Random

MONDAY = date(2026, 1, 5)
SESSION_DAYS = (0, 2, 4)
GOAL_LOW, GOAL_HIGH = 8, 12
TARGET_EFFORT, USUAL_PAIN = 4, 1
_WEEKS = (8, 12)
_ONSET = (2, 4)
_PAIN_NOISE, _EFFORT_NOISE, _REPS_NOISE = 1.0, 0.9, 1.2
_WORSE_A_WEEK, _SETTLES_BY = (0.4, 1.2), (1.0, 5.0)
_TWINGES, _STRONGER_A_WEEK = (0.0, 1.2), (0.3, 1.0)
_KEEPS, _KEEPS_BEHIND = 0.92, 0.35
_OVERLOADED_FROM = 4.0
_CLEARLY_STRONGER = GOAL_HIGH + 2


class Kind(StrEnum):
    """What a person's truth is."""

    TENDON = "overloaded tendon"
    UNDER = "under-dosed"
    BEHIND = "falls behind"
    STEADY = "steady"


class Way(StrEnum):
    """Where the dose should go."""

    UP = "up"
    STAY = "stay"
    DOWN = "down"


@dataclass(frozen=True)
class Trained:
    """One planned session as the phone tells it; ratings are 0 to 10, ``morning`` is of the day after."""

    day: date
    done: bool
    reps: int
    effort: int
    pain: int
    morning: int


@dataclass(frozen=True)
class Somebody:
    """A person: what they are, in which week the trouble begins, their weeks as told, and the truth of each."""

    name: str
    kind: Kind
    onset: int
    weeks: tuple[tuple[Trained, ...], ...]
    truth: tuple[Way, ...]

    def in_trouble(self, week: int) -> bool:
        """Whether a flag about this person is right in that week."""
        return self.kind in (Kind.TENDON, Kind.BEHIND) and week >= self.onset


def somebody(kind: Kind, number: int, chance: Random) -> Somebody:
    """Answer a person drawn by chance."""
    weeks, onset = chance.randint(*_WEEKS), chance.randint(*_ONSET)
    body = _Body(
        kind,
        onset,
        worse=chance.uniform(*_WORSE_A_WEEK),
        settles=chance.uniform(*_SETTLES_BY),
        twinges=chance.uniform(*_TWINGES),
        stronger=chance.uniform(*_STRONGER_A_WEEK),
    )
    told = tuple(_week(body, week, chance) for week in range(weeks))
    truth = tuple(body.truth(week) for week in range(weeks))
    return Somebody(f"{kind} {number}", kind, onset, told, truth)


@dataclass(frozen=True)
class _Body:
    """What is true of a person before any noise: pain in points and repetitions, by the week."""

    kind: Kind
    onset: int
    worse: float
    settles: float
    twinges: float
    stronger: float

    def pain(self, week: int) -> float:
        """An overloaded tendon hurts more each week from the onset on; the others have the odd twinge."""
        if self.kind is not Kind.TENDON:
            return self.twinges
        return 1.0 + self.worse * max(0, week - self.onset + 1)

    def reps(self, week: int) -> float:
        """Who is under-dosed grows out of the goal; the others are near its top."""
        return GOAL_HIGH - 1 + (self.stronger * week if self.kind is Kind.UNDER else 0)

    def truth(self, week: int) -> Way:
        """Where the dose should go by the end of the week."""
        if self.pain(week) >= _OVERLOADED_FROM:
            return Way.DOWN
        return Way.UP if self.reps(week) >= _CLEARLY_STRONGER else Way.STAY


def _week(body: _Body, week: int, chance: Random) -> tuple[Trained, ...]:
    behind = body.kind is Kind.BEHIND and week >= body.onset
    pain, reps = body.pain(week), body.reps(week)
    effort = TARGET_EFFORT - 1 if body.kind is Kind.UNDER else TARGET_EFFORT
    return tuple(
        Trained(
            day=MONDAY + timedelta(weeks=week, days=day),
            done=chance.random() < (_KEEPS_BEHIND if behind else _KEEPS),
            reps=max(0, round(chance.gauss(reps, _REPS_NOISE))),
            effort=_rating(chance.gauss(effort, _EFFORT_NOISE)),
            pain=_rating(chance.gauss(pain, _PAIN_NOISE)),
            morning=_rating(chance.gauss(pain - body.settles, _PAIN_NOISE)),
        )
        for day in SESSION_DAYS
    )


def _rating(value: float) -> int:
    return max(0, min(10, round(value)))
