"""Recovery codes: ten on paper, each works once when app and passkey are lost."""

from datetime import datetime

from sqlmodel import Session

from steadfoot.core.ids import digest_of, new_code, normal_code
from steadfoot.identity import factor_store
from steadfoot.identity.tables import Practitioner, RecoveryCode

COUNT = 10
LENGTH = 24
"""Characters of 5 bits: 120 bits. From 112 bits on a plain digest is enough (OWASP ASVS 5.0, 6.5.2)."""
_GROUP = 6


def renew(session: Session, person: Practitioner, now: datetime) -> list[str]:
    """Make ten codes in place of those there were; they can be shown only now."""
    factor_store.drop_recovery_codes(session, person)
    codes = [new_code()[-LENGTH:] for _ in range(COUNT)]
    for code in codes:
        session.add(
            RecoveryCode(
                digest=digest_of(code),
                practice_id=person.practice_id,
                practitioner_id=person.id,
                created_at=now,
                used_at=None,
            )
        )
    return ["-".join(code[start : start + _GROUP] for start in range(0, LENGTH, _GROUP)) for code in codes]


def digest_of_typed(typed: str) -> str:
    """Answer the digest of a code as typed: in any case, with or without its dashes."""
    return digest_of(normal_code(typed))
