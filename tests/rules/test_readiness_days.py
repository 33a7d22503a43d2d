"""Readiness by whole days: all that the hardest day asks on one day, and long days that follow each other."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from steadfoot.rules.readiness import readiness
from steadfoot.rules.readiness_facts import Trip, TripDay
from steadfoot.rules.readiness_items import Closing, Mark, Subject
from tests.rules.readiness_people import LEG, TRIP, item, items, known, walk


def test_the_whole_day_is_the_day_that_falls_least_short_in_anything():
    far, steep = walk(days_ago=5, km=20, up=200, down=200), walk(days_ago=3, km=13, up=750, down=700, pack=8)
    found = item(Subject.WHOLE_DAY, known(far, steep))
    assert (found.mark, found.evidence[0].id, found.closing) == (Mark.NEAR, "w3", Closing.GROW)
    assert [(one.subject, one.asked, one.shown) for one in found.parts] == [
        (Subject.LONGEST_DAY, 16, 13),
        (Subject.ASCENT, 900, 750),
        (Subject.DESCENT, 800, 700),
        (Subject.PACK, 9, 8),
    ]


def test_the_whole_day_has_the_mark_of_its_weakest_part():
    assert item(Subject.WHOLE_DAY, known(walk(km=16, up=900, down=800, pack=9))).mark is Mark.SHOWN
    found = item(Subject.WHOLE_DAY, known(walk(km=16, up=900, down=800, pack=7)))
    assert (found.mark, found.asked, found.shown) == (Mark.NOT_SHOWN, None, None)


def test_each_thing_shown_on_a_day_of_its_own_is_not_the_whole_day():
    far, high = walk(days_ago=5, km=16, up=0, down=0, pack=0), walk(days_ago=3, km=5, up=900, down=800, pack=9)
    found = items(known(far, high))
    assert {found[one].mark for one in (Subject.LONGEST_DAY, Subject.ASCENT, Subject.DESCENT)} == {Mark.SHOWN}
    assert found[Subject.WHOLE_DAY].mark is Mark.NOT_SHOWN


def test_one_long_walk_with_a_pack_counts_although_a_stroll_without_followed():
    found = item(Subject.WHOLE_DAY, known(walk(km=16, up=900, down=800, pack=9), walk(km=1, up=0, down=0, pack=0)))
    assert found.mark is Mark.SHOWN


@pytest.mark.parametrize(
    ("more", "weeks"),
    [
        ({"km": 16, "up": 900, "down": 800, "pack": 5}, 3),  # two steps of the pack alone
        ({"km": 14, "up": 750, "down": 800, "pack": 5}, 3),  # four steps, two at a time
        ({"km": 14, "up": 600, "down": 500, "pack": 3}, 6),  # 1 + 3 + 3 steps: four, two at a time
        ({"km": 16, "up": 900, "down": 200, "pack": 9}, 8),  # six of descent alone
    ],
)
def test_together_only_two_things_grow_in_a_week(more, weeks):
    assert item(Subject.WHOLE_DAY, known(walk(**more))).weeks == weeks


def test_a_descent_that_is_shown_does_not_hide_an_ascent_that_is_not():
    up = Trip(TRIP.starts_on, (TripDay(10.6, 1420, 110, 10),))
    of = known(walk(km=10.6, up=450, down=450, pack=10))
    found = items(of, up)
    assert (found[Subject.WHOLE_DAY].weeks, found[Subject.WHOLE_DAY].in_time) == (found[Subject.ASCENT].weeks, False)


def long_days(*ago, km=10, up=600):
    return [walk(days_ago=one, km=km, up=up) for one in ago]


FIVE = Trip(TRIP.starts_on, (LEG,) * 5)
"""Each of 4.7 hours by Naismith's rule."""


@pytest.mark.parametrize(
    ("ago", "run", "mark", "closing", "weeks"),
    [
        ((9, 8, 7, 6, 5), 5, Mark.SHOWN, Closing.NOTHING, 0),
        ((9, 8, 7, 5), 3, Mark.NEAR, Closing.EASY_MIDDLE, None),
        ((9, 8), 2, Mark.NEAR, Closing.EASY_MIDDLE, None),
        ((9, 7), 1, Mark.NOT_SHOWN, Closing.TWO_IN_A_ROW, 1),
    ],
)
def test_days_in_a_row_are_near_from_two_on(ago, run, mark, closing, weeks):
    found = item(Subject.DAYS_IN_A_ROW, known(*long_days(*ago)), FIVE)
    assert (found.asked, found.shown, found.mark, found.closing, found.weeks) == (5, run, mark, closing, weeks)
    assert len(found.evidence) == run


def test_two_days_are_all_that_a_trip_of_two_asks():
    assert item(Subject.DAYS_IN_A_ROW, known(*long_days(4, 3))).mark is Mark.SHOWN


def test_the_newer_of_two_runs_alike_is_the_evidence():
    found = item(Subject.DAYS_IN_A_ROW, known(*long_days(9, 8, 4, 3)), FIVE)
    assert [one.id for one in found.evidence] == ["w4", "w3"]


@pytest.mark.parametrize(("km", "run"), [(11.75, 1), (11.74, 0)])
def test_a_day_counts_in_a_row_from_half_the_hours_of_an_average_leg_on(km, run):
    found = item(Subject.DAYS_IN_A_ROW, known(*long_days(3, km=km, up=0)), FIVE)
    assert (found.shown, found.mark) == (run, Mark.NOT_SHOWN)


def test_no_walk_at_all_is_unknown_everywhere_and_asks_for_one():
    found = items(known())
    for subject in (Subject.LONGEST_DAY, Subject.PACK, Subject.WHOLE_DAY, Subject.DAYS_IN_A_ROW):
        assert (found[subject].mark, found[subject].closing) == (Mark.UNKNOWN, Closing.LOG_A_WALK)
        assert (found[subject].shown, found[subject].weeks, found[subject].in_time) == (None, None, None)
    assert (found[Subject.EFFORT].mark, found[Subject.EFFORT].closing) == (Mark.UNKNOWN, Closing.RATE_A_WALK)


WALKED = (
    Subject.LONGEST_DAY,
    Subject.ASCENT,
    Subject.DESCENT,
    Subject.PACK,
    Subject.WHOLE_DAY,
    Subject.DAYS_IN_A_ROW,
)
walks = st.builds(
    walk,
    days_ago=st.integers(0, 50),
    km=st.floats(0, 200),
    up=st.floats(0, 10_000),
    down=st.floats(0, 10_000),
    pack=st.floats(0, 300),
    effort=st.none() | st.integers(0, 10),
)
lengths = st.none() | st.floats(0, 100_000)
days = st.builds(TripDay, st.floats(0.1, 6000), lengths, lengths, st.none() | st.floats(0, 60))


@settings(max_examples=50, deadline=None)
@given(st.lists(days, min_size=1, max_size=8), st.lists(walks, max_size=8))
def test_whatever_is_asked_and_logged_each_item_has_an_answer_that_can_be(asked, logged):
    for one in readiness(Trip(TRIP.starts_on, tuple(asked)), known(*logged)).items:
        assert (one.mark is Mark.UNKNOWN) == (one.shown is None and not one.parts)
        assert (one.closing is Closing.NOTHING) == (one.mark is Mark.SHOWN)
        assert one.low is None or 0 <= one.low <= one.shown <= one.high
        assert one.weeks is None or (one.weeks == 0) == (one.mark is Mark.SHOWN)


@settings(max_examples=50, deadline=None)
@given(st.lists(days, min_size=1, max_size=8), st.lists(walks, min_size=1, max_size=8, unique_by=lambda one: one.day))
def test_a_walk_on_a_day_of_its_own_never_makes_a_mark_worse(asked, logged):
    trip = Trip(TRIP.starts_on, tuple(asked))
    before, after = items(known(*logged[:-1]), trip), items(known(*logged), trip)
    for subject in set(WALKED) & set(after):
        if before[subject].mark is not Mark.UNKNOWN:
            assert list(Mark).index(after[subject].mark) <= list(Mark).index(before[subject].mark)
