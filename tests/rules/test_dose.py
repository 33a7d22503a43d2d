"""What a session asks for: sets, minutes, load, kit."""

import doctest

import pytest

from steadfoot.rules import dose
from steadfoot.rules.dose import Prescription, circuit_minutes, missing_kit, planned_load, planned_sets, set_seconds
from steadfoot.rules.vocabulary import Kit, Sides


def counted(low=8, high=10, sides=Sides.EACH, **more):
    given = {"hold_s": None, "load_kg": None, "tempo_down_s": None, "rest_s": 45, "note": ""} | more
    return Prescription("p1", "step-down", "rail", sides, low, high, **given)


def held(seconds=30, sides=Sides.BOTH, rest_s=30):
    return Prescription("p2", "wall-sit", "half", sides, None, None, seconds, None, None, rest_s, "")


def test_the_docstrings_examples_hold():
    assert doctest.testmod(dose).failed == 0


def test_sets_are_rounds_times_prescriptions():
    assert planned_sets(rounds=3, prescriptions=5) == 15


def test_a_set_of_one_side_is_getting_in_place_and_repetitions_at_two_seconds_down_and_two_up():
    # 10 s + (8 + 10) / 2 repetitions x (2 + 2) s
    assert set_seconds(counted(sides=Sides.BOTH)) == 46


def test_a_set_for_each_side_takes_twice_as_long():
    assert set_seconds(counted(sides=Sides.EACH)) == 2 * set_seconds(counted(sides=Sides.BOTH))


def test_a_slower_way_down_takes_longer():
    # one second more for each of 9 repetitions
    slower = set_seconds(counted(sides=Sides.BOTH, tempo_down_s=3))
    assert slower - set_seconds(counted(sides=Sides.BOTH)) == 9


def test_a_hold_takes_its_seconds():
    assert set_seconds(held(30)) == 40


def test_a_circuit_leaves_out_the_rest_after_its_last_set():
    # 2 rounds x (40 + 30) s - 30 s = 110 s, two minutes begun
    assert circuit_minutes(2, [held(30, rest_s=30)]) == 2
    # one second less of hold in each round is 108 s: still two; 60 s exactly is one minute
    assert circuit_minutes(1, [held(50, rest_s=30)]) == 1


def test_an_empty_circuit_takes_no_time():
    assert circuit_minutes(3, []) == 0


@pytest.mark.parametrize(("effort", "minutes", "load"), [(5, 60, 300), (7, 60, 420), (3, 45, 135), (0, 30, 0)])
def test_planned_load_is_effort_times_minutes(effort, minutes, load):
    assert planned_load(effort, minutes) == load


def test_stairs_stand_in_for_a_step_but_a_step_is_no_staircase():
    assert missing_kit({Kit.STEP}, {Kit.STAIRS}) == frozenset()
    assert missing_kit({Kit.STAIRS}, {Kit.STEP}) == {Kit.STAIRS}


def test_a_towel_stands_in_for_pillow_and_mat():
    assert missing_kit({Kit.PILLOW, Kit.MAT}, {Kit.TOWEL}) == frozenset()


def test_a_wall_is_everywhere():
    assert missing_kit({Kit.WALL}, set()) == frozenset()


@pytest.mark.parametrize(
    ("prescription", "words"),
    [
        (counted(8, 10), "8 to 10 repetitions"),
        (counted(8, 8), "8 repetitions"),
        (counted(1, 1), "1 repetition"),
        (held(30), "hold 30 seconds"),
        (held(1), "hold 1 second"),
    ],
)
def test_doses_are_said_in_words(prescription, words):
    assert dose.dose_words(prescription) == words


def test_where_no_repetitions_are_prescribed_only_getting_into_place_takes_time():
    assert set_seconds(counted(None, None, sides=Sides.BOTH)) == 10
