"""The pain-monitoring model (Thomee 1997; Silbernagel et al. 2007), its decision for worked cases.

Pain up to 5 of 10 is allowed while training and after it, must be back to usual the next morning, and must
not rise from week to week. Bands on integers: 0-2, 3-5, 6-10. The cases are typed in from restatements of the
model in clinics' pages.
"""

import pytest

from steadfoot.rules.pain import Advice, Thresholds, Zone, advise, zone


@pytest.mark.parametrize(
    ("during", "next_morning", "usual", "expected"),
    [
        (2, 1, 1, Advice.PROGRESS_ALLOWED),
        (4, 1, 1, Advice.HOLD),
        (5, 1, 1, Advice.HOLD),
        (6, 1, 1, Advice.REGRESS),
        (4, 3, 1, Advice.REGRESS),
        (2, 2, 1, Advice.REGRESS),
        (0, 0, 0, Advice.PROGRESS_ALLOWED),
    ],
)
def test_decision(during, next_morning, usual, expected):
    assert advise(during, next_morning, Thresholds(usual_pain=usual)) is expected


def test_a_rise_from_week_to_week_regresses():
    assert advise(2, 1, Thresholds(usual_pain=1), week_worse=True) is Advice.REGRESS


@pytest.mark.parametrize(
    ("ratings", "expected"),
    [(range(3), Zone.SAFE), (range(3, 6), Zone.ACCEPTABLE), (range(6, 11), Zone.HIGH)],
)
def test_bands(ratings, expected):
    assert {zone(rating, Thresholds()) for rating in ratings} == {expected}
