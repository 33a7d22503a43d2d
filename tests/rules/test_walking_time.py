"""Walking time: refusals, and a person's own pace."""

import pytest

from steadfoot.rules.ranges import OutOfRange
from steadfoot.rules.route import Stretch
from steadfoot.rules.walking_time import Walked, naismith_h, naismith_langmuir_h, pace_factor, tobler_h, tobler_kmh


@pytest.mark.parametrize(("km", "ascent"), [(-1, 0), (1001, 0), (10, -1), (float("nan"), 0)])
def test_lengths_that_cannot_be_are_refused(km, ascent):
    with pytest.raises(OutOfRange):
        naismith_h(km, ascent)


def test_stretches_without_heights_are_walked_as_level():
    level = [Stretch(0, 5000, None)]
    assert naismith_langmuir_h(5, 0, level) == 1
    assert tobler_h(level) == pytest.approx(5 / tobler_kmh(0))


def test_steeper_than_the_rule_goes_at_its_steepest_speed():
    assert tobler_h([Stretch(0, 1000, 3000)]) == pytest.approx(1 / tobler_kmh(1))
    assert tobler_h([Stretch(0, 1000, -3000)]) == pytest.approx(1 / tobler_kmh(-1))


def test_own_pace_weighs_long_walks_more():
    assert pace_factor([Walked(5, 0, 1), Walked(5, 0, 1), Walked(30, 0, 9)]) == pytest.approx(11 / 8)


def test_own_pace_needs_three_walks():
    assert pace_factor([Walked(5, 0, 1)] * 2) is None


@pytest.mark.parametrize(
    ("walk", "words"),
    [(Walked(10, 0, 0.9), "0.5 to 3"), (Walked(10, 0, 6.1), "0.5 to 3"), (Walked(0.5, 0, 0.1), "1 to 1000 km")],
)
def test_a_log_that_is_not_walking_is_refused(walk, words):
    with pytest.raises(OutOfRange, match=words):
        pace_factor([walk] * 3)
