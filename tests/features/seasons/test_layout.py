"""A season laid into a program: drafted, looked over, published, planned again."""

from datetime import date, timedelta

import pytest

from steadfoot.programs.content import Circuit, ProgramContent
from steadfoot.seasons.layout import with_own_keys
from tests.builders import API, PASSWORD, circuit, content, season_plan, step_down

TRIP = "Harrowcomb traverse"


@pytest.fixture
def client_id(house):
    return house.new_client(kit=["step", "stairs", "rail", "wall", "mat", "chair", "band", "pack", "towel"])


def laid(house, client_id, status=200, **more):
    body = {"season": season_plan(), "circuits": ["braking", "control"], "template": "descent-legs", "trip_name": TRIP}
    return house.post(f"/clients/{client_id}/season-plans/contents", {**body, **more}, status)


def by_kind(program, kind):
    keys = {one["key"] for one in program["sessions"] if one["kind"] == kind}
    return [day for day in program["days"] if day["session"] in keys]


def test_it_can_be_drafted_checked_and_published_as_it_comes(house, client_id):
    program = laid(house, client_id)
    house.http.put(f"{API}/clients/{client_id}/programs/draft", json={"content": program}).raise_for_status()
    assert house.get(f"/clients/{client_id}/programs/draft")["content"] == program
    checks = house.post(f"/clients/{client_id}/programs/checks", {"content": program}, 200)
    assert [one["code"] for one in checks["problems"] if one["severity"] == "error"] == []
    assert house.publish(client_id, program)["content"]["season"]["circuits"] == ["braking", "control"]


def test_its_days_are_the_planned_ones(house, client_id):
    pin = {"date": "2026-06-26", "activity": "strength", "locked": True}
    season = season_plan(pins=[pin], cardio_a_week=1, weekdays=["mon", "tue", "wed", "sat"])
    plan = house.post(f"/clients/{client_id}/season-plans", {"season": season}, 200)
    program = laid(house, client_id, season=season)
    for kind, activity in (("circuit", "strength"), ("walk", "walk"), ("cardio", "cardio")):
        wanted = [one["date"] for week in plan["weeks"] for one in week["sessions"] if one["activity"] == activity]
        assert [day["date"] for day in by_kind(program, kind)] == wanted
    assert [day["date"] for day in program["days"] if day["fixed_day"]] == ["2026-06-26"]
    assert [day["date"] for day in by_kind(program, "rest")] == ["2026-07-29"]
    assert program["goal"] == {"name": TRIP, "date": "2026-07-30"}


def test_a_pinned_last_day_has_no_rest_beside_it(house, client_id):
    season = season_plan(pins=[{"date": "2026-07-29", "activity": "walk"}])
    assert by_kind(laid(house, client_id, season=season), "rest") == []


def test_walks_carry_their_measures_and_grow(house, client_id):
    program = laid(house, client_id)
    walks = [one for one in program["sessions"] if one["kind"] == "walk"]
    assert walks[0]["distance_km"] == 8
    assert max(one["distance_km"] for one in walks) > 10
    assert all(one["descent_m"] == one["ascent_m"] for one in walks)


def test_the_shorter_walk_of_a_week_is_named_so(house, client_id):
    program = laid(house, client_id, season=season_plan(walks_a_week=2, weekdays=["mon", "wed", "fri", "sun"]))
    assert {one["name"] for one in program["sessions"] if one["kind"] == "walk"} == {"Long walk", "Shorter walk"}


def test_circuits_take_turns_and_lose_rounds_when_a_week_is_light(house, client_id):
    program = laid(house, client_id)
    rounds = {one["key"]: one["rounds"] for one in program["sessions"] if one["kind"] == "circuit"}
    turns = [day["session"] for day in by_kind(program, "circuit")]
    assert turns[:2] == ["braking", "control"]
    full = rounds["braking"]
    last = rounds[[key for key in turns if key.startswith("braking")][-1]]
    assert last < full
    assert f"braking-{last}r" in turns


def test_minutes_that_were_written_shrink_with_the_rounds(house, client_id):
    program = laid(house, client_id, template=None, content=content(date(2026, 6, 1)), circuits=["s1"])
    found = {one["rounds"]: one["expected_minutes"] for one in program["sessions"] if one["kind"] == "circuit"}
    assert (found[3], found[2]) == (30, 20)


def test_days_lived_through_stay_and_what_was_planned_after_is_replaced(house, client_id):
    before = content(date(2026, 6, 1), weeks=8)
    program = laid(house, client_id, template=None, content=before, circuits=["s1"])
    assert [day for day in program["days"] if day["date"] < "2026-06-11"] == [
        day for day in before["days"] if day["date"] < "2026-06-11"
    ]
    assert program["starts_on"] == "2026-06-01"
    assert program["title"] == before["title"]


def test_days_of_a_season_that_has_begun_stay_as_they_were(house, client_id, clock):
    first = laid(house, client_id)
    clock.forward(days=15)
    house.http.post(f"{API}/sign-in", json={"email": "maren@thornwater.example", "password": PASSWORD})
    second = laid(house, client_id, season=season_plan(weekdays=["tue", "fri", "sun"]), content=first, template=None)
    assert [day for day in second["days"] if day["date"] < "2026-06-25"] == [
        day for day in first["days"] if day["date"] < "2026-06-25"
    ]
    later = [date.fromisoformat(day["date"]).weekday() for day in second["days"] if day["date"] >= "2026-06-25"]
    assert set(later[:-1]) == {1, 4, 6}


def test_planned_again_a_walk_keeps_its_key_so_that_the_change_can_be_said(house, client_id):
    first = laid(house, client_id)
    house.publish(client_id, first)
    pause = {"reason": "illness", "since": "2026-06-22", "resume_on": "2026-07-02"}
    resumed = house.post(f"/clients/{client_id}/season-plans/resumptions", {"season": first["season"], **pause}, 200)
    second = laid(house, client_id, season=resumed["season"], content=first, template=None)
    checks = house.post(f"/clients/{client_id}/programs/checks", {"content": second}, 200)
    assert [one["code"] for one in checks["problems"] if one["severity"] == "error"] == []
    walks = [one for one in checks["changes"] if "walks change" in one or "Long walk on" in one]
    assert walks, checks["changes"]
    assert house.publish(client_id, second)["number"] == 2
    assert house.get(f"/clients/{client_id}/season-plan")["season"]["paused"] == pause


def test_a_circuit_with_keys_in_use_gets_its_own():
    here, other = circuit("s1"), circuit("s1", prescriptions=[step_down("p1", reps_low=3)])
    kept, new = Circuit.model_validate(here), Circuit.model_validate(other)
    assert with_own_keys([kept], [kept]) == [kept]
    (own,) = with_own_keys([new], [kept])
    assert (own.key, own.prescriptions[0].key) == ("s1-2", "p1-2")
    assert [one.key for one in with_own_keys([new, new], [kept])] == ["s1-2", "s1-3"]


def test_a_new_program_takes_the_name_of_its_template_or_trip(house, client_id):
    assert laid(house, client_id)["title"]
    plain = laid(house, client_id, template=None, circuits=[], season=season_plan(strength_a_week=0))
    assert plain["title"] == TRIP


def test_circuits_that_are_missing_are_named(house, client_id):
    for circuits, code in ((["gone"], "unknown_session"), ([], "no_circuit")):
        problem = laid(house, client_id, 422, circuits=circuits)
        assert problem["errors"][0]["code"] == code
    assert laid(house, client_id, 422, season=season_plan(weekdays=["mon"]))["code"] == "season-not-possible"


def test_the_longest_season_fits_into_a_program(house, client_id):
    season = season_plan(
        starts_on="2026-06-11",
        trip_on=(date(2026, 6, 11) + timedelta(365)).isoformat(),
        weekdays=["mon", "tue", "wed", "thu", "fri", "sat", "sun"],
        walks_a_week=3,
        longest_day={"distance_km": 100, "ascent_m": 5000, "pack_kg": 60},
    )
    program = laid(house, client_id, season=season)
    ProgramContent.model_validate(program)


def test_a_phone_gets_the_days_without_the_reasons_for_them(house, client_id):
    house.publish(client_id, laid(house, client_id))
    (version,) = [one for one in house.pair(client_id).sync()["changes"] if one["kind"] == "program"]
    body = version["body"]
    assert "season" not in body["content"]
    assert body["content"]["days"]
