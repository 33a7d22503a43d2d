"""Every query of trips, each within a practice."""

from collections.abc import Sequence

from sqlmodel import Session, col

from steadfoot.core.database import scoped
from steadfoot.trips.tables import Trip, TripLeg


def trip(session: Session, practice_id: str, client_id: str, *, hold: bool = False) -> Trip | None:
    """Answer a client's trip; ``hold``: and keep others from changing it until the transaction ends."""
    query = scoped(Trip, practice_id).where(Trip.client_id == client_id)
    return session.exec(query.with_for_update() if hold else query).first()


def legs(session: Session, practice_id: str, client_id: str) -> Sequence[TripLeg]:
    """Answer the legs of a client's trip in their order."""
    query = scoped(TripLeg, practice_id).where(TripLeg.client_id == client_id)
    return session.exec(query.order_by(col(TripLeg.position))).all()


def remove_legs(session: Session, practice_id: str, client_id: str) -> None:
    """Delete all legs of a client's trip."""
    for row in legs(session, practice_id, client_id):
        session.delete(row)
    session.flush()
