"""How hard a way is for this person: beside the pace that they have shown in the six-minute walk."""

from typing import Annotated, Final

from steadfoot.rules.metabolic import Effort, OutsideModel, lcda_w, met
from steadfoot.rules.ranges import OutOfRange
from steadfoot.rules.sources import Cited, Kind

SIX_MINUTES_H: Final[Annotated[float, Cited(Kind.PUBLISHED, "enright-1998", "The walk lasts six minutes")]] = 0.1
_M_PER_KM: Final = 1000
_PERCENT: Final = 100


def shown_met(six_minute_walk_m: float, body_mass_kg: float) -> float:
    """Answer the METs of a six-minute walk of so many metres, by [looney-2022] on the level without a pack.

    It is what the person has shown for six minutes, not a maximum.

    Raises:
        OutOfRange, OutsideModel: slower than 162 m or faster than 709 m, where the model does not hold.

    >>> round(shown_met(500, 70), 1)
    3.8
    """
    kmh = six_minute_walk_m / _M_PER_KM / SIX_MINUTES_H
    return met(lcda_w(Effort(body_mass_kg, 0, kmh, 0)), body_mass_kg)


def percent_of_shown(asked_met: float, six_minute_walk_m: float | None, body_mass_kg: float) -> float | None:
    """Answer a rate of work in percent of the one shown; None without a walk, or where the model does not hold.

    >>> percent_of_shown(5.0, None, 70)
    """
    if six_minute_walk_m is None:
        return None
    try:
        return asked_met / shown_met(six_minute_walk_m, body_mass_kg) * _PERCENT
    except (OutOfRange, OutsideModel):
        return None
