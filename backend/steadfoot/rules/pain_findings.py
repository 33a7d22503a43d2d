"""Findings over a person's pain and symptom reports: too high, not settled by morning, rising, red flags."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import groupby
from typing import Annotated, Final

from steadfoot.rules.findings import Evidence, Finding, Rule, episodes
from steadfoot.rules.pain import PAIN_MAX, Thresholds, Zone, zone
from steadfoot.rules.sources import Cited, Kind
from steadfoot.rules.vocabulary import Region, Side, Symptom, When
from steadfoot.rules.words import SYMPTOM_WORDS, place_words, when_words

RISING_WEEKS: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "Three weeks, each with a worse worst: two may be chance")]
] = 3


@dataclass(frozen=True, slots=True)
class Report:
    """One pain report. ``moment`` orders reports of a day; ``exercise`` is the movement's name where
    known."""

    event_id: str
    day: date
    moment: str
    rating: int
    region: Region
    side: Side
    when: When
    exercise: str | None = None

    @property
    def subject(self) -> str:
        """The place, as one word."""
        return f"{self.region}.{self.side}"

    def evidence(self, thresholds: Thresholds) -> Evidence:
        """Tell the report in words."""
        place = place_words(self.region, self.side)
        what = f"{place} hurt {self.rating} of {PAIN_MAX} {when_words(self.when, self.exercise)}"
        return Evidence(self.event_id, self.day, what, f"usual is {thresholds.usual_pain}")


@dataclass(frozen=True, slots=True)
class SymptomReport:
    """One report of a symptom that must not wait."""

    event_id: str
    day: date
    moment: str
    symptom: Symptom


def pain_findings(reports: Iterable[Report], thresholds: Thresholds) -> list[Finding]:
    """Find, for each place on the body, pain that was too high, had not settled by morning, or rises by the
    week.

    Too high: at or above ``pain_stop`` around training (before, while, after). Not settled: above the usual
    on the next morning. Rising: the worst of the week strictly up through ``RISING_WEEKS`` weeks in a row.
    Follows [silbernagel-2007]; grouping in episodes and the number of weeks are ours. The order of the input
    does not matter.
    """
    found: list[Finding] = []
    in_order = sorted(reports, key=lambda r: (r.subject, r.day, r.moment, r.event_id))
    for subject, group in groupby(in_order, key=lambda r: r.subject):
        of_place = list(group)
        found += _by_episode(Rule.PAIN_TOO_HIGH, subject, of_place, thresholds, _too_high)
        found += _by_episode(Rule.PAIN_NEXT_MORNING, subject, of_place, thresholds, _unsettled)
        found += [_finding(Rule.PAIN_RISING, subject, run, thresholds) for run in _rising(of_place)]
    return found


def symptom_findings(reports: Iterable[SymptomReport]) -> list[Finding]:
    """Find every reported symptom, one finding a symptom and episode."""
    in_order = sorted(reports, key=lambda r: (r.symptom, r.day, r.moment, r.event_id))
    return [
        Finding(Rule.RED_FLAG_SYMPTOM, symptom.value, tuple(_symptom_evidence(report) for report in episode))
        for symptom, group in groupby(in_order, key=lambda r: r.symptom)
        for episode in episodes(group)
    ]


def _symptom_evidence(report: SymptomReport) -> Evidence:
    return Evidence(report.event_id, report.day, f"{SYMPTOM_WORDS[report.symptom]} was reported")


def _too_high(report: Report, thresholds: Thresholds) -> bool:
    return report.when is not When.NEXT_MORNING and zone(report.rating, thresholds) is Zone.HIGH


def _unsettled(report: Report, thresholds: Thresholds) -> bool:
    return report.when is When.NEXT_MORNING and report.rating > thresholds.usual_pain


def _by_episode(
    rule: Rule,
    subject: str,
    reports: Sequence[Report],
    thresholds: Thresholds,
    is_hit: Callable[[Report, Thresholds], bool],
) -> list[Finding]:
    hits = [report for report in reports if is_hit(report, thresholds)]
    return [_finding(rule, subject, episode, thresholds) for episode in episodes(hits)]


def _finding(rule: Rule, subject: str, reports: Sequence[Report], thresholds: Thresholds) -> Finding:
    return Finding(rule, subject, tuple(report.evidence(thresholds) for report in reports))


def _monday(report: Report) -> date:
    return report.day - timedelta(days=report.day.weekday())


def _rising(reports: Sequence[Report]) -> list[list[Report]]:
    """Answer the worst report of each week of every long enough run of weeks that get worse."""
    runs: list[list[Report]] = []
    for _, week in groupby(reports, key=_monday):
        worst = max(week, key=lambda r: r.rating)
        if runs and _follows(runs[-1][-1], worst):
            runs[-1].append(worst)
        else:
            runs.append([worst])
    return [run for run in runs if len(run) >= RISING_WEEKS]


def _follows(before: Report, after: Report) -> bool:
    return _monday(after) - _monday(before) == timedelta(weeks=1) and after.rating > before.rating
