"""Keeping a client's trip, and what it asks of them. Other steps ask here: ``trip_of`` and ``demand_of``."""

from datetime import date, datetime
from typing import Final

from sqlalchemy.exc import IntegrityError
from sqlmodel import Session

from steadfoot.assessment import service as assessment
from steadfoot.checkins import service as checkins
from steadfoot.core.problems import Stale
from steadfoot.core.texts import canonical
from steadfoot.identity import service as identity
from steadfoot.identity.access import PractitionerAccess
from steadfoot.programs import service as programs
from steadfoot.programs.content import Goal
from steadfoot.rules.baseline_catalogue import TestCode
from steadfoot.rules.route import Stretch
from steadfoot.rules.walking_time import Walked
from steadfoot.trips import store
from steadfoot.trips.demand import DayDemand, Energy, LegDemand, Person, TripDemand, demand
from steadfoot.trips.plan import Ground, Leg, Trip
from steadfoot.trips.replies import leg_out, slopes_of
from steadfoot.trips.schemas import FromFile, LegBody, TripBody, TripOut
from steadfoot.trips.tables import Trip as TripRow
from steadfoot.trips.tables import TripLeg

__all__ = ["DayDemand", "Energy", "Leg", "LegDemand", "Trip", "TripDemand", "demand_of", "trip_of"]

NONE_YET: Final = '"0"'
_ALWAYS: Final = date.min
_MINUTES: Final = 60


def trip_of(session: Session, practice_id: str, client_id: str) -> Trip | None:
    """Answer a client's trip; None where no leg is kept. Its name and first day are the current program's goal.

    Raises:
        NotFound: the client is unknown, or another practice's.
    """
    identity.client_of(session, practice_id, client_id)
    row = store.trip(session, practice_id, client_id)
    legs = store.legs(session, practice_id, client_id)
    if row is None or not legs:
        return None
    goal = _goal(session, practice_id, client_id)
    plain = tuple(_leg(number, one, row.pack_kg) for number, one in enumerate(legs, start=1))
    return Trip(goal.name if goal else None, goal.date if goal else None, Ground(row.ground), plain)


def _goal(session: Session, practice_id: str, client_id: str) -> Goal | None:
    version = programs.current(session, practice_id, client_id)
    return version.content.goal if version else None


def _stretches(row: TripLeg) -> tuple[Stretch, ...]:
    told = FromFile.model_validate_json(row.from_file).stretches if row.from_file else []
    return tuple(Stretch(one.start_m, one.length_m, one.rise_m, one.height_m) for one in told)


def _leg(number: int, row: TripLeg, pack_kg: float) -> Leg:
    return Leg(
        number=number,
        day=row.day,
        name=row.name,
        distance_km=row.distance_km,
        ascent_m=row.ascent_m,
        descent_m=row.descent_m,
        pack_kg=pack_kg if row.pack_kg is None else row.pack_kg,
        stretches=_stretches(row),
    )


def demand_of(session: Session, practice_id: str, client_id: str) -> TripDemand | None:
    """Answer what a client's trip asks of them, leg by leg and day by day; None where no leg is kept.

    Raises:
        NotFound: the client is unknown, or another practice's.
    """
    trip = trip_of(session, practice_id, client_id)
    return None if trip is None else demand(trip, _person(session, practice_id, client_id))


def _person(session: Session, practice_id: str, client_id: str) -> Person:
    client = identity.client_of(session, practice_id, client_id)
    tests = assessment.of_client(session, practice_id, client_id).items
    shown = next((one.results[0].value for one in tests if one.code is TestCode.SIX_MINUTE_WALK), None)
    return Person(client.body_mass_kg, _walks(session, practice_id, client_id), shown)


def _walks(session: Session, practice_id: str, client_id: str) -> tuple[Walked, ...]:
    found = checkins.walks_of(session, practice_id, client_id, _ALWAYS)
    return tuple(Walked(one.distance_km, one.ascent_m, one.minutes / _MINUTES) for one in found)


def kept(session: Session, practice_id: str, client_id: str) -> tuple[TripOut, str]:
    """Answer a client's trip as it is kept, and its entity tag; version 0 without legs where nothing is.

    Raises:
        NotFound: the client is unknown, or another practice's.
    """
    identity.client_of(session, practice_id, client_id)
    row = store.trip(session, practice_id, client_id)
    legs = store.legs(session, practice_id, client_id)
    goal = _goal(session, practice_id, client_id)
    names = identity.practitioner_names(session, practice_id)
    answer = TripOut(
        name=goal.name if goal else None,
        starts_on=goal.date if goal else None,
        pack_kg=row.pack_kg if row else 0,
        ground=Ground(row.ground) if row else Ground.DIRT_ROAD,
        legs=[leg_out(one) for one in legs],
        slopes=[slopes_of(_stretches(one)) for one in legs],
        version=row.version if row else 0,
        saved_at=row.saved_at if row else None,
        saved_by=names.get(row.saved_by) if row else None,
    )
    return answer, etag(row)


def etag(row: TripRow | None) -> str:
    """Answer the entity tag of what is kept; the time tells it from an earlier trip that was taken away."""
    return f'"t{row.version}-{row.saved_at.timestamp() * 1000:.0f}"' if row else NONE_YET


def save(
    session: Session, access: PractitionerAccess, client_id: str, body: TripBody, if_match: str | None, now: datetime
) -> TripRow:
    """Keep a trip in place of the one before, and tell the phone its days.

    Raises:
        NotFound: the client is unknown, or another practice's.
        Stale: ``if_match`` names another state than the one that is kept.
    """
    client = identity.client_of(session, access.practice_id, client_id)
    before = _guarded(session, access.practice_id, client_id, if_match)
    store.remove_legs(session, access.practice_id, client_id)
    row = TripRow(
        client_id=client_id,
        practice_id=access.practice_id,
        pack_kg=body.pack_kg,
        ground=body.ground.value,
        version=(before.version if before else 0) + 1,
        saved_at=now,
        saved_by=access.practitioner_id,
    )
    row = _stored(session, row)
    session.add_all([_row(row, position, leg) for position, leg in enumerate(body.legs)])
    session.flush()
    identity.announce(session, client, "trip", _for_phone(body), now)
    return row


def _stored(session: Session, row: TripRow) -> TripRow:
    """Store a trip; on databases with several writers two first ones at once must not end in a fault."""
    try:
        with session.begin_nested():
            return session.merge(row)
    except IntegrityError as error:
        raise _stale(None) from error


def _row(trip: TripRow, position: int, leg: LegBody) -> TripLeg:
    return TripLeg(
        client_id=trip.client_id,
        position=position,
        practice_id=trip.practice_id,
        day=leg.day,
        name=leg.name,
        distance_km=leg.distance_km,
        ascent_m=leg.ascent_m,
        descent_m=leg.descent_m,
        pack_kg=leg.pack_kg,
        from_file=canonical(leg.from_file.model_dump()) if leg.from_file else None,
    )


def _for_phone(body: TripBody | None) -> dict[str, object]:
    names = {"day", "name", "distance_km", "ascent_m", "descent_m"}
    return {"legs": [leg.model_dump(include=names) for leg in body.legs] if body else []}


def remove(session: Session, access: PractitionerAccess, client_id: str, if_match: str | None, now: datetime) -> None:
    """Take a trip away, if there is one, from the phone too.

    Raises:
        NotFound: the client is unknown, or another practice's.
        Stale: ``if_match`` names another state than the one that is kept.
    """
    client = identity.client_of(session, access.practice_id, client_id)
    row = _guarded(session, access.practice_id, client_id, if_match)
    if row is not None:
        store.remove_legs(session, access.practice_id, client_id)
        session.delete(row)
        identity.announce(session, client, "trip", _for_phone(None), now)


def _guarded(session: Session, practice_id: str, client_id: str, if_match: str | None) -> TripRow | None:
    row = store.trip(session, practice_id, client_id, hold=True)
    if if_match is not None and if_match.strip().removeprefix("W/") != etag(row):
        raise _stale(row)
    return row


def _stale(row: TripRow | None) -> Stale:
    return Stale("stale", "Someone changed this trip first.", headers={"ETag": etag(row)} if row else {})
