"""What a test result is compared with: a person's reference, or a plain reason why there is none."""

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated, Final

from steadfoot.rules.ranges import within
from steadfoot.rules.sources import Cited, Kind

AGE_MIN: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Plausible range, to catch slips: 5 years")]] = 5
AGE_MAX: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Plausible range, to catch slips: 110 years")]] = 110
HEIGHT_MIN_CM: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Plausible range, to catch slips: 100 cm")]] = 100
HEIGHT_MAX_CM: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Plausible range, to catch slips: 230 cm")]] = 230
BODY_MASS_MIN_KG: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Plausible range, to catch slips: 25 kg")]] = 25
BODY_MASS_MAX_KG: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Plausible range, to catch slips: 300 kg")]] = 300


class Sex(StrEnum):
    """Sex, as the norms are split by it."""

    FEMALE = "female"
    MALE = "male"


PEOPLE: Final = {Sex.FEMALE: "women", Sex.MALE: "men", None: "people"}


class TestSide(StrEnum):
    """The side of the body that was tested."""

    __test__ = False  # not a test, in spite of its name

    LEFT = "left"
    RIGHT = "right"


@dataclass(frozen=True, slots=True)
class Person:
    """Whose result it is: age in whole years, height in cm, body mass in kg; None where not known.

    Raises:
        OutOfRange: one of them cannot be.
    """

    age: int | None = None
    sex: Sex | None = None
    height_cm: float | None = None
    body_mass_kg: float | None = None

    def __post_init__(self) -> None:
        if self.age is not None:
            within("age", self.age, AGE_MIN, AGE_MAX, "years")
        if self.height_cm is not None:
            within("height_cm", self.height_cm, HEIGHT_MIN_CM, HEIGHT_MAX_CM, "cm")
        if self.body_mass_kg is not None:
            within("body_mass_kg", self.body_mass_kg, BODY_MASS_MIN_KG, BODY_MASS_MAX_KG, "kg")


class Shape(StrEnum):
    """What kind of comparison a reference allows."""

    RANGE = "range"
    """The usual range of a group, its middle half."""
    MEAN = "mean"
    """The mean of a group, with its standard deviation where known."""
    MEDIAN = "median"
    """The middle value of a group."""
    PREDICTED = "predicted"
    """What an equation expects of this person, with the lower limit of normal."""
    GRADES = "grades"
    """Named grades, best first."""


@dataclass(frozen=True, slots=True)
class Reference:
    """A norm for one person, in the test's unit.

    ``low`` and ``high`` bound the usual range, ``middle`` is the mean, median or predicted value. ``group`` names
    whom the norm is of; ``work`` is the bibliography's key of what it stems from, ``cited`` says how far it can
    be trusted.
    """

    shape: Shape
    group: str
    work: str
    cited: Cited
    low: float | None = None
    middle: float | None = None
    high: float | None = None
    grade: str | None = None


@dataclass(frozen=True, slots=True)
class NoReference:
    """There is no norm for this person, and why."""

    why: str


def group_words(sex: Sex | None, ages: tuple[int, int]) -> str:
    """Name a group: "women 65 to 69".

    >>> group_words(Sex.FEMALE, (65, 69))
    'women 65 to 69'
    """
    return f"{PEOPLE[sex]} {ages[0]} to {ages[1]}"


def reading(value: float, found: Reference | NoReference, unit: str) -> str:
    """Tell a value beside its reference: "below the usual range for women 65 to 69 (11 to 16 repetitions)".

    The edges of a range belong to it. A mean or median has no limit beside it and is told as what it is.
    """
    if isinstance(found, NoReference):
        return f"no norm for this person: {found.why}"
    if found.shape is Shape.GRADES:
        return f"{found.grade} ({found.group})"
    if found.shape is Shape.PREDICTED:
        return _against_predicted(value, found, unit)
    if found.shape is Shape.RANGE or found.low is not None:
        return _against_range(value, found, unit)
    return _against_middle(value, found, unit)


def _place(value: float, low: float, high: float) -> str:
    if value < low:
        return "below"
    return "above" if value > high else "within"


def _against_range(value: float, found: Reference, unit: str) -> str:
    assert found.low is not None
    assert found.high is not None
    place = _place(value, found.low, found.high)
    span = f"({found.low:g} to {found.high:g} {unit})"
    if found.shape is Shape.MEAN:
        return f"{place} one standard deviation around the mean of {found.group} {span}"
    return f"{place} the usual range for {found.group} {span}"


def _against_middle(value: float, found: Reference, unit: str) -> str:
    assert found.middle is not None
    place = {"below": "below", "above": "above", "within": "at"}[_place(value, found.middle, found.middle)]
    return f"{place} the {found.shape} of {found.group} ({found.middle:g} {unit}), which is no limit"


def _against_predicted(value: float, found: Reference, unit: str) -> str:
    assert found.low is not None
    assert found.middle is not None
    place = "below" if value < found.low else "not below"
    return (
        f"{place} the lower limit of normal for {found.group} "
        f"({found.low:.0f} {unit}; {found.middle:.0f} {unit} is expected)"
    )
