"""Zones and advice of the pain-monitoring model, from the vectors that the phone's code reads too."""

import json
from pathlib import Path

import pytest

from steadfoot.rules.pain import Advice, Thresholds, advise, zone

VECTORS = json.loads((Path(__file__).parents[1] / "vectors" / "pain.json").read_text())


def test_the_table_of_thresholds_is_the_one_in_the_vectors():
    assert Thresholds().table() == VECTORS["thresholds"]


@pytest.mark.parametrize("case", VECTORS["zones"])
def test_zone_of_a_rating(case):
    thresholds = Thresholds.of({key: case[key] for key in ("pain_stop",) if key in case}, usual_pain=0)
    assert zone(case["rating"], thresholds) == case["zone"]


@pytest.mark.parametrize("case", VECTORS["advice"])
def test_advice_after_a_session(case):
    thresholds = Thresholds(usual_pain=case["usual_pain"])
    found = advise(case["during"], case["next_morning"], thresholds, week_worse=case["week_worse"])
    assert found == case["advice"]


@pytest.mark.parametrize("rating", [-1, 11])
def test_a_rating_off_the_scale_is_refused(rating):
    with pytest.raises(ValueError, match="0 to 10"):
        zone(rating, Thresholds())
    with pytest.raises(ValueError, match="0 to 10"):
        advise(0, rating, Thresholds())


def test_a_client_with_a_higher_usual_pain_may_progress_with_it():
    assert advise(2, 2, Thresholds(usual_pain=2)) is Advice.PROGRESS_ALLOWED


def test_both_bands_can_be_set_for_one_client():
    stored = {"pain_stop": 5, "acceptable_from": 4}
    assert Thresholds.of(stored, usual_pain=1) == Thresholds(5, 4, 1)
