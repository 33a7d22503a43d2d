"""Load over days and weeks: limits where the answer is known, and refusals."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from steadfoot.rules.load import DAY_LOAD_MAX, TooFewDays, ewma, load, monotony
from steadfoot.rules.ranges import OutOfRange

CALM = settings(deadline=None)  # a busy machine must not fail a test
DAYS = st.lists(st.integers(0, 2000), min_size=7, max_size=40)


def test_only_the_last_seven_days_make_the_week():
    assert load([900, 900, 1, 2, 3, 4, 5, 6, 7]).weekly_load == 28
    assert load([900, 900, 1, 2, 3, 4, 5, 6, 7]).monotony == monotony([1, 2, 3, 4, 5, 6, 7])


def test_the_averages_look_back_over_all_days():
    days = [900, 0, 0, 0, 0, 0, 0, 0]
    assert load(days).ewma_7 == ewma(days, 7) == pytest.approx(900 * 0.75**7)
    assert load(days).ewma_28 == ewma(days, 28) == pytest.approx(900 * (27 / 29) ** 7)


def test_strain_is_load_times_monotony():
    found = load([300, 0, 450, 0, 360, 600, 0])
    assert found.strain == found.weekly_load * found.monotony


@pytest.mark.parametrize("days", [0, 1, 6])
def test_fewer_than_seven_days_are_refused(days):
    with pytest.raises(TooFewDays, match=f"^{days} days are given; 7 or more are needed") as refused:
        load([100] * days)
    assert refused.value.days == days


def test_a_week_has_seven_days():
    for days in (6, 8):
        with pytest.raises(OutOfRange, match="must be 7 to 7 days"):
            monotony([1] * days)


def test_an_average_of_no_days_is_refused():
    with pytest.raises(TooFewDays, match=r"^0 days are given"):
        ewma([], 7)


@pytest.mark.parametrize("one", [-1, DAY_LOAD_MAX + 1])
def test_a_days_load_that_cannot_be_is_refused(one):
    with pytest.raises(OutOfRange, match="day load"):
        load([0, 0, 0, one, 0, 0, 0])


@pytest.mark.parametrize("one", [1, DAY_LOAD_MAX])
def test_a_days_load_at_the_edge_is_taken(one):
    assert load([0, 0, 0, one, 0, 0, 0]).weekly_load == one
    assert DAY_LOAD_MAX == 14400


@CALM
@given(DAYS)
def test_an_average_lies_between_the_least_and_the_most(days):
    for span in (7, 28):
        assert min(days) - 1e-9 <= ewma(days, span) <= max(days) + 1e-9


@CALM
@given(DAYS, st.integers(2, 9))
def test_monotony_does_not_depend_on_the_unit_of_load(days, factor):
    week = days[-7:]
    once, more = monotony(week), monotony([factor * day for day in week])
    assert (once is None and more is None) or more == pytest.approx(once)
