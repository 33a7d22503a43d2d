"""Turns what the rules propose into reply bodies."""

from steadfoot.programs.season import SeasonPlan, walk_of
from steadfoot.rules.season import Season, Session, Week
from steadfoot.rules.season_walks import Shortfall
from steadfoot.seasons.schemas import SeasonOut, SeasonSession, SeasonWeek, ShortfallOut


def season_of(found: Season, asked: SeasonPlan) -> SeasonOut:
    """Answer the season with its pins marked."""
    said = {one.sentence for one in found.shortfalls}
    return SeasonOut(
        weeks=[_week(week, asked) for week in found.weeks],
        shortfalls=[_shortfall(one, asked) for one in found.shortfalls],
        notes=[sentence for sentence in found.warnings if sentence not in said],
    )


def _week(week: Week, asked: SeasonPlan) -> SeasonWeek:
    return SeasonWeek(
        starts_on=week.starts_on,
        ends_on=week.ends_on,
        phase=week.phase,
        planned_load=week.planned_load,
        sessions=[_session(one, asked) for one in week.sessions],
    )


def _session(one: Session, asked: SeasonPlan) -> SeasonSession:
    pin = next((pin for pin in asked.pins if (pin.date, pin.activity) == (one.day, one.activity)), None)
    return SeasonSession(
        date=one.day,
        activity=one.activity,
        effort=one.effort,
        minutes=one.minutes,
        walk=walk_of(one.walk) if one.walk else None,
        pinned=pin is not None,
        locked=pin is not None and pin.locked,
    )


def _shortfall(one: Shortfall, asked: SeasonPlan) -> ShortfallOut:
    return ShortfallOut(
        thing=one.name,
        reached=one.reached,
        wanted=one.wanted,
        short_by=one.short_by,
        weeks_more=one.weeks_more,
        accepted=one.name in asked.accepted,
    )
