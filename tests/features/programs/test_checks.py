"""What does not fit in a program, and what would mend it."""

from copy import deepcopy
from datetime import date, timedelta

import pytest
from hypothesis import given

from steadfoot.exercises.service import library
from steadfoot.programs.checks import validate
from steadfoot.programs.content import ProgramContent, to_json
from steadfoot.programs.findings import Severity
from steadfoot.rules.dose import missing_kit
from steadfoot.rules.vocabulary import Kit
from tests.builders import circuit, content, may_instead, step_down
from tests.features.programs import made

MONDAY = date(2026, 11, 30)
ALL = frozenset(Kit)


def found(whole, kit=ALL, today=MONDAY):
    return validate(ProgramContent.model_validate(whole), kit, library(), today)


def only(whole, kit=ALL, today=MONDAY):
    (one,) = found(whole, kit, today)
    return one


def prescribed(**more):
    return content(MONDAY, sessions=[circuit(prescriptions=[step_down() | more])])


def mended(whole, finding):
    """Do what the button does."""
    whole = deepcopy(whole)
    for mend in finding.fix.mends:
        *path, last = mend.pointer.strip("/").split("/")
        at = whole
        for step in path:
            at = at[int(step)] if isinstance(at, list) else at[step]
        at[int(last) if isinstance(at, list) else last] = mend.value
    return whole


def test_a_sound_program_has_no_problem():
    assert found(content(MONDAY)) == []


@made.CALM
@given(made.contents())
def test_programs_made_from_the_library_have_no_errors(whole):
    assert [one for one in validate(whole, ALL, library(), MONDAY) if one.severity is Severity.ERROR] == []


@made.CALM
@given(made.contents())
def test_every_pointer_leads_to_something_and_every_message_is_a_sentence(whole):
    for one in validate(whole, frozenset(), library(), MONDAY):
        at = to_json(whole)
        for step in one.pointer.strip("/").split("/"):
            at = at[int(step)] if isinstance(at, list) else at[step]
        assert one.message.endswith(".")


@pytest.mark.parametrize(
    ("more", "pointer", "code"),
    [
        ({"title": ""}, "/title", "no_title"),
        ({"goal": None, "ends_on": None}, "/ends_on", "no_end"),
        ({"ends_on": "2026-11-29", "days": []}, "/ends_on", "end_before_start"),
        ({"goal": {"name": "", "date": "2027-01-16"}}, "/goal/name", "no_goal_name"),
        ({"sessions": [], "days": []}, "/sessions", "no_sessions"),
    ],
)
def test_the_frame_must_hold_together(more, pointer, code):
    errors = [one for one in found(content(MONDAY) | more) if one.severity is Severity.ERROR]
    assert [(one.pointer, one.code) for one in errors] == [(pointer, code)]


def test_a_goal_before_the_start_is_pointed_at_where_the_end_follows_from_it():
    goal = {"name": "Harrowcomb traverse", "date": "2026-11-30"}
    errors = found(content(MONDAY) | {"goal": goal, "ends_on": None, "days": []})
    assert ("/goal/date", "end_before_start") in [(one.pointer, one.code) for one in errors]


def test_a_trip_that_has_passed_warns_and_can_be_taken_out():
    whole = content(MONDAY)
    one = only(whole, today=date(2027, 6, 1))
    assert (one.code, one.severity, one.pointer) == ("goal_past", Severity.WARNING, "/goal/date")
    assert found(mended(whole, one), today=date(2027, 6, 1)) == []


def test_the_trip_may_be_today():
    whole = content(MONDAY)
    assert found(whole, today=date.fromisoformat(whole["goal"]["date"])) == []


@pytest.mark.parametrize(
    ("alternatives", "pointer", "code"),
    [
        ([may_instead(exercise="step-down", variant="step-10")], "0/exercise", "same_movement"),
        ([may_instead(), may_instead()], "1/exercise", "same_movement"),
        ([may_instead(exercise="unheard-of")], "0/exercise", "unknown_exercise"),
        ([may_instead(variant="unheard-of")], "0/variant", "unknown_variant"),
        ([may_instead(reps_low=None, reps_high=None)], "0/reps_low", "no_dose"),
        ([may_instead(hold_s=20)], "0/hold_s", "two_doses"),
        ([may_instead(reps_low=9)], "0/reps_low", "reps_upside_down"),
    ],
)
def test_what_may_be_done_instead_is_another_movement_with_a_whole_dose(alternatives, pointer, code):
    one = only(prescribed(alternatives=alternatives))
    assert (one.pointer, one.code) == (f"/sessions/0/prescriptions/0/alternatives/{pointer}", code)
    assert one.severity is Severity.ERROR


def test_what_may_be_done_instead_fits_the_kit_in_the_house_too():
    at_hand = library()["step-down"].ladder[0].kit
    whole = prescribed(alternatives=[may_instead(exercise="band-row", variant=library()["band-row"].ladder[0].variant)])
    one = only(whole, frozenset(at_hand))
    assert (one.code, one.severity) == ("kit_missing", Severity.WARNING)
    assert one.pointer.startswith("/sessions/0/prescriptions/0/alternatives/0/")


def test_a_circuit_without_exercises_is_empty():
    whole = content(MONDAY, sessions=[circuit() | {"prescriptions": []}])
    assert only(whole).code == "empty_session"


def test_sessions_and_activities_need_words():
    bike = {"key": "s1", "kind": "cardio", "name": "", "activity": "", "expected_effort": 3}
    codes = [one.code for one in found(content(MONDAY, sessions=[bike]))]
    assert codes == ["no_name", "empty_session"]


def test_a_session_that_no_day_takes_is_only_warned_of():
    spare = circuit("s2", prescriptions=[step_down("p2")]) | {"name": "Spare"}
    one = only(content(MONDAY, sessions=[circuit(), spare]))
    assert (one.pointer, one.severity) == ("/sessions/1", Severity.WARNING)
    assert one.message == "Spare is not planned on any day."


@pytest.mark.parametrize(
    ("more", "field", "code"),
    [
        ({"exercise": "unheard-of"}, "exercise", "unknown_exercise"),
        ({"variant": "unheard-of"}, "variant", "unknown_variant"),
        ({"reps_low": None, "reps_high": None}, "reps_low", "no_dose"),
        ({"reps_low": 12, "reps_high": 8}, "reps_low", "reps_upside_down"),
        ({"hold_s": 30}, "hold_s", "two_doses"),
        ({"reps_high": None}, "reps_high", "half_dose"),
    ],
)
def test_a_prescription_must_hold_together(more, field, code):
    one = only(prescribed(**more))
    assert (one.pointer, one.code) == (f"/sessions/0/prescriptions/0/{field}", code)
    assert one.severity is Severity.ERROR


@pytest.mark.parametrize("more", [{"reps_low": 12, "reps_high": 8}, {"hold_s": 30}, {"reps_low": None}])
def test_what_a_fix_offers_takes_the_problem_away(more):
    whole = prescribed(**more)
    assert found(mended(whole, only(whole))) == []


def test_missing_kit_names_what_is_missing_and_what_would_do():
    whole = prescribed(variant="step-20-pack", load_kg=5)
    one = only(whole, kit={Kit.STAIRS})
    assert one.severity is Severity.WARNING
    assert one.message == (
        "Step-down, 20 cm step with a pack needs pack, which the client does not have. "
        "This would do: 10 cm step, 15 cm step or 20 cm step."
    )
    assert one.fix.label == "Use 20 cm step"
    assert found(mended(whole, one), kit={Kit.STAIRS}) == []


def test_a_fix_brings_the_sides_and_the_weight_of_the_variant_with_it():
    whole = prescribed(exercise="hip-hinge", variant="single-load", sides="each", load_kg=5)
    one = only(whole, kit=frozenset())
    assert one.fix.label == "Use without weight"
    after = mended(whole, one)["sessions"][0]["prescriptions"][0]
    assert (after["variant"], after["sides"], after["load_kg"]) == ("free", "both", None)


def test_missing_kit_with_nothing_else_that_fits_offers_no_fix():
    one = only(prescribed(), kit=frozenset())
    assert "No variant of it fits the kit in the house; instead of it, this would do: " in one.message
    assert one.fix is None


def test_another_movement_is_named_only_where_it_trains_the_same_with_what_is_in_the_house():
    message = only(prescribed(), kit=frozenset()).message
    name, variant = message.rpartition("this would do: ")[2].removesuffix(".").split(", ", 1)
    entry = next(one for one in library().values() if one.name == name)
    assert "descent_control" in entry.trains
    rung = next(one for one in entry.ladder if one.name == variant)
    assert not missing_kit(rung.kit, frozenset())
    alone = {"step-down": library()["step-down"]}
    (one,) = validate(ProgramContent.model_validate(prescribed()), frozenset(), alone, MONDAY)
    assert one.message.endswith("No variant of it fits the kit in the house.")


def test_a_weight_that_is_required_must_be_said():
    assert only(prescribed(variant="step-20-pack")).code == "no_load"


def test_keys_are_unique_in_the_program():
    twice = content(MONDAY, sessions=[circuit("s1"), circuit("s1", prescriptions=[step_down("p2")])])
    assert {(one.pointer, one.code) for one in found(twice)} == {
        ("/sessions/0/key", "repeated_key"),
        ("/sessions/1/key", "repeated_key"),
    }
    across = content(MONDAY, sessions=[circuit("s1"), circuit("s2")])
    pointers = [one.pointer for one in found(across) if one.code == "repeated_key"]
    assert pointers == ["/sessions/0/prescriptions/0/key", "/sessions/1/prescriptions/0/key"]


def test_days_outside_the_program_are_counted_and_can_be_taken_out():
    whole = content(MONDAY)
    for day in ("2026-11-28", "2027-03-01"):
        whole["days"].append({"date": day, "session": "s1", "fixed_day": False})
    one = only(whole)
    assert one.code == "outside_program"
    assert one.message.startswith("2 planned sessions lie outside the program (Monday 30 November 2026 to")
    assert found(mended(whole, one)) == []


def test_the_first_and_the_last_day_are_inside():
    whole = content(MONDAY, 1, weekdays=(0, 6))
    assert found(whole) == []


def test_a_day_that_names_no_session_is_an_error():
    whole = content(MONDAY)
    whole["days"][3]["session"] = "unheard-of"
    one = only(whole)
    assert (one.pointer, one.code) == ("/days/3/session", "unknown_session")
    assert found(mended(whole, one)) == []


def easy():
    return circuit() | {"expected_effort": 4}


@pytest.mark.parametrize(("count", "codes"), [(4, []), (5, ["crowded_day"])])
def test_a_day_holds_at_most_four_sessions(count, codes):
    whole = content(MONDAY, 1, sessions=[easy()])
    whole["days"] = [{"date": "2026-11-30", "session": "s1", "fixed_day": False}] * count
    assert [one.code for one in found(whole)] == codes


@pytest.mark.parametrize(("weekdays", "codes"), [((0, 2), []), ((0, 1), ["too_close"]), ((0, 0), ["too_close"])])
def test_a_hard_circuit_wants_a_day_between(weekdays, codes):
    assert [one.code for one in found(content(MONDAY, 1, weekdays=weekdays))] == codes


def test_spacing_is_counted_over_the_whole_program():
    one = only(content(MONDAY, 3, weekdays=(0, 1)))
    assert one.severity is Severity.WARNING
    assert "Tuesday 1 December" in one.message
    assert "3 times" in one.message


def test_an_easy_circuit_may_come_every_day():
    assert found(content(MONDAY, 1, sessions=[easy()], weekdays=(0, 1, 2))) == []


def test_a_whole_week_with_nothing_planned_is_warned_of():
    whole = content(MONDAY, 3)
    second = MONDAY + timedelta(days=7)
    whole["days"] = [day for day in whole["days"] if not 0 <= (date.fromisoformat(day["date"]) - second).days < 7]
    assert only(whole).message == "Nothing is planned in the week of Monday 7 December."


def test_a_part_of_a_week_at_either_end_may_be_empty():
    sunday = MONDAY - timedelta(days=1)
    whole = content(MONDAY, 2) | {"starts_on": sunday.isoformat(), "ends_on": "2026-12-15"}
    assert found(whole) == []


def test_rest_does_not_fill_a_week():
    rest = {"key": "s1", "kind": "rest", "name": "Rest"}
    assert only(content(MONDAY, 2, sessions=[rest])).code == "empty_week"


def test_errors_come_before_warnings():
    whole = prescribed(variant="step-20-pack") | {"title": ""}
    whole["sessions"][0]["name"] = ""
    severities = [one.severity for one in found(whole)]
    assert severities == sorted(severities)
