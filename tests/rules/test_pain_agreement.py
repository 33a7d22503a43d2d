"""The cases that the phone's advice is held to are what today's rules answer, and they reach every answer."""

import json
from collections import Counter

from tests.vectors.pain_cases import ADVICE, CASES, COLUMNS, FILE, ZONES, text

LEAST_OF_EACH = 500
"""Of 10,000: an answer that hardly comes up would hardly be compared."""


def test_the_file_is_what_the_rules_answer_today():
    assert FILE.read_text(encoding="utf-8") == text(), "run python -m tests.vectors.pain_cases"


def test_the_cases_are_many_and_reach_every_zone_and_every_advice():
    cases = json.loads(FILE.read_text(encoding="utf-8"))["cases"]
    assert len(cases) == CASES
    assert {len(case) for case in cases} == {len(COLUMNS)}
    zones, advice = Counter(case[5] for case in cases), Counter(case[6] for case in cases)
    assert all(zones[place] >= LEAST_OF_EACH for place in range(len(ZONES)))
    assert all(advice[place] >= LEAST_OF_EACH for place in range(len(ADVICE)))
    assert len({tuple(case) for case in cases}) > CASES * 0.9


def test_both_sides_of_every_threshold_are_among_the_cases():
    cases = json.loads(FILE.read_text(encoding="utf-8"))["cases"]
    for over in (0, 1):
        assert sum(during == stop - 1 + over for during, _, _, stop, *_ in cases) >= LEAST_OF_EACH
        assert sum(during == acceptable - 1 + over for during, _, _, _, acceptable, *_ in cases) >= LEAST_OF_EACH
        assert sum(morning == usual + over for _, morning, usual, *_ in cases) >= LEAST_OF_EACH / 2
