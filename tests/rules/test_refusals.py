"""What cannot be is refused by every rule in one way: the field, the number, the range and its unit."""

import pytest

from steadfoot.rules.baseline import read
from steadfoot.rules.baseline_catalogue import TestCode
from steadfoot.rules.change import pain_change, standard_error
from steadfoot.rules.functional_scale import functional_score
from steadfoot.rules.load import load, monotony
from steadfoot.rules.norms import Person
from steadfoot.rules.progression_steps import next_load
from steadfoot.rules.ranges import NotWhole, OutOfRange
from steadfoot.rules.step_down import StepDown
from steadfoot.rules.symmetry import reach_composite

OUT_OF_RANGE = [
    (lambda: Person(age=4), "age is 4; it must be 5 to 110 years."),
    (lambda: Person(age=111), "age is 111; it must be 5 to 110 years."),
    (lambda: Person(height_cm=99), "height cm is 99; it must be 100 to 230 cm."),
    (lambda: Person(body_mass_kg=301), "body mass kg is 301; it must be 25 to 300 kg."),
    (lambda: StepDown(2, 0, 0, 0, 0), "arms is 2; it must be 0 to 1 points."),
    (lambda: StepDown(0, 0, 0, 3, 0), "knee is 3; it must be 0 to 2 points."),
    (lambda: reach_composite(60, 90, 90, 39), "limb cm is 39; it must be 40 to 140 cm."),
    (lambda: load([0, 0, 0, -1, 0, 0, 0]), "day load is -1; it must be 0 to 14400 effort x minutes."),
    (lambda: monotony([1] * 6), "days is 6; it must be 7 to 7 days."),
    (lambda: standard_error(10, 2), "icc is 2; it must be 0 to 1."),
    (lambda: standard_error(-1, 0.5), "deviation is -1; it must be 0 to inf."),
    (lambda: pain_change(11, 0), "base is 11; it must be 0 to 10."),
    (lambda: pain_change(0, 11), "now is 11; it must be 0 to 10."),
    (lambda: functional_score({}), "activities is 0; it must be 1 to 5."),
    (lambda: functional_score({"stairs": 11}), "score is 11; it must be 0 to 10."),
    (lambda: next_load(0, 1), "load kg is 0; it must be 0.1 to 200 kg."),
    (lambda: next_load(1, 0), "step kg is 0; it must be 0.1 to 200 kg."),
    (lambda: read(TestCode.CHAIR_STAND, 61, Person()), "value is 61; it must be 0 to 60 repetitions."),
    (lambda: read(TestCode.HEEL_RISE, 1, Person(), other=101), "other is 101; it must be 0 to 100 repetitions."),
]


@pytest.mark.parametrize(("ask", "message"), OUT_OF_RANGE)
def test_what_lies_outside_is_named_with_its_range_and_unit(ask, message):
    with pytest.raises(OutOfRange) as refused:
        ask()
    assert str(refused.value) == message


@pytest.mark.parametrize(
    ("ask", "message"),
    [
        (lambda: StepDown(0, 0.5, 0, 0, 0), "trunk is 0.5; points are counted whole."),
        (lambda: read(TestCode.CHAIR_STAND, 12.5, Person()), "value is 12.5; repetitions are counted whole."),
    ],
)
def test_what_is_counted_is_refused_by_its_unit(ask, message):
    with pytest.raises(NotWhole) as refused:
        ask()
    assert str(refused.value) == message
