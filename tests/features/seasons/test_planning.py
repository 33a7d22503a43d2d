"""Planning a season, and taking it up again, through HTTP. The rules themselves are tried in tests/rules."""

from datetime import date, timedelta

import pytest

from steadfoot.programs.content import ProgramContent
from steadfoot.programs.season import WalkLevel, walk_of
from steadfoot.rules.season_request import Level
from tests.builders import API, content, season_plan

PLANS = "/clients/{}/season-plans"


@pytest.fixture
def client_id(house):
    return house.new_client()


def planned(house, client_id, **more):
    return house.post(PLANS.format(client_id), {"season": season_plan(**more)}, 200)


def refused(house, client_id, **more):
    return house.post(PLANS.format(client_id), {"season": season_plan(**more)}, 422)


def sessions(season):
    return [one for week in season["weeks"] for one in week["sessions"]]


def test_seven_weeks_with_their_phases_and_loads(house, client_id):
    season = planned(house, client_id)
    assert [week["phase"] for week in season["weeks"]] == [*["build"] * 3, "lighter", "build", "taper", "taper"]
    for week in season["weeks"]:
        assert week["planned_load"] == sum(one["effort"] * one["minutes"] for one in week["sessions"])
    assert all((one["walk"] is None) == (one["activity"] != "walk") for one in sessions(season))


def test_a_pin_stays_and_says_so(house, client_id):
    pin = {"date": "2026-06-26", "activity": "strength", "locked": True}
    season = planned(house, client_id, pins=[pin])
    (one,) = [one for one in sessions(season) if one["pinned"]]
    assert (one["date"], one["activity"], one["locked"]) == ("2026-06-26", "strength", True)


def test_pins_from_before_the_start_do_not_stand_in_the_way(house, client_id):
    assert not any(
        one["pinned"] for one in sessions(planned(house, client_id, pins=[{"date": "2026-06-01", "activity": "walk"}]))
    )


def test_days_away_are_left_free_and_the_gap_is_told(house, client_id):
    season = planned(house, client_id, away=[{"first": "2026-06-25", "last": "2026-07-01"}])
    assert not [one for one in sessions(season) if "2026-06-25" <= one["date"] <= "2026-07-01"]
    assert any("no day for a walk" in note for note in season["notes"])


def test_what_falls_short_is_counted_and_may_be_accepted(house, client_id):
    far = {"distance_km": 25, "ascent_m": 700, "pack_kg": 7}
    short = planned(house, client_id, longest_day=far)["shortfalls"][0]
    assert short["thing"] == "distance_km"
    assert short["short_by"] == pytest.approx(25 - short["reached"])
    assert short["accepted"] is False
    short = planned(house, client_id, longest_day=far, accepted=["distance_km"])["shortfalls"][0]
    assert short["accepted"] is True
    later = date(2026, 7, 30) + timedelta(weeks=short["weeks_more"])
    assert planned(house, client_id, longest_day=far, trip_on=later.isoformat())["shortfalls"] == []


def test_what_cannot_be_is_named_with_choices(house, client_id):
    problem = refused(house, client_id, weekdays=["mon", "tue"])
    assert problem["code"] == "season-not-possible"
    assert (problem["short_by"], problem["unit"]) == (1, "sessions a week")
    assert len(problem["choices"]) == 2


@pytest.mark.parametrize(
    ("more", "code"),
    [
        ({"trip_on": "2026-06-11"}, "season-out-of-range"),
        ({"trip_on": "2027-07-11"}, "season-out-of-range"),
        ({"weekdays": []}, "validation"),
        ({"walking": {"distance_km": 0.4, "ascent_m": 0, "pack_kg": 0}}, "validation"),
        ({"away": [{"first": "2026-06-25", "last": "2026-06-24"}]}, "validation"),
        ({"mood": "good"}, "validation"),
    ],
)
def test_numbers_and_fields_that_cannot_be_are_refused(house, client_id, more, code):
    assert refused(house, client_id, **more)["code"] == code


@pytest.mark.parametrize("trip_on", ["2026-06-02", "2026-06-11", "2027-07-11"])
def test_a_trip_out_of_reach_is_told_in_words(house, client_id, trip_on):
    text = refused(house, client_id, trip_on=trip_on)["detail"]
    assert text == "The trip has to begin after the season does, and within 365 days of it."


def resumed(house, client_id, status=200, **more):
    body = {"season": season_plan(), "reason": "illness", "since": "2026-06-25", "resume_on": "2026-07-06", **more}
    return house.post(f"{PLANS.format(client_id)}/resumptions", body, status)


def test_after_an_illness_the_rest_begins_from_a_step_back(house, client_id):
    answer = resumed(house, client_id)
    season, before = answer["season"], answer["before"]
    assert (season["starts_on"], season["trip_on"], answer["keeps_percent"]) == ("2026-07-06", "2026-07-30", 70)
    assert season["walking"]["distance_km"] == pytest.approx(before["distance_km"] * 0.7, abs=0.1)
    assert season["paused"] == {"reason": "illness", "since": "2026-06-25", "resume_on": "2026-07-06"}
    rest = planned(house, client_id, **season)
    assert rest["weeks"][0]["starts_on"] == "2026-07-06"


def test_a_pause_that_does_not_fit_is_refused(house, client_id):
    assert resumed(house, client_id, 422, resume_on="2026-06-20")["code"] == "season-out-of-range"
    assert resumed(house, client_id, 422, resume_on="2026-07-30")["code"] == "season-out-of-range"


def test_measures_are_rounded_down_so_that_no_step_becomes_larger():
    assert walk_of(Level(8.39, 305, 4.9)) == WalkLevel(distance_km=8.3, ascent_m=300, pack_kg=4.5)
    assert walk_of(Level(16, 900, 8)) == WalkLevel(distance_km=16, ascent_m=900, pack_kg=8)


def test_a_page_begins_with_what_is_known(house, client_id):
    start = house.get(f"/clients/{client_id}/season-plan")
    assert (start["season"], start["trip_on"], start["walked_on"]) == (None, None, None)
    assert (start["today"], start["starts_on"]) == ("2026-06-10", "2026-06-11")
    assert start["walking"]["distance_km"] == 6


def test_a_page_begins_with_the_longest_walk_of_late_and_the_trip(house, client_id, clock):
    program = content(clock().date())
    house.publish(client_id, program)
    phone = house.pair(client_id)
    walk = {"ascent_m": 420, "descent_m": 420, "minutes": 150, "pack_kg": 5}
    phone.log("walk_logged", {"distance_km": 15, **walk}, at="2026-05-01T10:00:00+02:00")
    phone.log("walk_logged", {"distance_km": 9.6, **walk}, at="2026-06-06T10:00:00+02:00")
    phone.log("walk_logged", {"distance_km": 0.5, **walk}, at="2026-06-07T10:00:00+02:00")
    assert phone.sync()["refused"] == []
    start = house.get(f"/clients/{client_id}/season-plan")
    assert start["walking"] == {"distance_km": 9.6, "ascent_m": 420, "pack_kg": 5}
    assert start["walked_on"] == "2026-06-06"
    assert (start["trip_name"], start["trip_on"]) == ("Harrowcomb traverse", program["goal"]["date"])


def test_a_logged_walk_beyond_what_can_be_planned_is_cut_to_it(house, client_id):
    house.publish(client_id, content(date(2026, 6, 1)))
    phone = house.pair(client_id)
    walk = {"distance_km": 20, "ascent_m": 5400, "descent_m": 0, "minutes": 600, "pack_kg": 80}
    phone.log("walk_logged", walk, at="2026-06-06T10:00:00+02:00")
    phone.sync()
    start = house.get(f"/clients/{client_id}/season-plan")
    assert start["walking"] == {"distance_km": 20, "ascent_m": 5000, "pack_kg": 60}


def test_a_page_begins_with_the_longest_day_of_the_trip_its_legs_put_together(house, client_id):
    assert house.get(f"/clients/{client_id}/season-plan")["longest_day_known"] is False
    leg = {"distance_km": 7, "ascent_m": 300, "descent_m": 0}
    legs = [
        {**leg, "day": 1},
        {**leg, "day": 1, "pack_kg": 9},
        {**leg, "day": 2, "distance_km": 13, "ascent_m": None, "descent_m": None},
    ]
    house.http.put(f"{API}/clients/{client_id}/trip", json={"pack_kg": 6, "legs": legs}).raise_for_status()
    start = house.get(f"/clients/{client_id}/season-plan")
    assert start["longest_day_known"] is True
    assert start["longest_day"] == {"distance_km": 14, "ascent_m": 600, "pack_kg": 9}


def test_a_content_without_a_season_reads_and_stays_as_it_was(clock):
    old = content(clock().date())
    assert "season" not in ProgramContent.model_validate(old).model_dump(mode="json")
