"""Records what this release's own program writes, as ``released/NNNN.json`` of its schema.

Run as ``python -m tests.features.operation.recording`` when a release is made whose schema has no record yet. A record
is never made again: only the program of that time writes what a program of that time wrote.
"""

import json
from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from fastapi.testclient import TestClient
from sqlalchemy import inspect, text

from steadfoot.app import create_app
from steadfoot.core.database import Database
from steadfoot.core.settings import Settings
from steadfoot.migrations import HEAD
from steadfoot.migrations.upgrade import upgrade
from tests.builders import API, PASSWORD, House, Phone, circuit, content, found_house, trip
from tests.conftest import START, StandingClock
from tests.features.access import own_body

EMAIL = "maren@thornwater.example"
_BEGUN = START - timedelta(days=10)
_KNOWN_DISEASE = {"regular_activity": True, "known_disease": True, "signs_or_symptoms": False, "intensity": "vigorous"}


def _care(house: House, client_id: str) -> list[str]:
    """What a practitioner writes before the first session; answer the days of the program."""
    person, plan = f"/clients/{client_id}", content(_BEGUN.date(), weeks=6)
    house.post(f"{person}/screenings", {"answers": _KNOWN_DISEASE})
    house.post(f"{person}/clearances", {"given_by": "Dr Ilse Orm", "note": "By telephone"})
    house.post(f"{person}/tests", {"code": "chair-stand-30s", "value": 14, "note": "Even pace"})
    house.post(f"{person}/functional-scales", {"activities": [{"name": "Down the cellar stairs", "rating": 6}]})
    house.http.put(f"{API}{person}/trip", json=trip("To the Larch hut")).raise_for_status()
    house.publish(client_id, plan)
    house.http.put(f"{API}{person}/programs/draft", json={"content": plan}).raise_for_status()
    weeks = [[{"weekday": "mon", "session": "s1"}]]
    house.post("/templates", {"name": "Two weeks of steps", "sessions": [circuit()], "weeks": weeks})
    house.post("/exercises/own", own_body("Harrow step"))
    house.post(f"{person}/messages", {"text": "Welcome. Ring if the knee complains."})
    return [day["date"] for day in plan["days"]]


def _session(day: str, extra: int) -> Iterator[tuple[str, dict[str, Any]]]:
    planned = {"planned_id": f"{day}.1"}
    yield "session_started", {**planned, "program_version": 1}
    for turn in (1, 2, 3):
        yield "set_ticked", {**planned, "prescription": "p1", "round": turn, "reps": 12 + extra}
    yield "session_finished", {**planned, "minutes": 31, "effort": 4}


def _rest(day: str) -> Iterator[tuple[str, dict[str, Any]]]:
    one = {"planned_id": f"{day}.1", "prescription": "p1", "round": 1}
    yield "set_ticked", one
    yield "set_unticked", one
    yield "set_left_out", {**one, "reason": "pain"}
    yield "pain_reported", {"rating": 6, "region": "knee", "side": "left", "when": "during"}
    yield "walk_logged", {"distance_km": 8.4, "ascent_m": 310, "descent_m": 310, "minutes": 150, "pack_kg": 4}
    yield "symptom_reported", {"symptom": "calf_swelling", "note": "Since yesterday"}
    yield "screening_answered", _KNOWN_DISEASE
    yield "dreamt", {"of": "the ridge"}


def _train(phone: Phone, days: list[str]) -> None:
    told = [(day, entry) for extra, day in enumerate(days[:4]) for entry in _session(day, extra)]
    told += [(days[3], entry) for entry in _rest(days[4])]
    for minute, (day, (kind, body)) in enumerate(told):
        phone.log(kind, body, f"{day}T07:{minute:02}:12.345+02:00")
    note = phone.log("note_written", {"text": "Stairs at the station, 40 steps, fine."}, f"{days[3]}T20:01:00+02:00")
    phone.log("entry_withdrawn", {"event_id": note["id"]}, f"{days[3]}T20:02:00+02:00")
    phone.sync()


def _answer(house: House, client_id: str) -> None:
    """What a practitioner decides afterwards."""
    person = f"/clients/{client_id}"
    suggestion = house.get(f"{person}/suggestions")["items"][0]
    declined = {"suggestion_id": suggestion["id"], "action": "decline", "reason": "Knee first."}
    house.post(f"{person}/progressions", {"program_number": 1, "decisions": [declined]})
    flag = house.get("/flags")["items"][0]
    house.post(f"/flags/{flag['id']}/decisions", {"action": "message", "message": "How is the knee?"})
    seen = house.get(f"{person}/readiness")["digest"]
    house.post(f"{person}/readiness-notes", {"verdict": "adapt", "words": "Two long days first.", "digest": seen})


def _live(house: House, clock: StandingClock) -> dict[str, Any]:
    """Three weeks of a small practice; answer what a reader of the record must know."""
    client_id = house.new_client("Emil Tarrow", birth_year=1961, note="Old ankle sprain, left")
    house.invite(house.new_client("Ada Flint"), "link")
    days = _care(house, client_id)
    phone = house.pair(client_id)
    clock.now = START
    house.http.post(f"{API}/sign-in", json={"email": EMAIL, "password": PASSWORD}).raise_for_status()
    _train(phone, days)
    _answer(house, client_id)
    waiting = TestClient(house.app, base_url="https://testserver")
    waiting.post(f"{API}/pairings", json={"code": house.invite(client_id, "link")["code"]}).raise_for_status()
    known = {"email": EMAIL, "client_id": client_id, "token": phone.token}
    return {**known, "acknowledged_through": phone.acknowledged}


def _rows(database: Database) -> dict[str, list[dict[str, Any]]]:
    with database.reader.connect() as connection:
        names = sorted(set(inspect(connection).get_table_names()) - {"alembic_version"})
        found = {name: connection.execute(text(f'SELECT * FROM "{name}" ORDER BY 1, 2')).mappings() for name in names}
        return {name: [dict(row) for row in rows] for name, rows in found.items()}


def _text(value: Any) -> str:
    return json.dumps(value, ensure_ascii=False, separators=(",", ":"))


def written(known: dict[str, Any], rows: dict[str, list[dict[str, Any]]]) -> str:
    """Answer a record as text, a line a row."""
    head = ",\n".join(f"{_text(name)}:{_text(value)}" for name, value in known.items())
    tables = (f"{_text(name)}:[\n" + ",\n".join(map(_text, found)) + "\n]" for name, found in rows.items() if found)
    return f'{{\n{head},\n"rows":{{\n' + ",\n".join(tables) + "\n}}\n"


def record(folder: Path) -> str:
    """Live through it in an empty folder; answer the record."""
    database, clock = Database(f"sqlite:///{folder / 'steadfoot.db'}"), StandingClock(_BEGUN)
    upgrade(database)
    app = create_app(Settings(data_dir=folder, public_url="https://steadfoot.test"), database, clock)
    with found_house(app, clock, "Thornwater Physical Therapy", EMAIL) as house:
        known = _live(house, clock)
    rows = _rows(database)
    database.close()
    return written(known, rows)


def main() -> None:
    """Write the record, unless there is one."""
    file = Path(__file__).parent / "released" / f"{HEAD}.json"
    if file.exists():
        raise SystemExit(f"{file.name} is there already, and is never made again.")
    with TemporaryDirectory() as folder:
        file.write_text(record(Path(folder)), encoding="utf-8")


if __name__ == "__main__":
    main()
