"""The invented season: seven weeks before the Harrowcomb, planned by the same rules as anybody's."""

from datetime import timedelta

from steadfoot.programs.content import Circuit, Goal, ProgramContent
from steadfoot.programs.schemas import TemplateOut
from steadfoot.programs.season import SeasonPlan, WalkLevel, Weekday
from steadfoot.seasons.layout import Frame, lay_out
from steadfoot.seasons.schemas import SeasonNames

_BEGAN_WITH = WalkLevel(distance_km=9.5, ascent_m=400, pack_kg=4)
_LONGEST_DAY = WalkLevel(distance_km=12, ascent_m=650, pack_kg=6)


def season_of(template: TemplateOut, goal: Goal, weeks: int) -> ProgramContent:
    """Answer the program of a season that ends at the goal, its strength taken from a template's circuits."""
    starts_on = goal.date - timedelta(weeks=weeks)
    season = SeasonPlan(
        starts_on=starts_on,
        trip_on=goal.date,
        weekdays=[Weekday.MON, Weekday.TUE, Weekday.THU, Weekday.SAT],
        strength_a_week=2,
        cardio_a_week=1,
        walking=_BEGAN_WITH,
        longest_day=_LONGEST_DAY,
    )
    circuits = [one for one in template.sessions if isinstance(one, Circuit)]
    return lay_out(season, None, circuits, Frame(template.name, goal.name, SeasonNames()), starts_on)
