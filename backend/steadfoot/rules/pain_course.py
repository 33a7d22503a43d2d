"""The course of pain: more after than during, a usual level that went up, another place, and what got better."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import groupby
from typing import Annotated, Final

from steadfoot.rules.change import PAIN_LESS_PERCENT, PAIN_LESS_POINTS, PainChange, pain_change
from steadfoot.rules.findings import EPISODE_GAP_DAYS, Evidence, Finding, Rule, episodes
from steadfoot.rules.pain import PAIN_MAX, Thresholds, Zone, zone
from steadfoot.rules.pain_findings import Report
from steadfoot.rules.sources import Cited, Kind
from steadfoot.rules.vocabulary import When
from steadfoot.rules.words import counted, place_words

AFTER_MORE_POINTS: Final[
    Annotated[int, Cited(Kind.DERIVED, "farrar-2001", "About 2 points are a change that matters, upwards too")]
] = 2
USUAL_UP_SESSIONS: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "One bad day is a bad day; before three sessions running it is a level")]
] = 3
COURSE_MIN_DAYS: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "Two weeks between first and last report before a course is told")]
] = 14
COURSE_WEEK_DAYS: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "The first and the last week are told by their worst rating")]
] = 7
_WORKING: Final = frozenset({When.DURING, When.AFTER})
_CITED: Final = Cited(Kind.PUBLISHED, "farrar-2001", "About 2 points or 30 percent less is a change that matters")


@dataclass(frozen=True, slots=True)
class Improvement:
    """Pain of one place that became less in a way that matters: a note, not a flag."""

    first: Report
    last: Report
    sentence: str
    cited: Cited = _CITED

    def evidence(self, thresholds: Thresholds) -> tuple[Evidence, ...]:
        """Answer the two reports that show it."""
        return self.first.evidence(thresholds), self.last.evidence(thresholds)


def course_findings(reports: Iterable[Report], thresholds: Thresholds) -> list[Finding]:
    """Find pain that came after the session, a usual level that went up, and pain in another place.

    The order of the input does not matter.
    """
    in_order = sorted(reports, key=_order)
    found: list[Finding] = []
    for subject, of_place in _by_place(in_order):
        found += _after(subject, of_place, thresholds)
        found += _usual_up(subject, of_place, thresholds)
    return found + _moved([one for one in in_order if one.rating > thresholds.usual_pain], thresholds)


def improvements(reports: Iterable[Report]) -> list[Improvement]:
    """Tell for each place whether pain around training became less in a way that matters [farrar-2001].

    The worst rating of the first week is held against the worst of the last week with a report; between the
    first and the last report lie two weeks or more (house).
    """
    working = sorted((one for one in reports if one.when in _WORKING), key=_order)
    found = (_improvement(of_place) for _, of_place in _by_place(working))
    return [one for one in found if one is not None]


def _order(report: Report) -> tuple[object, ...]:
    return report.day, report.moment, report.event_id


def _by_place(in_order: Sequence[Report]) -> list[tuple[str, list[Report]]]:
    by_place = sorted(in_order, key=lambda report: report.subject)
    return [(subject, list(group)) for subject, group in groupby(by_place, key=lambda report: report.subject)]


def _finding(rule: Rule, subject: str, reports: Sequence[Report], thresholds: Thresholds) -> Finding:
    return Finding(rule, subject, tuple(report.evidence(thresholds) for report in reports))


def _after(subject: str, reports: Sequence[Report], thresholds: Thresholds) -> list[Finding]:
    """Below the stop only: from there on it is too high, whenever it was felt."""
    hits = [
        report
        for report in reports
        if report.when is When.AFTER
        and zone(report.rating, thresholds) is not Zone.HIGH
        and report.rating - _during(report, reports, thresholds) >= AFTER_MORE_POINTS
    ]
    return [_finding(Rule.PAIN_AFTER, subject, episode, thresholds) for episode in episodes(hits)]


def _during(after: Report, reports: Sequence[Report], thresholds: Thresholds) -> int:
    """Answer the worst of that day's session; where nothing was reported, the usual level."""
    ratings = [one.rating for one in reports if one.day == after.day and one.when is When.DURING]
    return max(ratings, default=thresholds.usual_pain)


def _usual_up(subject: str, reports: Sequence[Report], thresholds: Thresholds) -> list[Finding]:
    runs: list[list[Report]] = [[]]
    for report in (one for one in reports if one.when is When.BEFORE):
        if report.rating > thresholds.usual_pain:
            runs[-1].append(report)
        else:
            runs.append([])
    found = [episode for run in runs for episode in episodes(run)]
    long = [episode for episode in found if len({one.day for one in episode}) >= USUAL_UP_SESSIONS]
    return [_finding(Rule.USUAL_PAIN_UP, subject, episode, thresholds) for episode in long]


def _moved(above: Sequence[Report], thresholds: Thresholds) -> list[Finding]:
    """Answer each place that began to hurt within ``EPISODE_GAP_DAYS`` after another one hurt last."""
    found = []
    for subject, of_place in _by_place(above):
        for episode in episodes(of_place):
            before = _elsewhere(episode[0], above)
            if before is not None:
                found.append(_finding(Rule.PAIN_MOVED, subject, (before, episode[0]), thresholds))
    return found


def _elsewhere(new: Report, above: Sequence[Report]) -> Report | None:
    earlier = [one for one in above if one.subject != new.subject and 0 < (new.day - one.day).days <= EPISODE_GAP_DAYS]
    return earlier[-1] if earlier else None


def _improvement(reports: Sequence[Report]) -> Improvement | None:
    first_day, last_day = reports[0].day, reports[-1].day
    if (last_day - first_day).days < COURSE_MIN_DAYS:
        return None
    first = _worst([one for one in reports if (one.day - first_day).days < COURSE_WEEK_DAYS])
    last = _worst([one for one in reports if (last_day - one.day).days < COURSE_WEEK_DAYS])
    change = pain_change(first.rating, last.rating)
    if not (change.enough_points or change.enough_percent):
        return None
    return Improvement(first, last, _sentence(first, last, change))


def _worst(reports: Sequence[Report]) -> Report:
    return max(reports, key=lambda report: report.rating)


def _sentence(first: Report, last: Report, change: PainChange) -> str:
    place = place_words(first.region, first.side)
    assert change.percent is not None
    less = f"{counted(change.points, 'point')} and {round(change.percent)} percent less"
    rule = f"{PAIN_LESS_POINTS} points or {PAIN_LESS_PERCENT} percent is a change that matters"
    both = "both rules agree" if change.enough_points and change.enough_percent else "only one of the two rules says so"
    return (
        f"{place}: at worst {first.rating} of {PAIN_MAX} in the first week, {last.rating} in the last. "
        f"{less}; {rule}, and {both}."
    )
