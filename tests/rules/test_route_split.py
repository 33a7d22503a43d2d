"""Cutting a way into days of even moving time."""

import pytest

from steadfoot.rules.demand_relative import percent_of_shown, shown_met
from steadfoot.rules.metabolic import OutsideModel
from steadfoot.rules.ranges import OutOfRange
from steadfoot.rules.route import Recording, Stretch
from steadfoot.rules.route_split import DAYS_MAX, even_cuts
from steadfoot.rules.walking_time import tobler_h

WAY = [Stretch(0, 4000, 400), Stretch(4000, 6000, 0), Stretch(10_000, 5000, -1000)]


def hours_until(way_m: float) -> float:
    return sum(tobler_h([one]) * min(1, max(0, (way_m - one.start_m) / one.length_m)) for one in WAY)


@pytest.mark.parametrize("days", [1, 2, 3, 7, DAYS_MAX])
def test_each_day_takes_as_long_as_the_others(days):
    cuts = even_cuts(WAY, days)
    assert len(cuts) == days - 1
    whole = tobler_h(WAY)
    assert [hours_until(cut) for cut in cuts] == pytest.approx([whole * n / days for n in range(1, days)])


@pytest.mark.parametrize("days", [0, DAYS_MAX + 1])
def test_no_day_and_too_many_are_refused(days):
    with pytest.raises(OutOfRange):
        even_cuts(WAY, days)


def test_a_stretch_knows_the_height_at_its_start_even_after_what_is_left_over_has_joined_it():
    recording = Recording()
    for step, height_m in enumerate([100, 120, 140, 150]):
        recording.take(46 + step * 0.0006, 13, height_m)  # 67 m a step: two make a stretch, the last is left over
    (stretch,) = recording.route().stretches
    assert recording.way_m == pytest.approx(stretch.length_m) == pytest.approx(200.2, abs=0.1)
    assert (stretch.height_m, stretch.rise_m) == (100, 50)


def test_a_stretch_without_heights_has_no_height_at_its_start():
    recording = Recording()
    recording.take(46, 13, None)
    recording.take(46.01, 13, None)
    assert [one.height_m for one in recording.route().stretches] == [None]


def test_a_rate_is_told_beside_what_was_shown_and_only_where_the_model_holds():
    assert percent_of_shown(shown_met(500, 70), 500, 70) == pytest.approx(100)
    assert percent_of_shown(4, None, 70) is None
    assert percent_of_shown(4, 100, 70) is None
    assert percent_of_shown(4, 800, 70) is None
    with pytest.raises(OutsideModel):
        shown_met(161, 70)
    with pytest.raises(OutOfRange):
        shown_met(721, 70)
