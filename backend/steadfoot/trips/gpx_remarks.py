"""What a person should know of a GPX file before they trust its lengths and heights."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Final

from steadfoot.rules.route import HEIGHT_MAX_M, HEIGHT_MIN_M, Route

_PERCENT: Final = 100


@dataclass
class Odd:
    """What was odd while reading, counted in points; ``planned``: read from a route, ``both``: a route was left out."""

    heights: int = 0
    zero_heights: int = 0
    times: int = 0
    reversed_times: int = 0
    planned: bool = False
    both: bool = False


def remarks(routes: Sequence[Route], odd: Odd) -> tuple[str, ...]:
    """Answer sentences on what is odd, missing or approximate in the legs of a file; none where nothing is."""
    segments, empty = sum(one.segments for one in routes), sum(one.empty_segments for one in routes)
    said = (
        (odd.planned, "Read from a planned route, not a recording: few points, so length and ascent are too low."),
        (odd.both, "The file also holds a planned route; only its tracks are counted."),
        (empty > 0, f"{empty} of {segments} segments hold no point."),
        (not any(one.distance_m for one in routes), "All points are one place: there is no distance."),
        *_about_heights(odd, routes),
        *_about_times(odd),
    )
    return tuple(words for so, words in said if so)


def _about_heights(odd: Odd, routes: Sequence[Route]) -> Iterator[tuple[bool, str]]:
    points, with_height = sum(one.points for one in routes), sum(one.points_with_height for one in routes)
    missing = points - with_height
    share = missing / points * _PERCENT
    yield not with_height, "There are no heights in it: ascent and descent are unknown, not 0."
    some = bool(missing and with_height)
    yield some, f"{missing} of {points} points ({share:.0f} percent) have no height: ascent may be too low."
    yield (
        bool(odd.heights),
        (f"{odd.heights} heights are no numbers from {HEIGHT_MIN_M} to {HEIGHT_MAX_M} m and count as missing."),
    )
    level = with_height > 0 and all(one.highest_m == one.lowest_m == 0 for one in routes if one.points_with_height)
    yield level, "Every height is exactly 0: most likely none was measured."
    yield (
        bool(odd.zero_heights and not level),
        (f"{odd.zero_heights} heights are exactly 0. Where that stands for a missing one, ascent is too high."),
    )


def _about_times(odd: Odd) -> Iterator[tuple[bool, str]]:
    yield (
        bool(odd.reversed_times),
        (f"Time runs backwards at {odd.reversed_times} points. Times are not used; the order of the points is."),
    )
    yield bool(odd.times), f"{odd.times} times cannot be read. Times are not used."
