"""Finding the norm of each test for one person; where there is none, the answer says why."""

from collections.abc import Iterable
from statistics import mean
from typing import Final

from steadfoot.rules import norms_tables as tables
from steadfoot.rules.norms import NoReference, Person, Reference, Sex, Shape, TestSide, group_words
from steadfoot.rules.sources import Cited, Kind, citation

Found = Reference | NoReference

NO_SEX: Final = NoReference("the norm is by sex, and none is given.")
NO_AGE: Final = NoReference("the norm is by age, and none is given.")


def chair_stand(person: Person) -> Found:
    """Answer the middle half of a person's age and sex, in repetitions; 60 to 94 years only [rikli-1999]."""
    if person.sex is None:
        return NO_SEX
    bands = tables.CHAIR_STAND[person.sex]
    ages = _band(person.age, bands)
    if isinstance(ages, NoReference):
        return ages
    low, high = bands[ages]
    group = group_words(person.sex, ages)
    return Reference(Shape.RANGE, group, "rikli-1999", _cited("CHAIR_STAND"), low=low, high=high)


def stance_open(person: Person) -> Found:
    """Answer the mean of a person's age, sexes together, in seconds; from memory of [springer-2007]."""
    ages = _band(person.age, tables.STANCE_OPEN_S)
    if isinstance(ages, NoReference):
        return ages
    middle = tables.STANCE_OPEN_S[ages]
    return Reference(Shape.MEAN, group_words(None, ages), "springer-2007", _cited("STANCE_OPEN_S"), middle=middle)


def stance_closed(person: Person) -> Found:
    """Answer the mean of a person's age and sex, in seconds; the middle of both where no sex is given.

    Follows [springer-2007], which found no difference between the sexes.
    """
    ages = _band(person.age, tables.STANCE_CLOSED_S)
    if isinstance(ages, NoReference):
        return ages
    by_sex, noted = tables.STANCE_CLOSED_S[ages], _cited("STANCE_CLOSED_S")
    middle = mean(by_sex.values()) if person.sex is None else by_sex[person.sex]
    if person.sex is None:
        noted = Cited(Kind.DERIVED, noted.source, "Middle of the means of women and men")
    return Reference(Shape.MEAN, group_words(person.sex, ages), "springer-2007", noted, middle=middle)


def side_bridge(person: Person, side: TestSide | None) -> Found:
    """Answer the mean hold of young healthy adults in seconds, one standard deviation either way.

    Without a side it is the mean of both; from memory of [mcgill-1999]. Nobody beyond
    ``SIDE_BRIDGE_AGE_MAX`` is compared with the young.
    """
    if person.sex is None:
        return NO_SEX
    if person.age is not None and not tables.SIDE_BRIDGE_AGE_MIN <= person.age <= tables.SIDE_BRIDGE_AGE_MAX:
        return NoReference("the only figures are of young adults.")
    by_side = tables.SIDE_BRIDGE_S[person.sex]
    spreads = list(by_side.values()) if side is None else [by_side[side]]
    middle = mean(one.mean for one in spreads)
    deviation = mean(one.deviation for one in spreads)
    people = {Sex.FEMALE: "young healthy women", Sex.MALE: "young healthy men"}[person.sex]
    return Reference(
        Shape.MEAN,
        people if side is None else f"{people}, {side} side",
        "mcgill-1999",
        _cited("SIDE_BRIDGE_S"),
        low=middle - deviation,
        middle=middle,
        high=middle + deviation,
    )


def heel_rise(person: Person) -> Found:
    """Answer the median of healthy adults, in repetitions [hebert-losier-2017].

    The work also has equations by age; they were not found, and none is made up here.
    """
    if person.sex is None:
        return NO_SEX
    first, last = tables.HEEL_RISE_AGES
    if person.age is not None and not first <= person.age <= last:
        return NoReference(f"the people measured were {first} to {last} years old.")
    group = f"healthy {group_words(person.sex, tables.HEEL_RISE_AGES)}, all ages together"
    middle = tables.HEEL_RISE[person.sex]
    return Reference(Shape.MEDIAN, group, "hebert-losier-2017", _cited("HEEL_RISE"), middle=middle)


def six_minute_walk(person: Person) -> Found:
    """Answer the distance expected of a person and its lower limit of normal, in metres [enright-1998].

    Men: 7.57 cm - 5.02 years - 1.76 kg - 309, limit 153 below; women: 2.11 cm - 5.78 years - 2.29 kg + 667,
    limit 139 below. Healthy people of 40 to 80 years.
    """
    if person.sex is None:
        return NO_SEX
    if person.age is None:
        return NO_AGE
    if person.height_cm is None or person.body_mass_kg is None:
        return NoReference("it needs height and body mass.")
    first, last = ages = tables.SIX_MINUTE_WALK_AGES
    if not first <= person.age <= last:
        return NoReference(f"the equation is for {first} to {last} years.")
    is_of = tables.SIX_MINUTE_WALK[person.sex]
    predicted = (
        is_of.per_cm * person.height_cm
        + is_of.per_year * person.age
        + is_of.per_kg * person.body_mass_kg
        + is_of.constant
    )
    return Reference(
        Shape.PREDICTED,
        f"healthy {group_words(person.sex, ages)} of this age, height and body mass",
        "enright-1998",
        _cited("SIX_MINUTE_WALK"),
        low=predicted - is_of.below,
        middle=predicted,
    )


def step_test(person: Person, beats: float) -> Found:
    """Answer the grade of the beats counted in the minute after stepping; from memory of [golding-2000]."""
    if person.sex is None:
        return NO_SEX
    bands = tables.STEP_TEST_BPM[person.sex]
    ages = _band(person.age, bands)
    if isinstance(ages, NoReference):
        return ages
    grade = _grade(beats, bands[ages], tables.STEP_TEST_GRADES)
    group = group_words(person.sex, ages) + ", table from memory"
    return Reference(Shape.GRADES, group, "golding-2000", _cited("STEP_TEST_BPM"), grade=grade)


def step_down(points: float) -> Found:
    """Answer the grade of a step-down's 0 to 6 points, for any age and sex [piva-2006]."""
    grade = _grade(points, tables.STEP_DOWN_CUTS, tables.STEP_DOWN_GRADES)
    return Reference(
        Shape.GRADES, "quality of movement, 0 to 6 points", "piva-2006", _cited("STEP_DOWN_CUTS"), grade=grade
    )


def reach_anterior() -> NoReference:
    """Answer why there is none: the cut-offs in use come from [plisky-2006], school basketball."""
    return NoReference(
        "the cut-offs in use come from basketball players of school age; follow the change over time instead."
    )


def _cited(name: str) -> Cited:
    return citation(tables, name)


def _band(age: int | None, bands: Iterable[tuple[int, int]]) -> tuple[int, int] | NoReference:
    if age is None:
        return NO_AGE
    all_bands = list(bands)
    found = next((ages for ages in all_bands if ages[0] <= age <= ages[1]), None)
    return found or NoReference(f"there is no norm outside {all_bands[0][0]} to {all_bands[-1][1]} years.")


def _grade(value: float, cuts: tuple[int, ...], grades: tuple[str, ...]) -> str:
    """Answer the grade, best first; each cut is the first value that is no longer of the grade before it."""
    return grades[sum(value >= cut for cut in cuts)]
