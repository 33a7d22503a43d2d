"""The baseline tests: what each measures, how we do it, and what results are possible."""

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated, Final

from steadfoot.rules import norms_tables
from steadfoot.rules.sources import Cited, Kind, plausible


class TestCode(StrEnum):
    """The baseline tests by their codes."""

    __test__ = False  # not a test, in spite of its name

    CHAIR_STAND = "chair-stand-30s"
    STANCE_OPEN = "single-leg-stance-open"
    STANCE_CLOSED = "single-leg-stance-closed"
    SIDE_BRIDGE = "side-bridge"
    HEEL_RISE = "heel-rise"
    SIX_MINUTE_WALK = "six-minute-walk"
    STEP_TEST = "step-test-3min"
    STEP_DOWN = "step-down"
    REACH_ANTERIOR = "reach-anterior"


STANCE_CAP_S: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "springer-2007", "Stance is stopped at 45 s, else the norm does not fit")]
] = 45
STEP_DOWN_MAX: Final[Annotated[int, Cited(Kind.PUBLISHED, "piva-2006", "Items add up to 6 points at most")]] = 6


CHAIR_STAND_MAX: Final[Annotated[int, plausible("two repetitions a second")]] = 60
SIDE_BRIDGE_MAX_S: Final[Annotated[int, plausible("ten minutes")]] = 600
HEEL_RISE_MAX: Final[Annotated[int, plausible("100 repetitions")]] = 100
SIX_MINUTE_WALK_MAX_M: Final[Annotated[int, plausible("12 km/h for six minutes")]] = 1200
BEATS_MIN: Final[Annotated[int, plausible("40 beats after exercise")]] = 40
BEATS_MAX: Final[Annotated[int, plausible("220 beats")]] = 220
REACH_MAX_CM: Final[Annotated[int, plausible("120 cm")]] = 120


@dataclass(frozen=True, slots=True)
class BaselineTest:
    """One test: name, unit, protocol in our words, the possible range, and how results are read.

    ``work`` is the bibliography's key of where its norm or its reading stems from; ``mdc`` the smallest change in the
    test's unit that is real, None where none is known for this protocol.
    """

    code: TestCode
    name: str
    work: str
    unit: str
    protocol: tuple[str, ...]
    low: float
    high: float
    counted: bool
    sided: bool
    lower_is_better: bool
    mdc: float | None


_REPS: Final = "repetitions"
_STANCE: Final = (
    "Bare feet on a hard floor, arms crossed over the chest, the other foot off the ground and not touching.",
    "Time until an arm leaves the chest, a foot moves or touches, or 45 seconds are full. Best of three counts.",
    "Have a rail or a wall in reach and stand close by.",
)
_EYES: Final = "Note the cap, the trials and the eyes with the result: how strictly it is judged can double it."

TESTS: Final = {
    test.code: test
    for test in (
        BaselineTest(
            TestCode.CHAIR_STAND,
            "30-second chair stand",
            "rikli-1999",
            _REPS,
            (
                "A firm chair about 43 cm high against a wall, arms crossed over the chest, feet flat.",
                "Count full stands in 30 seconds; more than half way up at the end counts as one.",
                "If the arms are needed to get up, the result is 0.",
            ),
            0,
            CHAIR_STAND_MAX,
            counted=True,
            sided=False,
            lower_is_better=False,
            mdc=None,
        ),
        BaselineTest(
            TestCode.STANCE_OPEN,
            "Single-leg stance, eyes open",
            "springer-2007",
            "s",
            (*_STANCE, _EYES),
            0,
            STANCE_CAP_S,
            counted=False,
            sided=True,
            lower_is_better=False,
            mdc=None,
        ),
        BaselineTest(
            TestCode.STANCE_CLOSED,
            "Single-leg stance, eyes closed",
            "springer-2007",
            "s",
            (*_STANCE, "Time begins when the eyes close and ends when they open.", _EYES),
            0,
            STANCE_CAP_S,
            counted=False,
            sided=True,
            lower_is_better=False,
            mdc=None,
        ),
        BaselineTest(
            TestCode.SIDE_BRIDGE,
            "Side bridge",
            "mcgill-1999",
            "s",
            (
                "On the side, legs straight, top foot in front; lift the hips onto the forearm and the feet.",
                "Time until the hips sink from the straight line. One try a side, five minutes between sides.",
            ),
            0,
            SIDE_BRIDGE_MAX_S,
            counted=False,
            sided=True,
            lower_is_better=False,
            mdc=None,
        ),
        BaselineTest(
            TestCode.HEEL_RISE,
            "Single-leg heel rise",
            "hebert-losier-2017",
            _REPS,
            (
                "One foot on a slope of 10 degrees, fingertips on the wall at shoulder height for balance.",
                "30 a minute to a beat, as high as the first one, until height, knee or rhythm is lost.",
            ),
            0,
            HEEL_RISE_MAX,
            counted=True,
            sided=True,
            lower_is_better=False,
            mdc=norms_tables.HEEL_RISE_MDC,
        ),
        BaselineTest(
            TestCode.SIX_MINUTE_WALK,
            "Six-minute walk",
            "enright-1998",
            "m",
            (
                "A flat, straight course of 30 m. As far as possible in six minutes, not running; resting is allowed.",
                "Stop for chest pain, faintness or unusual breathlessness. Have help in reach.",
            ),
            0,
            SIX_MINUTE_WALK_MAX_M,
            counted=False,
            sided=False,
            lower_is_better=False,
            mdc=None,
        ),
        BaselineTest(
            TestCode.STEP_TEST,
            "Three-minute step test",
            "golding-2000",
            "beats",
            (
                "A step of 30.5 cm, 24 times up and down a minute (96 beats of a metronome), three minutes.",
                "Sit down and count the heart for one whole minute at once. Not with medicine that slows the heart.",
                "Stop for chest pain, faintness or unusual breathlessness.",
            ),
            BEATS_MIN,
            BEATS_MAX,
            counted=True,
            sided=False,
            lower_is_better=True,
            mdc=None,
        ),
        BaselineTest(
            TestCode.STEP_DOWN,
            "Lateral step-down",
            "piva-2006",
            "points",
            (
                "From a 20 cm step, five slow step-downs: the heel beside the step touches the floor and returns.",
                "Points: arms swing 1; trunk leans 1; pelvis drops or turns 1; knee inside the second toe 1, or inside "
                "the edge of the foot 2; unsteady or foot put down 1.",
                "Note the height of the step: some use 15 cm.",
            ),
            0,
            STEP_DOWN_MAX,
            counted=True,
            sided=True,
            lower_is_better=True,
            mdc=None,
        ),
        BaselineTest(
            TestCode.REACH_ANTERIOR,
            "Reach forward on one leg",
            "plisky-2006",
            "cm",
            (
                "Stand on one leg behind a line; slide the other foot forward along a tape and return.",
                "Hands on the hips, heel down. Best of three after four tries for practice.",
            ),
            0,
            REACH_MAX_CM,
            counted=False,
            sided=True,
            lower_is_better=False,
            mdc=None,
        ),
    )
}
