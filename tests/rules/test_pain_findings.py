"""Findings over pain and symptom reports."""

from datetime import date, timedelta
from random import Random

import pytest

from steadfoot.rules.findings import Rule
from steadfoot.rules.pain import Thresholds
from steadfoot.rules.pain_findings import Report, SymptomReport, pain_findings, symptom_findings
from steadfoot.rules.vocabulary import Region, Side, Symptom, When

MONDAY = date(2026, 10, 5)


def report(day=0, rating=7, when=When.DURING, side=Side.RIGHT, region=Region.KNEE, **more):
    on = MONDAY + timedelta(days=day)
    name = f"e-{day}-{rating}-{when}-{side}-{region}"
    return Report(name, on, f"{on}T08", rating, region, side, when, **more)


def found(rule, *reports, usual_pain=1):
    return [f for f in pain_findings(reports, Thresholds(usual_pain=usual_pain)) if f.rule is rule]


@pytest.mark.parametrize(("rating", "hits"), [(5, 0), (6, 1)])
@pytest.mark.parametrize("when", [When.BEFORE, When.DURING, When.AFTER])
def test_too_high_begins_at_the_stop(rating, hits, when):
    assert len(found(Rule.PAIN_TOO_HIGH, report(rating=rating, when=when))) == hits


@pytest.mark.parametrize(("rating", "hits"), [(1, 0), (2, 1)])
def test_next_morning_begins_above_the_usual(rating, hits):
    assert len(found(Rule.PAIN_NEXT_MORNING, report(rating=rating, when=When.NEXT_MORNING))) == hits


def test_a_next_morning_is_not_also_too_high_while_training():
    assert found(Rule.PAIN_TOO_HIGH, report(rating=9, when=When.NEXT_MORNING)) == []


@pytest.mark.parametrize(("gap_days", "episodes"), [(14, 1), (15, 2)])
def test_more_than_fourteen_quiet_days_begin_a_new_episode(gap_days, episodes):
    assert len(found(Rule.PAIN_TOO_HIGH, report(0), report(gap_days))) == episodes


def test_each_side_and_region_is_its_own_finding():
    subjects = [
        f.subject for f in found(Rule.PAIN_TOO_HIGH, report(), report(side=Side.LEFT), report(region=Region.HIP))
    ]
    assert subjects == ["hip.right", "knee.left", "knee.right"]


@pytest.mark.parametrize(
    ("worst_by_week", "runs"),
    [
        ((2, 3, 4), 1),
        ((2, 3), 0),
        ((2, 3, 3), 0),
        ((3, 2, 3, 4), 1),
        ((2, 3, 4, 5), 1),
        ((2, 3, None, 4), 0),
        ((2, 3, 4, 1, 2, 3), 2),
    ],
)
def test_rising_needs_three_weeks_in_a_row_each_worse(worst_by_week, runs):
    reports = [report(7 * n, rating) for n, rating in enumerate(worst_by_week) if rating is not None]
    assert len(found(Rule.PAIN_RISING, *reports)) == runs


def test_the_worst_of_a_week_is_what_counts_for_rising():
    weeks = [report(0, 2), report(1, 1), report(8, 3), report(9, 2), report(15, 4), report(16, 4)]
    (finding,) = found(Rule.PAIN_RISING, *weeks)
    assert [one.what.split()[3] for one in finding.evidence] == ["2", "3", "4"]


def test_the_order_of_reports_does_not_matter():
    reports = [report(day, rating, when) for day in (0, 8, 16) for rating in (3, 7) for when in When]
    straight = pain_findings(reports, Thresholds())
    Random(7).shuffle(reports)
    assert pain_findings(reports, Thresholds()) == straight


def test_evidence_is_told_in_a_sentence():
    (finding,) = found(Rule.PAIN_TOO_HIGH, report(exercise="Step-down"))
    assert finding.since == MONDAY
    told = finding.evidence[0].sentence(MONDAY + timedelta(days=2))
    assert told == "Right knee hurt 7 of 10 during the step-down on Monday; usual is 1."


def test_a_symptom_is_a_finding_of_its_own():
    def symptom(day, what):
        return SymptomReport(f"s{day}", MONDAY + timedelta(days=day), f"{day}", what)

    reports = [symptom(1, Symptom.CHEST_PAIN), symptom(0, Symptom.CHEST_PAIN), symptom(3, Symptom.FEVER)]
    first, second = symptom_findings([*reports, symptom(3, Symptom.CHEST_PAIN)])
    assert (first.rule, first.subject, len(first.evidence)) == (Rule.RED_FLAG_SYMPTOM, "chest_pain", 3)
    assert [one.event_id for one in first.evidence] == ["s0", "s1", "s3"]
    assert second.evidence[0].sentence(MONDAY + timedelta(days=3)) == "Fever was reported today."


@pytest.mark.parametrize("rule", [Rule.PAIN_TOO_HIGH, Rule.PAIN_NEXT_MORNING, Rule.PAIN_RISING])
def test_every_finding_names_its_place(rule):
    when = When.NEXT_MORNING if rule is Rule.PAIN_NEXT_MORNING else When.DURING
    reports = [report(7 * week, 6 + week, when, side) for week in range(3) for side in (Side.LEFT, Side.RIGHT)]
    assert [one.subject for one in found(rule, *reports)] == ["knee.left", "knee.right"]
