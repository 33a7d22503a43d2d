"""A client's trip: kept whole, guarded, undone by putting the state before back; and what it asks of the client."""

from datetime import date
from typing import Any

import pytest

from steadfoot.trips import service
from tests.builders import API, House, content, trip
from tests.conftest import StandingClock
from tests.features.trips import files


@pytest.fixture
def client_id(house: House) -> str:
    return house.new_client(body_mass_kg=70)


def put(house: House, client_id: str, body: Any, status: int = 200, tag: str | None = None) -> Any:
    headers = {"If-Match": tag} if tag else {}
    response = house.http.put(f"{API}/clients/{client_id}/trip", json=body, headers=headers)
    assert response.status_code == status, response.text
    return response.json()


def tag_of(house: House, client_id: str) -> str:
    return house.http.get(f"{API}/clients/{client_id}/trip").headers["ETag"]


def test_before_anything_is_kept_there_is_an_empty_trip_and_no_demand(house: House, client_id: str) -> None:
    found = house.get(f"/clients/{client_id}/trip")
    assert (found["version"], found["legs"], found["name"], found["saved_by"]) == (0, [], None, None)
    assert house.get(f"/clients/{client_id}/trip/demand", 404)["code"] == "not-found"


def test_typed_legs_are_kept_and_name_and_day_are_the_goal_of_the_program(house: House, client_id: str) -> None:
    put(house, client_id, trip("Up to the hut"))
    assert house.get(f"/clients/{client_id}/trip")["starts_on"] is None
    house.publish(client_id, content(date(2026, 6, 10)))
    found = house.get(f"/clients/{client_id}/trip")
    assert (found["name"], found["starts_on"]) == ("Harrowcomb traverse", "2026-07-11")
    assert [one["name"] for one in found["legs"]] == ["Up to the hut", ""]
    assert (found["version"], found["saved_by"]) == (1, "Maren Brandvold")


def test_a_leg_of_a_file_is_kept_with_its_profile_and_slopes(house: House, client_id: str) -> None:
    path = f"{API}/clients/{client_id}/trip/readings"
    legs = house.http.post(path, content=files.gpx(files.track())).json()["legs"]
    found = put(house, client_id, {"pack_kg": 8, "legs": legs})
    assert found["legs"] == legs
    (slopes,) = found["slopes"]
    assert sum(one["distance_km"] for one in slopes["grades"]) == pytest.approx(10, abs=0.01)
    assert slopes["steepest_descents"][0]["grade_percent"] == pytest.approx(-10, abs=0.2)


def test_an_older_tag_is_refused_and_the_state_before_can_be_put_back(house: House, client_id: str) -> None:
    before = tag_of(house, client_id)
    put(house, client_id, trip("First"), tag=before)
    kept = house.get(f"/clients/{client_id}/trip")
    assert put(house, client_id, trip("Second"), 412, tag=before)["code"] == "stale"
    put(house, client_id, {"legs": []}, tag=tag_of(house, client_id))
    again = {name: kept[name] for name in ("pack_kg", "ground", "legs")}
    assert put(house, client_id, again, tag=tag_of(house, client_id))["legs"] == kept["legs"]


def test_a_trip_is_taken_away_here_and_on_the_phone(house: House, client_id: str) -> None:
    put(house, client_id, trip("First"))
    old = tag_of(house, client_id)
    phone = house.pair(client_id)
    (told,) = [one for one in phone.sync()["changes"] if one["kind"] == "trip"]
    assert told["body"]["legs"][0] == {"day": 1, "name": "First", "distance_km": 12, "ascent_m": 700, "descent_m": 400}
    path = f"{API}/clients/{client_id}/trip"
    assert house.http.delete(path, headers={"If-Match": '"t9-9"'}).status_code == 412
    assert house.http.delete(path, headers={"If-Match": old}).status_code == 204
    assert house.http.delete(path).status_code == 204
    assert [one["body"] for one in phone.sync()["changes"] if one["kind"] == "trip"] == [{"legs": []}]
    assert put(house, client_id, trip(), 412, tag=old)["code"] == "stale"


LEG: dict[str, Any] = {"day": 1, "distance_km": 5, "ascent_m": 100, "descent_m": 100}
STRETCH = {"start_m": 0, "length_m": 100, "height_m": None, "rise_m": None}
FILE: dict[str, Any] = {
    "points": 2,
    "points_with_height": 0,
    "segments": 1,
    "highest_m": None,
    "lowest_m": None,
    "counted": [],
    "stretches": [STRETCH],
    "remarks": [],
}


@pytest.mark.parametrize(
    ("leg", "pointer"),
    [
        ({"distance_km": 0}, "/body/legs/0/distance_km"),
        ({"distance_km": 101}, "/body/legs/0/distance_km"),
        ({"ascent_m": -1}, "/body/legs/0/ascent_m"),
        ({"ascent_m": None}, "/body/legs/0"),
        ({"ascent_m": 4000, "descent_m": 2000}, "/body/legs/0"),
        ({"day": 0}, "/body/legs/0/day"),
        ({"pack_kg": 61}, "/body/legs/0/pack_kg"),
        ({"from_file": FILE}, "/body/legs/0"),
        ({"from_file": FILE | {"lat": 46}}, "/body/legs/0/from_file/lat"),
    ],
)
def test_what_cannot_be_walked_is_refused_at_its_field(
    house: House, client_id: str, leg: dict[str, Any], pointer: str
) -> None:
    problem = put(house, client_id, {"legs": [LEG | leg]}, 422)
    assert problem["errors"][0]["pointer"] == pointer
    assert tag_of(house, client_id) == service.NONE_YET


def test_days_do_not_run_backwards(house: House, client_id: str) -> None:
    put(house, client_id, {"legs": [LEG | {"day": 2}, LEG]}, 422)


def test_demand_is_told_leg_by_leg_and_day_by_day_with_a_band(house: House, client_id: str) -> None:
    put(house, client_id, {"pack_kg": 7, "legs": [LEG, LEG, LEG | {"day": 2, "pack_kg": 14}]})
    found = house.get(f"/clients/{client_id}/trip/demand")
    first, second, third = found["legs"]
    assert first["energy"]["low_kcal"] < first["energy"]["kcal"] < first["energy"]["high_kcal"]
    assert (first["energy"]["pack_percent"], third["energy"]["pack_percent"]) == (10, 20)
    assert first["energy"] == second["energy"]
    assert third["energy"]["kcal"] > first["energy"]["kcal"]
    assert first["descent_work_kj"] == pytest.approx(100 * 77 * 9.806 / 1000)
    assert first["steps"] == round(5000 / 0.7)
    assert sum(first["energy"]["metres_by_model"].values()) == pytest.approx(5000)
    both = found["days"][0]
    assert (both["distance_km"], both["descent_m"]) == (10, 200)
    assert both["hours"] == pytest.approx(2 * first["hours"])
    assert (found["pace"], found["walks"], found["six_minute_walk_m"]) == (None, 0, None)
    assert {"looney-2022", "tobler-1993"} <= set(found["sources"])


def test_what_is_not_known_is_null_and_never_nothing(house: House) -> None:
    client_id = house.new_client()
    put(house, client_id, {"legs": [LEG | {"ascent_m": None, "descent_m": None}, LEG]})
    found = house.get(f"/clients/{client_id}/trip/demand")
    assert [one["energy"] for one in found["legs"]] == [None, None]
    assert [one["descent_work_kj"] for one in found["legs"]] == [None, None]
    (day,) = found["days"]
    assert (day["ascent_m"], day["low_kcal"]) == (None, None)
    assert 1.9 < day["hours"] < 2.2


def test_hours_follow_the_pace_of_walks_that_were_logged(house: House, client_id: str) -> None:
    put(house, client_id, {"legs": [LEG]})
    path = f"/clients/{client_id}/trip/demand"
    ruled = house.get(path)["legs"][0]
    phone = house.pair(client_id)
    for day in ("2026-06-07", "2026-06-08"):
        _walk(phone, day, minutes=144)
    phone.sync()
    assert (house.get(path)["pace"], house.get(path)["walks"]) == (None, 2)
    _walk(phone, "2026-06-09", minutes=144)
    phone.sync()
    found = house.get(path)
    assert found["pace"] == pytest.approx(1.2)
    assert found["legs"][0]["hours"] == pytest.approx(1.2 * ruled["hours"])
    assert found["legs"][0]["hours_by_rule"] == pytest.approx(1.2 * ruled["hours_by_rule"])


def _walk(phone: Any, day: str, minutes: int) -> None:
    body = {"distance_km": 10, "ascent_m": 0, "descent_m": 0, "minutes": minutes, "pack_kg": 0}
    phone.log("walk_logged", body, at=f"{day}T10:00:00+02:00")


def test_the_six_minute_walk_says_how_hard_it_is_for_this_person(
    house: House, client_id: str, clock: StandingClock
) -> None:
    put(house, client_id, {"legs": [LEG]})
    for metres in (700, 500):
        clock.forward(minutes=10)
        house.post(f"/clients/{client_id}/tests", {"code": "six-minute-walk", "value": metres})
    found = house.get(f"/clients/{client_id}/trip/demand")
    energy = found["legs"][0]["energy"]
    assert found["six_minute_walk_m"] == 500
    # 500 m in six minutes are 1.39 m/s, by lcda 3.78 MET.
    assert energy["mean_percent_shown"] == pytest.approx(energy["mean_met"] / 3.7844 * 100, rel=1e-3)


def test_other_steps_get_plain_frozen_legs(house: House, client_id: str) -> None:
    with house.app.state.database.read() as session:
        assert service.demand_of(session, house.practice_id, client_id) is None
    put(house, client_id, trip())
    with house.app.state.database.read() as session:
        found = service.demand_of(session, house.practice_id, client_id)
    assert found is not None
    assert [(one.number, one.pack_kg, one.descent_m) for one in found.legs] == [(1, 9, 400), (2, 9, 1100)]
