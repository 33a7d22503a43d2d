"""Readiness by walks: asked beside shown, at the edges of each mark, and with little or nothing known."""

from dataclasses import replace
from datetime import timedelta

import pytest

from steadfoot.rules.baseline_catalogue import TestCode
from steadfoot.rules.ranges import OutOfRange
from steadfoot.rules.readiness import readiness
from steadfoot.rules.readiness_facts import Trip, TripDay, by_day
from steadfoot.rules.readiness_items import Closing, Doubt, Mark, Subject, mark_of
from steadfoot.rules.readiness_walks import steps_between
from tests.rules.readiness_people import LEG, TODAY, TRIP, item, items, known, walk


@pytest.mark.parametrize(
    ("shown", "mark"),
    [(10, Mark.SHOWN), (9.99, Mark.NEAR), (8, Mark.NEAR), (7.99, Mark.NOT_SHOWN), (0, Mark.NOT_SHOWN)],
)
def test_a_mark_is_shown_from_what_is_asked_and_near_from_four_fifths(shown, mark):
    assert mark_of(shown, 10) is mark


def test_four_fifths_of_a_number_that_no_float_holds_are_near():
    assert mark_of(0.8 * 3, 3) is Mark.NEAR


@pytest.mark.parametrize(
    ("subject", "more", "asked", "shown"),
    [
        (Subject.LONGEST_DAY, {"km": 16}, 16, 16),
        (Subject.ASCENT, {"up": 900}, 900, 900),
        (Subject.DESCENT, {"down": 800}, 800, 800),
        (Subject.PACK, {"pack": 9}, 9, 9),
    ],
)
def test_each_thing_is_compared_with_the_leg_that_asks_most_of_it(subject, more, asked, shown):
    found = item(subject, known(walk(**more)))
    assert (found.mark, found.asked, found.shown, found.closing) == (Mark.SHOWN, asked, shown, Closing.NOTHING)
    assert (found.weeks, found.in_time) == (0, True)
    assert [one.id for one in found.evidence] == ["w3"]


def test_what_one_leg_asks_most_of_and_another_of_the_rest_is_taken_from_each():
    trip = Trip(TRIP.starts_on, (TripDay(20, 100, 100, 4), TripDay(8, 1200, 1000, 9)))
    found = items(known(walk()), trip)
    assert [found[one].asked for one in (Subject.LONGEST_DAY, Subject.ASCENT, Subject.PACK)] == [20, 1200, 9]


def test_walks_of_one_day_add_up_with_the_lightest_pack():
    both = walk(km=9, up=300, down=200, pack=8, key="a"), walk(km=4, up=200, down=300, pack=2, effort=6, key="b")
    (day,) = by_day(both)
    assert (day.event_id, day.distance_km, day.ascent_m, day.descent_m, day.pack_kg) == ("a3", 13, 500, 500, 2)
    found = items(known(*both))
    assert (found[Subject.LONGEST_DAY].shown, found[Subject.PACK].shown) == (13, 8)


def test_days_add_up_to_more_than_any_route_and_still_have_hours():
    many = [walk(km=200, key=str(number)) for number in range(6)]
    assert item(Subject.LONGEST_DAY, known(*many)).shown == 1200
    assert Trip(None, (TripDay(1200, 0, 0, None),)).hardest.hours == 200


def test_a_pack_counts_from_a_walk_of_three_km_on():
    assert item(Subject.PACK, known(walk(km=3, pack=9))).mark is Mark.SHOWN
    found = item(Subject.PACK, known(walk(km=2.9, pack=9)))
    assert (found.mark, found.closing, found.evidence) == (Mark.UNKNOWN, Closing.LOG_A_WALK, ())


def test_a_walk_of_six_weeks_ago_counts_no_more():
    assert item(Subject.LONGEST_DAY, known(walk(days_ago=41))).shown == 10
    assert item(Subject.LONGEST_DAY, known(walk(days_ago=42))).mark is Mark.UNKNOWN


def test_a_trip_without_climb_or_pack_is_not_asked_about_them():
    flat = Trip(TRIP.starts_on, (TripDay(12, 0, 0, 0),))
    found = items(known(walk(km=12, up=0, down=0, pack=0)), flat)
    assert {Subject.ASCENT, Subject.DESCENT, Subject.PACK, Subject.DAYS_IN_A_ROW} & set(found) == set()
    assert found[Subject.WHOLE_DAY].mark is Mark.SHOWN


def test_a_pack_that_the_trip_does_not_say_is_a_doubt_of_the_whole_day():
    trip = Trip(TRIP.starts_on, (TripDay(16, 900, 800, None),))
    with_walk, without = item(Subject.WHOLE_DAY, known(walk()), trip), item(Subject.WHOLE_DAY, known(), trip)
    assert Doubt.TRIP_NOT_SAID in with_walk.doubts
    assert (without.mark, without.doubts) == (Mark.UNKNOWN, (Doubt.TRIP_NOT_SAID,))
    assert Doubt.TRIP_NOT_SAID not in item(Subject.WHOLE_DAY, known(walk())).doubts


def test_what_the_trip_says_of_no_day_is_unknown_and_asked_for():
    trip = Trip(TRIP.starts_on, (TripDay(16, None, 0, 9), TripDay(10, 0, 0, 9)))
    found = item(Subject.ASCENT, known(walk(up=900)), trip)
    assert (found.mark, found.asked, found.shown) == (Mark.UNKNOWN, None, None)
    assert (found.closing, found.doubts, found.evidence) == (Closing.SAY_TRIP, (Doubt.TRIP_NOT_SAID,), ())
    assert Subject.DESCENT not in items(known(walk()), trip)


def test_what_the_trip_says_of_some_days_only_is_compared_and_is_a_doubt():
    trip = Trip(TRIP.starts_on, (TripDay(16, None, 0, 9), TripDay(10, 400, 0, 9)))
    found = item(Subject.ASCENT, known(walk(up=400)), trip)
    assert (found.mark, found.asked, found.doubts[0]) == (Mark.SHOWN, 400, Doubt.TRIP_NOT_SAID)


def test_a_day_of_rest_says_nothing_and_asks_for_nothing():
    rest = TripDay(0, None, None, None)
    trip = Trip(TRIP.starts_on, (LEG, LEG, rest, LEG))
    found = items(known(walk()), trip)
    assert (trip.in_a_row, found[Subject.DAYS_IN_A_ROW].asked) == (2, 2)
    assert trip.mean_hours == LEG.hours
    assert all(Doubt.TRIP_NOT_SAID not in one.doubts for one in found.values())
    assert Subject.DAYS_IN_A_ROW not in items(known(walk()), Trip(None, (LEG, rest, LEG)))


def test_a_trip_without_a_date_has_gaps_and_weeks_but_no_word_on_time():
    found = readiness(Trip(None, (LEG,)), known(walk(pack=5)))
    assert (found.weeks_left, found.weeks_to_build) == (None, None)
    assert [(one.weeks, one.in_time) for one in found.items if one.subject is Subject.PACK] == [(3, None)]


def test_a_trip_of_no_length_is_refused():
    with pytest.raises(OutOfRange, match="days with a length is 0"):
        Trip(TODAY, (TripDay(0, 0, 0, 0),))
    assert Trip(TODAY, (TripDay(0, 0, 0, 0), LEG)).hardest is LEG


@pytest.mark.parametrize(
    ("up", "low", "high", "unsure"),
    [(900, 765, 1035, True), (1200, 1020, 1380, False), (1058, 899.3, 1216.7, True), (1059, 900.15, 1217.85, False)],
)
def test_ascent_may_be_a_seventh_more_or_less_and_says_so_where_the_mark_could_be_another(up, low, high, unsure):
    found = item(Subject.ASCENT, known(walk(up=up)))
    assert (found.low, found.high) == pytest.approx((low, high))
    assert (Doubt.MEASURE in found.doubts) is unsure


def test_distance_and_pack_have_errors_of_their_own_and_none_goes_below_nothing():
    found = items(known(walk(km=10, pack=0.2)))
    assert (found[Subject.LONGEST_DAY].low, found[Subject.LONGEST_DAY].high) == pytest.approx((9.5, 10.5))
    assert (found[Subject.PACK].low, found[Subject.PACK].high) == pytest.approx((0, 0.7))


def test_what_one_day_alone_shows_is_a_doubt_and_a_second_day_takes_it_away():
    once = item(Subject.LONGEST_DAY, known(walk(km=16), walk(days_ago=9, km=12)))
    twice = item(Subject.LONGEST_DAY, known(walk(km=16), walk(days_ago=9, km=17)))
    assert Doubt.ONCE in once.doubts
    assert Doubt.ONCE not in twice.doubts
    assert Doubt.ONCE not in item(Subject.LONGEST_DAY, known(walk(km=3))).doubts


def test_of_days_that_show_the_same_the_newest_is_the_evidence():
    found = items(known(walk(days_ago=30), walk(days_ago=3)))
    for subject in (Subject.LONGEST_DAY, Subject.PACK, Subject.WHOLE_DAY):
        assert found[subject].evidence[0].id == "w3"
        assert Doubt.OLD not in found[subject].doubts


@pytest.mark.parametrize(("days_ago", "is_old"), [(21, False), (22, True)])
def test_a_best_day_of_more_than_three_weeks_ago_is_old(days_ago, is_old):
    found = items(known(walk(days_ago=days_ago)))
    assert (Doubt.OLD in found[Subject.LONGEST_DAY].doubts) is is_old
    assert (Doubt.OLD in found[Subject.WHOLE_DAY].doubts) is is_old


@pytest.mark.parametrize(
    ("heard", "silent"),
    [(TODAY - timedelta(days=4), False), (TODAY - timedelta(days=5), True), (None, True)],
)
def test_a_silent_phone_may_hold_more(heard, silent):
    for of in (known(walk(effort=4), heard_on=heard), known(heard_on=heard)):
        found = readiness(TRIP, of).items
        told = [one for one in found if one.subject.value not in list(TestCode)]
        assert all((Doubt.SILENT in one.doubts) is silent for one in told)


@pytest.mark.parametrize(
    ("name", "shown", "asked", "steps"),
    [
        ("distance_km", 10, 10, 0),
        ("distance_km", 10, 11.5, 1),  # 15 percent
        ("distance_km", 10, 11.51, 2),
        ("distance_km", 4, 6, 2),  # 1 km where 15 percent are less
        ("ascent_m", 0, 100, 1),
        ("ascent_m", 1000, 1201, 2),
        ("pack_kg", 4, 9, 3),
    ],
)
def test_gaps_close_by_the_steps_of_a_season(name, shown, asked, steps):
    assert steps_between(name, shown, asked) == steps


@pytest.mark.parametrize(
    ("pack", "weeks"),
    [(7, 2), (5, 3), (3, 4), (1, 6)],  # 1, 2, 3 and 4 steps, every fourth week lighter, begun weeks whole
)
def test_every_fourth_week_is_lighter(pack, weeks):
    assert item(Subject.PACK, known(walk(pack=pack))).weeks == weeks


@pytest.mark.parametrize(("weeks_left", "in_time"), [(6, True), (5, False)])
def test_weeks_suffice_when_they_end_before_the_taper(weeks_left, in_time):
    trip = replace(TRIP, starts_on=TODAY + timedelta(weeks=weeks_left))
    found = readiness(trip, known(walk(pack=3)))
    assert (found.weeks_left, found.weeks_to_build) == (weeks_left, weeks_left - 2)
    assert {one.subject: one.in_time for one in found.items}[Subject.PACK] is in_time


def test_begun_weeks_are_not_left_and_a_trip_that_has_begun_leaves_none():
    assert readiness(replace(TRIP, starts_on=TODAY + timedelta(days=13)), known()).weeks_left == 1
    past = readiness(replace(TRIP, starts_on=TODAY - timedelta(days=13)), known(walk(pack=9)))
    assert (past.weeks_left, past.weeks_to_build) == (0, 0)
    assert {one.subject: one.in_time for one in past.items}[Subject.PACK] is True
