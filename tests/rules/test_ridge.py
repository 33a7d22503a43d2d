"""The weeks behind the ridge."""

from datetime import date, timedelta

import pytest

from steadfoot.rules.ridge import Load, sums
from steadfoot.rules.ridge import weeks as drawn

MONDAY = date(2026, 10, 5)


def load(day, planned=200.0, done=0.0, *, touched=False):
    return Load(MONDAY + timedelta(days=day), planned, done, touched)


def weeks(loads, today, heard_until):
    return drawn(sums(loads), loads, today, heard_until)


def on(day):
    return MONDAY + timedelta(days=day)


def test_weeks_without_sessions_in_between_are_kept():
    found = weeks([load(0), load(15, 300)], on(0), on(0))
    assert [week.planned_load for week in found] == [200, 0, 300]


def test_no_program_has_no_ridge():
    assert weeks([], on(0), None) == []


@pytest.mark.parametrize(("heard_until", "expected"), [(-1, "none"), (0, "part"), (6, "part"), (7, "all")])
def test_a_week_is_heard_once_the_phone_reports_after_it(heard_until, expected):
    assert weeks([load(0)], on(20), on(heard_until))[0].heard == expected


def test_a_week_never_heard():
    assert weeks([load(0)], on(20), None)[0].heard == "none"


def test_the_running_week_is_measured_against_what_was_due():
    loads = [load(0, 100, 100, touched=True), load(2, 100), load(4, 200)]
    wednesday, thursday = weeks(loads, on(2), on(2)), weeks(loads, on(3), on(3))
    assert (wednesday[0].due_share, thursday[0].due_share) == (0.25, 0.5)


def test_a_session_done_early_is_due_early():
    loads = [load(0, 100), load(4, 100, 90, touched=True)]
    assert weeks(loads, on(0), on(0))[0].due_share == 0.5


def test_only_days_that_the_phone_has_told_about_are_due():
    loads = [load(0, 100), load(1, 100)]
    assert weeks(loads, on(4), on(1))[0].due_share == 0.5
    assert weeks(loads, on(4), None)[0].due_share is None


def test_other_weeks_have_no_share():
    assert weeks([load(0, touched=True)], on(7), on(7))[0].due_share is None


def test_extra_sessions_add_to_what_was_done():
    assert weeks([load(0), load(1, 0, 150, touched=True)], on(3), on(3))[0].done_load == 150


def test_two_sessions_on_one_day_and_two_days_of_a_week_add_up():
    loads = [load(0, 100, 90), load(0, 50, 40), load(6, 30, 20), load(14, 10, 5)]
    assert [(week.planned_load, week.done_load) for week in sums(loads)] == [(180, 150), (0, 0), (10, 5)]
    assert [week.starts_on for week in weeks(loads, on(0), on(0))] == [on(0), on(7), on(14)]


def test_only_the_running_week_has_a_share():
    loads = [load(0, 100), load(7, 1, touched=True), load(8, 3)]
    assert [week.due_share for week in weeks(loads, on(7), on(7))] == [None, 0.25]
