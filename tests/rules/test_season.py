"""The season planned back from the trip. ``tests.bench.season_trial`` asks ten thousand times."""

from datetime import date, timedelta

import pytest
from hypothesis import HealthCheck, given, settings

from steadfoot.rules.ranges import NotWhole, OutOfRange
from steadfoot.rules.season import Phase, phases, plan
from steadfoot.rules.season_request import Activity, Level, NotPossible, Pin, Request, most_spaced
from steadfoot.rules.season_walks import growth, shortfalls
from tests.rules.season_requests import broken, request, seasons

TRIP = date(2027, 6, 12)
START = date(2027, 4, 24)
MON_WED_SAT = frozenset({0, 2, 5})


def asked(**other):
    usual = {
        "start": START,
        "trip": TRIP,
        "weekdays": MON_WED_SAT,
        "strength_a_week": 2,
        "walking": Level(8, 300, 4),
        "goal": Level(16, 900, 8),
    }
    return Request(**(usual | other))


def days_of(season, activity):
    return [one.day for week in season.weeks for one in week.sessions if one.activity is activity]


@settings(max_examples=200, deadline=None, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
@given(seasons())
def test_no_request_makes_a_plan_that_breaks_a_rule(parts):
    one, refused = request(parts)
    if refused:
        assert refused.short_by > 0
        assert refused.unit
        assert refused.choices
    else:
        assert broken(one, plan(one)) == []


def test_the_checker_sees_broken_rules():
    """Or the test above could not fail."""
    one = asked()
    season = plan(one)
    assert broken(asked(weekdays=frozenset({1, 3, 6})), season) == ["only open days"]
    assert "pins are kept" in broken(asked(pins=(Pin(date(2027, 5, 4), Activity.CARDIO),)), season)
    assert "covers every day once" in broken(asked(start=START + timedelta(1)), season)
    assert "not more than asked for" in broken(asked(strength_a_week=1), season)
    assert "walks grow by steps" in broken(asked(things_a_week=1), season)


def test_strength_on_weekdays_and_the_walk_on_saturday():
    """But in the last week, where Wednesday is too near the trip for strength."""
    weeks = plan(asked()).weeks
    lie = [{(one.activity.value, one.day.weekday()) for one in week.sessions} for week in weeks]
    assert lie[:-1] == [{("strength", 0), ("strength", 2), ("walk", 5)}] * 6
    assert lie[-1] == {("strength", 0), ("strength", 5), ("walk", 2)}


def test_the_day_before_the_trip_is_for_rest():
    season = plan(asked(weekdays=frozenset(range(7))))
    last = max(one.day for one in season.weeks[-1].sessions)
    assert last == TRIP - timedelta(2)
    assert max(days_of(season, Activity.STRENGTH)) <= TRIP - timedelta(5)


@pytest.mark.parametrize(
    ("weeks", "kinds"),
    [(1, "t"), (2, "bt"), (3, "bbt"), (4, "bbtt"), (6, "bbbbtt"), (7, "bbblbtt"), (11, "bbblbbblbtt")],
)
def test_phases_by_length(weeks, kinds):
    assert "".join(phase.value[0] for phase in phases(weeks)) == kinds


def test_a_week_of_taper_only_keeps_its_effort_and_loses_volume():
    (week,) = plan(asked(start=TRIP - timedelta(7))).weeks
    assert week.phase is Phase.TAPER
    assert {one.minutes for one in week.sessions if one.activity is Activity.STRENGTH} == {20}


def test_pins_stay_and_the_rest_goes_round_them():
    pins = (
        Pin(date(2027, 5, 6), Activity.STRENGTH),
        Pin(date(2027, 5, 9), Activity.WALK),
        Pin(date(2027, 5, 11), Activity.CARDIO),
    )
    season = plan(asked(pins=pins))
    assert all(pin.day in days_of(season, pin.activity) for pin in pins)
    assert date(2027, 5, 5) not in days_of(season, Activity.STRENGTH)


def test_a_pin_on_the_last_day_of_a_week_keeps_the_first_day_of_the_next_free():
    season = plan(asked(weekdays=frozenset({0, 5}), pins=(Pin(date(2027, 5, 7), Activity.STRENGTH),)))
    strength = days_of(season, Activity.STRENGTH)
    assert date(2027, 5, 7) in strength
    assert date(2027, 5, 8) not in strength
    assert date(2027, 5, 10) in strength


@pytest.mark.parametrize(
    ("pins", "words"),
    [
        ([("2027-05-03", "strength"), ("2027-05-04", "strength")], "Strength is pinned on 2027-05-03 and 2027-05-04"),
        ([("2027-06-09", "strength")], "too near the trip[.] Short by 2 days"),
        ([("2027-06-12", "walk")], "lies outside the season[.] Short by 1 days"),
        ([("2027-04-20", "walk")], "lies outside the season[.] Short by 4 days"),
        ([("2027-05-03", "walk"), ("2027-05-03", "cardio")], "Two pins are on 2027-05-03"),
        ([(f"2027-05-0{n}", "cardio") for n in range(1, 8)], "no day of rest"),
    ],
)
def test_pins_that_clash_are_named(pins, words):
    with pytest.raises(NotPossible, match=words) as refused:
        asked(pins=tuple(Pin(date.fromisoformat(day), Activity(kind)) for day, kind in pins))
    assert "take a pin away" in refused.value.choices


@pytest.mark.parametrize(
    ("days", "most"), [({0}, 1), ({0, 1}, 1), ({0, 6}, 1), ({0, 2}, 2), ({0, 2, 6}, 2), ({1, 3, 5}, 3), (set(), 0)]
)
def test_how_much_strength_fits_on_some_days(days, most):
    assert most_spaced(frozenset(days)) == most


def test_too_much_strength_for_the_days_says_by_how_much():
    with pytest.raises(NotPossible, match=r"at most 1\. Short by 2 sessions a week") as refused:
        asked(weekdays=frozenset({0, 1}), strength_a_week=3)
    assert (refused.value.name, refused.value.short_by) == ("strength", 2)


def test_there_is_a_day_of_rest():
    season = plan(asked(weekdays=frozenset(range(7)), strength_a_week=3, walks_a_week=3))
    assert max(len(week.sessions) for week in season.weeks) == 6


def test_where_no_day_is_left_a_walk_shares_one_and_it_is_said():
    season = plan(asked(strength_a_week=2, weekdays=frozenset({0, 3})))
    assert set(days_of(season, Activity.WALK)) & set(days_of(season, Activity.STRENGTH))
    assert any("share a day with strength" in one for one in season.warnings)


def test_days_away_are_left_out_and_the_gap_is_said():
    away = frozenset(date(2027, 5, 8) + timedelta(n) for n in range(7))
    season = plan(asked(away=away))
    assert not away & {one.day for week in season.weeks for one in week.sessions}
    assert "The week of 2027-05-08 holds 0 strength sessions, 2 fewer." in season.warnings
    assert "The week of 2027-05-08 has no day for a walk." in season.warnings


def test_cardio_fills_what_is_left_unless_a_number_is_asked_for():
    week = frozenset(range(7))
    assert len(days_of(plan(asked(weekdays=week, cardio_a_week=0)), Activity.CARDIO)) == 0
    one = plan(asked(weekdays=week, cardio_a_week=1))
    assert len(days_of(one, Activity.CARDIO)) == len(one.weeks)


def test_a_short_season_says_by_how_much():
    assert any("3 weeks are 3 fewer than the usual 6" in one for one in plan(asked(start=date(2027, 5, 22))).warnings)
    assert not any("usual" in one for one in plan(asked()).warnings)


def test_what_walks_do_not_grow_to_is_named_with_choices():
    season = plan(asked(goal=Level(20, 1500, 15)))
    assert {one.name for one in season.shortfalls} == {"distance_km", "ascent_m", "pack_kg"}
    for one in season.shortfalls:
        assert one.short_by == pytest.approx(one.wanted - one.reached, abs=0.06)
        assert one.weeks_more > 0
        assert one.sentence in season.warnings
    assert "a lighter pack" in season.shortfalls[-1].sentence
    assert "shorter days on the trip" in season.shortfalls[0].sentence


def test_the_weeks_more_are_enough():
    short = plan(asked(goal=Level(12, 700, 8)))
    (weeks,) = {one.weeks_more for one in short.shortfalls}
    assert plan(asked(goal=Level(12, 700, 8), start=START - timedelta(weeks=weeks))).shortfalls == ()


def test_without_walks_nothing_is_said_of_them():
    season = plan(asked(walks_a_week=0, goal=Level(30, 2000, 20)))
    assert season.shortfalls == ()
    assert days_of(season, Activity.WALK) == []


def test_what_is_beyond_its_goal_stays():
    growing = growth(Level(20, 300, 4), Level(16, 400, 4), 3)
    assert [next(growing) for _ in range(3)] == [Level(20, 300, 4), Level(20, 400, 4), Level(20, 400, 4)]
    assert shortfalls(Level(20, 300, 4), Level(16, 400, 4), 3, Level(20, 400, 4)) == []


def test_a_goal_without_ascent_or_pack_asks_for_none():
    growing = growth(Level(5, 0, 0), Level(6, 0, 0), 3)
    assert [next(growing) for _ in range(2)] == [Level(5, 0, 0), Level(6, 0, 0)]


@pytest.mark.parametrize(
    ("other", "words"),
    [
        ({"trip": START}, "days to trip is 0; it must be 1 to 365 days"),
        ({"trip": START - timedelta(3)}, "days to trip is -3"),
        ({"trip": START + timedelta(366)}, "days to trip is 366"),
        ({"strength_a_week": 4}, "strength is 4; it must be 0 to 3"),
        ({"walks_a_week": -1}, "walks is -1"),
        ({"cardio_a_week": 7}, "cardio is 7"),
        ({"things_a_week": 0}, "things a week is 0; it must be 1 to 3"),
        ({"weekdays": frozenset({7})}, "weekday is 7"),
    ],
)
def test_numbers_that_cannot_be_are_refused(other, words):
    with pytest.raises(OutOfRange, match=words):
        asked(**other)


def test_sessions_are_counted_whole():
    with pytest.raises(NotWhole):
        asked(strength_a_week=1.5)


@pytest.mark.parametrize("level", [(0.5, 0, 0), (101, 0, 0), (5, -1, 0), (5, 0, 61)])
def test_a_walk_that_cannot_be_is_refused(level):
    with pytest.raises(OutOfRange):
        Level(*level)
