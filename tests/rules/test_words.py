"""Plain words for places and days."""

from datetime import date, timedelta

import pytest

from steadfoot.rules.vocabulary import Region, Side, Symptom, When
from steadfoot.rules.words import SYMPTOM_WORDS, day_words, place_words, when_words

TODAY = date(2026, 10, 14)


@pytest.mark.parametrize(
    ("region", "side", "expected"),
    [
        (Region.KNEE, Side.RIGHT, "Right knee"),
        (Region.LOWER_BACK, Side.MIDDLE, "Lower back"),
        (Region.CALF, Side.BOTH, "Both calves"),
        (Region.KNEE, Side.BOTH, "Both knees"),
        (Region.ACHILLES, Side.LEFT, "Left Achilles tendon"),
        (Region.ACHILLES, Side.BOTH, "Both Achilles tendons"),
    ],
)
def test_a_place_is_named_as_a_person_would(region, side, expected):
    assert place_words(region, side) == expected


@pytest.mark.parametrize(
    ("ago_days", "expected"),
    [(0, "today"), (1, "yesterday"), (2, "on Monday"), (6, "on Thursday"), (7, "on Wednesday 7 October")],
)
def test_a_day_is_named_as_a_person_would(ago_days, expected):
    assert day_words(TODAY - timedelta(days=ago_days), TODAY) == expected


def test_a_day_ahead_is_named_in_full():
    assert day_words(TODAY + timedelta(days=3), TODAY) == "on Saturday 17 October"


def test_when_names_the_movement_or_the_session():
    assert when_words(When.AFTER, None) == "after the session"
    assert when_words(When.NEXT_MORNING, "Step-down") == "on waking"


def test_every_symptom_has_words():
    assert set(SYMPTOM_WORDS) == set(Symptom)
