"""Statuses and ranges of adherence, without a database."""

from datetime import date, datetime, time

import pytest

from steadfoot.rules.adherence import Planned, by_session, by_set, ratio, standing, window
from steadfoot.rules.vocabulary import Status

MON, WED, SUN, NEXT_MON = (date(2026, 10, day) for day in (5, 7, 11, 12))


def planned(day=WED, *, fixed_day=False, done=0, of=12, finished=False):
    return Planned(day, fixed_day, of, done, finished)


def heard(day, hour=12):
    return datetime.combine(day, time(hour))


def status(one, today, heard_through):
    return standing(one, today, heard_through).status


@pytest.mark.parametrize("day", [MON, WED, SUN])
def test_a_window_runs_from_monday_to_sunday(day):
    assert (window(day, fixed_day=False).first, window(day, fixed_day=False).last) == (MON, SUN)


def test_a_fixed_day_is_its_own_window():
    assert (window(WED, fixed_day=True).first, window(WED, fixed_day=True).last) == (WED, WED)


def test_the_week_does_not_break_at_the_turn_of_the_year():
    assert window(date(2027, 1, 1), fixed_day=False).first == date(2026, 12, 28)


@pytest.mark.parametrize(
    ("today", "heard_through", "expected"),
    [
        (MON, heard(MON), Status.TO_COME),
        (WED, heard(WED), Status.OPEN),
        (WED, heard(MON), Status.OPEN),
        (date(2026, 10, 8), datetime(2026, 10, 7, 23, 59, 59), Status.NOT_HEARD),
        (date(2026, 10, 8), datetime(2026, 10, 8, 0, 0), Status.OPEN),
        (SUN, heard(SUN), Status.OPEN),
        (NEXT_MON, datetime(2026, 10, 11, 23, 59, 59), Status.NOT_HEARD),
        (NEXT_MON, datetime(2026, 10, 12, 0, 0), Status.MISSED),
        (NEXT_MON, None, Status.NOT_HEARD),
        (MON, None, Status.TO_COME),
        (WED, None, Status.OPEN),
    ],
)
def test_a_session_without_sets_stands_as_the_day_and_the_silence_say(today, heard_through, expected):
    held = standing(planned(), today, heard_through)
    assert held.status is expected
    assert held.settled is (expected is not Status.NOT_HEARD)
    assert held.due is (expected in {Status.NOT_HEARD, Status.MISSED})


def test_a_fixed_day_closes_at_its_midnight():
    one = planned(fixed_day=True)
    thursday = date(2026, 10, 8)
    assert status(one, WED, heard(WED)) is Status.OPEN
    assert status(one, thursday, heard(WED, 23)) is Status.NOT_HEARD
    assert status(one, thursday, heard(thursday, 0)) is Status.MISSED


@pytest.mark.parametrize(("done", "expected"), [(11, Status.PARTLY), (12, Status.DONE), (13, Status.DONE)])
def test_done_begins_at_the_last_prescribed_set(done, expected):
    assert status(planned(done=done), WED, heard(WED)) is expected


def test_done_before_its_day_is_done_and_due():
    held = standing(planned(done=12), MON, heard(MON))
    assert (held.status, held.due) == (Status.DONE, True)


def test_partly_in_a_running_window_is_not_due_yet():
    held = standing(planned(done=4), WED, heard(WED))
    assert (held.status, held.settled, held.due) == (Status.PARTLY, True, False)


@pytest.mark.parametrize("today", [date(2026, 10, 8), NEXT_MON])
def test_partly_and_then_silence_is_not_settled(today):
    held = standing(planned(done=4), today, heard(WED))
    assert (held.status, held.settled) == (Status.PARTLY, False)
    assert held.due is (today == NEXT_MON)


def test_partly_after_its_window_with_a_later_report_is_settled():
    held = standing(planned(done=4), NEXT_MON, heard(NEXT_MON))
    assert (held.status, held.settled, held.due) == (Status.PARTLY, True, True)


@pytest.mark.parametrize("done", [0, 4])
def test_a_session_ended_early_is_partly_settled_and_due_even_in_silence(done):
    held = standing(planned(done=done, finished=True), NEXT_MON, heard(WED))
    assert (held.status, held.settled, held.due) == (Status.PARTLY, True, True)


def judged(*sessions, today=NEXT_MON, heard_through=None):
    return [(one, standing(one, today, heard_through)) for one in sessions]


def test_silence_makes_adherence_a_range_from_none_to_all_of_it():
    sessions = judged(planned(done=12), planned(), planned(done=3), heard_through=heard(WED))
    found = by_session(sessions)
    assert (found.prescribed, found.done) == (3, 1)
    assert (found.low, found.high) == (pytest.approx(1 / 3), 1.0)
    sets = by_set(sessions)
    assert (sets.prescribed, sets.done) == (36, 15)
    assert (sets.low, sets.high) == (pytest.approx(15 / 36), 1.0)


def test_once_heard_the_range_is_one_number():
    sessions = judged(planned(done=12), planned(), planned(done=3), heard_through=heard(NEXT_MON))
    assert by_session(sessions).low == by_session(sessions).high == pytest.approx(1 / 3)
    assert by_set(sessions).low == by_set(sessions).high == pytest.approx(15 / 36)


def test_what_is_not_due_yet_does_not_count():
    sessions = judged(planned(done=12), planned(), planned(done=3), today=WED, heard_through=heard(WED))
    assert (by_session(sessions).prescribed, by_session(sessions).low) == (1, 1.0)


def test_sets_beyond_the_prescribed_do_not_make_up_for_another_session():
    sessions = judged(planned(done=24), planned(), heard_through=heard(NEXT_MON))
    assert by_set(sessions).low == 0.5


def test_nothing_prescribed_has_no_adherence():
    assert (by_session([]).low, by_session([]).high, by_set([]).low) == (None, None, None)


def test_the_range_always_holds_what_the_phone_tells_later():
    for done_later in range(13):
        silent = by_set(judged(planned(done=6), planned(), heard_through=heard(WED)))
        told = by_set(judged(planned(done=6), planned(done=done_later), heard_through=heard(NEXT_MON)))
        assert silent.low <= told.low <= silent.high


def test_not_heard_never_lifts_a_ratio_above_one():
    assert ratio(3, 3, 1).high == 1.0


def test_one_set_of_many_is_partly():
    assert status(planned(done=1), WED, heard(WED)) is Status.PARTLY


def test_nothing_prescribed_still_says_what_was_done():
    found = ratio(0, 3)
    assert (found.prescribed, found.done, found.low, found.high) == (0, 3, None, None)


def test_only_the_sets_not_done_of_a_session_may_still_be_heard_of():
    one = planned(done=3, of=12)
    two = planned(done=12, of=12)
    found = by_set([(each, standing(each, NEXT_MON, heard(WED))) for each in (one, two)])
    assert (found.prescribed, found.done, found.low, found.high) == (24, 15, 15 / 24, 1)
    three = planned(MON, fixed_day=True, done=0, of=24)
    known = standing(three, NEXT_MON, heard(WED))
    assert known.settled
    found = by_set([(one, standing(one, NEXT_MON, heard(WED))), (three, known)])
    assert (found.low, found.high) == (3 / 36, 12 / 36)
