"""Every query of erasures and of how long records are kept."""

from collections.abc import Sequence
from datetime import datetime

from sqlalchemy import func, select
from sqlmodel import Session, col
from sqlmodel import select as select_rows

from steadfoot.core.database import scoped
from steadfoot.custody import person
from steadfoot.custody.tables import ErasedPerson, Erasure, RetentionChoice


def erased(session: Session, practice_id: str, subject_id: str) -> ErasedPerson | None:
    """Answer the mark of an erased person."""
    return session.exec(scoped(ErasedPerson, practice_id).where(ErasedPerson.subject_id == subject_id)).first()


def erasure(session: Session, practice_id: str, client_id: str) -> Erasure | None:
    """Answer the erasure that is asked for, if any."""
    return session.exec(scoped(Erasure, practice_id).where(Erasure.client_id == client_id)).first()


def erasures(session: Session, practice_id: str) -> Sequence[Erasure]:
    """Answer what is to be erased in a practice, the next first."""
    return session.exec(scoped(Erasure, practice_id).order_by(col(Erasure.due_at), col(Erasure.client_id))).all()


def due_erasures(session: Session, now: datetime) -> Sequence[Erasure]:
    """Answer what is to be erased by now, of all practices: the job belongs to no practice."""
    query = select_rows(Erasure).where(Erasure.due_at <= now)
    return session.exec(query.order_by(col(Erasure.due_at), col(Erasure.client_id))).all()


def counts(session: Session, practice_id: str, client_id: str) -> dict[str, int]:
    """Answer how many rows of each table are the person's."""
    found = {}
    for table in person.tables():
        query = select(func.count()).select_from(table).where(person.belongs(table, practice_id, client_id))
        found[table.name] = int(session.execute(query).scalar_one())
    return found


def choice(session: Session, practice_id: str) -> RetentionChoice | None:
    """Answer how long the practice keeps records; None: nobody has said."""
    return session.exec(scoped(RetentionChoice, practice_id)).first()


def choices(session: Session) -> Sequence[RetentionChoice]:
    """Answer the choices of all practices, for the job of whoever runs the server."""
    return session.exec(select_rows(RetentionChoice).order_by(col(RetentionChoice.practice_id))).all()


def practice_is_there(session: Session, practice_id: str) -> bool:
    """Answer whether this database has the practice at all."""
    from steadfoot.identity import service as identity

    return identity.has_practice(session, practice_id)
