"""A client, phones and a session that is never committed, so that hundreds of histories can meet one database."""

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import timedelta
from random import Random
from typing import Any

from sqlmodel import Session, select

from steadfoot.checkins import service as checkins
from steadfoot.checkins.store import every_due
from steadfoot.core.database import _read_session, _write_session
from steadfoot.identity.access import DeviceAccess
from steadfoot.monitoring.service import refresh_findings
from steadfoot.monitoring.tables import Finding
from steadfoot.schema import checkins as checkin_tables
from steadfoot.schema import intake as intake_tables
from tests.builders import API, PASSWORD, House, Phone, circuit, content, step_down
from tests.conftest import START
from tests.sync.histories import DAY_ONE

PAGES = ("timeline?limit=200", "overview", f"adherence?from={DAY_ONE}&to=2026-06-14", "refused-events", "screenings")
HOUSE_PAGES = ("caseload", "flags")


class _NoWriter:
    async def write(self, _act: object) -> None:
        return


@dataclass
class Laboratory:
    """One client with a program and two phones."""

    house: House
    client_id: str
    phones: list[Phone]

    def access(self, phone: int) -> DeviceAccess:
        """Answer who a phone is."""
        return DeviceAccess(self.house.practice_id, self.client_id, self.phones[phone].device_id, "Europe/Vienna")

    @contextmanager
    def undone(self) -> Iterator[Session]:
        """One transaction that is rolled back; the app's routes work inside it meanwhile.

        What is read in it has no row in the log: that would be a second writer, who waits for the first.
        """
        overrides, state = self.house.app.dependency_overrides, self.house.app.state
        kept, state.audit_writer = state.audit_writer, _NoWriter()
        with Session(self.house.app.state.database.writer, expire_on_commit=False) as session:
            overrides[_read_session] = overrides[_write_session] = lambda: session
            try:
                yield session
            finally:
                session.rollback()
                overrides.clear()
                state.audit_writer = kept

    def take_in(self, session: Session, phone: int, events: list[dict[str, Any]]) -> dict[str, Any]:
        """Sync a batch without HTTP."""
        answer = checkins.sync(session, self.access(phone), 0, [checkins.read(event) for event in events], START)
        if len(events) % 2:  # else it is due together with what comes next
            self.settle(session)
        session.flush()
        session.expire_all()
        return answer.model_dump()

    def settle(self, session: Session) -> None:
        """Fold what is due, as a reader would have it done."""
        checkins.settle(session, self.house.practice_id, self.client_id, (refresh_findings,))

    def pages(self, session: Session) -> dict[str, str]:
        """Answer the text of every page about the client."""
        self.settle(session)
        session.flush()
        session.expire_all()
        paths = [f"clients/{self.client_id}/{page}" for page in PAGES] + list(HOUSE_PAGES)
        found = {path: self.house.http.get(f"{API}/{path}") for path in paths}
        assert {path: page.status_code for path, page in found.items()} == dict.fromkeys(paths, 200)
        return {path: page.text for path, page in found.items()}


def rows(session: Session) -> dict[str, list[dict[str, Any]]]:
    """Answer every derived row, in the order of its key."""
    for practice_id, client_id in every_due(session):
        checkins.settle(session, practice_id, client_id, (refresh_findings,))
    session.flush()
    session.expire_all()
    found = {
        "rollups": session.exec(select(checkin_tables.SessionRollup)).all(),
        "pain": session.exec(select(checkin_tables.PainEntry)).all(),
        "findings": session.exec(select(Finding)).all(),
        "screenings": session.exec(select(intake_tables.Screening)).all(),
    }
    return {name: sorted((row.model_dump() for row in table), key=repr) for name, table in found.items()}


def sign_in(house: House) -> None:
    """Sign the practitioner in again, after the clock was moved."""
    body = {"email": "maren@thornwater.example", "password": PASSWORD}
    assert house.http.post(f"{API}/sign-in", json=body).status_code == 200


def open_laboratory(house: House) -> Laboratory:
    """Found a client who was given a program five weeks ago, with two phones."""
    clock: Any = house.clock
    clock.now = START - timedelta(days=34)
    client_id = house.new_client()
    sessions = [circuit(prescriptions=[step_down("p1"), step_down("p2")])]
    house.http.post(
        f"{API}/sign-in", json={"email": "maren@thornwater.example", "password": "five huts over one ridge"}
    )
    house.publish(client_id, content(DAY_ONE, weeks=8, sessions=sessions))
    clock.now = START
    house.http.post(
        f"{API}/sign-in", json={"email": "maren@thornwater.example", "password": "five huts over one ridge"}
    )
    return Laboratory(house, client_id, [house.pair(client_id), house.pair(client_id)])


def seeded(seed: int) -> Random:
    """Answer randomness that a failing example can be run again with."""
    return Random(seed)
