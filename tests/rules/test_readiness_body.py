"""Readiness by effort, pain at rest and tests: at the edges of each mark, and with little or nothing known."""

from datetime import timedelta

import pytest

from steadfoot.rules.baseline_catalogue import TestCode
from steadfoot.rules.norms import Person, Sex, TestSide
from steadfoot.rules.pain import Thresholds
from steadfoot.rules.readiness import readiness
from steadfoot.rules.readiness_facts import RestPain, Trip, TripDay
from steadfoot.rules.readiness_items import Closing, Doubt, Mark, Subject
from tests.rules.readiness_people import TODAY, TRIP, item, items, known, taken, walk


@pytest.mark.parametrize(
    ("efforts", "value", "mark", "closing"),
    [
        ((4,), 4, Mark.SHOWN, Closing.NOTHING),
        ((5,), 5, Mark.NEAR, Closing.SAME_WALK_EASIER),
        ((6,), 6, Mark.NEAR, Closing.SAME_WALK_EASIER),
        ((7,), 7, Mark.NOT_SHOWN, Closing.SAME_WALK_EASIER),
        ((9, 3, 8, 4), 4, Mark.SHOWN, Closing.NOTHING),  # the first is not of the last three
        ((3, 8), 3, Mark.SHOWN, Closing.NOTHING),
    ],
)
def test_effort_is_the_middle_of_the_last_three_walks(efforts, value, mark, closing):
    walks = [walk(days_ago=20 - place, km=16, effort=effort) for place, effort in enumerate(efforts)]
    found = item(Subject.EFFORT, known(*walks))
    assert (found.shown, found.mark, found.closing, found.at_most) == (value, mark, closing, True)
    assert (found.low, found.high) == (min(efforts[-3:]), max(efforts[-3:]))
    assert (Doubt.ONCE in found.doubts) is (len(efforts) == 1)


@pytest.mark.parametrize(("km", "mark"), [(11.75, Mark.SHOWN), (11.74, Mark.UNKNOWN)])
def test_a_walk_of_less_than_half_the_hardest_day_tells_nothing_of_its_effort(km, mark):
    assert item(Subject.EFFORT, known(walk(km=km, up=0, effort=3))).mark is mark


@pytest.mark.parametrize(
    ("more", "lighter"),
    [({}, False), ({"pack": 8.9}, True), ({"km": 15.9}, True)],
)
def test_effort_of_walks_that_all_ask_less_than_the_hardest_day_is_a_doubt(more, lighter):
    found = item(Subject.EFFORT, known(walk(**{"km": 16, "up": 900, "pack": 9, "effort": 3} | more)))
    assert (Doubt.LIGHTER in found.doubts) is lighter


def test_effort_against_a_trip_without_a_pack_asks_for_none():
    trip = Trip(TRIP.starts_on, (TripDay(10, 0, 0, None),))
    assert Doubt.LIGHTER not in item(Subject.EFFORT, known(walk(km=10, effort=3, pack=0)), trip).doubts


def pain(rating, days_ago=3):
    return RestPain(f"p{rating}", TODAY - timedelta(days=days_ago), rating)


@pytest.mark.parametrize(
    ("rating", "mark"), [(2, Mark.SHOWN), (3, Mark.NEAR), (5, Mark.NEAR), (6, Mark.NOT_SHOWN), (10, Mark.NOT_SHOWN)]
)
def test_pain_at_rest_is_marked_by_its_zone(rating, mark):
    found = item(Subject.PAIN_AT_REST, known(rest_pains=(pain(1), pain(rating))))
    assert (found.mark, found.shown, found.asked) == (mark, rating, 2)
    assert found.closing is (Closing.NOTHING if mark is Mark.SHOWN else Closing.SETTLE_PAIN)
    assert found.evidence[0].id == f"p{rating}"


def test_pain_is_read_by_the_thresholds_set_for_the_person():
    found = item(Subject.PAIN_AT_REST, known(rest_pains=(pain(3),), thresholds=Thresholds(5, 4, 0)))
    assert (found.mark, found.asked) == (Mark.SHOWN, 3)


def test_the_usual_level_counts_where_it_is_higher_than_what_was_reported():
    found = item(Subject.PAIN_AT_REST, known(rest_pains=(pain(1),), thresholds=Thresholds(usual_pain=3)))
    assert (found.mark, found.shown) == (Mark.NEAR, 3)


@pytest.mark.parametrize(("days_ago", "mark"), [(13, Mark.NOT_SHOWN), (14, Mark.UNKNOWN)])
def test_pain_of_more_than_two_weeks_ago_tells_nothing_of_now(days_ago, mark):
    found = item(Subject.PAIN_AT_REST, known(rest_pains=(pain(8, days_ago),)))
    assert found.mark is mark


def test_no_report_means_no_pain_only_where_something_was_reported_at_all():
    active = (TODAY - timedelta(days=13),)
    assert item(Subject.PAIN_AT_REST, known(active_days=active)).mark is Mark.SHOWN
    none = item(Subject.PAIN_AT_REST, known(active_days=(TODAY - timedelta(days=14),)))
    assert (none.mark, none.shown, none.closing) == (Mark.UNKNOWN, None, Closing.ASK_PAIN)


def test_the_worst_three_reports_are_the_evidence_the_newest_first_of_those_alike():
    reports = [RestPain(str(n), TODAY - timedelta(days=n), rating) for n, rating in ((9, 4), (8, 1), (7, 4), (6, 2))]
    found = item(Subject.PAIN_AT_REST, known(rest_pains=tuple(reports)))
    assert [one.id for one in found.evidence] == ["7", "9", "6"]


HEEL = TestCode.HEEL_RISE
"""Median of men 24, smallest real change 7."""


@pytest.mark.parametrize(("value", "mark"), [(24, Mark.SHOWN), (23, Mark.NEAR), (18, Mark.NEAR), (17, Mark.NOT_SHOWN)])
def test_below_a_norm_a_test_is_near_within_its_smallest_real_change(value, mark):
    found = item(Subject.HEEL_RISE, known(tests=(taken(HEEL, value, TestSide.LEFT),)))
    assert (found.mark, found.asked, found.shown) == (mark, 24, value)
    assert (found.low, found.high) == pytest.approx((value - 4.95, value + 4.95), abs=0.01)
    assert {Doubt.NORM_NO_LIMIT, Doubt.ONE_SIDE} <= set(found.doubts)


def test_a_test_that_falls_short_takes_the_weeks_in_which_strength_grows():
    short = item(Subject.HEEL_RISE, known(tests=(taken(HEEL, 10, TestSide.LEFT),)))
    well = item(Subject.HEEL_RISE, known(tests=(taken(HEEL, 30, TestSide.LEFT),)))
    assert (short.closing, short.weeks, short.in_time) == (Closing.TRAIN_AND_TEST, 6, False)
    assert (well.closing, well.weeks, well.in_time) == (Closing.NOTHING, 0, True)
    assert short.low == pytest.approx(5.05, abs=0.01)
    assert item(Subject.HEEL_RISE, known(tests=(taken(HEEL, 2, TestSide.LEFT),))).low == 0


def test_the_weaker_side_decides_and_the_newest_of_each_side_counts():
    earlier = taken(HEEL, 3, TestSide.LEFT, days_ago=40)
    found = item(
        Subject.HEEL_RISE, known(tests=(earlier, taken(HEEL, 26, TestSide.LEFT), taken(HEEL, 25, TestSide.RIGHT)))
    )
    assert (found.shown, found.mark, len(found.evidence)) == (25, Mark.SHOWN, 2)
    assert {Doubt.ONE_SIDE, Doubt.SIDES_DIFFER} & set(found.doubts) == set()


@pytest.mark.parametrize(("left", "differ"), [(27, False), (26, True)])
def test_sides_differ_where_the_lower_is_less_than_nine_tenths(left, differ):
    tests = taken(HEEL, left, TestSide.LEFT), taken(HEEL, 30, TestSide.RIGHT)
    assert (Doubt.SIDES_DIFFER in item(Subject.HEEL_RISE, known(tests=tests)).doubts) is differ


@pytest.mark.parametrize(("right", "differ"), [(0, False), (1, False), (2, True)])
def test_sides_differ_in_points_where_they_have_another_grade(right, differ):
    """Of points for faults one is no tenth: from 0 to 1 the grade is the same."""
    tests = taken(TestCode.STEP_DOWN, 0, TestSide.LEFT), taken(TestCode.STEP_DOWN, right, TestSide.RIGHT)
    assert (Doubt.SIDES_DIFFER in item(Subject.STEP_DOWN, known(tests=tests)).doubts) is differ


def test_sides_that_both_show_nothing_do_not_differ():
    tests = taken(HEEL, 0, TestSide.LEFT), taken(HEEL, 0, TestSide.RIGHT)
    assert Doubt.SIDES_DIFFER not in item(Subject.HEEL_RISE, known(tests=tests)).doubts


def test_results_are_told_left_before_right_whichever_came_first():
    tests = taken(HEEL, 24, TestSide.RIGHT, 20), taken(HEEL, 24, TestSide.LEFT)
    found = item(Subject.HEEL_RISE, known(tests=tests))
    assert [one.side for one in found.evidence] == [TestSide.LEFT, TestSide.RIGHT]


@pytest.mark.parametrize(
    ("points", "mark"), [(0, Mark.SHOWN), (1, Mark.SHOWN), (2, Mark.NEAR), (3, Mark.NEAR), (4, Mark.NOT_SHOWN)]
)
def test_the_grades_of_a_step_down_are_its_marks_and_less_is_better(points, mark):
    found = item(Subject.STEP_DOWN, known(tests=(taken(TestCode.STEP_DOWN, points, TestSide.LEFT),)))
    assert (found.mark, found.asked, found.at_most, found.low) == (mark, 1, True, None)
    both = taken(TestCode.STEP_DOWN, 0, TestSide.LEFT), taken(TestCode.STEP_DOWN, points, TestSide.RIGHT)
    assert item(Subject.STEP_DOWN, known(tests=both)).shown == points


WOMAN = Person(67, Sex.FEMALE, 165, 62)


@pytest.mark.parametrize(("value", "mark"), [(11, Mark.SHOWN), (10, Mark.NEAR), (9, Mark.NEAR), (8, Mark.NOT_SHOWN)])
def test_without_a_smallest_real_change_a_test_is_near_from_four_fifths_of_the_usual_range(value, mark):
    """Women of 65 to 69: 11 to 16 repetitions."""
    tests = (taken(TestCode.CHAIR_STAND, value, person=WOMAN),)
    found = item(Subject.CHAIR_STAND, known(tests=tests, person=WOMAN))
    assert (found.mark, found.asked, found.doubts) == (mark, 11, ())


def test_a_norm_with_a_spread_asks_for_its_lower_end_and_says_that_it_is_no_limit():
    young = Person(25, Sex.MALE)
    tests = (taken(TestCode.SIDE_BRIDGE, 90, TestSide.LEFT, person=young),)
    found = item(Subject.SIDE_BRIDGE, known(tests=tests, person=young))
    assert found.asked < 90
    assert Doubt.NORM_NO_LIMIT in found.doubts


@pytest.mark.parametrize(("days_ago", "is_old"), [(84, False), (85, True)])
def test_a_test_of_more_than_twelve_weeks_ago_is_old(days_ago, is_old):
    tests = taken(HEEL, 24, TestSide.LEFT, days_ago), taken(HEEL, 24, TestSide.RIGHT, 1)
    assert (Doubt.OLD in item(Subject.HEEL_RISE, known(tests=tests)).doubts) is is_old


def test_a_result_without_a_norm_is_unknown_and_kept_as_evidence():
    tests = (taken(TestCode.CHAIR_STAND, 20),)
    found = item(Subject.CHAIR_STAND, known(tests=tests))
    assert (found.mark, found.closing, found.asked, found.shown) == (Mark.UNKNOWN, Closing.FOLLOW, None, 20)
    assert (Doubt.NO_NORM in found.doubts, found.weeks, found.in_time) == (True, None, None)
    assert [one.id for one in found.evidence] == ["chair-stand-30s.None"]


def test_a_test_is_asked_for_only_where_it_could_be_read():
    assert Subject.CHAIR_STAND not in items(known())
    assert Subject.CHAIR_STAND in items(known(person=WOMAN))
    for person in (Person(), Person(47), Person(sex=Sex.MALE)):
        assert Subject.CHAIR_STAND in items(known(person=person))
    found = item(Subject.HEEL_RISE, known())
    assert (found.mark, found.closing, found.unit) == (Mark.UNKNOWN, Closing.TAKE_TEST, "repetitions")


def test_without_a_trip_there_is_what_needs_none():
    found = readiness(None, known(walk()))
    assert (found.weeks_left, found.weeks_to_build) == (None, None)
    assert {one.subject for one in found.items} == {
        Subject.PAIN_AT_REST,
        Subject.HEEL_RISE,
        Subject.STEP_DOWN,
        Subject.STANCE_OPEN,
    }
    assert all(one.in_time is None for one in found.items)
