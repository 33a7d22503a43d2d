"""What the tests of readiness begin with: a trip, and walks that a phone logs."""

from datetime import date, timedelta

TODAY = date(2026, 6, 10)


def leg(day, **more):
    return {"day": day, "distance_km": 14.0, "ascent_m": 800, "descent_m": 700, "name": f"Day {day}", **more}


def give_trip(house, client_id, legs, pack_kg=8):
    answer = house.http.put(f"/api/v1/clients/{client_id}/trip", json={"pack_kg": pack_kg, "legs": legs})
    assert answer.status_code == 200, answer.text


def readiness(here):
    return here.house.get(f"/clients/{here.client_id}/readiness")


def walked(here, days_ago, **more):
    body = {"distance_km": 14, "ascent_m": 800, "descent_m": 800, "minutes": 300, "pack_kg": 8, "effort": 4, **more}
    return here.phone.log("walk_logged", body, here.at(TODAY - timedelta(days=days_ago)))
