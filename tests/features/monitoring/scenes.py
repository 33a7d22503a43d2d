"""What the tests of monitoring begin with: a client with a program of some weeks, and a phone that ticks sets."""

from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from tests.builders import API, PASSWORD, ZONE, House, Phone, content, step_down

MONDAY = date(2026, 6, 1)
"""The clock of the tests stands on Wednesday 10 June, in the second week of the program."""
PRESCRIPTION = "p1"


@dataclass
class Scene:
    """One client with a program and a paired phone."""

    house: House
    client_id: str
    phone: Phone

    def at(self, day: date, hour: int = 18) -> str:
        """Answer a local time of a day, as a phone writes it."""
        return datetime.combine(day, time(hour), ZoneInfo(ZONE)).isoformat()

    def tick(self, day: date, sets: int = 3, place: int = 1) -> None:
        """Tick sets of the session planned on a day."""
        for turn in range(1, sets + 1):
            body = {"planned_id": f"{day}.{place}", "prescription": PRESCRIPTION, "round": turn}
            self.phone.log("set_ticked", body, self.at(day))

    def finish(self, day: date, effort: int = 5, minutes: int = 30) -> None:
        """End the session planned on a day."""
        body = {"planned_id": f"{day}.1", "minutes": minutes, "effort": effort}
        self.phone.log("session_finished", body, self.at(day, 19))

    def hurt(self, day: date, rating: int, when: str = "during", **more: Any) -> dict[str, Any]:
        """Report pain of the right knee."""
        body = {"rating": rating, "region": "knee", "side": "right", "when": when, **more}
        return self.phone.log("pain_reported", body, self.at(day))

    def row(self) -> dict[str, Any]:
        """Answer the client's row of the caseload."""
        rows = self.house.get("/caseload")["items"]
        return next(row for row in rows if row["client"]["id"] == self.client_id)

    def flags(self, status: str | None = None) -> list[dict[str, Any]]:
        """Answer the client's flags, of one status if named."""
        params = {"client_id": self.client_id} | ({"status": status} if status else {})
        found: list[dict[str, Any]] = self.house.http.get(f"{API}/flags", params=params).json()["items"]
        return found

    def adherence(self, first: date, last: date) -> dict[str, Any]:
        """Answer adherence of a span of days."""
        params = {"from": first.isoformat(), "to": last.isoformat()}
        found: dict[str, Any] = self.house.get(f"/clients/{self.client_id}/adherence", **params)
        return found


def scene(house: House, name: str = "Emil Tarrow", weeks: int = 6, **more: Any) -> Scene:
    """Take on a client with a program on Mondays, Wednesdays and Fridays, three sets each, and pair their phone."""
    client_id = house.new_client(name, usual_pain=1, **more)
    house.publish(client_id, content(MONDAY, weeks))
    return Scene(house, client_id, house.pair(client_id))


def later(house: House, clock: Any, **ahead: float) -> None:
    """Let time pass; the practitioner signs in again, since an idle session ends."""
    clock.forward(**ahead)
    house.post("/sign-in", {"email": "maren@thornwater.example", "password": PASSWORD}, 200)


def harder(key: str = PRESCRIPTION) -> dict[str, Any]:
    """A prescription with an easier rung below it."""
    from steadfoot.exercises.service import library

    return step_down(key, library()["step-down"].ladder[1].variant)


def days(first: date, *ahead: int) -> list[date]:
    """Answer days counted from a first one."""
    return [first + timedelta(days=step) for step in ahead]
