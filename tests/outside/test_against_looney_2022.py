"""The Load Carriage Decision Aid: walking (Looney et al. 2019) and backpacking (2022). W/kg, tolerance 0.001."""

import pytest

from steadfoot.rules.metabolic import Effort, OutsideModel, lcda_w, lcda_walk_w, pandolf_w


@pytest.mark.parametrize(
    ("m_s", "grade", "expected"),
    [
        (0, 0, 1.44),
        (1.0, 0, 3.62),
        (1.34, 0, 4.414),
        (1.34, 10, 8.6393),
        (1.34, -8, 3.1359),
        (1.34, -10, 3.0738),
        (0.7, -30, 3.089),
        (0.6, 30, 9.1485),
    ],
)
def test_walking(m_s, grade, expected):
    assert lcda_walk_w(Effort(70, 0, m_s * 3.6, grade)) / 70 == pytest.approx(expected, abs=1e-3)


@pytest.mark.parametrize(
    ("m_s", "share", "terrain", "grade", "expected"),
    [
        (1.34, 0, 1, 0, 4.2198),
        (1.34, 0.22, 1, 0, 5.0123),
        (1.34, 0.44, 1, 0, 6.254),
        (1.34, 0.66, 1, 0, 7.7506),
        (1.0, 0.25, 1.2, 8, 7.6102),
    ],
)
def test_backpacking(m_s, share, terrain, grade, expected):
    assert lcda_w(Effort(70, 70 * share, m_s * 3.6, grade, terrain)) / 70 == pytest.approx(expected, abs=1e-3)


def test_powers_of_one_and_two_are_a_known_wrong_transcription():
    """1.44 + 1.94 S + 0.24 S^2, S in miles an hour, is about twice as much."""
    mph = 1.34 / 0.44704
    wrong = 1.44 + 1.94 * mph + 0.24 * mph**2
    assert wrong / (lcda_walk_w(Effort(70, 0, 1.34 * 3.6, 0)) / 70) > 1.9


def test_the_cheapest_descents():
    grades = [-20 + n / 100 for n in range(2000)]
    bare = min(grades, key=lambda grade: lcda_walk_w(Effort(70, 0, 1.34 * 3.6, grade)))
    packed = min(grades, key=lambda grade: lcda_w(Effort(70, 20, 1.34 * 3.6, grade)))
    assert -12 <= bare <= -8
    assert packed == pytest.approx(-10.74, abs=0.05)


@pytest.mark.parametrize(
    ("effort", "words"),
    [
        (Effort(70, 10, 1.5, 0), "0.45 to 1.97 m/s"),
        (Effort(70, 10, 7.1, 0), "0.45 to 1.97 m/s"),
        (Effort(70, 10, 4, -41), "-40 to 45 percent"),
        (Effort(70, 10, 4, 46), "-40 to 45 percent"),
        (Effort(70, 47, 4, 0), "0 to 0.66 of body mass"),
    ],
)
def test_backpacking_outside_answers_with_its_range(effort, words):
    with pytest.raises(OutsideModel, match=words):
        lcda_w(effort)


@pytest.mark.parametrize("effort", [Effort(70, 1, 4, 0), Effort(70, 0, 4, 0, 1.1), Effort(70, 0, 7.1, 0)])
def test_walking_is_without_a_pack_on_hard_ground(effort):
    with pytest.raises(OutsideModel, match="the lcda model holds from"):
        lcda_walk_w(effort)


def test_every_published_equation_agrees_on_the_level():
    """Within 5 percent of their mean, 295.5 W for 70 kg without a pack at 1.34 m/s."""
    walker = Effort(70, 0, 1.34 * 3.6, 0)
    found = [pandolf_w(walker), lcda_walk_w(walker), lcda_w(walker)]
    assert found == pytest.approx([293.5, 309.0, 295.4], abs=0.05)
    assert all(abs(one / 295.5 - 1) < 0.05 for one in found)


@pytest.mark.parametrize(("pack", "pandolf", "lcda"), [(20, 362.1, 374.5), (40, 473.1, 498.6)])
def test_they_part_as_the_load_grows(pack, pandolf, lcda):
    walker = Effort(70, pack, 1.34 * 3.6, 0)
    assert (pandolf_w(walker), lcda_w(walker)) == pytest.approx((pandolf, lcda), abs=0.05)
