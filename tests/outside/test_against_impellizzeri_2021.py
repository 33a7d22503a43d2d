"""No ratio of short to long load, Impellizzeri et al. 2021: it did no better than contrived ratios.

Nothing that the rules or the command answer may be such a ratio or speak of risk.
"""

import re
from dataclasses import fields

from steadfoot.rules import load


def test_no_ratio_among_the_answers():
    assert {field.name for field in fields(load.Load)} == {"weekly_load", "monotony", "strain", "ewma_7", "ewma_28"}


def test_no_number_answered_is_the_ratio():
    found = load.load([300, 0, 450, 0, 360, 600, 0])
    ratio = found.ewma_7 / found.ewma_28
    assert all(getattr(found, field.name) != ratio for field in fields(found))


def test_the_words_beside_the_numbers_promise_nothing():
    told = " ".join([*load.TELLS.values(), load.CAUTION]).lower()
    assert not re.search(r"risk|sweet spot|danger|0\.8|1\.3|1\.5", told)
    assert "none of these numbers says who will be hurt" in told


def test_every_number_says_what_it_tells():
    assert set(load.TELLS) == {field.name for field in fields(load.Load)}
