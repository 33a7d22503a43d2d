"""A person with a row in every table, each text of theirs a marker."""

from tests.builders import API, House, Phone, circuit, content, step_down, trip
from tests.conftest import START

MARKER = "Zq7-Marker"


def text(number: int) -> str:
    """A marker that occurs nowhere else."""
    return f"{MARKER}-{number:04d}-text"


def marked_person(house: House, entries: int = 40) -> tuple[str, Phone]:
    """Take on a person and write to every table that is linked to a client."""
    client_id = house.new_client(f"Emil {MARKER}", note=text(1), birth_year=1961)
    program = {**content(START.date(), sessions=[circuit(prescriptions=[step_down(note=text(2))])]), "title": text(3)}
    house.publish(client_id, program)
    house.http.put(f"{API}/clients/{client_id}/programs/draft", json={"content": program})
    house.post(f"/clients/{client_id}/messages", {"text": text(4)})
    well = {"regular_activity": True, "known_disease": False, "signs_or_symptoms": False}
    house.post(f"/clients/{client_id}/screenings", {"answers": {**well, "intensity": "light_to_moderate"}})
    house.post(f"/clients/{client_id}/clearances", {"given_by": text(5), "note": text(6)})
    house.post(f"/clients/{client_id}/tests", {"code": "chair-stand-30s", "value": 14, "note": text(7)})
    house.post(f"/clients/{client_id}/functional-scales", {"activities": [{"name": text(8), "rating": 3}]})
    house.http.put(f"{API}/clients/{client_id}/trip", json=trip(text(9)))
    seen = house.get(f"/clients/{client_id}/readiness")["digest"]
    house.post(f"/clients/{client_id}/readiness-notes", {"verdict": "defer", "words": text(10), "digest": seen})
    phone = house.pair(client_id)
    for number in range(entries):
        phone.log("note_written", {"text": text(100 + number) + "x" * (number * 37 % 400)})
    phone.log("pain_reported", {"rating": 8, "region": "knee", "side": "left", "when": "during"})
    phone.log("session_finished", {"minutes": 30, "effort": 5, "planned_id": "2026-06-10.1"})
    phone.log("dreamt", {"text": text(11)})
    phone.sync()
    (flag,) = house.get("/flags", client_id=client_id)["items"]
    house.post(f"/flags/{flag['id']}/decisions", {"action": "message", "message": text(12)})
    return client_id, phone
