"""What progression is judged by: goals, hard sessions, hard weeks; and the card of every rule."""

from datetime import date, timedelta

import pytest

from steadfoot.rules.dose import Prescription
from steadfoot.rules.progression import Goal, SessionDone, hard_weeks_running
from steadfoot.rules.progression_words import PROGRESSION_CARDS, ProgressionRule
from steadfoot.rules.sources import BIBLIOGRAPHY, Kind
from steadfoot.rules.vocabulary import Sides

MONDAY = date(2026, 5, 4)


@pytest.mark.parametrize(
    ("days", "weeks"),
    [
        ([], 0),
        ([-7, -5], 1),
        ([-7, -1], 1),
        ([-7], 0),
        ([-8, -7], 0),
        ([-7, -5, -14, -10], 2),
        ([-7, -5, -21, -20], 1),
        ([0, 1, 2], 0),
    ],
)
def test_hard_weeks_are_counted_back_from_the_week_before(days, weeks):
    hard = [MONDAY + timedelta(days=day) for day in days]
    for weekday in (0, 6):
        assert hard_weeks_running(hard, MONDAY + timedelta(days=weekday)) == weeks


def prescription(low=None, high=None, hold=None):
    return Prescription("p1", "x", "v", Sides.BOTH, low, high, hold, None, None, 60, "")


def test_the_goal_is_read_from_the_prescription():
    assert Goal.of(prescription(8, 12)) == Goal(8, 12)
    assert Goal.of(prescription(hold=30)) == Goal(30, 30, hold=True)
    assert Goal.of(prescription()) == Goal(0, 0)


def test_a_session_is_hard_from_an_effort_of_five_on():
    assert [SessionDone((1,), effort=effort).hard for effort in (None, 4, 5)] == [False, False, True]


def test_every_rule_has_a_card_with_a_sentence_a_source_and_what_would_change_it():
    assert set(PROGRESSION_CARDS) == set(ProgressionRule)
    for card in PROGRESSION_CARDS.values():
        assert card.sentence.endswith(".")
        assert card.would_change.endswith(".")
        assert card.cited.source in BIBLIOGRAPHY
        assert (card.cited.kind is Kind.HOUSE) == (card.cited.source == "house")
        assert card.cited.note
