"""A way folded point by point: limits where the answer is known, and refusals."""

from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from steadfoot.rules.ranges import OutOfRange
from steadfoot.rules.route import STRETCH_M, Climb, Recording, Stretch, TooFewPoints
from steadfoot.rules.route_slopes import grade_histogram, steepest_descents

CALM = settings(deadline=None)
M = 1 / 111195.08  # degrees of latitude
HEIGHTS = st.lists(st.integers(0, 3000), min_size=1, max_size=60)


def recorded(*segments):
    """Segments of (metres north, height)."""
    recording = Recording()
    for segment in segments:
        recording.begin()
        for north, height in segment:
            recording.take(north * M, 0, height)
    return recording.route()


def test_the_gap_between_segments_is_neither_walked_nor_climbed():
    found = recorded([(0, 100), (100, 110)], [(5000, 900), (5100, 910)])
    assert found.distance_m == pytest.approx(200, abs=0.01)
    assert (found.ascent_m, found.descent_m, found.segments, found.empty_segments) == (20, 0, 2, 0)
    assert [round(one.start_m) for one in found.stretches] == [0, 100]


def test_an_empty_segment_counts_as_one_and_is_told():
    found = recorded([], [(0, 1), (200, 1)])
    assert (found.segments, found.empty_segments, found.points) == (2, 1, 2)


def test_points_without_a_segment_make_one():
    recording = Recording()
    recording.take(0, 0, None)
    recording.take(M, 0, None)
    assert (recording.route().segments, recording.route().empty_segments) == (1, 0)


def test_without_heights_ascent_is_unknown_not_zero():
    found = recorded([(0, None), (100, None), (300, None)])
    assert (found.ascent_m, found.descent_m, found.highest_m, found.lowest_m, found.ascents) == (None,) * 4 + ((),)
    assert [one.rise_m for one in found.stretches] == [None]
    assert found.stretches[0].grade == 0


def test_heights_that_come_late_and_end_early_leave_their_pieces_unknown():
    found = recorded([(0, None), (100, 10), (150, None), (250, 40), (400, None)])
    assert [(round(one.length_m), one.rise_m) for one in found.stretches] == [(100, None), (150, 30), (150, None)]
    assert found.ascent_m == 30


def test_what_is_left_of_a_segment_joins_the_stretch_before():
    found = recorded([(0, 0), (100.1, 10), (150, 20)])
    assert [(round(one.length_m), one.rise_m) for one in found.stretches] == [(150, 20)]
    short = recorded([(0, 0), (40, 8)])
    assert [(round(one.length_m), one.rise_m) for one in short.stretches] == [(40, 8)]
    assert short.stretches[0].grade == pytest.approx(0.2, rel=1e-4)


def test_a_short_segment_does_not_join_the_segment_before():
    found = recorded([(0, 0), (100.1, 10)], [(900, 50), (940, 58)])
    assert [(round(one.length_m), one.rise_m) for one in found.stretches] == [(100, 10), (40, 8)]


def test_standing_still_has_no_stretch():
    assert recorded([(0, 5), (0, 5), (0, 9)]).stretches == ()


def test_scatter_below_the_threshold_is_not_climbed():
    found = recorded([(n * 10, 100 + n % 2 * 4) for n in range(20)])
    assert found.ascent_m == 0
    assert {threshold: up for threshold, up, _ in found.ascents}[0] == 40


@CALM
@given(HEIGHTS, st.integers(0, 30))
def test_ascent_less_descent_is_the_net_height_within_one_threshold(heights, threshold):
    climb = Climb(threshold)
    for height in heights:
        climb.take(height)
    assert abs(climb.up_m - climb.down_m - (heights[-1] - heights[0])) <= max(threshold, 0)
    assert min(climb.up_m, climb.down_m) >= 0


@CALM
@given(st.lists(st.tuples(st.integers(0, 400), st.none() | st.integers(0, 2000)), min_size=2, max_size=40))
def test_stretches_cover_the_way_without_gap_or_overlap(steps):
    north, points = 0, []
    for more, height in steps:
        north += more
        points.append((north, height))
    found = recorded(points)
    end = 0.0
    for one in found.stretches:
        assert one.start_m == pytest.approx(end, abs=1e-6)
        end = one.start_m + one.length_m
    assert end == pytest.approx(found.distance_m, abs=1e-6)
    # A short one is what was left before a gap in the elevation, or at the end.
    assert all(
        one.length_m >= STRETCH_M
        for one, following in pairwise(found.stretches)
        if one.rise_m is not None and following.rise_m is not None
    )


@pytest.mark.parametrize("points", [0, 1])
def test_a_way_needs_two_points(points):
    with pytest.raises(TooFewPoints, match=f"^There are {points} points"):
        recorded([(0, 0)] * points)


@pytest.mark.parametrize(
    ("place", "words"),
    [
        ((90.1, 0, None), "latitude"),
        ((0, 180.1, None), "longitude"),
        ((float("nan"), 0, None), "latitude is nan"),
        ((0, float("inf"), None), "longitude is inf"),
        ((0, 0, 9001), "height m is 9001; it must be -500 to 9000 m"),
        ((0, 0, float("nan")), "height m"),
    ],
)
def test_a_place_that_cannot_be_is_refused(place, words):
    with pytest.raises(OutOfRange, match=words):
        Recording().take(*place)


def test_nobody_walks_a_thousand_kilometres_in_one_file():
    with pytest.raises(OutOfRange, match="0 to 1000 km"):
        recorded([(0, 0), (1_000_100, 0)])


def test_every_metre_with_a_height_is_in_one_class_of_grade():
    stretches = [Stretch(0, 100, rise) for rise in (-30.5, -30, -10, 4.9, 5, 30, 99, None)]
    classes = {(one.low_percent, one.high_percent): one.length_m for one in grade_histogram(stretches)}
    assert sum(classes.values()) == 700
    assert (classes[None, -30], classes[-30, -20], classes[-10, -5], classes[-5, 5]) == (100, 100, 100, 100)
    assert (classes[5, 10], classes[30, None]) == (100, 200)


def test_the_steepest_descents_come_first_and_ascents_not_at_all():
    stretches = [Stretch(0, 100, rise) for rise in (-5, 20, -30, -10, None, -20)]
    assert [one.rise_m for one in steepest_descents(stretches)] == [-30, -20, -10]
    assert steepest_descents([Stretch(0, 100, 3)]) == []


def test_what_hardly_falls_is_no_steep_descent():
    assert steepest_descents([Stretch(0, 100, -4.9)]) == []
    assert steepest_descents([Stretch(0, 100, -5)]) == [Stretch(0, 100, -5)]
