"""The cost of walking: which model answers, how wide the band is, and what no model may do."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from steadfoot.rules.metabolic import LCDA_ERROR_W_PER_KG, TERRAINS, WATTS, Effort, Model, OutsideModel, met, minetti_w
from steadfoot.rules.metabolic_choice import NoModelHolds, cost
from steadfoot.rules.ranges import OutOfRange

CALM = settings(deadline=None)
WALKERS = st.builds(
    Effort, st.integers(40, 130), st.integers(0, 30), st.integers(0, 72).map(lambda n: n / 10), st.integers(-45, 45)
)


@pytest.mark.parametrize(
    ("numbers", "words"),
    [
        ((24, 0, 4, 0), "body mass kg is 24; it must be 25 to 300 kg"),
        ((70, -1, 4, 0), "pack kg is -1; it must be 0 to 60 kg"),
        ((70, 0, 7.3, 0), "speed kmh is 7.3; it must be 0 to 7.2 km/h"),
        ((70, 0, 4, 101), "grade percent is 101; it must be -100 to 100 percent"),
        ((70, 0, 4, 0, 0.9), "terrain factor is 0.9; it must be 1 to 4.1"),
        ((float("nan"), 0, 4, 0), "body mass kg is nan"),
    ],
)
def test_numbers_that_cannot_be_are_refused(numbers, words):
    with pytest.raises(OutOfRange, match=words):
        Effort(*numbers)


@CALM
@given(WALKERS)
def test_every_answer_lies_in_its_band_and_above_rest(effort):
    try:
        found = cost(effort)
    except NoModelHolds:
        assert abs(effort.grade_percent) > 45
        return
    assert found.low_w < found.watts < found.high_w
    assert met(found.watts, effort.body_mass_kg) > 1 - 1e-9
    assert found.high_w - found.watts >= LCDA_ERROR_W_PER_KG * effort.body_mass_kg - 1e-9


@CALM
@given(WALKERS)
def test_the_band_holds_every_model_that_holds(effort):
    answers = []
    for watts in WATTS.values():
        try:
            answers.append(watts(effort))
        except OutsideModel:
            continue
    found = cost(effort)
    assert all(found.low_w <= one <= found.high_w for one in answers)


@pytest.mark.parametrize(
    ("effort", "model", "why"),
    [
        (Effort(70, 15, 4, 5), Model.LCDA, "covers pack and slope"),
        (Effort(70, 15, 1, 5), Model.PANDOLF, "because lcda does not hold here: speed m s is 0.277778"),
        (Effort(70, 15, 1, 30), Model.MINETTI, "because lcda and pandolf do not hold here"),
    ],
)
def test_the_choice_is_explained(effort, model, why):
    found = cost(effort)
    assert found.model is model
    assert why in found.warnings[0]


def test_a_model_asked_for_answers_or_says_its_range():
    assert cost(Effort(70, 15, 4, 5), Model.PANDOLF).model is Model.PANDOLF
    with pytest.raises(
        OutsideModel, match="grade percent is -20; the pandolf model holds from -12 to 25 percent"
    ) as no:
        cost(Effort(70, 15, 4, -20), Model.PANDOLF)
    assert (no.value.name, no.value.low, no.value.high, no.value.valid) == ("grade_percent", -12, 25, False)


def test_where_none_holds_all_ranges_are_named():
    with pytest.raises(NoModelHolds) as refused:
        cost(Effort(70, 15, 2, 60))
    for words in ("lcda model holds from", "-12 to 25 percent", "-45 to 45 percent"):
        assert words in str(refused.value)


@pytest.mark.parametrize(
    ("effort", "model", "words"),
    [
        (Effort(70, 0, 4, -5), Model.PANDOLF, "correction of Santee"),
        (Effort(70, 10, 4, 0), Model.PANDOLF, "too little for heavy packs"),
        (Effort(70, 0, 4, 0), Model.MINETTI, "elite mountain runners"),
        (Effort(70, 10, 4, 0), Model.MINETTI, "counted here as body mass"),
        (Effort(70, 10, 4, 5), Model.LCDA, "were not studied"),
    ],
)
def test_each_model_tells_its_weakness(effort, model, words):
    assert any(words in one for one in cost(effort, model).warnings)


def test_minetti_counts_the_pack_as_mass_and_rest_by_body_mass():
    assert minetti_w(Effort(70, 10, 3.6, 10)) == pytest.approx(70 * 4184 / 3600 + 4.8991 * 80, abs=0.01)


def test_softer_ground_costs_more_in_every_model():
    for watts in WATTS.values():
        costs = [watts(Effort(70, 10, 3, 5, factor)) for factor in sorted(TERRAINS.values())]
        assert costs == sorted(set(costs))


@pytest.mark.parametrize(
    ("number", "kg", "hours", "kcal"), [(7, 70, 1, 490), (6, 80, 2.5, 1200), (3.5, 60, 0.75, 157.5)]
)
def test_one_met_is_one_kcal_per_kg_and_hour(number, kg, hours, kcal):
    """The other convention in use, by oxygen, is 5 percent higher."""
    assert met(kcal / hours * 4184 / 3600, kg) == pytest.approx(number)


def test_a_crawl_downhill_costs_no_less_than_standing():
    effort = Effort(body_mass_kg=40, pack_kg=0, speed_kmh=0.1, grade_percent=-3, terrain_factor=1.0)
    assert met(cost(effort).watts, effort.body_mass_kg) >= 1
