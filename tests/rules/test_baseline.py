"""Baseline tests: what is possible, whose norm it is, and the words for it."""

import pytest

from steadfoot.rules import norms_tables
from steadfoot.rules.baseline import NotSided, read
from steadfoot.rules.baseline_catalogue import TESTS, TestCode
from steadfoot.rules.norms import NoReference, Person, Sex, TestSide
from steadfoot.rules.ranges import NotWhole, OutOfRange
from steadfoot.rules.sources import BIBLIOGRAPHY

WOMAN = Person(67, Sex.FEMALE, 165, 62)
RANGES = {
    TestCode.CHAIR_STAND: (0, 60, "repetitions"),
    TestCode.STANCE_OPEN: (0, 45, "s"),
    TestCode.STANCE_CLOSED: (0, 45, "s"),
    TestCode.SIDE_BRIDGE: (0, 600, "s"),
    TestCode.HEEL_RISE: (0, 100, "repetitions"),
    TestCode.SIX_MINUTE_WALK: (0, 1200, "m"),
    TestCode.STEP_TEST: (40, 220, "beats"),
    TestCode.STEP_DOWN: (0, 6, "points"),
    TestCode.REACH_ANTERIOR: (0, 120, "cm"),
}
COUNTED = {TestCode.CHAIR_STAND, TestCode.HEEL_RISE, TestCode.STEP_TEST, TestCode.STEP_DOWN}
BOTH_TOGETHER = {TestCode.CHAIR_STAND, TestCode.SIX_MINUTE_WALK, TestCode.STEP_TEST}


def test_the_catalogue_has_every_code_once():
    assert set(TESTS) == set(TestCode) == set(RANGES)


@pytest.mark.parametrize("code", list(TestCode))
def test_a_test_tells_its_protocol_and_its_work(code):
    test = TESTS[code]
    assert test.code is code
    assert test.work in BIBLIOGRAPHY
    assert test.protocol
    assert all(line.endswith(".") for line in test.protocol)
    assert (test.low, test.high, test.unit) == RANGES[code]
    assert test.counted is (code in COUNTED)
    assert test.sided is (code not in BOTH_TOGETHER)
    assert test.lower_is_better is (code in (TestCode.STEP_TEST, TestCode.STEP_DOWN))
    assert test.mdc == (7 if code is TestCode.HEEL_RISE else None)


@pytest.mark.parametrize("code", list(TestCode))
def test_a_value_at_either_end_is_read_and_one_beyond_is_refused(code):
    low, high, unit = RANGES[code]
    for value in (low, high):
        assert read(code, value, WOMAN).value == value
    for value in (low - 1, high + 1, float("nan")):
        with pytest.raises(OutOfRange) as refused:
            read(code, value, WOMAN)
        assert (refused.value.name, refused.value.low, refused.value.high) == ("value", low, high)
        assert refused.value.unit == unit


@pytest.mark.parametrize("code", list(TestCode))
def test_what_is_counted_is_whole_and_what_is_measured_need_not_be(code):
    if code in COUNTED:
        with pytest.raises(NotWhole):
            read(code, TESTS[code].low + 0.5, WOMAN)
    else:
        assert read(code, TESTS[code].low + 0.5, WOMAN).value == TESTS[code].low + 0.5


@pytest.mark.parametrize("code", list(TestCode))
def test_sides_are_for_tests_of_one_side(code):
    value = TESTS[code].high
    if code in BOTH_TOGETHER:
        with pytest.raises(NotSided, match="has no sides"):
            read(code, value, WOMAN, TestSide.LEFT)
        with pytest.raises(NotSided) as refused:
            read(code, value, WOMAN, other=value)
        assert refused.value.test is TESTS[code]
    else:
        assert read(code, value, WOMAN, TestSide.LEFT, value).symmetry_percent == 100
        assert read(code, value, WOMAN, TestSide.LEFT, value).even_enough is True
        alone = read(code, value, WOMAN, TestSide.LEFT)
        assert alone.symmetry_percent is alone.even_enough is None


@pytest.mark.parametrize(
    ("code", "value", "other", "percent", "even"),
    [
        (TestCode.HEEL_RISE, 18, 20, 90, True),
        (TestCode.HEEL_RISE, 17, 20, 85, False),
        (TestCode.STEP_DOWN, 4, 2, 200, False),
        (TestCode.STEP_DOWN, 2, 4, 50, True),
        (TestCode.STEP_DOWN, 2, 0, None, False),
        (TestCode.HEEL_RISE, 2, 0, None, None),
    ],
)
def test_sides_are_even_enough_by_what_is_better_in_this_test(code, value, other, percent, even):
    found = read(code, value, WOMAN, TestSide.LEFT, other)
    assert (found.symmetry_percent, found.even_enough) == (percent, even)


def test_the_other_side_is_checked_by_its_own_name():
    with pytest.raises(OutOfRange, match=r"^other is 46"):
        read(TestCode.STANCE_OPEN, 20, WOMAN, other=46)


@pytest.mark.parametrize(
    ("field", "low", "high"), [("age", 5, 110), ("height_cm", 100, 230), ("body_mass_kg", 25, 300)]
)
def test_a_person_who_cannot_be_is_refused(field, low, high):
    for value in (low, high):
        assert getattr(Person(**{field: value}), field) == value
    for value in (low - 1, high + 1):
        with pytest.raises(OutOfRange) as refused:
            Person(**{field: value})
        assert refused.value.name == field


@pytest.mark.parametrize(
    ("value", "words"),
    [
        (10, "below the usual range for women 65 to 69 (11 to 16 repetitions)"),
        (11, "within the usual range for women 65 to 69 (11 to 16 repetitions)"),
        (16, "within the usual range for women 65 to 69 (11 to 16 repetitions)"),
        (17, "above the usual range for women 65 to 69 (11 to 16 repetitions)"),
    ],
)
def test_a_usual_range_in_words(value, words):
    assert read(TestCode.CHAIR_STAND, value, WOMAN).reading == words


@pytest.mark.parametrize(("value", "place"), [(32, "below"), (32.1, "at"), (32.2, "above")])
def test_a_mean_is_told_as_no_limit(value, place):
    found = read(TestCode.STANCE_OPEN, value, WOMAN)
    assert found.reading == f"{place} the mean of people 60 to 69 (32.1 s), which is no limit"


def test_a_median_is_told_as_no_limit():
    found = read(TestCode.HEEL_RISE, 18, WOMAN)
    group = "healthy women 20 to 81, all ages together"
    assert found.reading == f"below the median of {group} (21 repetitions), which is no limit"


@pytest.mark.parametrize(("value", "place"), [(40, "below"), (41, "within"), (103, "within"), (104, "above")])
def test_a_mean_with_its_deviation_in_words(value, place):
    found = read(TestCode.SIDE_BRIDGE, value, Person(30, Sex.FEMALE), TestSide.RIGHT)
    group = "young healthy women, right side"
    assert found.reading == f"{place} one standard deviation around the mean of {group} (41 to 103 s)"


def test_without_a_side_the_side_bridge_is_read_beside_the_mean_of_both():
    found = read(TestCode.SIDE_BRIDGE, 60, Person(30, Sex.FEMALE)).reference
    assert (found.middle, found.high - found.middle, found.group) == (74.5, 33, "young healthy women")
    assert read(TestCode.SIDE_BRIDGE, 60, Person(30, Sex.MALE)).reference.group == "young healthy men"


@pytest.mark.parametrize(("value", "place"), [(346.9, "below"), (346.92, "not below")])
def test_an_expected_distance_in_words(value, place):
    """2.11 x 165 - 5.78 x 67 - 2.29 x 62 + 667 = 485.91 m; the limit is 139 m less, 346.91 m."""
    found = read(TestCode.SIX_MINUTE_WALK, value, WOMAN)
    assert found.reading == (
        f"{place} the lower limit of normal for healthy women 40 to 80 of this age, height and body mass "
        "(347 m; 486 m is expected)"
    )


def test_a_distance_at_the_very_limit_is_not_below_it():
    limit = read(TestCode.SIX_MINUTE_WALK, 0, WOMAN).reference.low
    assert read(TestCode.SIX_MINUTE_WALK, limit, WOMAN).reading.startswith("not below")


@pytest.mark.parametrize(("points", "grade"), [(1, "good"), (2, "medium"), (3, "medium"), (4, "poor")])
def test_grades_in_words(points, grade):
    assert read(TestCode.STEP_DOWN, points, Person()).reading == f"{grade} (quality of movement, 0 to 6 points)"


@pytest.mark.parametrize("sex", list(Sex))
@pytest.mark.parametrize(("age", "band"), [(18, (18, 25)), (30, (26, 35)), (65, (56, 65)), (66, (66, 110))])
def test_each_cut_of_the_step_test_begins_the_next_grade(sex, age, band):
    cuts = norms_tables.STEP_TEST_BPM[sex][band]
    grades = norms_tables.STEP_TEST_GRADES
    for place, cut in enumerate(cuts):
        for beats, grade in ((cut - 1, grades[place]), (cut, grades[place + 1])):
            assert read(TestCode.STEP_TEST, beats, Person(age, sex)).reference.grade == grade


@pytest.mark.parametrize(
    ("code", "person", "why"),
    [
        (TestCode.CHAIR_STAND, Person(67), "the norm is by sex, and none is given."),
        (TestCode.CHAIR_STAND, Person(sex=Sex.MALE), "the norm is by age, and none is given."),
        (TestCode.CHAIR_STAND, Person(59, Sex.MALE), "there is no norm outside 60 to 94 years."),
        (TestCode.STANCE_OPEN, Person(), "the norm is by age, and none is given."),
        (TestCode.STANCE_OPEN, Person(17), "there is no norm outside 18 to 99 years."),
        (TestCode.STANCE_CLOSED, Person(100), "there is no norm outside 18 to 99 years."),
        (TestCode.SIDE_BRIDGE, Person(30), "the norm is by sex, and none is given."),
        (TestCode.SIDE_BRIDGE, Person(17, Sex.MALE), "the only figures are of young adults."),
        (TestCode.SIDE_BRIDGE, Person(40, Sex.MALE), "the only figures are of young adults."),
        (TestCode.HEEL_RISE, Person(30), "the norm is by sex, and none is given."),
        (TestCode.HEEL_RISE, Person(19, Sex.MALE), "the people measured were 20 to 81 years old."),
        (TestCode.HEEL_RISE, Person(82, Sex.MALE), "the people measured were 20 to 81 years old."),
        (TestCode.SIX_MINUTE_WALK, Person(60, None, 170, 70), "the norm is by sex, and none is given."),
        (TestCode.SIX_MINUTE_WALK, Person(None, Sex.MALE, 170, 70), "the norm is by age, and none is given."),
        (TestCode.SIX_MINUTE_WALK, Person(60, Sex.MALE, None, 70), "it needs height and body mass."),
        (TestCode.SIX_MINUTE_WALK, Person(60, Sex.MALE, 170, None), "it needs height and body mass."),
        (TestCode.SIX_MINUTE_WALK, Person(39, Sex.MALE, 170, 70), "the equation is for 40 to 80 years."),
        (TestCode.STEP_TEST, Person(30), "the norm is by sex, and none is given."),
        (TestCode.STEP_TEST, Person(17, Sex.MALE), "there is no norm outside 18 to 110 years."),
        (
            TestCode.REACH_ANTERIOR,
            Person(30, Sex.MALE),
            "the cut-offs in use come from basketball players of school age; follow the change over time instead.",
        ),
    ],
)
def test_where_there_is_no_norm_the_reading_says_why(code, person, why):
    found = read(code, TESTS[code].high, person)
    assert found.reference == NoReference(why)
    assert found.reading == f"no norm for this person: {why}"


@pytest.mark.parametrize(
    ("code", "person"),
    [
        (TestCode.SIDE_BRIDGE, Person(18, Sex.MALE)),
        (TestCode.SIDE_BRIDGE, Person(39, Sex.MALE)),
        (TestCode.SIDE_BRIDGE, Person(None, Sex.MALE)),
        (TestCode.HEEL_RISE, Person(20, Sex.MALE)),
        (TestCode.HEEL_RISE, Person(81, Sex.MALE)),
        (TestCode.HEEL_RISE, Person(None, Sex.MALE)),
        (TestCode.STANCE_OPEN, Person(18)),
        (TestCode.STANCE_OPEN, Person(99)),
    ],
)
def test_the_edges_of_a_norm_belong_to_it(code, person):
    assert not isinstance(read(code, 20, person).reference, NoReference)
