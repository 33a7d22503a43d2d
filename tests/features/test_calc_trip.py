"""``steadfoot calc`` route, demand and season: option names, fields and refusals that scripts rely on."""

from pathlib import Path

import pytest

from tests.features.calc_runs import COMMON, answer, calc, refusal

TRACKS = Path(__file__).parents[1] / "vectors" / "gpx"
KORITA, STEEP = str(TRACKS / "korita-zbevnica.gpx"), str(TRACKS / "Mojstrovka.gpx")
WALKER = ("--body-mass-kg", "70", "--pack-kg", "14")
SEASON = ("--start", "2027-04-24", "--trip", "2027-06-12", "--days", "mon,wed,sat", "--strength", "2")


def test_route_answers_length_heights_hours_and_its_rule():
    found = answer("route", KORITA)
    fields = "distance_km ascent_m descent_m highest_m points segments ascent_rule moving_h_estimate warnings"
    assert set(found) >= COMMON | set(fields.split())
    assert found["distance_km"] == found["value"] == pytest.approx(14.89708, rel=1e-4)
    assert (found["ascent_m"], found["descent_m"]) == pytest.approx((738.29, 746.46), abs=0.02)
    assert (found["highest_m"], found["points"], found["segments"]) == (pytest.approx(1050.86, abs=0.01), 871, 4)
    assert "hysteresis 5 m" in found["ascent_rule"]
    assert set(found["moving_h_estimate"]) == {"naismith_langmuir", "tobler"}
    assert sum(one["distance_km"] for one in found["grades"]) == pytest.approx(found["distance_km"])
    assert [one["grade_percent"] for one in found["steepest_descents"]] == pytest.approx(
        [-24.65, -23.19, -21.26], abs=0.01
    )


def test_route_without_heights_says_unknown(tmp_path):
    file = tmp_path / "flat.gpx"
    file.write_text('<gpx><trk><trkseg><trkpt lat="1" lon="1"/><trkpt lat="1.1" lon="1"/></trkseg></trk></gpx>')
    found = answer("route", str(file))
    assert found["ascent_m"] is found["descent_m"] is found["highest_m"] is None
    assert found["moving_h_estimate"]["naismith_langmuir"] == pytest.approx(found["distance_km"] / 5)


@pytest.mark.parametrize(
    ("content", "code"),
    [
        (b"", "not-gpx"),
        (b"<!DOCTYPE gpx []><gpx/>", "not-gpx"),
        (b"<gpx/>", "too-few-points"),
        (b'<gpx><trk><trkseg><trkpt lat="nan" lon="1"/></trkseg></trk></gpx>', "place-unknown"),
        (b"\x1f\x8bxx", "packed-badly"),
    ],
)
def test_route_refuses_what_is_no_way(tmp_path, content, code):
    file = tmp_path / "way.gpx"
    file.write_bytes(content)
    assert refusal("route", str(file))[0]["code"] == code


def test_route_refuses_a_file_that_is_not_there(tmp_path):
    assert "a GPX file that can be read" in refusal("route", str(tmp_path / "none.gpx"))[0]["detail"]
    assert refusal("route", str(tmp_path))[0]["code"] == "not-readable"


def test_demand_at_a_speed_and_grade():
    found = answer("demand", *WALKER, "--speed-kmh", "4.824", "--grade-percent", "5", "--terrain-factor", "1.1")
    assert set(found) >= COMMON | {"metabolic_w", "band_w", "met", "kcal_per_h", "model", "valid", "warnings"}
    low, high = found["band_w"]
    assert low < found["metabolic_w"] == found["value"] < high
    assert found["met"] * 70 == pytest.approx(found["kcal_per_h"])
    assert found["metabolic_w"] * 3600 / 4184 == pytest.approx(found["kcal_per_h"])
    assert (found["model"], found["valid"]) == ("lcda", True)
    assert found["warnings"][0].startswith("Chosen: lcda")


@pytest.mark.parametrize(
    ("model", "watts"), [("pandolf", 362.1), ("lcda", 374.5), ("minetti", 70 * 4184 / 3600 + 2.5 * 90 * 1.34)]
)
def test_demand_by_a_model(model, watts):
    found = answer(
        "demand",
        "--body-mass-kg",
        "70",
        "--pack-kg",
        "20",
        "--speed-kmh",
        "4.824",
        "--grade-percent",
        "0",
        "--model",
        model,
    )
    assert found["metabolic_w"] == pytest.approx(watts, abs=0.1)
    assert (found["model"], found["rule"]) == (model, f"demand.{model}")
    assert not any(one.startswith("Chosen") for one in found["warnings"])
    assert any("29 percent of body mass" in one for one in found["warnings"])


def test_demand_names_the_correction_downhill():
    way = (*WALKER, "--speed-kmh", "4", "--grade-percent", "-8", "--model", "pandolf")
    assert "TN03-3" in answer("demand", *way)["source"]


def test_demand_along_a_way():
    found = answer("demand", *WALKER, "--gpx", KORITA)
    assert set(found) >= COMMON | {"energy_kcal", "hours", "peak_metabolic_w", "ascent_m", "descent_m", "warnings"}
    low, high = found["band_kcal"]
    assert low < found["energy_kcal"] < high
    assert found["hours"] == pytest.approx(found["hours_by_rule"]["tobler"], rel=0.02)
    assert found["ascent_m"] == answer("route", KORITA)["ascent_m"]
    assert found["steps"] == pytest.approx(14897 / 0.7, abs=1)
    assert found["descent_work_kj"] == pytest.approx(found["descent_m"] * 84 * 9.806 / 1000)


def test_demand_says_where_no_model_holds():
    found = answer("demand", *WALKER, "--gpx", STEEP)
    assert found["valid"] is False
    assert any("steeper than 40 percent" in one for one in found["warnings"])


def test_demand_without_heights_says_that_it_is_too_low(tmp_path):
    file = tmp_path / "flat.gpx"
    file.write_text('<gpx><trk><trkseg><trkpt lat="1" lon="1"/><trkpt lat="1.1" lon="1"/></trkseg></trk></gpx>')
    found = answer("demand", *WALKER, "--gpx", str(file))
    assert (found["valid"], found["descent_work_kj"]) == (False, None)
    assert any("counted as level" in one for one in found["warnings"])


@pytest.mark.parametrize(
    ("arguments", "code", "words"),
    [
        ((), "not-readable", "speed kmh"),
        (("--speed-kmh", "4"), "not-readable", "grade percent"),
        (("--speed-kmh", "4", "--grade-percent", "0", "--gpx", KORITA), "not-readable", "without speed and grade"),
        (("--speed-kmh", "9", "--grade-percent", "0"), "out-of-range", "must be 0 to 7.2 km/h"),
        (("--speed-kmh", "4", "--grade-percent", "60"), "no-model-holds", "-40 to 45 percent"),
        (("--speed-kmh", "4", "--grade-percent", "-20", "--model", "pandolf"), "outside-model", "-12 to 25 percent"),
        (("--speed-kmh", "4", "--grade-percent", "nan"), "out-of-range", "grade percent is nan"),
        (("--speed-kmh", "4", "--grade-percent", "0", "--model", "guess"), "usage", "--model"),
        (("--gpx", STEEP, "--model", "pandolf"), "outside-model", "the pandolf model holds"),
        (("--gpx", KORITA, "--pace-factor", "9"), "out-of-range", "pace factor is 9"),
    ],
)
def test_demand_refuses_what_cannot_be(arguments, code, words):
    problem, _ = refusal("demand", *WALKER, *arguments)
    assert problem["code"] == code
    assert words in problem["detail"]
    assert problem.get("valid") is (False if "model" in code else None)


def test_demand_refuses_a_way_of_one_place(tmp_path):
    file = tmp_path / "here.gpx"
    file.write_text('<gpx><trk><trkseg><trkpt lat="1" lon="1"/><trkpt lat="1" lon="1"/></trkseg></trk></gpx>')
    assert refusal("demand", *WALKER, "--gpx", str(file))[0]["code"] == "nothing-to-walk"


def test_season_answers_weeks_with_phase_sessions_and_load():
    found = answer("season", *SEASON)
    assert set(found) >= COMMON | {"weeks", "warnings"}
    assert [week["phase"] for week in found["weeks"]] == ["build"] * 3 + ["lighter", "build", "taper", "taper"]
    for week in found["weeks"]:
        assert week["planned_load"] == sum(one["effort"] * one["minutes"] for one in week["sessions"])
        assert all({"date", "kind"} <= set(one) for one in week["sessions"])
    assert {one["kind"] for one in found["weeks"][0]["sessions"]} == {"strength", "walk"}
    assert sum("assumed" in one or "walks grow towards" in one for one in found["warnings"]) == 2


def test_season_takes_pins_days_away_walking_and_goal():
    more = (
        "--walking",
        "8,300,4",
        "--goal",
        "9,400,4",
        "--pin",
        "2027-05-06=walk",
        "--away",
        "2027-05-08",
        "--cardio",
        "0",
    )
    found = answer("season", *SEASON, *more)
    dated = {one["date"]: one["kind"] for week in found["weeks"] for one in week["sessions"]}
    assert dated["2027-05-06"] == "walk"
    assert "2027-05-08" not in dated
    assert found["shortfalls"] == []
    assert not any("assumed" in one for one in found["warnings"])


@pytest.mark.parametrize(
    ("option", "value", "code", "words"),
    [
        ("--start", "soon", "not-readable", "a date such as"),
        ("--trip", "2027-04-24", "out-of-range", "days to trip is 0"),
        ("--days", "mon,moonday", "not-readable", "days of the week"),
        ("--days", "mon,tue", "not-possible", "at most 1"),
        ("--strength", "4", "out-of-range", "strength is 4"),
        ("--walking", "8,300", "not-readable", "km, metres of ascent"),
        ("--goal", "0,0,0", "out-of-range", "walk km is 0"),
        ("--pin", "2027-05-06=swim", "not-readable", "strength, walk or cardio"),
        ("--pin", "2027-07-06=walk", "not-possible", "outside the season"),
        ("--away", "never", "not-readable", "a date such as"),
    ],
)
def test_season_refuses_what_cannot_be(option, value, code, words):
    problem, _ = refusal("season", *SEASON, option, value)
    assert problem["code"] == code
    assert words in problem["detail"]


@pytest.mark.parametrize("subject", ["route", "demand", "season"])
def test_every_option_has_help(subject):
    ran = calc(subject, "--help")
    assert ran.exit_code == 0
    assert "--json" in ran.output


@pytest.mark.parametrize("arguments", [("route", KORITA), ("demand", *WALKER, "--gpx", KORITA), ("season", *SEASON)])
def test_people_get_a_table(arguments):
    ran = calc(*arguments)
    assert ran.exit_code == 0
    assert "never replaces it" in ran.stdout
