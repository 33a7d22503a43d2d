"""Recording baseline tests and reading them beside norm, other side and the time before."""

from typing import Any

import pytest

from steadfoot.assessment.conduct import COUNTERS_S
from steadfoot.rules import norms_tables
from steadfoot.rules.baseline_catalogue import TESTS
from tests.builders import API

WOMAN_OF_66: dict[str, Any] = {"birth_year": 1960, "sex": "female", "height_cm": 165, "body_mass_kg": 62}


@pytest.fixture
def client_id(house):
    return house.new_client("Runa Velk", **WOMAN_OF_66)


def record(house, client_id, code, value, status=201, **more):
    return house.post(f"/clients/{client_id}/tests", {"code": code, "value": value, **more}, status)


def item(house, client_id):
    (found,) = house.get(f"/clients/{client_id}/tests")["items"]
    return found


def test_the_catalogue_has_each_test_with_protocol_cautions_and_range(house):
    items = house.get("/tests")["items"]
    assert [one["code"] for one in items] == [code.value for code in TESTS]
    for one in items:
        test = TESTS[one["code"]]
        assert one["range"] == {"low": test.low, "high": test.high}
        assert (one["protocol"], one["mdc"]) == (list(test.protocol), test.mdc)
        assert one["better"] == ("lower" if test.lower_is_better else "higher")
        assert any("emergency number" in caution for caution in one["cautions"])
        assert one["counter_seconds"] == COUNTERS_S.get(test.code)
    kinds = {one["code"]: one["kind"] for one in items}
    assert (kinds["chair-stand-30s"], kinds["side-bridge"], kinds["six-minute-walk"]) == ("count", "seconds", "metres")
    assert (kinds["step-down"], kinds["reach-anterior"], kinds["step-test-3min"]) == ("score", "cm", "count")
    counters = {one["code"]: one["counter_seconds"] for one in items if one["counter_seconds"]}
    assert counters == {"chair-stand-30s": 30, "six-minute-walk": 360, "step-test-3min": 180}


def test_a_result_is_read_beside_the_norm_of_age_and_sex(house, client_id):
    found = record(house, client_id, "chair-stand-30s", 10, note="Left knee clicks.")
    assert found["reading"] == "below the usual range for women 65 to 69 (11 to 16 repetitions)"
    assert (found["reference"]["low"], found["reference"]["high"], found["why_no_norm"]) == (11, 16, None)
    assert (found["reference"]["kind"], found["reference"]["source_work"]["key"]) == ("published", "rikli-1999")
    assert (found["taken_on"], found["taken_by"], found["unit"]) == ("2026-06-10", "Maren Brandvold", "repetitions")
    read = item(house, client_id)
    assert (read["results"], read["code"]) == ([found], "chair-stand-30s")
    assert (read["symmetry"], read["change"], read["trend"]) == (None, None, None)


@pytest.mark.parametrize(
    ("more", "why"),
    [
        ({}, "by sex"),
        ({"sex": "male"}, "by age"),
        ({"sex": "male", "birth_year": 1990}, "no norm outside 60 to 94 years"),
        ({"sex": "male", "birth_year": 1900}, "by age"),  # 126 years: a slip, and so not known
        ({"sex": "male", "birth_year": 2100}, "by age"),
    ],
)
def test_where_there_is_no_norm_for_this_person_it_is_said_plainly(house, more, why):
    found = record(house, house.new_client(**more), "chair-stand-30s", 12)
    assert found["reference"] is None
    assert why in found["why_no_norm"]
    assert found["reading"].startswith("no norm for this person: ")


def test_the_six_minute_walk_uses_height_and_body_mass_as_they_are_known_now(house, client_id):
    first = record(house, client_id, "six-minute-walk", 480)
    assert first["reference"]["middle"] == pytest.approx(2.11 * 165 - 5.78 * 66 - 2.29 * 62 + 667)
    house.http.patch(f"{API}/clients/{client_id}", json={"body_mass_kg": None})
    (after,) = item(house, client_id)["results"]
    assert (after["reference"], after["why_no_norm"]) == (None, "it needs height and body mass.")


@pytest.mark.parametrize(
    ("code", "value", "more", "problem", "field"),
    [
        ("chair-stand-30s", 61, {}, "out-of-range", "value"),
        ("chair-stand-30s", -1, {}, "out-of-range", "value"),
        ("chair-stand-30s", 12.5, {}, "not-whole", "value"),
        ("step-test-3min", 39, {}, "out-of-range", "value"),
        ("single-leg-stance-open", 45.1, {"side": "left"}, "out-of-range", "value"),
        ("single-leg-stance-open", 20, {}, "side-needed", "side"),
        ("chair-stand-30s", 12, {"side": "left"}, "no-sides", "side"),
        ("chair-stand-30s", 12, {"taken_on": "2026-06-11"}, "in-the-future", "taken_on"),
        ("chair-stand-30s", "12", {}, "validation", "value"),
        ("chair-stand-30s", True, {}, "validation", "value"),
        ("no-such-test", 12, {}, "validation", "code"),
        ("heel-rise", 12, {"side": "middle"}, "validation", "side"),
        ("heel-rise", 12, {"side": "left", "taken_on": 20260609}, "validation", "taken_on"),
    ],
)
def test_what_cannot_be_is_refused_by_its_field_and_nothing_is_kept(
    house, client_id, code, value, more, problem, field
):
    found = record(house, client_id, code, value, 422, **more)
    assert (found["code"], found["errors"][0]["pointer"]) == (problem, f"/body/{field}")
    assert house.get(f"/clients/{client_id}/tests")["items"] == []


def test_a_refusal_names_the_range(house, client_id):
    assert record(house, client_id, "chair-stand-30s", 61, 422)["detail"] == "The result must be 0 to 60 repetitions."
    record(house, client_id, "chair-stand-30s", 60)
    record(house, client_id, "chair-stand-30s", 0)


@pytest.mark.parametrize(
    ("code", "left", "right", "percent", "even"),
    [
        ("heel-rise", 18, 20, 90, True),
        ("heel-rise", 20, 17, 85, False),
        ("heel-rise", 20, 20, 100, True),
        ("step-down", 2, 4, 50, False),
        ("heel-rise", 0, 20, 0, False),
    ],
)
def test_the_newest_results_of_both_sides_stand_beside_each_other(house, client_id, code, left, right, percent, even):
    record(house, client_id, code, left, side="left")
    assert item(house, client_id)["symmetry"] is None
    record(house, client_id, code, right, side="right")
    found = item(house, client_id)["symmetry"]
    assert (found["percent"], found["even_enough"]) == (percent, even)
    assert found["words"].startswith(f"Left {left}, right {right} {TESTS[code].unit}: the lower is {percent} percent")


def test_two_sides_at_nothing_and_sides_of_two_days_are_told_as_what_they_are(house, client_id):
    record(house, client_id, "step-down", 0, side="left")
    record(house, client_id, "step-down", 0, side="right", taken_on="2026-06-08")
    assert item(house, client_id)["symmetry"] is None
    record(house, client_id, "step-down", 3, side="right", taken_on="2026-06-09")
    words = item(house, client_id)["symmetry"]["words"]
    assert words.endswith("Not of one day: left 10 June 2026, right 9 June 2026.")


@pytest.mark.parametrize(
    ("gain", "is_real"), [(norms_tables.HEEL_RISE_MDC - 1, False), (norms_tables.HEEL_RISE_MDC, True)]
)
def test_a_change_is_real_from_the_smallest_detectable_one_on(house, client_id, gain, is_real):
    record(house, client_id, "heel-rise", 12, side="left", taken_on="2026-03-03")
    record(house, client_id, "heel-rise", 12 + gain, side="left")
    found = item(house, client_id)["change"]
    assert (found["is_real"], found["mdc"]) == (is_real, norms_tables.HEEL_RISE_MDC)
    told = "a real gain" if is_real else "no certain change"
    assert found["words"] == f"Left: {gain:g} repetitions more, {told} since 3 March 2026."
    assert found["parts"] == [
        {"of": "left", "words": found["words"][6:-1], "is_real": is_real, "better": True if is_real else None}
    ]


def test_where_no_smallest_change_is_known_nothing_is_called_real(house, client_id):
    record(house, client_id, "chair-stand-30s", 5, taken_on="2026-03-03")
    record(house, client_id, "chair-stand-30s", 25)
    found = item(house, client_id)["change"]
    assert (found["is_real"], found["mdc"]) == (False, None)
    assert "is not known for this test" in found["words"]


def test_results_of_another_protocol_are_not_compared(house, client_id):
    record(house, client_id, "step-down", 4, side="left", taken_on="2026-03-03", protocol={"step_cm": "20"})
    record(house, client_id, "step-down", 2, side="left", protocol={"step_cm": "15"})
    found = item(house, client_id)
    assert found["change"]["words"] == "Left: not compared with the time before: it was done another way."
    assert (found["change"]["is_real"], found["trend"]) == (False, None)
    assert [one["protocol"] for one in found["results"]] == [{"step_cm": "15"}, {"step_cm": "20"}]


def test_the_course_is_told_from_three_results_on_by_day_and_not_by_entry(house, client_id):
    record(house, client_id, "heel-rise", 20, side="left")
    record(house, client_id, "heel-rise", 10, side="left", taken_on="2026-02-02")
    assert item(house, client_id)["trend"] is None
    record(house, client_id, "heel-rise", 19, side="left", taken_on="2026-04-01")
    found = item(house, client_id)
    assert [one["value"] for one in found["results"]] == [20, 19, 10]
    assert found["change"]["words"] == "Left: 1 repetitions more, no certain change since 1 April 2026."
    assert found["trend"] == {"words": "Left: 10 repetitions more, a real gain since the first on 2 February 2026."}


def test_a_slip_is_taken_back_once_and_shows_nowhere(house, client_id, clock):
    kept = record(house, client_id, "heel-rise", 12, side="left", taken_on="2026-03-03")
    slip = record(house, client_id, "heel-rise", 99, side="left")
    first = house.post(f"/tests/{slip['id']}/withdrawals")
    clock.forward(minutes=1)
    assert house.post(f"/tests/{slip['id']}/withdrawals") == first
    assert first == {"id": slip["id"], "withdrawn_at": "2026-06-10T08:00:00Z"}
    found = item(house, client_id)
    assert (found["results"], found["change"]) == ([kept], None)


def test_another_practice_can_neither_record_nor_take_back(house, other_house, client_id):
    mine = record(house, client_id, "chair-stand-30s", 12)
    record(other_house, client_id, "chair-stand-30s", 12, 404)
    other_house.post(f"/tests/{mine['id']}/withdrawals", None, 404)
    assert other_house.get(f"/clients/{client_id}/tests", 404)["code"] == "not-found"
    assert len(item(house, client_id)["results"]) == 1
