"""The shape of a program's content."""

import json
from datetime import date

import pytest
from hypothesis import given
from pydantic import ValidationError

from steadfoot.core.texts import canonical
from steadfoot.exercises.service import library
from steadfoot.programs import content as contents
from steadfoot.programs.content import Prescription, ProgramContent, normalise, to_json
from steadfoot.programs.store import shipped_templates
from tests.builders import circuit, content, step_down
from tests.features.programs import made

MONDAY = date(2026, 11, 30)


@made.CALM
@given(made.contents())
def test_a_content_comes_back_the_same_from_its_canonical_text(whole):
    text = canonical(to_json(whole))
    again = ProgramContent.model_validate_json(text)
    assert again == whole
    assert canonical(to_json(again)) == text


@made.CALM
@given(made.contents())
def test_normalising_twice_changes_nothing_more(whole):
    assert normalise(normalise(whole)) == normalise(whole)


@made.CALM
@given(made.contents())
def test_a_prescription_comes_back_the_same_from_the_rules_form(whole):
    for session in whole.sessions:
        for one in getattr(session, "prescriptions", []):
            assert contents.with_dose(one, contents.rule_prescription(one)) == one


def test_days_are_sorted_and_keep_their_order_within_a_date():
    given_days = content(MONDAY, 1) | {"sessions": [circuit("s1"), circuit("s2", prescriptions=[step_down("p2")])]}
    given_days["days"] = [
        {"date": "2026-12-02", "session": "s2", "fixed_day": False},
        {"date": "2026-12-01", "session": "s1", "fixed_day": False},
        {"date": "2026-12-02", "session": "s1", "fixed_day": False},
    ]
    days = normalise(ProgramContent.model_validate(given_days)).days
    assert [(day.date.day, day.session) for day in days] == [(1, "s1"), (2, "s2"), (2, "s1")]


def test_an_open_end_is_the_day_before_the_goal():
    goal = {"name": "Harrowcomb traverse", "date": "2027-01-16"}
    whole = ProgramContent.model_validate(content(MONDAY) | {"goal": goal, "ends_on": None})
    assert normalise(whole).ends_on == date(2027, 1, 15)


def test_fields_with_a_usual_value_may_be_left_out():
    short = {"key": "p1", "exercise": "clam", "variant": "lying", "sides": "each", "reps_low": 8, "reps_high": 10}
    assert Prescription.model_validate(short).model_dump()["rest_s"] == 0


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("reps_low", "7"),
        ("reps_low", True),
        ("reps_low", 0),
        ("reps_high", 51),
        ("reps_high", 8.5),
        ("hold_s", 301),
        ("rest_s", -1),
        ("load_kg", float("nan")),
        ("load_kg", 201),
        ("load_kg", "4"),
        ("sides", "left"),
        ("note", "a\x00b"),
        ("note", "a\ud800b"),
        ("note", "a" * 4001),
        ("exercise", "Step Down"),
        ("color", "blue"),
    ],
)
def test_a_value_that_cannot_be_meant_is_refused(field, value):
    with pytest.raises(ValidationError):
        Prescription.model_validate(step_down() | {field: value})


@pytest.mark.parametrize(
    "day",
    ["2026-11-30T00:00:00", "30.11.2026", "2026-02-30", "9999-12-31", "1999-12-31", 20261130, "２026-11-30", None],
)
def test_a_day_is_written_one_way_and_lies_within_reach(day):
    with pytest.raises(ValidationError):
        ProgramContent.model_validate(content(MONDAY) | {"starts_on": day})


def test_whole_numbers_may_come_as_floats():
    assert Prescription.model_validate(step_down(reps_low=8.0)).reps_low == 8


def test_an_unknown_kind_of_session_is_refused():
    with pytest.raises(ValidationError):
        ProgramContent.model_validate(content(MONDAY, sessions=[circuit() | {"kind": "swim"}]))


@pytest.mark.parametrize("template", shipped_templates().values(), ids=lambda template: template.code)
def test_the_templates_that_come_with_the_program_prescribe_within_the_librarys_own_doses(template):
    for session in template.sessions:
        for one in getattr(session, "prescriptions", []):
            rung = next(rung for rung in library()[one.exercise].ladder if rung.variant == one.variant)
            low, high = getattr(rung.dose, "reps", None) or rung.dose.hold_s
            assert one.sides is rung.sides
            assert low <= (one.reps_low or one.hold_s) <= (one.reps_high or one.hold_s) <= high, one.key


def test_minutes_sets_and_load_of_each_kind_of_session():
    walk = {"key": "w", "kind": "walk", "name": "Walk", "distance_km": 8, "ascent_m": 300, "expected_effort": 4}
    bike = {"key": "b", "kind": "cardio", "name": "Bike", "activity": "easy", "expected_effort": 3}
    rest = {"key": "r", "kind": "rest", "name": "Rest"}
    timed = bike | {"key": "t", "expected_minutes": 40}
    whole = ProgramContent.model_validate(content(MONDAY, sessions=[circuit(), walk, bike, rest, timed]))
    minutes = [contents.expected_minutes(one) for one in whole.sessions]
    assert minutes == [30, 150, None, None, 40]
    assert [contents.planned_sets(one) for one in whole.sessions] == [3, 1, 1, 0, 1]
    assert [contents.planned_load(one) for one in whole.sessions] == [150, 600, None, None, 120]


def test_a_circuit_without_written_minutes_is_estimated_from_its_dose():
    whole = ProgramContent.model_validate(content(MONDAY, sessions=[circuit() | {"expected_minutes": None}]))
    # a side is 10 s + 9 repetitions x (2 + 3) s = 55 s; 3 rounds x (2 x 55 + 45) s - 45 s = 420 s
    assert contents.expected_minutes(whole.sessions[0]) == 7


def test_the_answer_carries_every_field():
    assert json.loads(canonical(to_json(ProgramContent.model_validate(content(MONDAY))))).keys() == {
        "title", "goal", "starts_on", "ends_on", "sessions", "days",
    }  # fmt: skip
