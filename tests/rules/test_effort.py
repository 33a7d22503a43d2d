"""Session load, and sessions that feel harder than planned."""

from datetime import date, timedelta

import pytest

from steadfoot.rules.effort import Rated, effort_findings, session_load
from steadfoot.rules.findings import Rule

MONDAY = date(2026, 10, 5)


def rated(*above_plan):
    return [
        Rated(f"e{n}", MONDAY + timedelta(days=n), "Steps and hips", 5, 5 + above) for n, above in enumerate(above_plan)
    ]


@pytest.mark.parametrize(
    ("above_plan", "hits"),
    [
        ((2, 2, 2), 1),
        ((2, 2), 0),
        ((2, 1, 2), 0),
        ((1, 1, 1), 0),
        ((0, 2, 3, 2, 2), 1),
        ((2, 2, 2, 0, 2, 2, 2), 2),
        ((2, 2, 0, 0, 2, 2), 0),
        ((), 0),
    ],
)
def test_three_sessions_running_two_above_plan_are_a_finding(above_plan, hits):
    assert len(effort_findings(rated(*above_plan))) == hits


def test_effort_evidence_names_the_session_and_the_plan():
    (finding,) = effort_findings(rated(2, 3, 2))
    assert (finding.rule, finding.subject) == (Rule.EFFORT_RISING, "effort")
    assert [one.event_id for one in finding.evidence] == ["e0", "e1", "e2"]
    told = finding.evidence[1].sentence(MONDAY + timedelta(days=2))
    assert told == "Steps and hips felt 8 of 10 yesterday; planned was 5."


@pytest.mark.parametrize(("effort", "minutes"), [(-1, 30), (11, 30), (5, -1)])
def test_a_load_off_the_scale_is_refused(effort, minutes):
    with pytest.raises(ValueError, match="must be 0 to 10"):
        session_load(effort, minutes)


@pytest.mark.parametrize(("effort", "minutes", "load"), [(10, 45, 450), (0, 45, 0), (5, 0, 0), (5, 0.5, 2.5)])
def test_the_ends_of_the_scale_and_no_time_at_all_are_loads(effort, minutes, load):
    assert session_load(effort, minutes) == load
