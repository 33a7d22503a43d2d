"""Session load, Foster et al. 2001: session rating of perceived exertion times minutes. Exact arithmetic."""

import pytest

from steadfoot.rules.effort import session_load


@pytest.mark.parametrize(("effort", "minutes", "load"), [(5, 60, 300), (7, 60, 420), (3, 45, 135), (0, 30, 0)])
def test_session_load(effort, minutes, load):
    assert session_load(effort, minutes) == load
