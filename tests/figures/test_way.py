"""Which way a moving drawing runs: to and fro, round, or from the start again."""

import pytest

from steadfoot.exercises.figures.animate import moving
from steadfoot.exercises.figures.read import figure
from steadfoot.exercises.figures.scene import scene
from tests.figures.conftest import squat_document


def drawn(**changes):
    return moving(scene(figure("squat", "free", squat_document() | changes)))


def test_a_movement_runs_to_and_fro():
    assert "linear infinite alternate}" in drawn()


@pytest.mark.parametrize("way", ["cycle", "again"])
def test_a_movement_that_goes_round_or_starts_over_never_runs_backward(way):
    assert "alternate" not in drawn(**{way: True})


def test_only_what_starts_over_fades_so_that_the_leap_is_not_taken_for_a_movement():
    assert "@keyframes again{0%,100%{opacity:0}" in drawn(again=True)
    assert "opacity" not in drawn() + drawn(cycle=True)


def test_the_fade_stops_too_for_who_wants_less_motion():
    assert "(prefers-reduced-motion:reduce){svg,g{animation:none!important}}" in drawn(again=True)
