"""How a baseline test is run at the desk: what is entered, what is counted down, what to look out for."""

from enum import StrEnum
from typing import Annotated, Final

from steadfoot.rules.baseline_catalogue import BaselineTest, TestCode
from steadfoot.rules.sources import Cited, Kind


class Measure(StrEnum):
    """What is entered, and so what the page offers: a counter, a stop-watch or a field."""

    COUNT = "count"
    SECONDS = "seconds"
    METRES = "metres"
    SCORE = "score"
    CM = "cm"


CHAIR_STAND_S: Final[Annotated[int, Cited(Kind.PUBLISHED, "rikli-1999", "Full stands in 30 seconds")]] = 30
SIX_MINUTE_WALK_S: Final[Annotated[int, Cited(Kind.PUBLISHED, "enright-1998", "Six minutes")]] = 360
STEP_TEST_S: Final[Annotated[int, Cited(Kind.PUBLISHED, "golding-2000", "Three minutes of stepping")]] = 180

COUNTERS_S: Final = {
    TestCode.CHAIR_STAND: CHAIR_STAND_S,
    TestCode.SIX_MINUTE_WALK: SIX_MINUTE_WALK_S,
    TestCode.STEP_TEST: STEP_TEST_S,
}
"""Tests of a fixed time, with that time in seconds; the others are timed or counted to their end."""

_MEASURES: Final = {
    "repetitions": Measure.COUNT,
    "beats": Measure.COUNT,
    "s": Measure.SECONDS,
    "m": Measure.METRES,
    "points": Measure.SCORE,
    "cm": Measure.CM,
}
_ALWAYS: Final = (
    "Not on a day with chest pain, dizziness, fever or a newly swollen calf.",
    "Stop for chest pain, faintness, unusual breathlessness or sharp pain. In an emergency call your local "
    "emergency number.",
)
_CLOSE_BY: Final = "Stand close enough to catch: a fall is the risk here."
_CAUTIONS: Final = {
    TestCode.CHAIR_STAND: "Put the chair against a wall, so that it cannot slide.",
    TestCode.STANCE_OPEN: _CLOSE_BY,
    TestCode.STANCE_CLOSED: f"{_CLOSE_BY} Leave it out for someone who sways with open eyes.",
    TestCode.SIDE_BRIDGE: "Not on a shoulder that hurts under load. Remind them to go on breathing.",
    TestCode.HEEL_RISE: "Not after a fresh tear or operation of tendon or calf without the surgeon's word.",
    TestCode.SIX_MINUTE_WALK: "Have a chair and a telephone in reach. After recent heart trouble the doctor decides.",
    TestCode.STEP_TEST: "Hard for the heart: not while a clearance that screening asks for is missing. Have a rail.",
    TestCode.STEP_DOWN: "A rail in reach. Stop when the knee hurts sharply.",
    TestCode.REACH_ANTERIOR: _CLOSE_BY,
}


def measure_of(test: BaselineTest) -> Measure:
    """Answer what is entered for a test."""
    return _MEASURES[test.unit]


def cautions_of(code: TestCode) -> tuple[str, ...]:
    """Answer what to look out for, the test's own caution first."""
    return (_CAUTIONS[code], *_ALWAYS)
