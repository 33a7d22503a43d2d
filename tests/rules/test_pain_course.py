"""The course of pain: after the session, the usual level, another place, and what got better."""

from datetime import date, timedelta
from random import Random

import pytest

from steadfoot.rules.findings import Rule
from steadfoot.rules.pain import Thresholds
from steadfoot.rules.pain_course import course_findings, improvements
from steadfoot.rules.pain_findings import Report
from steadfoot.rules.vocabulary import Region, Side, When

MONDAY = date(2026, 10, 5)
LIMITS = Thresholds(usual_pain=1)


def report(day=0, rating=3, when=When.DURING, side=Side.RIGHT, region=Region.KNEE, moment="T08"):
    on = MONDAY + timedelta(days=day)
    return Report(f"{day}-{rating}-{when}-{side}-{region}", on, f"{on}{moment}", rating, region, side, when)


def found(rule, *reports):
    return [one for one in course_findings(reports, LIMITS) if one.rule is rule]


@pytest.mark.parametrize(("after", "hits"), [(3, 0), (4, 1), (5, 1), (6, 0)])
def test_after_counts_from_two_points_above_during_to_the_stop(after, hits):
    during, later = report(0, 2), report(0, after, When.AFTER, moment="T20")
    assert len(found(Rule.PAIN_AFTER, during, later)) == hits


@pytest.mark.parametrize(("after", "hits"), [(2, 0), (3, 1)])
def test_where_nothing_was_felt_during_the_usual_level_is_the_base(after, hits):
    assert len(found(Rule.PAIN_AFTER, report(0, after, When.AFTER), report(1, 0))) == hits


def test_the_worst_of_that_days_session_is_the_base_and_only_at_that_place():
    during = (report(0, 1), report(0, 3), report(0, 4, side=Side.LEFT))
    assert found(Rule.PAIN_AFTER, *during, report(0, 4, When.AFTER)) == []
    assert len(found(Rule.PAIN_AFTER, *during, report(0, 5, When.AFTER))) == 1


@pytest.mark.parametrize(
    ("ratings", "hits"), [((2, 2, 2), 1), ((2, 2), 0), ((2, 2, 1), 0), ((2, 1, 2, 2), 0), ((1, 2, 2, 3), 1)]
)
def test_the_usual_level_is_up_after_three_sessions_running_above_it(ratings, hits):
    reports = [report(2 * n, rating, When.BEFORE) for n, rating in enumerate(ratings)]
    assert len(found(Rule.USUAL_PAIN_UP, *reports)) == hits


def test_three_reports_of_one_day_are_not_three_sessions():
    assert found(Rule.USUAL_PAIN_UP, *(report(0, rating, When.BEFORE) for rating in (2, 3, 4))) == []


@pytest.mark.parametrize(("gap_days", "hits"), [(14, 1), (15, 0)])
def test_more_than_two_quiet_weeks_break_the_run(gap_days, hits):
    days = (0, 2, 2 + gap_days)
    assert len(found(Rule.USUAL_PAIN_UP, *(report(day, 2, When.BEFORE) for day in days))) == hits


@pytest.mark.parametrize(("gap_days", "hits"), [(14, 1), (15, 0), (0, 0)])
def test_a_new_place_within_two_weeks_of_another_has_moved(gap_days, hits):
    assert len(found(Rule.PAIN_MOVED, report(0), report(gap_days, region=Region.HIP))) == hits


def test_the_other_side_is_another_place_and_both_reports_are_the_evidence():
    (moved,) = found(Rule.PAIN_MOVED, report(0, 4), report(3, 2), report(5, 3, side=Side.LEFT), report(6, 3))
    assert moved.subject == "knee.left"
    assert [one.event_id for one in moved.evidence] == ["3-2-during-right-knee", "5-3-during-left-knee"]


@pytest.mark.parametrize(("before", "new"), [(1, 3), (3, 1)])
def test_pain_at_the_usual_level_moves_nowhere(before, new):
    assert found(Rule.PAIN_MOVED, report(0, before), report(4, new, side=Side.LEFT)) == []


def test_the_order_of_reports_does_not_matter():
    reports = [report(day, rating, when) for day in (0, 3, 6) for rating in (2, 3) for when in When]
    reports += [report(8, 3, side=Side.LEFT), report(6, 5, When.AFTER)]
    straight = course_findings(reports, LIMITS)
    Random(7).shuffle(reports)
    assert course_findings(reports, LIMITS) == straight
    assert {one.rule for one in straight} == {Rule.PAIN_AFTER, Rule.USUAL_PAIN_UP, Rule.PAIN_MOVED}


@pytest.mark.parametrize(
    ("first", "last", "told"),
    [
        (3, 2, "only one"),
        (9, 7, "only one"),
        (5, 3, "both rules agree"),
        (4, 3, None),
        (9, 8, None),
        (3, 3, None),
        (0, 4, None),
    ],
)
def test_less_by_two_points_or_thirty_percent_is_told(first, last, told):
    notes = improvements([report(0, first), report(20, last)])
    assert (told is None and notes == []) or told in notes[0].sentence


@pytest.mark.parametrize(("last_day", "notes"), [(13, 0), (14, 1)])
def test_a_course_needs_two_weeks(last_day, notes):
    assert len(improvements([report(0, 6), report(last_day, 1)])) == notes


@pytest.mark.parametrize(("day", "notes"), [(13, 0), (12, 1)])
def test_the_last_week_is_told_by_its_worst(day, notes):
    assert len(improvements([report(0, 6), report(day + 1, 6), report(20, 1)])) == notes


@pytest.mark.parametrize(("day", "base"), [(6, 8), (7, 4)])
def test_the_first_week_is_told_by_its_worst(day, base):
    (note,) = improvements([report(0, 4), report(day, 8), report(21, 1)])
    assert note.first.rating == base


def test_a_note_is_told_in_a_sentence_with_its_two_reports():
    (note,) = improvements([report(0, 5, When.AFTER), report(9, 9, When.NEXT_MORNING), report(20, 2)])
    assert note.sentence == (
        "Right knee: at worst 5 of 10 in the first week, 2 in the last. "
        "3 points and 60 percent less; 2 points or 30 percent is a change that matters, and both rules agree."
    )
    assert [one.event_id for one in note.evidence(LIMITS)] == [note.first.event_id, note.last.event_id]
    assert note.cited.source == "farrar-2001"


@pytest.mark.parametrize("rule", [Rule.PAIN_AFTER, Rule.USUAL_PAIN_UP])
def test_each_place_has_a_finding_of_its_own_that_names_it(rule):
    when = When.AFTER if rule is Rule.PAIN_AFTER else When.BEFORE
    reports = [report(day, 4, when, side) for day in (0, 1, 2) for side in (Side.LEFT, Side.RIGHT)]
    assert [(one.subject, len(one.evidence)) for one in found(rule, *reports)] == [("knee.left", 3), ("knee.right", 3)]


def test_pain_in_another_place_on_the_very_next_day_has_moved():
    (moved,) = found(Rule.PAIN_MOVED, report(0), report(1, region=Region.HIP))
    assert (moved.subject, len(moved.evidence)) == ("hip.right", 2)


def test_where_only_one_rule_says_so_the_note_says_it():
    (note,) = improvements([report(0, 3), report(20, 2)])
    assert note.sentence.endswith(
        "1 point and 33 percent less; 2 points or 30 percent is a change that matters, "
        "and only one of the two rules says so."
    )
