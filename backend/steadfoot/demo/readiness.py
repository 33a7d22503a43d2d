"""What the invented practice knows of some people before their trip: bodies, tests, days of the trip, a signed note."""

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
    """Somebody before a trip: body, days as (name, km, m up, m down), pack in kg, tests by side or as one value."""

    sex: Sex
    height_cm: float
    body_mass_kg: float
    days: tuple[tuple[str, float, float, float], ...]
    pack_kg: float
    tests: dict[TestCode, tuple[float, ...]]
    note: tuple[Verdict, str] | None = None


_HARROWCOMB = (
    ("Thornwater to Kettle Hut", 13, 850, 250),
    ("Kettle Hut to Comb End", 12, 600, 550),
    ("Over the Harrowcomb", 15, 900, 950),
    ("Comb End to Lantern Hut", 11, 450, 700),
    ("Down to Coldwell", 10, 200, 1100),
)
_LOOP = (("Thornwater to Lantern Hut", 6, 140, 60), ("Lantern Hut to Thornwater", 6, 60, 140))

_PREPARED = {
    "Emil Tarrow": Prepared(
        Sex.MALE, 181, 84, _HARROWCOMB, 9, {TestCode.HEEL_RISE: (19, 25), TestCode.STEP_DOWN: (2, 4)}
    ),
    "Sanne Verhage": Prepared(
        Sex.FEMALE,
        172,
        66,
        _HARROWCOMB,
        9,
        {
            TestCode.HEEL_RISE: (26, 27),
            TestCode.STEP_DOWN: (0, 1),
            TestCode.STANCE_OPEN: (45, 45),
            TestCode.SIDE_BRIDGE: (82, 80),
        },
    ),
    "Freya Dunmore": Prepared(
        Sex.FEMALE,
        164,
        63,
        _LOOP,
        3,
        {TestCode.CHAIR_STAND: (13,), TestCode.STEP_DOWN: (1, 2), TestCode.STANCE_OPEN: (24, 29)},
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
    body = ClientPatch(sex=known.sex, height_cm=known.height_cm, body_mass_kg=known.body_mass_kg)
    identity.update_client(session, client, body, None, now)
    _test(session, access, client_id, known, today, now)
    if trips.trip_of(session, access.practice_id, client_id) is None:
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
