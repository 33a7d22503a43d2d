"""Planned sessions: ids, windows, and which version counts on which day."""

from datetime import UTC, date, datetime, timedelta

from hypothesis import given
from hypothesis import strategies as st

from steadfoot.programs.content import ProgramContent, normalise
from steadfoot.programs.plan import (
    Version,
    in_force,
    monday_of,
    planned_between,
    planned_of,
    weeks_of,
    window,
)
from tests.builders import circuit, content, step_down
from tests.features.programs import made

MONDAY = date(2026, 11, 30)


def parsed(whole):
    return normalise(ProgramContent.model_validate(whole))


def version(number, effective_on, whole):
    return Version(f"v{number}", number, datetime(2026, 11, 1, tzinfo=UTC), effective_on, "m", "", (), parsed(whole))


def test_the_planned_id_is_the_date_and_the_place_within_it():
    whole = content(MONDAY, 1, sessions=[circuit("s1"), circuit("s2", prescriptions=[step_down("p2")])])
    whole["days"] = [{"date": "2026-12-01", "session": key, "fixed_day": False} for key in ("s2", "s1")]
    planned = planned_of(parsed(whole), 7)
    assert [(one.planned_id, one.session.key, one.version) for one in planned] == [
        ("2026-12-01.1", "s2", 7),
        ("2026-12-01.2", "s1", 7),
    ]


def test_rest_is_not_prescribed_but_keeps_its_place():
    rest = {"key": "r", "kind": "rest", "name": "Rest"}
    whole = content(MONDAY, 1, sessions=[circuit("s1"), rest])
    whole["days"] = [{"date": "2026-12-01", "session": key, "fixed_day": False} for key in ("r", "s1")]
    assert [one.planned_id for one in planned_of(parsed(whole))] == ["2026-12-01.2"]


@made.CALM
@given(made.contents())
def test_a_window_holds_its_day_and_is_a_week_from_monday_or_the_day_alone(whole):
    for day in whole.days:
        first, last = window(day)
        assert first <= day.date <= last
        assert (first == last) if day.fixed_day else (first.weekday() == 0 and last - first == timedelta(days=6))


def test_a_new_version_counts_from_its_day_on_and_the_old_one_before():
    old, new = content(MONDAY, 1), content(MONDAY, 1, weekdays=(0, 1, 2, 3))
    versions = [version(1, MONDAY, old), version(2, MONDAY + timedelta(days=2), new)]
    planned = planned_between(versions, MONDAY, MONDAY + timedelta(days=6))
    assert [(one.planned_id, one.version) for one in planned] == [
        ("2026-11-30.1", 1),
        ("2026-12-02.1", 2),
        ("2026-12-03.1", 2),
    ]


def test_of_two_versions_of_one_day_the_later_counts():
    versions = [version(1, MONDAY, content(MONDAY)), version(2, MONDAY, content(MONDAY))]
    assert in_force(versions, MONDAY).number == 2
    assert {one.version for one in planned_between(versions, MONDAY, MONDAY + timedelta(days=27))} == {2}


def test_before_the_first_version_nothing_is_in_force_or_planned():
    versions = [version(1, MONDAY + timedelta(days=7), content(MONDAY))]
    assert in_force(versions, MONDAY) is None
    assert planned_between(versions, MONDAY, MONDAY + timedelta(days=6)) == []


@made.CALM
@given(made.contents(), st.integers(0, 60))
def test_splitting_a_span_loses_and_doubles_nothing(whole, days):
    versions = [Version("v", 1, datetime(2026, 9, 1, tzinfo=UTC), made.START, "m", "", (), whole)]
    last = made.START + timedelta(days=90)
    cut = made.START + timedelta(days=days)
    parts = planned_between(versions, made.START, cut) + planned_between(versions, cut + timedelta(days=1), last)
    assert parts == planned_between(versions, made.START, last) == planned_of(whole, 1)


def test_weeks_sum_what_they_ask_for_and_empty_ones_are_there():
    whole = content(MONDAY, 3)
    whole["days"] = [day for day in whole["days"] if not "2026-12-07" <= day["date"] <= "2026-12-13"]
    weeks = weeks_of(parsed(whole))
    assert [(week.starts_on, week.sessions, week.minutes, week.planned_load) for week in weeks] == [
        (MONDAY, 3, 90, 450),
        (MONDAY + timedelta(days=7), 0, 0, 0),
        (MONDAY + timedelta(days=14), 3, 90, 450),
    ]


def test_a_week_with_a_session_of_unknown_length_has_no_sum():
    bike = {"key": "s1", "kind": "cardio", "name": "Bike", "activity": "easy", "expected_effort": 3}
    (week,) = weeks_of(parsed(content(MONDAY, 1, sessions=[bike])))
    assert (week.sessions, week.minutes, week.planned_load) == (3, None, None)


def test_a_program_without_days_has_no_weeks():
    assert weeks_of(parsed(content(MONDAY) | {"days": []})) == []


def test_sunday_belongs_to_the_week_before():
    assert monday_of(date(2026, 12, 6)) == MONDAY
