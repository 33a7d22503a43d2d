"""``steadfoot calc dose``: progress, hold or regress from repetitions, load, effort and pain."""

import pytest

from tests.features.calc_runs import COMMON, answer, refusal

OVER = ("--goal", "12-15", "--sessions", "15,17;16,18")


@pytest.mark.parametrize(
    ("more", "suggestion", "next_kg", "rule"),
    [
        (("--load-kg", "20", "--step-kg", "1"), "progress_load", 21, "two_for_two"),
        (("--load-kg", "8", "--step-kg", "2.5"), "progress_reps", 8, "two_for_two"),
        ((), "progress_variant", None, "two_for_two"),
        (("--load-kg", "20", "--step-kg", "1", "--pain-zone", "high"), "regress", 19, "pain_high"),
        (("--pain-zone", "acceptable"), "hold", None, "pain_acceptable"),
        (("--pain-zone", "safe"), "progress_variant", None, "two_for_two"),
        (("--effort", "8", "--target-effort", "6"), "hold", None, "effort_above_target"),
        (("--effort", "7", "--target-effort", "6"), "progress_variant", None, "two_for_two"),
        (
            (
                "--effort",
                "9",
            ),
            "progress_variant",
            None,
            "two_for_two",
        ),
    ],
)
def test_dose_answers_suggestion_and_next_load(more, suggestion, next_kg, rule):
    found = answer("dose", *OVER, *more)
    assert set(found) >= COMMON | {"suggestion", "next_load_kg", "reasons"}
    assert (found["suggestion"], found["next_load_kg"], found["rule"]) == (suggestion, next_kg, rule)
    assert found["reasons"]
    assert found["would_change"]


@pytest.mark.parametrize(
    ("goal", "sessions", "suggestion"),
    [
        ("12", "12,14;12,14", "progress_variant"),
        ("12", "12,14;12,13", "hold"),
        ("12-15", "15,17;15,16", "hold"),
        ("12-15", "17", "hold"),
        ("12-15", "11,10;11,9", "regress"),
        ("12-15", " 15 , 17 ; 16 , 18 ", "progress_variant"),
    ],
)
def test_dose_by_the_last_set_of_the_last_two_sessions(goal, sessions, suggestion):
    assert answer("dose", "--goal", goal, "--sessions", sessions)["suggestion"] == suggestion


@pytest.mark.parametrize(
    ("given", "code"),
    [
        ({"--goal": "15-12"}, "not-readable"),
        ({"--goal": "12-15-18"}, "not-readable"),
        ({"--goal": "many"}, "not-readable"),
        ({"--goal": ""}, "not-readable"),
        ({"--goal": "0-12"}, "out-of-range"),
        ({"--goal": "12-51"}, "out-of-range"),
        ({"--sessions": "15,;16"}, "not-readable"),
        ({"--sessions": ""}, "not-readable"),
        ({"--sessions": "15,1.5"}, "not-readable"),
        ({"--sessions": "15,-2"}, "not-readable"),
        ({"--sessions": "15,51"}, "out-of-range"),
        ({"--effort": "11"}, "out-of-range"),
        ({"--target-effort": "-1"}, "out-of-range"),
        ({"--load-kg": "0", "--step-kg": "1"}, "out-of-range"),
        ({"--load-kg": "20", "--step-kg": "0"}, "out-of-range"),
        ({"--pain-zone": "awful"}, "usage"),
    ],
)
def test_dose_refuses_what_cannot_be(given, code):
    options = dict(zip(OVER[::2], OVER[1::2], strict=True)) | given
    problem, _ = refusal("dose", *(word for pair in options.items() for word in pair))
    assert problem["code"] == code
