"""What the invented practice knows of some people before their trip: tests, days of the trip, a signed note."""

from dataclasses import dataclass
from datetime import date, datetime, timedelta

from sqlmodel import Session

from steadfoot.assessment import service as assessment
from steadfoot.assessment.schemas import TestBody
from steadfoot.identity import service as identity
from steadfoot.identity.access import PractitionerAccess
from steadfoot.identity.schemas import ClientPatch
from steadfoot.readiness import service as readiness
from steadfoot.readiness.schemas import ReadinessNoteBody
from steadfoot.rules.baseline_catalogue import TestCode
from steadfoot.rules.norms import Sex, TestSide
from steadfoot.rules.readiness import Verdict
from steadfoot.trips import service as trips
from steadfoot.trips.schemas import LegBody, TripBody

_TESTED_DAYS_AGO = 12
_SIDES = (TestSide.LEFT, TestSide.RIGHT)


@dataclass(frozen=True, slots=True)
class Prepared:
    """Somebody before a trip: tests by side or as one value; days as (name, km, m up, m down) and kg on the back, where
    the trip is not the traverse."""

    sex: Sex
    tests: dict[TestCode, tuple[float, ...]]
    days: tuple[tuple[str, float, float, float], ...] = ()
    pack_kg: float = 0
    note: tuple[Verdict, str] | None = None


_PREPARED = {
    "Emil Tarrow": Prepared(Sex.MALE, {TestCode.HEEL_RISE: (19, 25), TestCode.STEP_DOWN: (2, 4)}),
    "Sanne Verhage": Prepared(
        Sex.FEMALE,
        {
            TestCode.HEEL_RISE: (26, 27),
            TestCode.STEP_DOWN: (0, 1),
            TestCode.STANCE_OPEN: (45, 45),
            TestCode.SIDE_BRIDGE: (82, 80),
        },
    ),
    "Freya Dunmore": Prepared(
        Sex.FEMALE,
        {TestCode.CHAIR_STAND: (13,), TestCode.STEP_DOWN: (1, 2), TestCode.STANCE_OPEN: (24, 29)},
        (("Thornwater to Lantern Hut", 6, 140, 60), ("Lantern Hut to Thornwater", 6, 60, 140)),
        3,
        (
            Verdict.ADAPT,
            "Distance is there, two days running are not, and she has not carried a pack. The hut brings the bags "
            "up; poles for the way down on day two. We look again after the walk on the last weekend.",
        ),
    ),
}


def prepare(
    session: Session, access: PractitionerAccess, client_id: str, name: str, today: date, now: datetime
) -> None:
    """Do for one client what a practitioner does before a trip, where it is one of those prepared."""
    known = _PREPARED.get(name)
    if known is None:
        return
    client = identity.client_of(session, access.practice_id, client_id)
    identity.update_client(session, client, ClientPatch(sex=known.sex), None, now)
    _test(session, access, client_id, known, today, now)
    if known.days:
        legs = [
            LegBody(name=leg, day=day, distance_km=km, ascent_m=up, descent_m=down)
            for day, (leg, km, up, down) in enumerate(known.days, start=1)
        ]
        trips.save(session, access, client_id, TripBody(pack_kg=known.pack_kg, legs=legs), None, now)
    if known.note is not None:
        _sign(session, access, client_id, *known.note, now)


def _test(
    session: Session, access: PractitionerAccess, client_id: str, known: Prepared, today: date, now: datetime
) -> None:
    day = today - timedelta(days=_TESTED_DAYS_AGO)
    for code, values in known.tests.items():
        for value, side in zip(values, _SIDES if len(values) > 1 else (None,), strict=True):
            assessment.record(
                session,
                access,
                client_id,
                TestBody.model_validate({"code": code, "value": value, "side": side, "taken_on": day.isoformat()}),
                now,
            )


def _sign(
    session: Session, access: PractitionerAccess, client_id: str, verdict: Verdict, words: str, now: datetime
) -> None:
    seen = readiness.of_client(session, access.practice_id, client_id, now)
    note = ReadinessNoteBody(verdict=verdict, words=words, digest=seen.digest)
    readiness.sign(session, access, client_id, note, now)
