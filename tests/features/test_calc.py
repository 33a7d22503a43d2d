"""``steadfoot calc``: option names, fields and exit codes that scripts rely on."""

import json
import subprocess
import sys

import pytest

from steadfoot.rules.baseline_catalogue import TestCode
from tests.features.calc_runs import COMMON, answer, calc, refusal


def screening_file(tmp_path, **said):
    told = {"regular_activity": True, "known_disease": True, "signs_or_symptoms": False, "intensity": "vigorous"}
    file = tmp_path / "answers.json"
    file.write_text(json.dumps(told | said))
    return str(file)


def test_test_answers_value_reference_reading_mdc_and_symmetry():
    found = answer("test", "chair-stand-30s", "--value", "9", "--age", "67", "--sex", "female")
    assert set(found) >= COMMON | {"reference", "reading", "mdc", "symmetry_percent"}
    assert (found["value"], found["unit"], found["rule"]) == (9, "repetitions", "test.chair-stand-30s")
    reference = found["reference"]
    assert (reference["low"], reference["high"], reference["group"]) == (11, 16, "women 65 to 69")
    assert (reference["shape"], reference["source_kind"]) == ("range", "published")
    assert "60 to 94" in reference["population"]
    assert "from memory" in reference["read_as"]
    assert found["reading"] == "below the usual range for women 65 to 69 (11 to 16 repetitions)"
    assert found["mdc"] is found["symmetry_percent"] is None
    assert found["source"].startswith("Rikli RE, Jones CJ (1999). Functional fitness")


def test_test_compares_the_sides():
    found = answer("test", "heel-rise", "--value", "18", "--side", "left", "--other", "20", "--sex", "male")
    assert (found["symmetry_percent"], found["mdc"], found["reference"]["middle"]) == (90.0, 7, 24)
    assert found["even_enough"] is True


def test_test_of_a_walk_takes_height_and_body_mass():
    who = ("--age", "60", "--sex", "male", "--height-cm", "170", "--body-mass-kg", "70")
    found = answer("test", "six-minute-walk", "--value", "400", *who)
    assert found["reference"]["middle"] == pytest.approx(553.5)
    assert found["reference"]["low"] == pytest.approx(400.5)
    assert found["reading"].startswith("below the lower limit of normal")


def test_test_without_a_norm_says_so_and_why():
    found = answer("test", "chair-stand-30s", "--value", "9", "--age", "59", "--sex", "female")
    assert found["reference"] is None
    assert found["reading"] == "no norm for this person: there is no norm outside 60 to 94 years."


@pytest.mark.parametrize("code", list(TestCode))
def test_test_knows_every_code_without_a_person(code):
    found = answer("test", code.value, "--value", "40" if code != TestCode.STEP_DOWN else "3")
    assert found["unit"]
    assert found["protocol"]


@pytest.mark.parametrize(
    ("arguments", "code", "words"),
    [
        (("chair-stand-30s", "--value", "61"), "out-of-range", "value is 61; it must be 0 to 60 repetitions."),
        (("chair-stand-30s", "--value", "-1"), "out-of-range", "value is -1; it must be 0 to 60 repetitions."),
        (("chair-stand-30s", "--value", "9.5"), "not-whole", "repetitions are counted whole"),
        (("chair-stand-30s", "--value", "nan"), "out-of-range", "value is nan"),
        (("chair-stand-30s", "--value", "inf"), "out-of-range", "value is inf"),
        (("chair-stand-30s", "--value", "9", "--age", "130"), "out-of-range", "age is 130; it must be 5 to 110 years."),
        (("chair-stand-30s", "--value", "9", "--side", "left"), "not-sided", "has no sides"),
        (("heel-rise", "--value", "9", "--other", "101"), "out-of-range", "other is 101"),
        (("nonsense", "--value", "9"), "usage", "nonsense"),
        (("heel-rise", "--value", "many"), "usage", "--value"),
        (("heel-rise",), "usage", "--value"),
        (("heel-rise", "--value", "9", "--sex", "unknown"), "usage", "--sex"),
    ],
)
def test_test_refuses_what_cannot_be(arguments, code, words):
    problem, told = refusal("test", *arguments)
    assert problem["code"] == code
    assert words in problem["detail"]
    assert words in " ".join(told.split()) or code == "usage"


def test_a_number_out_of_range_names_its_range():
    problem, _ = refusal("test", "single-leg-stance-open", "--value", "46")
    given = {key: problem[key] for key in ("name", "value", "low", "high", "unit")}
    assert given == {"name": "value", "value": 46, "low": 0, "high": 45, "unit": "s"}


def test_load_answers_week_monotony_strain_and_averages():
    found = answer("load", "--sessions", "60x5,0,90x5,0,60x6,60x10,0")
    assert set(found) >= COMMON | {"weekly_load", "monotony", "strain", "ewma_7", "ewma_28"}
    assert found["weekly_load"] == found["value"] == 1710
    assert found["monotony"] == pytest.approx(0.9913, rel=1e-4)
    assert found["strain"] == pytest.approx(1695.11, rel=1e-4)
    assert found["ewma_7"] == pytest.approx(252.1143, rel=1e-4)
    assert found["ewma_28"] == pytest.approx(278.7617, rel=1e-4)
    assert "who will be hurt" in found["caution"]


def test_load_of_days_alike_has_no_monotony():
    found = answer("load", "--sessions", ",".join(["60x4"] * 7))
    assert (found["weekly_load"], found["monotony"], found["strain"]) == (1680, None, None)


def test_load_takes_two_sessions_a_day_and_half_points():
    found = answer("load", "--sessions", " 30x4+20X2.5, 0,0,0, 0,0,0 ")
    assert found["weekly_load"] == 170


@pytest.mark.parametrize(
    ("sessions", "code", "words"),
    [
        ("60x4,0,45x6", "too-few-days", "3 days are given; 7 or more are needed"),
        ("60x4,0,45x6,0,0,0,x", "not-readable", "sessions is 'x'; it must be minutes x effort"),
        ("60x4,0,45x6,0,0,0,240", "not-readable", "sessions is '240'"),
        ("60x4,0,45x6,0,0,0,", "not-readable", "sessions is ''"),
        ("60x11,0,0,0,0,0,0", "out-of-range", "effort is 11; it must be 0 to 10."),
        ("1441x1,0,0,0,0,0,0", "out-of-range", "minutes is 1441; it must be 0 to 1440 minutes."),
        ("1440x10+1x1,0,0,0,0,0,0", "out-of-range", "day load is 14401"),
    ],
)
def test_load_refuses_what_cannot_be(sessions, code, words):
    problem, told = refusal("load", "--sessions", sessions)
    assert problem["code"] == code
    assert words in problem["detail"]
    assert told.startswith("Not possible: ")


@pytest.mark.parametrize(
    ("ratings", "zone", "advice"),
    [
        ((2, 1, 1), "safe", "progress_allowed"),
        ((5, 1, 1), "acceptable", "hold"),
        ((6, 1, 1), "high", "regress"),
        ((4, 3, 1), "acceptable", "regress"),
    ],
)
def test_pain_answers_zone_and_advice(ratings, zone, advice):
    during, morning, usual = map(str, ratings)
    found = answer("pain", "--during", during, "--next-morning", morning, "--usual", usual)
    assert set(found) >= COMMON | {"zone", "advice"}
    assert (found["zone"], found["advice"]) == (zone, advice)
    assert "Silbernagel" in found["source"]


def test_pain_takes_no_usual_pain_as_none():
    assert answer("pain", "--during", "0", "--next-morning", "1")["advice"] == "regress"


@pytest.mark.parametrize("option", ["during", "next-morning", "usual"])
@pytest.mark.parametrize("rating", ["-1", "11"])
def test_pain_refuses_a_rating_off_the_scale(option, rating):
    given = {"during": "1", "next-morning": "1", "usual": "1"} | {option: rating}
    problem, _ = refusal("pain", *(word for name, value in given.items() for word in (f"--{name}", value)))
    assert problem["name"] == option.replace("-", "_")
    assert (problem["low"], problem["high"]) == (0, 10)


def test_screening_answers_clearance_and_reasons(tmp_path):
    found = answer("screening", "--json-in", screening_file(tmp_path))
    assert set(found) >= COMMON | {"clearance", "reasons"}
    assert found["clearance"] == "recommended"
    assert any("vigorous" in reason for reason in found["reasons"])
    assert "Riebe" in found["source"]


@pytest.mark.parametrize(
    ("said", "clearance"),
    [
        ({"intensity": "light_to_moderate"}, "not_needed"),
        ({"signs_or_symptoms": True}, "required"),
        ({"regular_activity": False}, "required"),
        ({"known_disease": False}, "not_needed"),
    ],
)
def test_screening_by_each_input(tmp_path, said, clearance):
    assert answer("screening", "--json-in", screening_file(tmp_path, **said))["clearance"] == clearance


@pytest.mark.parametrize(
    ("said", "words"),
    [
        ({"regular_activity": "yes"}, "regular_activity is '\"yes\"'; it must be true or false."),
        ({"known_disease": 1}, "known_disease is '1'; it must be true or false."),
        ({"signs_or_symptoms": None}, "signs_or_symptoms is 'null'"),
        ({"intensity": "brisk"}, "it must be light_to_moderate or vigorous."),
        ({"intensity": ["vigorous"]}, "it must be light_to_moderate or vigorous."),
        ({"smoker": True}, "and nothing else"),
    ],
)
def test_screening_refuses_other_answers(tmp_path, said, words):
    problem, _ = refusal("screening", "--json-in", screening_file(tmp_path, **said))
    assert problem["code"] == "not-readable"
    assert words in problem["detail"]


@pytest.mark.parametrize("content", [b"", b"{", b"[]", b"true", b'"x"', b"{}", b"\xff\xfe"])
def test_screening_refuses_a_file_that_is_something_else(tmp_path, content):
    file = tmp_path / "answers.json"
    file.write_bytes(content)
    assert refusal("screening", "--json-in", str(file))[0]["code"] == "not-readable"


def test_screening_refuses_a_file_that_is_not_there(tmp_path):
    problem, _ = refusal("screening", "--json-in", str(tmp_path / "none.json"))
    assert "a file that can be read" in problem["detail"]


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (("test", "heel-rise", "--value", "18", "--sex", "male"), ("Single-leg heel rise", "smallest real change")),
        (("test", "heel-rise", "--value", "17", "--other", "20"), ("even enough no",)),
        (("test", "heel-rise", "--value", "18", "--other", "20"), ("even enough yes",)),
        (("load", "--sessions", "60x4,0,0,0,0,0,0"), ("Load", "weekly load", "240", "who will be hurt")),
        (("load", "--sessions", "0,0,0,0,0,0,0"), ("monotony", "none")),
        (("pain", "--during", "4", "--next-morning", "0"), ("Pain", "acceptable", "hold")),
        (("dose", "--goal", "12", "--sessions", "14;14"), ("Dose", "progress_variant", "two_for_two")),
    ],
)
def test_people_get_a_table_with_the_usual_caution(arguments, words):
    ran = calc(*arguments)
    told = " ".join(ran.stdout.replace("│", " ").split())
    assert ran.exit_code == 0
    assert all(word in told for word in words)
    assert "supports a licensed practitioner's judgment" in told


def test_people_get_the_reasons_of_screening_in_a_table(tmp_path):
    told = calc("screening", "--json-in", screening_file(tmp_path)).stdout
    assert "recommended" in told
    assert told.count("\n") > 8


@pytest.mark.parametrize("subject", ["test", "pain", "load", "screening", "dose"])
def test_every_subject_has_help(subject):
    ran = calc(subject, "--help")
    assert ran.exit_code == 0
    assert "--json" in ran.stdout


def test_calc_needs_no_database_and_no_web_framework():
    """A command that loads the server to multiply two numbers would be slow and could fail for a reason of its own."""
    heavy = ("sqlalchemy", "fastapi", "pydantic_settings")
    code = f"import sys, steadfoot.calc; sys.exit(any(name in sys.modules for name in {heavy}))"
    ran = subprocess.run([sys.executable, "-c", code], check=False, capture_output=True)
    assert ran.returncode == 0, ran.stderr.decode()
