"""What the exercise card says is new since the version before."""

from datetime import date

import pytest

from steadfoot.exercises.service import library
from steadfoot.programs.changed import changed_prescriptions
from steadfoot.programs.content import ProgramContent
from tests.builders import circuit, content, step_down

START = date(2026, 6, 1)


def program(*prescriptions, rounds=3):
    return ProgramContent.model_validate(content(START, sessions=[circuit("s1", rounds, list(prescriptions))]))


def said(old, new):
    return {one["prescription"]: one["sentence"] for one in changed_prescriptions(old, new, library())}


@pytest.mark.parametrize(
    ("more", "sentence"),
    [
        ({"reps_low": 10, "reps_high": 12}, "10 to 12 repetitions instead of 8 to 10 repetitions"),
        ({"load_kg": 6}, "6 kg instead of no weight"),
        ({"rest_s": 60}, "60 seconds of rest instead of 45"),
    ],
)
def test_a_changed_dose_is_said_without_the_exercises_name(more, sentence):
    assert said(program(step_down()), program(step_down(**more))) == {"p1": sentence}


def test_another_exercise_under_the_same_key_names_both():
    heel = step_down(exercise="heel-raise", variant="both-wall")
    assert said(program(step_down()), program(heel))["p1"].endswith("instead of Step-down")


def test_another_number_of_rounds_is_a_change_of_every_movement_in_them():
    two = (step_down(), step_down("p2", reps_low=5))
    assert said(program(*two), program(*two, rounds=1)) == dict.fromkeys(("p1", "p2"), "1 round instead of 3")


def test_nothing_is_said_of_the_first_version_of_notes_and_of_what_came_or_went():
    assert said(None, program(step_down())) == {}
    assert said(program(step_down()), program(step_down(note="Slowly."), step_down("p2"))) == {}
    assert said(program(step_down(), step_down("p2")), program(step_down())) == {}
