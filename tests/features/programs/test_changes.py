"""What changed, in sentences."""

from datetime import date, timedelta

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from steadfoot.exercises.service import library
from steadfoot.programs.changes import changes
from steadfoot.programs.content import ProgramContent, normalise, to_json
from tests.builders import circuit, content, may_instead, step_down
from tests.features.programs import made
from tests.features.programs.made import contents, edits

MONDAY = date(2026, 11, 30)


def walk(key="w1", distance_km=9, **more):
    return {
        "key": key,
        "kind": "walk",
        "name": "Walk",
        "distance_km": distance_km,
        "ascent_m": 200,
        "descent_m": 200,
        "pack_kg": 4,
        "expected_effort": 4,
        "expected_minutes": None,
        "note": "",
        **more,
    }


def program(**more):
    base = content(MONDAY, 2, sessions=[circuit(prescriptions=[step_down(variant="step-15")]), walk()])
    base["days"].append({"date": "2026-12-06", "session": "w1", "fixed_day": False})
    return base | more


def said(old, new):
    return changes(ProgramContent.model_validate(old), ProgramContent.model_validate(new), library())


def prescribed(**more):
    return program(sessions=[circuit(prescriptions=[step_down(variant="step-15") | more]), walk()])


@made.CALM
@given(contents())
def test_nothing_has_changed_between_a_program_and_itself(whole):
    assert changes(whole, whole, library()) == []


@made.CALM
@given(st.data())
def test_every_single_edit_is_said(data):
    before = data.draw(contents())
    after = data.draw(edits(before))
    assume(before != after)
    sentences = changes(before, after, library())
    assert sentences
    assert all(sentence.strip() for sentence in sentences)


BIKE = {
    "key": "b1",
    "kind": "cardio",
    "name": "Bike",
    "activity": "Bike, easy",
    "expected_effort": 3,
    "expected_minutes": 40,
    "note": "",
}
HELD = step_down("p2", "half", exercise="wall-sit", reps_low=None, reps_high=None, hold_s=30, load_kg=2, note="Slowly")


def rich():
    """A program with a part of every kind."""
    rest = {"key": "r1", "kind": "rest", "name": "Rest", "note": "Feet up"}
    moves = [step_down(variant="step-15", alternatives=[may_instead(load_kg=4)]), HELD]
    whole = program(sessions=[circuit(prescriptions=moves), walk(), BIKE, rest])
    whole["days"].append({"date": "2026-12-09", "session": "b1", "fixed_day": True})
    return to_json(normalise(ProgramContent.model_validate(whole)))


ALL_LEAVES = made.leaves(rich())


@pytest.mark.parametrize("path", ALL_LEAVES, ids=lambda path: "/".join(map(str, path)))
def test_every_value_that_can_be_edited_is_said_when_it_changes(path):
    other = {
        bool: lambda old: not old,
        str: lambda old: old + "x",
        int: lambda old: old + 1,
        float: lambda old: old + 1,
    }
    named = {"sides": "both", "exercise": "clam", "variant": "rail", "expected_minutes": 12, "load_kg": 9}
    days = {"date": "2026-12-08", "starts_on": "2026-11-23", "ends_on": "2026-12-20"}
    new = rich()
    at = new
    for step in path[:-1]:
        at = at[step]
    old = at[path[-1]]
    at[path[-1]] = (named | days)[path[-1]] if path[-1] in named | days else other[type(old)](old)
    assert at[path[-1]] != old
    assert said(rich(), new)


@pytest.mark.parametrize(
    ("more", "sentence"),
    [
        ({"name": "Cycling"}, "Bike is now called Cycling"),
        ({"activity": "Swim, easy"}, "Bike on Wednesday 9 December: “Swim, easy” instead of “Bike, easy”"),
        ({"expected_effort": 2}, "Expected effort: 2 instead of 3 (of 10) in Bike"),
        ({"expected_minutes": 1}, "Expected time: 1 minute instead of 40 minutes in Bike"),
        ({"expected_minutes": None}, "Expected time: as estimated instead of 40 minutes in Bike"),
        ({"note": "a" * 90}, f"Note for Bike: “{'a' * 80} …”"),
    ],
)
def test_a_change_of_other_endurance_work(more, sentence):
    new = rich()
    new["sessions"][2] = BIKE | more
    assert said(rich(), new) == [sentence]


def test_a_session_that_becomes_another_kind():
    new = rich()
    new["sessions"][2] = {"key": "b1", "kind": "rest", "name": "Bike", "note": ""}
    assert said(rich(), new) == ["Bike is now rest"]


def test_a_new_session_on_one_day_or_none():
    once = program(sessions=[*program()["sessions"], BIKE])
    assert said(program(), once) == ["New: Bike"]
    once["days"].append({"date": "2026-12-09", "session": "b1", "fixed_day": False})
    assert said(program(), once) == ["New: Bike on Wednesday 9 December"]


def test_the_first_program_is_named():
    whole = ProgramContent.model_validate(program())
    assert changes(None, whole, library()) == ["First program: Legs for Harrowcomb"]


@pytest.mark.parametrize(
    ("more", "sentence"),
    [
        ({"variant": "rail"}, "Step-down: hand on the rail instead of 15 cm step"),
        ({"reps_low": 6}, "Step-down: 6 to 10 repetitions instead of 8 to 10 repetitions"),
        ({"load_kg": 4.5}, "Step-down: 4.5 kg instead of no weight"),
        ({"sides": "both"}, "Step-down: both sides together instead of each side in turn"),
        (
            {"tempo_down_s": None},
            "Step-down: no set time on the way down instead of 3 seconds on the way down",
        ),
        ({"rest_s": 60}, "Step-down: 60 seconds of rest instead of 45"),
        ({"note": "Hold the rail"}, "Note for Step-down: “Hold the rail”"),
        (
            {"exercise": "clam", "variant": "lying"},
            "Clam, lying on your side, 8 to 10 repetitions instead of Step-down, 15 cm step",
        ),
    ],
)
def test_a_change_of_one_exercise(more, sentence):
    assert said(program(), prescribed(**more)) == [sentence]


@pytest.mark.parametrize(
    ("was", "now", "sentence"),
    [
        (
            [],
            [may_instead()],
            "Step-down: Squat, without a chair, 6 to 8 repetitions, each side in turn, may be done instead "
            "(“Without a step.”)",
        ),
        (
            [may_instead()],
            [may_instead(reps_low=5, load_kg=8, reason="")],
            "Step-down: Squat, without a chair, 5 to 8 repetitions, each side in turn, 8 kg, may be done instead",
        ),
        ([may_instead()], [], "Step-down: Squat may no longer be done instead"),
        ([may_instead()], [may_instead()], None),
    ],
)
def test_what_may_be_done_instead_comes_changes_and_goes(was, now, sentence):
    assert said(prescribed(alternatives=was), prescribed(alternatives=now)) == ([sentence] if sentence else [])


def test_several_changes_of_one_exercise_are_one_sentence():
    sentences = said(program(), prescribed(variant="rail", rest_s=60))
    assert sentences == ["Step-down: hand on the rail instead of 15 cm step, 60 seconds of rest instead of 45"]


def test_an_exercise_that_comes_twice_is_named_with_its_circuit():
    def twice(variant):
        second = circuit("s2", prescriptions=[step_down("p2", variant)]) | {"name": "Stairs"}
        return program(sessions=[*program()["sessions"], second])

    assert said(twice("step-15"), twice("rail")) == ["Step-down in Stairs: hand on the rail instead of 15 cm step"]


def test_fewer_rounds():
    fewer = program(sessions=[circuit(rounds=2, prescriptions=[step_down(variant="step-15")]), walk()])
    assert said(program(), fewer) == ["Rounds: 2 instead of 3 in Steps and hips"]


def test_an_exercise_comes_and_goes():
    both = [step_down(variant="step-15"), step_down("p2", "rail", exercise="clam") | {"variant": "lying"}]
    more = program(sessions=[circuit(prescriptions=both), walk()])
    assert said(program(), more) == ["New in Steps and hips: Clam, lying on your side, 8 to 10 repetitions"]
    assert said(more, program()) == ["Taken out of Steps and hips: Clam, lying on your side"]
    turned = program(sessions=[circuit(prescriptions=both[::-1]), walk()])
    assert said(more, turned) == ["The exercises of Steps and hips come in another order"]


def test_sessions_in_another_order():
    turned = program(sessions=program()["sessions"][::-1])
    assert said(program(), turned) == ["The sessions are listed in another order"]


def test_a_longer_walk_is_named_by_its_day():
    longer = program(sessions=[program()["sessions"][0], walk(distance_km=11)])
    assert said(program(), longer) == ["Walk on Sunday 6 December: 11 km instead of 9"]


def test_many_longer_walks_are_one_sentence():
    few = [walk(f"w{place}") for place in range(4)]
    days = [
        {"date": (MONDAY + timedelta(days=7 * place + 6)).isoformat(), "session": f"w{place}", "fixed_day": False}
        for place in range(4)
    ]
    old = program(sessions=few, days=days)
    new = program(sessions=[one | {"distance_km": 12} for one in few], days=days)
    assert said(old, new) == ["4 walks change, the first on Sunday 6 December"]


def test_one_moved_date_is_said_and_many_are_gathered():
    moved = program()
    moved["days"] = [day | {"date": "2026-12-01"} if day["date"] == "2026-11-30" else day for day in moved["days"]]
    assert said(program(), moved) == ["Steps and hips: Tuesday 1 December instead of Monday 30 November"]
    later = program()
    later["days"] = [
        day | {"date": (date.fromisoformat(day["date"]) + timedelta(days=1)).isoformat()}
        for day in later["days"]
        if day["session"] == "s1"
    ]
    assert said(program(), later) == ["7 dates from Monday 30 November: 1 taken out and 6 moved"]


def test_a_session_tied_to_its_day():
    fixed = program()
    fixed["days"][-1] = fixed["days"][-1] | {"fixed_day": True}
    assert said(program(), fixed) == ["Walk on Sunday 6 December: on that day only"]


def test_a_new_session_tells_how_often_it_comes():
    new = program(sessions=[*program()["sessions"], circuit("s2") | {"name": "Balance"}])
    for day in ("2026-12-01", "2026-12-08"):
        new["days"].append({"date": day, "session": "s2", "fixed_day": False})
    assert said(program(), new)[0] == "New: Balance, 2 times, first on Tuesday 1 December"
    assert said(new, program()) == ["Taken out: Balance"]


def test_the_frame_of_the_program():
    assert said(program(), program(title="New legs")) == ["The program is now called New legs"]
    assert said(program(), program(goal=None)) == [
        "Goal: no trip instead of Harrowcomb traverse on Saturday 19 December 2026"
    ]
    assert said(program(), program(ends_on="2026-12-20")) == [
        "End: Sunday 20 December 2026 instead of Sunday 13 December 2026"
    ]


def test_an_end_that_follows_from_the_goal_is_no_change():
    goal = {"name": "Harrowcomb traverse", "date": "2026-12-14"}
    assert said(program(goal=goal), program(goal=goal, ends_on=None)) == []


def test_a_half_written_dose_is_called_open():
    assert said(program(), prescribed(reps_low=None)) == ["Step-down: an open dose instead of 8 to 10 repetitions"]
