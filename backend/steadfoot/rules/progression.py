"""Progress, hold, regress, deload or rest: what the last sessions of one prescription suggest, and why.

The first check of ``CHECKS`` that has something to say decides; safety stands before progress. A suggestion is
for a practitioner to accept, edit or decline, never carried out by itself.
"""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Annotated, Final

from steadfoot.rules.adherence import Ratio
from steadfoot.rules.dose import HEAVY_EFFORT, SPACING_DAYS, Prescription
from steadfoot.rules.effort import EFFORT_ABOVE_PLAN
from steadfoot.rules.pain import Zone
from steadfoot.rules.progression_words import ProgressionRule, Reason, Suggested, Verdict
from steadfoot.rules.sources import Cited, Kind
from steadfoot.rules.words import counted

REPS_OVER_GOAL: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "baechle-2008", "Two or more repetitions above the goal in the last set")]
] = 2
SESSIONS_OVER_GOAL: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "baechle-2008", "In two sessions running, at the same load")]
] = 2
HOLD_OVER_GOAL_S: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "For holds: 5 seconds above the goal stand for two repetitions")]
] = 5
RUN_GAP_DAYS: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "More than two weeks between two sessions begin a new run")]
] = 14
ADHERENCE_ASK: Final[
    Annotated[float, Cited(Kind.HOUSE, "house", "Below half of what was due, ask before the dose changes")]
] = 0.5
ADHERENT: Final[
    Annotated[float, Cited(Kind.HOUSE, "house", "80 percent is habit, not evidence; below it we only add a word")]
] = 0.8
HARD_SESSIONS_A_WEEK: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "A week with two or more hard sessions is a hard week")]
] = 2
DELOAD_AFTER_WEEKS: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "After four hard weeks one with less; a practice may set it otherwise")]
] = 4


@dataclass(frozen=True, slots=True)
class Goal:
    """What a set should come to: repetitions or, for a hold, seconds; ``low`` equals ``high`` for one number."""

    low: int
    high: int
    hold: bool = False

    @classmethod
    def of(cls, prescription: Prescription) -> "Goal":
        """Answer the goal of a prescription."""
        if prescription.hold_s is not None:
            return cls(prescription.hold_s, prescription.hold_s, hold=True)
        return cls(prescription.reps_low or 0, prescription.reps_high or 0)

    @property
    def over(self) -> int:
        """The least amount of a last set that counts as clearly above the goal."""
        return self.high + (HOLD_OVER_GOAL_S if self.hold else REPS_OVER_GOAL)

    @property
    def unit(self) -> str:
        """What is counted."""
        return "seconds" if self.hold else "repetitions"


@dataclass(frozen=True, slots=True)
class SessionDone:
    """One session of the prescription: the amount of each set in order, load in kg, effort 0 to 10.

    ``event_ids`` are the check-ins that say so. ``day`` is None only where days are not known: then the rules on
    days do not apply.
    """

    amounts: tuple[int, ...]
    event_ids: tuple[str, ...] = ()
    day: date | None = None
    variant: str = ""
    load_kg: float | None = None
    effort: int | None = None

    @property
    def hard(self) -> bool:
        """Whether it was hard enough to need a day between."""
        return self.effort is not None and self.effort >= HEAVY_EFFORT


@dataclass(frozen=True, slots=True)
class Facts:
    """What is known: the goal, the sessions from the oldest to the last, and what was felt.

    ``settled`` is False when the last pain was above the usual on the next morning; ``open_flag`` tells of an
    unanswered flag about pain in a place that the exercise loads; ``next_day`` is the day of the next planned
    session, ``hard_weeks`` the hard weeks in a row before it.
    """

    goal: Goal
    sessions: Sequence[SessionDone]
    target_effort: int | None = None
    pain_zone: Zone | None = None
    settled: bool = True
    pain_event_ids: tuple[str, ...] = ()
    open_flag: Reason | None = None
    adherence: Ratio | None = None
    next_day: date | None = None
    hard_weeks: int = 0
    deload_after_weeks: int = DELOAD_AFTER_WEEKS

    @property
    def last(self) -> SessionDone:
        """The last session."""
        return self.sessions[-1]


def two_for_two(goal: int, last_set_reps: Sequence[int], over: int = REPS_OVER_GOAL) -> bool:
    """Answer whether the last sets of the last two sessions were two or more above the goal [baechle-2008].

    >>> two_for_two(12, [14, 14]), two_for_two(12, [14, 13])
    (True, False)
    """
    run = last_set_reps[-SESSIONS_OVER_GOAL:]
    return len(run) == SESSIONS_OVER_GOAL and all(reps >= goal + over for reps in run)


def hard_weeks_running(hard_days: Iterable[date], day: date) -> int:
    """Count the hard weeks, Monday to Sunday, one after the other right before the week of ``day`` (house)."""
    mondays = [one - timedelta(days=one.weekday()) for one in hard_days]
    monday, count = day - timedelta(days=day.weekday(), weeks=1), 0
    while mondays.count(monday) >= HARD_SESSIONS_A_WEEK:
        monday, count = monday - timedelta(weeks=1), count + 1
    return count


def decide(facts: Facts) -> Verdict:
    """Answer what the facts suggest, by the first check that has something to say."""
    return next(verdict for check in CHECKS if (verdict := check(facts)) is not None)


def _pain_too_much(facts: Facts) -> Verdict | None:
    if facts.pain_zone is not Zone.HIGH and facts.settled:
        return None
    felt = "Pain was too high." if facts.pain_zone is Zone.HIGH else "Pain had not settled by the next morning."
    return Verdict(ProgressionRule.PAIN_HIGH, Suggested.REGRESS, (Reason(felt, facts.pain_event_ids),))


def _flag_open(facts: Facts) -> Verdict | None:
    if facts.open_flag is None:
        return None
    return Verdict(ProgressionRule.FLAG_OPEN, Suggested.HOLD, (facts.open_flag,))


def _nothing_known(facts: Facts) -> Verdict | None:
    if any(session.amounts for session in facts.sessions):
        return None
    return Verdict(ProgressionRule.NOT_ENOUGH, Suggested.HOLD, (Reason("No set has been reported yet."),))


def _too_close(facts: Facts) -> Verdict | None:
    hard = [session for session in facts.sessions if session.hard and session.day is not None]
    if facts.next_day is None or not hard:
        return None
    last = hard[-1]
    assert last.day is not None
    apart = (facts.next_day - last.day).days
    if apart >= SPACING_DAYS:
        return None
    felt = f"The last hard session (effort {last.effort}) is {counted(apart, 'day')} before the next one."
    return Verdict(ProgressionRule.SPACING, Suggested.REST, (Reason(felt, last.event_ids),))


def _short_of_goal(facts: Facts) -> Verdict | None:
    run = _run(facts)
    if len(run) < SESSIONS_OVER_GOAL or any(max(session.amounts) >= facts.goal.low for session in run):
        return None
    reasons = tuple(
        Reason(f"The best set came to {max(one.amounts)} of {facts.goal.low} {facts.goal.unit}.", one.event_ids)
        for one in run
    )
    return Verdict(ProgressionRule.SHORT_OF_GOAL, Suggested.REGRESS, reasons)


def _deload_due(facts: Facts) -> Verdict | None:
    if facts.hard_weeks < facts.deload_after_weeks:
        return None
    reason = Reason(f"{counted(facts.hard_weeks, 'hard week')} in a row.")
    return Verdict(ProgressionRule.DELOAD_DUE, Suggested.DELOAD, (reason,))


def _hardly_done(facts: Facts) -> Verdict | None:
    """What is not heard may have been done: only the high end of the range can be too low."""
    held = facts.adherence
    if held is None or held.high is None or held.high >= ADHERENCE_ASK:
        return None
    reason = Reason(f"{held.done} of {held.prescribed} due were done.")
    return Verdict(ProgressionRule.ADHERENCE_LOW, Suggested.HOLD, (reason,))


def _harder_than_planned(facts: Facts) -> Verdict | None:
    last, target = facts.last, facts.target_effort
    if last.effort is None or target is None or last.effort - target < EFFORT_ABOVE_PLAN:
        return None
    reason = Reason(f"The last session felt {last.effort}, planned was {target}.", last.event_ids)
    return Verdict(ProgressionRule.EFFORT_ABOVE_TARGET, Suggested.HOLD, (reason,))


def _pain_acceptable(facts: Facts) -> Verdict | None:
    if facts.pain_zone is not Zone.ACCEPTABLE:
        return None
    reason = Reason("Pain was in the acceptable band: stay until it is in the safe one.", facts.pain_event_ids)
    return Verdict(ProgressionRule.PAIN_ACCEPTABLE, Suggested.HOLD, (reason,))


def _two_for_two(facts: Facts) -> Verdict | None:
    run = _run(facts)
    if not two_for_two(facts.goal.high, [one.amounts[-1] for one in run], facts.goal.over - facts.goal.high):
        return None
    return Verdict(ProgressionRule.TWO_FOR_TWO, Suggested.PROGRESS, _last_sets(facts, run) + _caution(facts))


def _not_yet(facts: Facts) -> Verdict:
    return Verdict(ProgressionRule.NOT_YET, Suggested.HOLD, _last_sets(facts, _run(facts)))


CHECKS: Final[tuple[Callable[[Facts], Verdict | None], ...]] = (
    _pain_too_much,
    _flag_open,
    _nothing_known,
    _too_close,
    _short_of_goal,
    _deload_due,
    _hardly_done,
    _harder_than_planned,
    _pain_acceptable,
    _two_for_two,
    _not_yet,
)


def _last_sets(facts: Facts, run: Sequence[SessionDone]) -> tuple[Reason, ...]:
    goal = facts.goal
    return tuple(
        Reason(f"The last set came to {one.amounts[-1]} {goal.unit}; the goal is {goal.high}.", one.event_ids)
        for one in run
    )


def _caution(facts: Facts) -> tuple[Reason, ...]:
    held = facts.adherence
    if held is None or held.high is None or held.high >= ADHERENT:
        return ()
    return (Reason(f"Only {held.done} of {held.prescribed} due were done: ask whether the weeks have room for more."),)


def _run(facts: Facts) -> list[SessionDone]:
    """Answer the last two sessions that can be compared: the same way, the same load, not too far apart.

    A session without a set is passed over. Another load or more than ``RUN_GAP_DAYS`` begin anew (house).
    """
    done = [session for session in facts.sessions if session.amounts]
    run = done[-SESSIONS_OVER_GOAL:]
    return run if _comparable(run[0], run[-1]) else run[1:]


def _comparable(before: SessionDone, last: SessionDone) -> bool:
    if (before.variant, before.load_kg) != (last.variant, last.load_kg):
        return False
    if before.day is None or last.day is None:
        return True
    return (last.day - before.day).days <= RUN_GAP_DAYS
