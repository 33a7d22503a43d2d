"""Things in the picture: where they are and how they stand."""

import pytest

from steadfoot.exercises.figures.props import extents
from steadfoot.exercises.figures.schema import Prop


def test_a_rail_beside_stairs_climbs_along_its_way():
    back, front, bar = extents(Prop(kind="rail", at=(0, 0, 0.1), size=(0.4, 0.02, 0.5), rise=0.2))
    assert back[0][2] == pytest.approx(0.0)
    assert front[1][2] == pytest.approx(0.7)
    assert bar[1][2] - bar[0][2] == pytest.approx(0.2 + 0.018)
