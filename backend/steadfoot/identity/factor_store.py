"""Every query of second factors. Rows are looked up for one person, or by what only their owner has."""

from collections.abc import Sequence
from datetime import datetime

from sqlalchemy import delete, update
from sqlalchemy.exc import IntegrityError
from sqlmodel import Session, col, func, select

from steadfoot.core.database import scoped
from steadfoot.identity.tables import Passkey, Practitioner, RecoveryCode, SpentChallenge, TotpSecret

_Owned = type[TotpSecret] | type[Passkey] | type[RecoveryCode]


def totp(session: Session, person: Practitioner, *, active: bool) -> TotpSecret | None:
    """Answer someone's secret in use, or the newest one that waits for its first code."""
    query = scoped(TotpSecret, person.practice_id).where(TotpSecret.practitioner_id == person.id)
    state = col(TotpSecret.activated_at).is_not(None) if active else col(TotpSecret.activated_at).is_(None)
    return session.exec(query.where(state).order_by(col(TotpSecret.id).desc())).first()


def drop_totp(session: Session, person: Practitioner, *, keep: str = "") -> int:
    """Delete someone's secrets but one; answer how many."""
    where = (col(TotpSecret.practitioner_id) == person.id, col(TotpSecret.id) != keep)
    return _deleted(session, TotpSecret, person.practice_id, *where)


def use_step(session: Session, secret_id: str, step: int) -> bool:
    """Mark a step of time as used; False when it, or a later one, was used before. One statement decides."""
    claim = update(TotpSecret).where(col(TotpSecret.id) == secret_id, col(TotpSecret.last_step) < step)
    return session.execute(claim.values(last_step=step).returning(col(TotpSecret.id))).first() is not None


def passkeys(session: Session, person: Practitioner) -> Sequence[Passkey]:
    """Answer someone's passkeys, oldest first."""
    query = scoped(Passkey, person.practice_id).where(Passkey.practitioner_id == person.id)
    return session.exec(query.order_by(col(Passkey.id))).all()


def passkey_by_credential(session: Session, credential_id: str) -> tuple[Passkey, Practitioner] | None:
    """Answer a passkey by what its authenticator calls it, of any practice: nobody is signed in yet."""
    query = select(Passkey, Practitioner).join(Practitioner, col(Practitioner.id) == Passkey.practitioner_id)
    return session.exec(query.where(Passkey.credential_id == credential_id)).first()


def use_passkey(session: Session, passkey_id: str, sign_count: int, now: datetime) -> bool:
    """Note a use; False where the passkey was removed meanwhile."""
    note = update(Passkey).where(col(Passkey.id) == passkey_id).values(sign_count=sign_count, last_used_at=now)
    return session.execute(note.returning(col(Passkey.id))).first() is not None


def drop_passkey(session: Session, person: Practitioner, passkey_id: str) -> int:
    """Delete one of someone's passkeys; answer how many that were."""
    where = (col(Passkey.practitioner_id) == person.id, col(Passkey.id) == passkey_id)
    return _deleted(session, Passkey, person.practice_id, *where)


def drop_passkeys(session: Session, person: Practitioner) -> int:
    """Delete all of someone's passkeys; answer how many."""
    return _deleted(session, Passkey, person.practice_id, col(Passkey.practitioner_id) == person.id)


def recovery_code(session: Session, person: Practitioner, digest: str) -> RecoveryCode | None:
    """Answer someone's code with this digest, if it is not used."""
    query = scoped(RecoveryCode, person.practice_id).where(
        RecoveryCode.practitioner_id == person.id, RecoveryCode.digest == digest, col(RecoveryCode.used_at).is_(None)
    )
    return session.exec(query).first()


def use_recovery_code(session: Session, digest: str, now: datetime) -> bool:
    """Use a code up; False when it was. One statement decides, whoever else tries."""
    claim = update(RecoveryCode).where(col(RecoveryCode.digest) == digest, col(RecoveryCode.used_at).is_(None))
    return session.execute(claim.values(used_at=now).returning(col(RecoveryCode.digest))).first() is not None


def recovery_codes_left(session: Session, person: Practitioner) -> int:
    """Answer how many codes someone has that are not used."""
    query = select(func.count()).where(
        RecoveryCode.practice_id == person.practice_id,
        RecoveryCode.practitioner_id == person.id,
        col(RecoveryCode.used_at).is_(None),
    )
    return session.exec(query).one()


def drop_recovery_codes(session: Session, person: Practitioner) -> int:
    """Delete all of someone's codes; answer how many."""
    return _deleted(session, RecoveryCode, person.practice_id, col(RecoveryCode.practitioner_id) == person.id)


def has_second_factor(session: Session, person: Practitioner) -> bool:
    """Say whether a password alone does not let this person in."""
    return totp(session, person, active=True) is not None or bool(passkeys(session, person))


def spend_challenge(session: Session, spent: SpentChallenge, now: datetime) -> bool:
    """Mark a challenge as answered; False when it was before. Those too old to be answered are forgotten."""
    session.execute(delete(SpentChallenge).where(col(SpentChallenge.expires_at) <= now))
    try:
        with session.begin_nested():
            session.add(spent)
    except IntegrityError:
        return False
    return True


def _deleted(
    session: Session, table: type[TotpSecret | Passkey | RecoveryCode], practice_id: str, *where: object
) -> int:
    gone = delete(table).where(col(table.practice_id) == practice_id, *where)  # type: ignore[arg-type]
    return len(session.execute(gone.returning(col(table.practitioner_id))).all())
