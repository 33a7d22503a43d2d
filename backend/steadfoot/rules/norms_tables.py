"""The norms themselves, by age and sex, as printed or as remembered; each says which."""

from dataclasses import dataclass
from typing import Annotated, Final

from steadfoot.rules.norms import Sex, TestSide
from steadfoot.rules.sources import Cited, Kind

Ages = tuple[int, int]
"""First and last age in whole years, both included."""

CHAIR_STAND: Final[
    Annotated[
        dict[Sex, dict[Ages, tuple[int, int]]],
        Cited(
            Kind.PUBLISHED,
            "rikli-1999",
            "Middle half by age and sex, repetitions; all lower bounds and the upper bounds of 60 to 69 seen, "
            "the other upper bounds from memory",
        ),
    ]
] = {
    Sex.MALE: {
        (60, 64): (14, 19),
        (65, 69): (12, 18),
        (70, 74): (12, 17),
        (75, 79): (11, 17),
        (80, 84): (10, 15),
        (85, 89): (8, 14),
        (90, 94): (7, 12),
    },
    Sex.FEMALE: {
        (60, 64): (12, 17),
        (65, 69): (11, 16),
        (70, 74): (10, 15),
        (75, 79): (10, 15),
        (80, 84): (9, 14),
        (85, 89): (8, 13),
        (90, 94): (4, 11),
    },
}

STANCE_OPEN_S: Final[
    Annotated[
        dict[Ages, float],
        Cited(
            Kind.HOUSE,
            "house",
            "Springer 2007, best of three with a cap of 45 s, sexes together: from memory, not yet checked",
        ),
    ]
] = {(18, 39): 44.7, (40, 49): 41.9, (50, 59): 41.2, (60, 69): 32.1, (70, 79): 21.5, (80, 99): 9.4}

STANCE_CLOSED_S: Final[
    Annotated[
        dict[Ages, dict[Sex, float]],
        Cited(
            Kind.PUBLISHED,
            "springer-2007",
            "Mean of the best of three, cap of 45 s, by sex; by a research note that quotes the table",
        ),
    ]
] = {
    (18, 39): {Sex.FEMALE: 13.1, Sex.MALE: 16.9},
    (40, 49): {Sex.FEMALE: 13.5, Sex.MALE: 12.0},
    (50, 59): {Sex.FEMALE: 7.9, Sex.MALE: 8.6},
    (60, 69): {Sex.FEMALE: 3.6, Sex.MALE: 5.1},
    (70, 79): {Sex.FEMALE: 3.7, Sex.MALE: 2.6},
    (80, 99): {Sex.FEMALE: 2.1, Sex.MALE: 1.8},
}


@dataclass(frozen=True, slots=True)
class Spread:
    """Mean and standard deviation in seconds."""

    mean: float
    deviation: float


SIDE_BRIDGE_S: Final[
    Annotated[
        dict[Sex, dict[TestSide, Spread]],
        Cited(
            Kind.HOUSE,
            "house",
            "McGill 1999, young healthy adults: seconds from memory; they reproduce the abstract's ratios to back "
            "extension",
        ),
    ]
] = {
    Sex.MALE: {TestSide.RIGHT: Spread(94, 34), TestSide.LEFT: Spread(97, 35)},
    Sex.FEMALE: {TestSide.RIGHT: Spread(72, 31), TestSide.LEFT: Spread(77, 35)},
}
SIDE_BRIDGE_AGE_MAX: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "The people measured were young; beyond 39 years we compare with nobody")]
] = 39
SIDE_BRIDGE_AGE_MIN: Final[Annotated[int, Cited(Kind.HOUSE, "house", "The people measured were adults")]] = 18

HEEL_RISE: Final[
    Annotated[
        dict[Sex, int],
        Cited(Kind.PUBLISHED, "hebert-losier-2017", "Median repetitions of all ages together, 20 to 81 years"),
    ]
] = {Sex.MALE: 24, Sex.FEMALE: 21}
HEEL_RISE_AGES: Final[
    Annotated[Ages, Cited(Kind.PUBLISHED, "hebert-losier-2017", "Ages of the 566 people measured")]
] = (20, 81)
HEEL_RISE_MDC: Final[
    Annotated[
        int,
        Cited(
            Kind.DERIVED,
            "hebert-losier-2017",
            "Repetitions: limits of agreement between days reach 6.5; the next whole one is 7",
        ),
    ]
] = 7


@dataclass(frozen=True, slots=True)
class WalkEquation:
    """Metres in six minutes: per cm of height, year of age and kg of body mass, plus a constant.

    ``below`` is how far the lower limit of normal lies under the predicted distance, in metres.
    """

    per_cm: float
    per_year: float
    per_kg: float
    constant: float
    below: float


SIX_MINUTE_WALK: Final[
    Annotated[
        dict[Sex, WalkEquation],
        Cited(Kind.PUBLISHED, "enright-1998", "Equations for men and women with their lower limits of normal"),
    ]
] = {
    Sex.MALE: WalkEquation(7.57, -5.02, -1.76, -309, 153),
    Sex.FEMALE: WalkEquation(2.11, -5.78, -2.29, 667, 139),
}
SIX_MINUTE_WALK_AGES: Final[
    Annotated[Ages, Cited(Kind.PUBLISHED, "enright-1998", "Ages of the healthy people measured")]
] = (40, 80)

STEP_TEST_GRADES: Final = (
    "excellent",
    "good",
    "above average",
    "average",
    "below average",
    "poor",
    "very poor",
)
STEP_TEST_BPM: Final[
    Annotated[
        dict[Sex, dict[Ages, tuple[int, ...]]],
        Cited(
            Kind.HOUSE,
            "house",
            "Table of the YMCA's manual (Golding 2000) from memory, lowest beats of each grade from good to very poor; "
            "only the youngest row is seen elsewhere. A placeholder until checked",
        ),
    ]
] = {
    Sex.MALE: {
        (18, 25): (79, 90, 100, 106, 117, 129),
        (26, 35): (81, 90, 100, 108, 118, 129),
        (36, 45): (83, 97, 104, 113, 120, 131),
        (46, 55): (87, 98, 106, 117, 123, 133),
        (56, 65): (86, 98, 104, 113, 121, 130),
        (66, 110): (88, 97, 104, 114, 121, 131),
    },
    Sex.FEMALE: {
        (18, 25): (85, 99, 109, 118, 127, 141),
        (26, 35): (88, 100, 112, 120, 127, 139),
        (36, 45): (90, 103, 111, 119, 129, 141),
        (46, 55): (94, 105, 116, 121, 130, 136),
        (56, 65): (95, 105, 113, 119, 129, 140),
        (66, 110): (90, 103, 116, 123, 129, 135),
    },
}

STEP_DOWN_GRADES: Final = ("good", "medium", "poor")
STEP_DOWN_CUTS: Final[
    Annotated[
        tuple[int, int],
        Cited(
            Kind.PUBLISHED, "piva-2006", "0 to 1 is good, 2 to 3 medium, 4 and more poor; cuts by a clinician's page"
        ),
    ]
] = (2, 4)
