"""A season taken up again after a pause."""

from dataclasses import replace
from datetime import date, timedelta

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from steadfoot.rules.ranges import OutOfRange
from steadfoot.rules.season import plan
from steadfoot.rules.season_replan import Pause, resume
from steadfoot.rules.season_request import Activity, Level, NotPossible, Pin, Request
from tests.rules.season_requests import broken, request, seasons

START, TRIP = date(2027, 4, 24), date(2027, 6, 12)
ASKED = Request(
    start=START,
    trip=TRIP,
    weekdays=frozenset({0, 2, 5}),
    strength_a_week=2,
    walking=Level(8, 300, 4),
    goal=Level(16, 900, 8),
)
SINCE = date(2027, 5, 10)


def after(days, pause=Pause.ILLNESS, asked=ASKED):
    return resume(asked, pause, SINCE, SINCE + timedelta(days))


def long_walks(season):
    return [max((one.walk for one in week.sessions if one.walk), key=lambda w: w.distance_km) for week in season.weeks]


@pytest.mark.parametrize(
    ("pause", "keeps"), [(Pause.ILLNESS, 70), (Pause.HOLIDAY, 90), (Pause.MISSED_FORTNIGHT, 80), (Pause.PAIN, 60)]
)
def test_it_goes_on_from_a_share_of_the_walk_planned_before_the_pause(pause, keeps):
    found = after(14, pause)
    built = [walk for week in plan(ASKED).weeks for walk in [s.walk for s in week.sessions if s.walk and s.day < SINCE]]
    assert found.before == built[-1]
    assert found.keeps_percent == keeps
    assert found.asked.walking.distance_km == pytest.approx(found.before.distance_km * keeps / 100)
    assert found.asked.walking.ascent_m == pytest.approx(found.before.ascent_m * keeps / 100)
    assert found.asked.walking.pack_kg == pytest.approx(found.before.pack_kg * keeps / 100)


@pytest.mark.parametrize(("days", "keeps"), [(27, 90), (28, 50)])
def test_from_four_weeks_on_half_is_kept_whatever_it_was_for(days, keeps):
    assert after(days, Pause.HOLIDAY).keeps_percent == keeps


def test_after_pain_one_thing_grows_at_a_time_and_after_a_holiday_as_many_as_before():
    assert after(14, Pause.PAIN).asked.things_a_week == 1
    assert after(14, Pause.HOLIDAY).asked.things_a_week == ASKED.things_a_week


def test_the_first_long_walk_after_the_pause_is_the_one_stepped_back_to():
    found = after(14)
    assert long_walks(plan(found.asked))[0].distance_km == pytest.approx(found.before.distance_km * 0.7)


def test_before_the_first_walk_the_level_that_it_began_from_stands():
    assert resume(ASKED, Pause.HOLIDAY, START, START + timedelta(3)).before == ASKED.walking
    no_walks = replace(ASKED, walks_a_week=0)
    assert resume(no_walks, Pause.HOLIDAY, SINCE, SINCE).before == ASKED.walking


def test_a_walk_never_shrinks_below_a_kilometre():
    assert after(28, asked=replace(ASKED, walking=Level(1, 0, 0), goal=Level(1, 0, 0))).asked.walking.distance_km == 1


def test_pins_of_the_pause_are_gone_and_later_ones_stay():
    early, late = Pin(date(2027, 5, 12), Activity.STRENGTH), Pin(date(2027, 5, 26), Activity.STRENGTH)
    assert after(14, asked=replace(ASKED, pins=(early, late))).asked.pins == (late,)


@pytest.mark.parametrize(
    ("days", "words"), [(-1, "days of the pause is -1"), (33, "days left to the trip is 0"), (40, "to the trip is -7")]
)
def test_dates_that_do_not_fit_are_refused(days, words):
    with pytest.raises(OutOfRange, match=words):
        after(days)


@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
@given(seasons(), st.sampled_from(Pause), st.integers(0, 60), st.integers(0, 40))
def test_what_is_left_breaks_no_rule(parts, pause, since, days):
    asked, _ = request(parts)
    if asked is None or since + days >= (asked.trip - asked.start).days:
        return
    begins = asked.start + timedelta(since)
    try:
        found = resume(asked, pause, begins, begins + timedelta(days))
    except NotPossible:
        return
    assert broken(found.asked, plan(found.asked)) == []
    assert found.asked.walking.distance_km <= max(found.before.distance_km, 1)
