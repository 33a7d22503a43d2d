"""Things in the picture: where their corners are."""

import pytest

from steadfoot.exercises.figures.props import standing
from steadfoot.exercises.figures.schema import Prop


def rail(**changes):
    return list(standing("rail", Prop(kind="rail", at=(0, 0, 0), size=(0.5, 0.02, 0.6), **changes)))


def tops(shape, x):
    return max(z for at, _, z, _ in shape.spheres if (at > 0) == (x > 0))


def test_a_rail_with_a_slope_goes_down_beside_stairs_and_its_posts_still_stand_on_the_floor():
    *posts, bar = rail(slope=-0.5)
    assert tops(bar, -1) == pytest.approx(0.6 + 0.5 * 0.25)
    assert tops(bar, 1) == pytest.approx(0.6 - 0.5 * 0.25)
    assert all(min(z for _, _, z, _ in post.spheres) == 0 for post in posts)


def test_a_rail_is_level_unless_told():
    *_, bar = rail()
    assert tops(bar, -1) == tops(bar, 1) == pytest.approx(0.6)
