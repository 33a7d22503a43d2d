"""Two-for-two, as pages quote Baechle and Earle's textbook. Worked cases, exact."""

import pytest

from steadfoot.rules.progression import two_for_two


@pytest.mark.parametrize(
    ("last_sets", "more"),
    [
        ([14, 14], True),
        ([14, 13], False),
        ([13, 15], False),
        ([12, 14, 14], True),
        ([14], False),
        ([16, 12, 15], False),
    ],
)
def test_goal_of_twelve(last_sets, more):
    assert two_for_two(12, last_sets) is more
