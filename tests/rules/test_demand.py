"""What a way asks of a body: limits where the answer is known."""

import pytest

from steadfoot.rules.demand import NothingToWalk, Walker, demand, descent_work_kj, leg, pack_percent, steps
from steadfoot.rules.metabolic import Effort, Model, OutsideModel, kcal_per_h
from steadfoot.rules.metabolic_choice import cost
from steadfoot.rules.ranges import OutOfRange
from steadfoot.rules.route import Stretch
from steadfoot.rules.walking_time import tobler_kmh

WALKER = Walker(70, 14)


def test_on_the_level_it_is_rate_times_time():
    found = demand([Stretch(0, 10_000, 0)], WALKER)
    rate = cost(Effort(70, 14, tobler_kmh(0), 0))
    assert found.hours == pytest.approx(10 / tobler_kmh(0))
    assert found.energy_kcal == pytest.approx(kcal_per_h(rate.watts) * found.hours)
    assert found.peak_w == pytest.approx(rate.watts)
    assert found.low_kcal < found.energy_kcal < found.high_kcal
    assert (found.zigzag_m, found.unknown_m, found.models) == (0, 0, {Model.LCDA: 10_000})


def test_two_halves_make_the_whole():
    whole = demand([Stretch(0, 4000, 400)], WALKER)
    halves = demand([Stretch(0, 2000, 200), Stretch(2000, 2000, 200)], WALKER)
    assert halves.energy_kcal == pytest.approx(whole.energy_kcal)
    assert halves.hours == pytest.approx(whole.hours)


def test_the_peak_is_the_hardest_stretch():
    found = demand([Stretch(0, 1000, 0), Stretch(1000, 1000, 200)], WALKER)
    assert found.peak_w == pytest.approx(demand([Stretch(0, 1000, 200)], WALKER).peak_w)


def test_more_climb_pack_and_softer_ground_cost_more():
    way = [Stretch(0, 1000, 50)]
    plain = demand(way, WALKER).energy_kcal
    assert demand([Stretch(0, 1000, 100)], WALKER).energy_kcal > plain
    assert demand(way, Walker(70, 20)).energy_kcal > plain
    assert demand(way, Walker(70, 14, 1.2)).energy_kcal > plain
    assert demand(way, Walker(70, 14, pace_factor=1.3)).hours == pytest.approx(1.3 * demand(way, WALKER).hours)


def test_what_is_steeper_than_any_model_counts_as_zigzags():
    steep = demand([Stretch(0, 100, 80)], WALKER)
    zigzag = demand([Stretch(0, 200, 80)], WALKER)
    assert steep.energy_kcal == pytest.approx(zigzag.energy_kcal)
    assert (steep.zigzag_m, zigzag.zigzag_m) == (100, 0)


def test_stretches_without_heights_are_level_and_told():
    found = demand([Stretch(0, 500, None)], WALKER)
    assert found.unknown_m == 500
    assert found.energy_kcal == pytest.approx(demand([Stretch(0, 500, 0)], WALKER).energy_kcal)


def test_a_fast_walker_stays_a_walker():
    assert demand([Stretch(0, 7200, -360)], Walker(70, 0, pace_factor=0.5)).hours == pytest.approx(1, rel=0.01)


def test_a_model_asked_for_must_hold_on_every_stretch():
    with pytest.raises(OutsideModel, match="-12 to 25 percent"):
        demand([Stretch(0, 100, 0), Stretch(100, 100, -20)], WALKER, Model.PANDOLF)


def test_a_way_without_length_is_refused():
    with pytest.raises(NothingToWalk, match="has no length"):
        demand([], WALKER)


@pytest.mark.parametrize("numbers", [(24, 0), (70, 61), (70, 0, 5), (70, 0, 1, 0.4), (70, 0, 1, 3.1)])
def test_a_walker_that_cannot_be_is_refused(numbers):
    with pytest.raises(OutOfRange):
        Walker(*numbers)


def test_a_typed_leg_shares_its_distance_by_height():
    up, down = leg(10_000, 600, 400)
    assert (up.length_m, up.rise_m, down.start_m, down.length_m, down.rise_m) == (6000, 600, 6000, 4000, -400)
    assert leg(5000, 0, 0) == (Stretch(0, 5000, 0),)
    assert leg(5000, 300, 0) == (Stretch(0, 5000, 300),)
    assert leg(0, 0, 0) == ()


@pytest.mark.parametrize("numbers", [(-1, 0, 0), (1000, -1, 0), (1000, 0, 1001), (1000, 600, 600)])
def test_a_leg_that_cannot_be_is_refused(numbers):
    with pytest.raises(OutOfRange):
        leg(*numbers)


def test_descent_is_work_for_the_legs():
    assert descent_work_kj(0, 70, 10) == 0
    assert descent_work_kj(500, 70, 10) == pytest.approx(500 * 80 * 9.806 / 1000)
    with pytest.raises(OutOfRange, match="descent m is -1"):
        descent_work_kj(-1, 70, 10)


@pytest.mark.parametrize(("body", "percent"), [(60, 10), (75, 8)])
def test_pack_as_part_of_body_mass(body, percent):
    assert pack_percent(6, body) == pytest.approx(percent)


def test_steps_are_counted_from_the_distance():
    assert (steps(0), steps(700)) == (0, 1000)
    with pytest.raises(OutOfRange):
        steps(-1)
