"""Reach on one leg, Plisky et al. 2006: the composite in percent of leg length. Tolerance: three digits given.

Its cut-offs, 94 percent and 4 cm between sides, are of basketball players of school age: they must not be used.
"""

import pytest

from steadfoot.rules.baseline import read
from steadfoot.rules.baseline_catalogue import TestCode
from steadfoot.rules.norms import NoReference, Person, Sex, TestSide
from steadfoot.rules.symmetry import reach_composite


@pytest.mark.parametrize(
    ("limb", "anterior", "inner", "outer", "percent"),
    [(90, 60, 95, 92, 91.481), (90, 65, 97, 92, 94.074), (85, 60, 90, 89.7, 94.0)],
)
def test_composite(limb, anterior, inner, outer, percent):
    assert reach_composite(anterior, inner, outer, limb) == pytest.approx(percent, abs=1e-3)


@pytest.mark.parametrize("other", [58, 57.9, 66])
def test_a_difference_between_sides_is_told_without_a_verdict(other):
    """4.0, 4.1 and 4.0 cm apart: the published cut-off lies between, and no word of ours changes there."""
    found = read(TestCode.REACH_ANTERIOR, 62, Person(40, Sex.FEMALE), TestSide.RIGHT, other)
    assert isinstance(found.reference, NoReference)
    assert found.reading == read(TestCode.REACH_ANTERIOR, 62, Person()).reading
    assert "injur" not in found.reading
    assert found.symmetry_percent == 100 * 62 / other
