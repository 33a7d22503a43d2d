"""The taper of Bosquet et al. 2007: two weeks, volume down by 41 to 60 percent, effort and days kept."""

from datetime import date

import pytest

from steadfoot.rules.season import Phase, plan
from steadfoot.rules.season_request import Level, Request


def season(weekdays, strength):
    asked = Request(date(2027, 4, 17), date(2027, 6, 12), weekdays, strength, Level(8, 300, 2), Level(16, 900, 8))
    return plan(asked)


@pytest.mark.parametrize(
    ("weekdays", "strength"), [({0, 2, 5}, 2), ({0, 2, 4, 5, 6}, 3), (set(range(7)), 3), ({1, 5}, 1)]
)
def test_two_weeks_of_less_volume_at_the_same_effort(weekdays, strength):
    weeks = season(frozenset(weekdays), strength).weeks
    normal = max(week.planned_load for week in weeks if week.phase is Phase.BUILD)
    taper = [week for week in weeks if week.phase is Phase.TAPER]
    assert len(taper) == 2
    for week in taper:
        assert 0.40 <= week.planned_load / normal <= 0.59
    built = next(week for week in reversed(weeks) if week.phase is Phase.BUILD)
    efforts = {one.activity: one.effort for one in built.sessions}
    assert all(one.effort == efforts.get(one.activity, one.effort) for week in taper for one in week.sessions)
    assert len(taper[0].sessions) == len(built.sessions)
    assert max(one.walk.pack_kg for one in taper[0].sessions if one.walk) == max(
        one.walk.pack_kg for one in built.sessions if one.walk
    )
