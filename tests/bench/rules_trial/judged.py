"""Feeds the rules with one person's weeks, one week after the other, and holds what they say against the truth."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta

from steadfoot.rules.adherence import ratio
from steadfoot.rules.attention import Person, ReasonRule, reason_of
from steadfoot.rules.dose import HEAVY_EFFORT
from steadfoot.rules.effort import Rated, effort_findings
from steadfoot.rules.findings import Finding
from steadfoot.rules.pain import Thresholds, Zone, zone
from steadfoot.rules.pain_course import course_findings
from steadfoot.rules.pain_findings import Report, pain_findings
from steadfoot.rules.progression import Facts, Goal, SessionDone, decide, hard_weeks_running
from steadfoot.rules.progression_words import Suggested
from steadfoot.rules.vocabulary import Region, Side, When
from tests.bench.rules_trial.people import (
    GOAL_HIGH,
    GOAL_LOW,
    MONDAY,
    TARGET_EFFORT,
    USUAL_PAIN,
    Kind,
    Somebody,
    Trained,
    Way,
)

_WAYS = {Suggested.PROGRESS: Way.UP, Suggested.REGRESS: Way.DOWN}
_RIGHT = {Kind.TENDON: "pain", Kind.BEHIND: ReasonRule.MISSED_SESSIONS.value}
_RECENT = timedelta(days=28)


@dataclass
class Score:
    """What is counted over people: days to the first right flag by kind, false flags, decisions."""

    days_to_flag: dict[Kind, list[int]] = field(default_factory=lambda: {kind: [] for kind in _RIGHT})
    never_flagged: int = 0
    false_flags: int = 0
    quiet_days: int = 0
    right: int = 0
    decisions: int = 0
    harmful: int = 0


def judge(person: Somebody, pain_stop: int, score: Score) -> None:
    """Let the rules look at the end of each week and count what they say."""
    thresholds = Thresholds(pain_stop=pain_stop, usual_pain=USUAL_PAIN)
    before: set[str] = set()
    flagged = False
    for week, truth in enumerate(person.truth):
        known = [one for told in person.weeks[: week + 1] for one in told]
        sunday = MONDAY + timedelta(weeks=week, days=6)
        flags = _flags(known, sunday, thresholds)
        _count_flags(person, week, flags - before, score)
        if person.in_trouble(week) and not flagged and any(flag.startswith(_RIGHT[person.kind]) for flag in flags):
            flagged = True
            score.days_to_flag[person.kind].append(7 * (week - person.onset + 1))
        _count_decision(_suggested(known, sunday, thresholds), truth, score)
        before = flags
    if person.kind in _RIGHT and not flagged:
        score.never_flagged += 1


def _count_flags(person: Somebody, week: int, new: set[str], score: Score) -> None:
    if not person.in_trouble(week):
        score.false_flags += len(new)
        score.quiet_days += 7


def _count_decision(suggested: Suggested, truth: Way, score: Score) -> None:
    way = _WAYS.get(suggested, Way.STAY)
    score.decisions += 1
    score.right += way is truth
    score.harmful += way is Way.UP and truth is Way.DOWN


def _flags(known: Sequence[Trained], sunday: date, thresholds: Thresholds) -> set[str]:
    """Answer the flags that got new evidence this week; missed sessions are a reason of the caseload."""
    reports = list(_reports(known, sunday))
    found = [
        *pain_findings(reports, thresholds),
        *course_findings(reports, thresholds),
        *effort_findings(_rated(known)),
    ]
    flags = {f"{one.rule}.{one.subject}" for one in found if _is_new(one, sunday)}
    reason = reason_of(_person(known, sunday)).rule
    return flags | ({reason.value} if reason is ReasonRule.MISSED_SESSIONS else set())


def _is_new(finding: Finding, sunday: date) -> bool:
    return finding.evidence[-1].day > sunday - timedelta(days=7)


def _reports(known: Sequence[Trained], sunday: date) -> Iterator[Report]:
    for one in known:
        told = ((one.pain, When.DURING, one.day), (one.morning, When.NEXT_MORNING, one.day + timedelta(days=1)))
        for rating, when, day in told if one.done else ():
            if rating and day <= sunday:
                name = f"{day}.{when}"
                yield Report(name, day, name, rating, Region.ACHILLES, Side.LEFT, when)


def _rated(known: Sequence[Trained]) -> list[Rated]:
    return [Rated(str(one.day), one.day, "Circuit", TARGET_EFFORT, one.effort) for one in known if one.done]


def _person(known: Sequence[Trained], sunday: date) -> Person:
    """As heard on the next morning, so that the week is closed and nothing is silent."""
    today = sunday + timedelta(days=1)
    return Person(
        name="Somebody",
        today=today,
        has_program=True,
        flags=(),
        refused=0,
        missed_on=[one.day for one in known if not one.done],
        not_heard_on=(),
        heard_on=today,
        paired_on=MONDAY,
        weeks=(),
        done_7_days=0,
        prescribed_7_days=0,
        not_heard_7_days=0,
    )


def _suggested(known: Sequence[Trained], sunday: date, thresholds: Thresholds) -> Suggested:
    done = [one for one in known if one.done]
    lately = [one for one in known if sunday - one.day < _RECENT]
    run = done[-2:]
    mornings = [one.morning for one in run]
    facts = Facts(
        goal=Goal(GOAL_LOW, GOAL_HIGH),
        sessions=[SessionDone((one.reps,), (str(one.day),), one.day, effort=one.effort) for one in run],
        target_effort=TARGET_EFFORT,
        pain_zone=max((zone(one.pain, thresholds) for one in run), key=list(Zone).index, default=None),
        settled=not mornings or mornings[-1] <= thresholds.usual_pain,
        adherence=ratio(len(lately), sum(one.done for one in lately)),
        next_day=sunday + timedelta(days=1),
        hard_weeks=hard_weeks_running(
            [one.day for one in done if one.effort >= HEAVY_EFFORT], sunday + timedelta(days=1)
        ),
    )
    return decide(facts).suggested
