"""Makes what tests need: a practice, clients, phones that speak the sync protocol, programs."""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta
from typing import Any

from fastapi import FastAPI
from fastapi.testclient import TestClient
from httpx import Response

from steadfoot.core.ids import uuid7
from steadfoot.identity import service as identity

PASSWORD = "five huts over one ridge"
ZONE = "Europe/Vienna"
API = "/api/v1"
HOST = "https://testserver"


@dataclass
class Phone:
    """A reference phone: numbers its events and sends them, over any HTTP client."""

    http: TestClient
    token: str
    device_id: str
    clock: Callable[[], datetime]
    events: list[dict[str, Any]] = field(default_factory=list)
    cursor: int = 0
    acknowledged: int = 0

    def log(self, kind: str, body: dict[str, Any], at: str | None = None) -> dict[str, Any]:
        """Write an event on the phone; it is not sent yet."""
        now = self.clock()
        event = {
            "id": uuid7(now),
            "seq": len(self.events) + 1,
            "kind": kind,
            "recorded_at": at or now.isoformat(),
            "body": body,
        }
        self.events.append(event)
        return event

    def send(self, events: list[Any], cursor: int | None = None) -> Response:
        """Post a batch as it is."""
        headers = {"Authorization": f"Bearer {self.token}"}
        body = {"cursor": self.cursor if cursor is None else cursor, "events": events}
        return self.http.post(f"{API}/sync", json=body, headers=headers)

    def sync(self) -> dict[str, Any]:
        """Send what is not acknowledged, take what is new."""
        response = self.send(self.events[self.acknowledged :])
        assert response.status_code == 200, response.text
        answer: dict[str, Any] = response.json()
        self.acknowledged, self.cursor = answer["acknowledged_through"], answer["cursor"]
        return answer


@dataclass
class House:
    """A practice with its signed-in practitioner."""

    http: TestClient
    app: FastAPI
    clock: Callable[[], datetime]
    practice_id: str
    practitioner_id: str

    def get(self, path: str, status: int = 200, **params: Any) -> Any:
        """Answer the JSON of a page that must come with this status."""
        response = self.http.get(f"{API}{path}", params=params)
        assert response.status_code == status, response.text
        return response.json()

    def post(self, path: str, body: Any = None, status: int = 201, headers: dict[str, str] | None = None) -> Any:
        """Post JSON; answer the reply's, which must come with this status."""
        response = self.http.post(f"{API}{path}", json=body, headers=headers)
        assert response.status_code == status, response.text
        return response.json() if response.content else None

    def new_client(self, name: str = "Emil Tarrow", **more: Any) -> str:
        """Take on a client; answer their id."""
        body = {
            "display_name": name,
            "kit": ["step", "rail", "wall", "mat", "chair", "band", "stairs"],
            **more,
        }
        return str(self.post("/clients", body)["id"])

    def invite(self, client_id: str, delivery: str = "in_person") -> dict[str, Any]:
        """Answer a fresh invitation."""
        answer: dict[str, Any] = self.post(f"/clients/{client_id}/invitations", {"delivery": delivery})
        return answer

    def pair(self, client_id: str) -> Phone:
        """Pair a phone in person."""
        visitor = TestClient(self.app, base_url=HOST)
        response = visitor.post(f"{API}/pairings", json={"code": self.invite(client_id)["code"]})
        assert response.status_code == 201, response.text
        return Phone(visitor, response.json()["token"], response.json()["device_id"], self.clock)

    def colleague(self, role: str, email: str = "lia@thornwater.example", name: str = "Lia Fenn") -> "House":
        """Have a colleague join by a link; answer the practice as they see it."""
        link = self.post("/practice/invitations", {"email": email, "display_name": name, "role": role})
        visitor = TestClient(self.app, base_url=str(self.http.base_url))
        body = {"code": link["url"].partition("#join=")[2], "display_name": name, "password": PASSWORD}
        response = visitor.post(f"{API}/practice/people", json=body)
        assert response.status_code == 201, response.text
        return House(visitor, self.app, self.clock, self.practice_id, response.json()["practitioner"]["id"])

    def publish(self, client_id: str, content: dict[str, Any], **more: Any) -> dict[str, Any]:
        """Publish a program version."""
        answer: dict[str, Any] = self.post(f"/clients/{client_id}/programs", {"content": content, **more})
        return answer


@contextmanager
def found_house(app: FastAPI, clock: Callable[[], datetime], name: str, email: str) -> Iterator[House]:
    """Found a practice, sign its practitioner in and hand it over."""
    with app.state.database.write() as session:
        practice = identity.create_practice(session, name, ZONE, clock())
        person = identity.add_practitioner(session, practice, email, "Maren Brandvold", PASSWORD, clock())
        practice_id, practitioner_id = practice.id, person.id
    http = TestClient(app, base_url=HOST)
    response = http.post(f"{API}/sign-in", json={"email": email, "password": PASSWORD})
    assert response.status_code == 200, response.text
    yield House(http, app, clock, practice_id, practitioner_id)


def may_instead(**more: Any) -> dict[str, Any]:
    """A squat that a client may do instead."""
    dose = {"reps_low": 6, "reps_high": 8, "hold_s": None, "load_kg": None}
    return {"exercise": "squat", "variant": "free", "sides": "each", **dose, "reason": "Without a step.", **more}


def step_down(key: str = "p1", variant: str | None = None, **more: Any) -> dict[str, Any]:
    """A prescription of a movement that every test kit allows."""
    return {
        "key": key,
        "exercise": "step-down",
        "variant": variant or first_variant("step-down"),
        "sides": "each",
        "reps_low": 8,
        "reps_high": 10,
        "hold_s": None,
        "load_kg": None,
        "tempo_down_s": 3,
        "rest_s": 45,
        "note": "",
        "alternatives": [],
        **more,
    }


def first_variant(exercise: str) -> str:
    """Answer the easiest variant's code."""
    from steadfoot.exercises.service import library

    return str(library()[exercise].ladder[0].variant)


def circuit(key: str = "s1", rounds: int = 3, prescriptions: list[dict[str, Any]] | None = None) -> dict[str, Any]:
    """A circuit session."""
    return {
        "key": key,
        "kind": "circuit",
        "name": "Steps and hips",
        "rounds": rounds,
        "expected_effort": 5,
        "expected_minutes": 30,
        "note": "",
        "prescriptions": prescriptions or [step_down()],
    }


def content(
    start: date,
    weeks: int = 4,
    sessions: list[dict[str, Any]] | None = None,
    weekdays: tuple[int, ...] = (0, 2, 4),
) -> dict[str, Any]:
    """A program of one circuit on some weekdays (0 is Monday)."""
    found = sessions or [circuit()]
    monday = start - timedelta(days=start.weekday())
    days = [monday + timedelta(days=7 * week + day) for week in range(weeks) for day in weekdays]
    return {
        "title": "Legs for Harrowcomb",
        "goal": {"name": "Harrowcomb traverse", "date": (monday + timedelta(days=7 * weeks + 5)).isoformat()},
        "starts_on": start.isoformat(),
        "ends_on": (monday + timedelta(days=7 * weeks - 1)).isoformat(),
        "sessions": found,
        "days": [
            {"date": day.isoformat(), "session": found[0]["key"], "fixed_day": False} for day in days if day >= start
        ],
    }


def season_plan(**more: Any) -> dict[str, Any]:
    """A season of seven weeks from Thursday 11 June 2026 to a trip on Thursday 30 July."""
    return {
        "starts_on": "2026-06-11",
        "trip_on": "2026-07-30",
        "weekdays": ["mon", "wed", "sat"],
        "strength_a_week": 2,
        "walking": {"distance_km": 8, "ascent_m": 300, "pack_kg": 4},
        "longest_day": {"distance_km": 14, "ascent_m": 700, "pack_kg": 7},
        **more,
    }


def trip(name: str = "") -> dict[str, Any]:
    """A trip of two typed days."""
    leg = {"distance_km": 12.0, "ascent_m": 700, "descent_m": 400}
    return {"pack_kg": 9, "legs": [{**leg, "day": 1, "name": name}, {**leg, "day": 2, "descent_m": 1100}]}
