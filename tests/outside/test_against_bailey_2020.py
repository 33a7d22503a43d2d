"""Adherence as the reviews count it (e.g. Bailey et al. 2020): done over prescribed, at most 1, undefined
without any."""

from datetime import date, datetime, timedelta

import pytest

from steadfoot.rules.adherence import Planned, by_session, ratio, standing

MONDAY = date(2026, 10, 5)
TOLERANCE = 1e-4  # the worked values are rounded to four places


@pytest.mark.parametrize(
    ("done", "prescribed", "capped"),
    [(9, 12, 0.75), (10, 12, 0.8333), (12, 12, 1), (14, 12, 1), (0, 12, 0.0), (4, 5, 0.8)],
)
def test_done_over_prescribed(done, prescribed, capped):
    found = ratio(prescribed, done)
    assert found.low == found.high == pytest.approx(capped, abs=TOLERANCE)


def test_nothing_prescribed_is_undefined():
    assert (ratio(0, 0).low, ratio(0, 0).high) == (None, None)


def test_a_week_with_more_does_not_hide_a_week_with_nothing():
    """Weeks of 3 of 3, 0 of 3 and 5 of 3 are 0.6667 with each week capped, not 0.8889 as pooled."""
    held = []
    for week, done in enumerate((3, 0, 3)):  # the two beyond the plan name no planned session
        for place in range(3):
            one = Planned(MONDAY + timedelta(weeks=week, days=place), False, 1, int(place < done), place < done)
            held.append((one, standing(one, date(2026, 11, 2), datetime(2026, 11, 2, 9))))
    assert by_session(held).low == pytest.approx(0.6667, abs=TOLERANCE)
