"""A GPX file as legs to look over: how it is cut, and each way in which it can be refused."""

import re
from collections.abc import Sequence
from typing import BinaryIO, Final

from steadfoot.core.problems import Invalid, Problem, TooLarge
from steadfoot.rules.dose import DISTANCE_MAX_KM
from steadfoot.rules.route import Route, Stretch
from steadfoot.rules.route_split import even_cuts
from steadfoot.trips import gpx
from steadfoot.trips.gpx_bytes import UNPACKED_MAX_MB, FileTooLarge
from steadfoot.trips.schemas import REMARKS_MAX, CountedPart, FromFile, LegOut, StretchPart

UPLOAD_MAX_BYTES: Final = UNPACKED_MAX_MB * 1_000_000
_M_PER_KM: Final = 1000
_WORD: Final = re.compile(r"(?<!^)(?=[A-Z])")


class LegTooLong(ValueError):
    """A leg that nobody walks in a day: its number and km."""

    def __init__(self, leg: int, distance_km: float) -> None:
        self.leg, self.distance_km = leg, distance_km
        super().__init__(
            f"Leg {leg} is {distance_km:.0f} km long; a leg has at most {DISTANCE_MAX_KM}. Split the way into days."
        )


class NoLength(ValueError):
    """A leg without length."""

    def __init__(self) -> None:
        super().__init__("All points of a leg are one place: there is no way in it.")


def too_large() -> TooLarge:
    """Answer the problem of a body over the limit."""
    return TooLarge("file-too-large", str(FileTooLarge()), max_mb=UNPACKED_MAX_MB)


def problem_of(error: ValueError) -> Problem:
    """Answer a refusal of a file as a problem: its code is the error's name."""
    if isinstance(error, FileTooLarge):
        return too_large()
    return Invalid(_WORD.sub("-", type(error).__name__).lower(), str(error))


def legs_of(file: BinaryIO, days: int | None, cuts_km: Sequence[float]) -> tuple[list[LegOut], tuple[str, ...]]:
    """Read a file as legs on days of their own, and what is odd about it.

    Parameters:
        file: GPX, gzipped or not; it is read twice if ``days`` is given.
        days: as many days of even moving time.
        cuts_km: else, kilometres at which a day ends; else one leg for each track.

    Raises:
        ValueError: it cannot be read, or not be cut so; ``problem_of`` says which and why.
    """
    found = gpx.read_legs(file, _split(file, days, cuts_km))
    for number, route in enumerate(found.routes, start=1):
        _check(number, route)
    told = list(found.warnings)[:REMARKS_MAX]
    return [_leg(day, route, told) for day, route in enumerate(found.routes, start=1)], found.warnings


def _split(file: BinaryIO, days: int | None, cuts_km: Sequence[float]) -> gpx.Split:
    if days is not None:
        return gpx.Split(at_m=even_cuts(gpx.read(file).route.stretches, days))
    if cuts_km:
        return gpx.Split(at_m=tuple(sorted(one * _M_PER_KM for one in cuts_km)))
    return gpx.Split(by_track=True)


def _check(number: int, route: Route) -> None:
    if route.distance_m > DISTANCE_MAX_KM * _M_PER_KM:
        raise LegTooLong(number, route.distance_m / _M_PER_KM)
    if not route.distance_m:
        raise NoLength


def _leg(day: int, route: Route, remarks: list[str]) -> LegOut:
    told = FromFile(
        points=route.points,
        points_with_height=route.points_with_height,
        segments=route.segments,
        highest_m=route.highest_m,
        lowest_m=route.lowest_m,
        counted=[CountedPart(threshold_m=at, ascent_m=up, descent_m=down) for at, up, down in route.ascents],
        stretches=[_stretch(one) for one in route.stretches],
        remarks=remarks,
    )
    return LegOut(
        name="",
        day=day,
        distance_km=round(route.distance_m / _M_PER_KM, 3),
        ascent_m=_rounded(route.ascent_m),
        descent_m=_rounded(route.descent_m),
        pack_kg=None,
        from_file=told,
    )


def _stretch(one: Stretch) -> StretchPart:
    return StretchPart(
        start_m=round(one.start_m, 1),
        length_m=max(round(one.length_m, 1), 0.1),
        height_m=_rounded(one.height_m),
        rise_m=_rounded(one.rise_m),
    )


def _rounded(value: float | None) -> float | None:
    return None if value is None else round(value, 1)
