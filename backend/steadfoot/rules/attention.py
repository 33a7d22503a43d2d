"""Whom to call first, and why: the order of the caseload from reasons that are told, never from a score."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import Annotated, Final

from steadfoot.rules.findings import CARDS, Action, Rule
from steadfoot.rules.sources import Cited, Kind
from steadfoot.rules.words import counted, day_words

MISSED_SESSIONS: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "One session can slip by; two in the span deserve a question")]
] = 2
MISSED_SPAN_DAYS: Final[Annotated[int, Cited(Kind.HOUSE, "house", "The last two weeks")]] = 14
SILENT_DAYS: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "A long weekend without a network is no news; five days are")]
] = 5
OVER_EAGER_PERCENT: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "Half as much again as the week was planned; says nothing of injury")]
] = 150
OVER_EAGER_SESSIONS: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Sessions of their own within a week")]] = 2

_HOUSE: Final = Cited(Kind.HOUSE, "house", "Order of the caseload")


class Group(StrEnum):
    """The parts of the caseload, in the order shown."""

    NEEDS_YOU = "needs_you"
    SILENT = "silent"
    ON_THE_WAY = "on_the_way"
    NO_PROGRAM = "no_program"


class ReasonRule(StrEnum):
    """Reasons for a place that are not findings about check-ins."""

    REFUSED_ENTRIES = "refused_entries"
    MISSED_SESSIONS = "missed_sessions"
    OVER_EAGER = "over_eager"
    SILENT = "silent"
    NEVER_PAIRED = "never_paired"
    ON_THE_WAY = "on_the_way"
    NO_PROGRAM = "no_program"


ORDER: Final[tuple[Rule | ReasonRule, ...]] = (
    Rule.RED_FLAG_SYMPTOM,
    Rule.PAIN_TOO_HIGH,
    Rule.PAIN_NEXT_MORNING,
    Rule.PAIN_RISING,
    Rule.PAIN_AFTER,
    Rule.PAIN_MOVED,
    Rule.USUAL_PAIN_UP,
    ReasonRule.REFUSED_ENTRIES,
    Rule.EFFORT_RISING,
    ReasonRule.MISSED_SESSIONS,
    ReasonRule.OVER_EAGER,
    ReasonRule.SILENT,
    ReasonRule.NEVER_PAIRED,
    ReasonRule.ON_THE_WAY,
    ReasonRule.NO_PROGRAM,
)
"""The most urgent reason first. Safety, then what only a person can mend, then the dose, then silence."""

_GROUPS: Final = {
    ReasonRule.SILENT: Group.SILENT,
    ReasonRule.NEVER_PAIRED: Group.SILENT,
    ReasonRule.ON_THE_WAY: Group.ON_THE_WAY,
    ReasonRule.NO_PROGRAM: Group.NO_PROGRAM,
}


@dataclass(frozen=True, slots=True)
class OpenFlag:
    """An open finding: its newest check-in in words, and what is suggested."""

    rule: Rule
    since: date
    sentence: str
    suggestion: str
    flag_id: str
    action: Action


@dataclass(frozen=True, slots=True)
class WeekSoFar:
    """One week in numbers: loads in arbitrary units, and sessions done that no plan had."""

    planned_load: float
    done_load: float
    extra_sessions: int


@dataclass(frozen=True, slots=True)
class Person:
    """All that decides a client's place, as of ``today``.

    ``heard_on`` is the day a phone last reported, ``paired_on`` the day the first of the paired ones was paired;
    None for never. ``refused`` counts entries kept aside. ``missed_on`` and ``not_heard_on`` are the planned days of
    sessions with that status. ``weeks`` are the running and the previous one.
    """

    name: str
    today: date
    has_program: bool
    flags: Sequence[OpenFlag]
    refused: int
    missed_on: Sequence[date]
    not_heard_on: Sequence[date]
    heard_on: date | None
    paired_on: date | None
    weeks: Sequence[WeekSoFar]
    done_7_days: int
    prescribed_7_days: int
    not_heard_7_days: int


@dataclass(frozen=True, slots=True)
class Suggestion:
    """What could be done next; ``flag_id`` and ``action`` where answering a flag does it."""

    sentence: str
    flag_id: str | None = None
    action: Action | None = None


@dataclass(frozen=True, slots=True)
class Reason:
    """Why a client has their place."""

    rule: Rule | ReasonRule
    sentence: str
    since: date | None
    cited: Cited
    suggestion: Suggestion | None

    @property
    def group(self) -> Group:
        """The part of the caseload that this reason leads to."""
        return Group.NEEDS_YOU if isinstance(self.rule, Rule) else _GROUPS.get(self.rule, Group.NEEDS_YOU)


def reason_of(person: Person) -> Reason:
    """Answer the most urgent reason that holds for a client; without any, being on their way or without a
    program."""
    held = [_of_flag(flag) for flag in person.flags]
    held += [reason for check in _CHECKS if (reason := check(person)) is not None]
    held.append(_otherwise(person))
    return min(held, key=_urgency)


def sort_key(reason: Reason, days_to_trip: int | None, name: str) -> tuple[int, int, date, bool, int, str]:
    """Answer what clients are sorted by: group, reason, longest waiting, nearest trip, name."""
    group, rank = list(Group).index(reason.group), ORDER.index(reason.rule)
    return group, rank, reason.since or date.max, days_to_trip is None, days_to_trip or 0, name.casefold()


def _urgency(reason: Reason) -> tuple[int, date]:
    return ORDER.index(reason.rule), reason.since or date.max


def _of_flag(flag: OpenFlag) -> Reason:
    suggestion = Suggestion(flag.suggestion, flag.flag_id, flag.action)
    return Reason(flag.rule, flag.sentence, flag.since, CARDS[flag.rule].cited, suggestion)


def _house(rule: ReasonRule, sentence: str, since: date | None, suggestion: str | None) -> Reason:
    return Reason(rule, sentence, since, _HOUSE, Suggestion(suggestion) if suggestion else None)


def _refused(person: Person) -> Reason | None:
    if person.refused == 0:
        return None
    what = f"{counted(person.refused, 'entry', 'entries')} kept aside, not understood."
    return _house(ReasonRule.REFUSED_ENTRIES, what, None, "Look at what was kept aside.")


def _missed(person: Person) -> Reason | None:
    recent = [day for day in person.missed_on if (person.today - day).days < MISSED_SPAN_DAYS]
    if len(recent) < MISSED_SESSIONS:
        return None
    what = f"{counted(len(recent), 'session')} missed in the last {MISSED_SPAN_DAYS} days."
    return _house(ReasonRule.MISSED_SESSIONS, what, min(recent), "Ask what got in the way.")


def _over_eager(person: Person) -> Reason | None:
    for week in person.weeks:
        if week.extra_sessions >= OVER_EAGER_SESSIONS:
            what = f"{counted(week.extra_sessions, 'session')} of their own beside the plan within a week."
            return _house(ReasonRule.OVER_EAGER, what, None, "Ask how it feels, and whether the plan asks too little.")
        if week.planned_load > 0 and week.done_load * 100 >= OVER_EAGER_PERCENT * week.planned_load:
            what = f"Did {round(week.done_load * 100 / week.planned_load)} percent of a week's planned load."
            return _house(ReasonRule.OVER_EAGER, what, None, "Ask how it feels, and remind them of rest days.")
    return None


def _silent(person: Person) -> Reason | None:
    last = person.heard_on or person.paired_on
    if last is None or not person.not_heard_on or (person.today - last).days < SILENT_DAYS:
        return None
    waiting = f"{counted(len(person.not_heard_on), 'session')} not heard"
    if person.heard_on is None:
        what = f"Never heard since pairing {day_words(last, person.today)}; {waiting}."
    else:
        what = f"Last heard {day_words(last, person.today)}; {waiting}."
    return _house(ReasonRule.SILENT, what, last, "Ask by other means whether all is well.")


def _never_paired(person: Person) -> Reason | None:
    if person.paired_on is not None or not person.has_program:
        return None
    return _house(ReasonRule.NEVER_PAIRED, "No phone is paired.", None, "Invite their phone.")


_CHECKS: Final[tuple[Callable[[Person], Reason | None], ...]] = (
    _refused,
    _missed,
    _over_eager,
    _silent,
    _never_paired,
)


def _otherwise(person: Person) -> Reason:
    if not person.has_program:
        return _house(ReasonRule.NO_PROGRAM, happened(person), None, "Write the first program.")
    return _house(ReasonRule.ON_THE_WAY, happened(person), None, None)


def happened(person: Person) -> str:
    """Tell a client's last 7 days in a sentence, with what is not heard beside what is done."""
    if not person.has_program:
        return "No program yet."
    if person.prescribed_7_days == 0:
        return "Nothing was due in the last 7 days."
    silent = f", {person.not_heard_7_days} not heard" if person.not_heard_7_days else ""
    return f"{person.done_7_days} of {counted(person.prescribed_7_days, 'session')} done in the last 7 days{silent}."
