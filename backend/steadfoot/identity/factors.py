"""What someone shows beside the password. It is checked before a writer's turn begins, and spent inside it."""

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from sqlmodel import Session

from steadfoot.core.keyring import Keyring
from steadfoot.core.limits import Limiter
from steadfoot.core.problems import NotSignedIn
from steadfoot.identity import factor_store, passkeys, recovery, totp
from steadfoot.identity.tables import Passkey, Practitioner

_CODE_TRIES = Limiter(tries=5, window_s=timedelta(minutes=15).total_seconds())
"""For one person whose password was right: of a million codes three fit, so a guesser needs years."""


@dataclass(frozen=True, slots=True)
class Desk:
    """What checking needs of this installation, and the moment."""

    keyring: Keyring
    site: passkeys.Site
    now: datetime


@dataclass(frozen=True, slots=True)
class Given:
    """What someone shows beside the password; one of them, or nothing yet."""

    code: str | None = None
    recovery_code: str | None = None
    passkey: dict[str, Any] | None = None


@dataclass(frozen=True, slots=True)
class Step:
    """A right code of an app; it counts once its step of time is used."""

    secret_id: str
    step: int


@dataclass(frozen=True, slots=True)
class Paper:
    """A right recovery code; it counts once it is used up."""

    digest: str


Claim = Step | Paper | passkeys.Use


@dataclass(frozen=True, slots=True)
class Proof:
    """Who someone is, and what they showed for it besides a password; None: they have no second factor."""

    person: Practitioner
    claim: Claim | None


def ways_of(session: Session, person: Practitioner) -> list[str]:
    """Answer how someone can show a second factor; nothing when they have none."""
    found = [
        ("code", factor_store.totp(session, person, active=True) is not None),
        ("passkey", bool(factor_store.passkeys(session, person))),
    ]
    ways = [way for way, there in found if there]
    if ways and factor_store.recovery_codes_left(session, person):
        ways.append("recovery_code")
    return ways


def check(session: Session, desk: Desk, person: Practitioner, given: Given, purpose: str, key: str = "") -> Proof:
    """Answer the proof of someone whose password was right. ``key``: whose tries are counted, if not the person's.

    Raises:
        NotSignedIn: ``second-factor-needed`` with the ways there are, ``wrong-code`` or ``passkey-refused``.
        TooMany: five tries in a quarter of an hour.
    """
    ways = ways_of(session, person)
    if not ways:
        return Proof(person, None)
    if given == Given():
        detail = "The password is right. Now show your second factor."
        raise NotSignedIn("second-factor-needed", detail, ways=ways)
    _CODE_TRIES.check(key or person.id)
    claim = _claim(session, desk, person, given, purpose)
    _CODE_TRIES.forgive(key or person.id)
    return Proof(person, claim)


def _claim(session: Session, desk: Desk, person: Practitioner, given: Given, purpose: str) -> Claim:
    if given.passkey is not None:
        row = _own_passkey(session, person, given.passkey)
        return passkeys.shown(desk.keyring, desk.site, row, given.passkey, purpose, person.id, desk.now)
    if given.code is not None:
        return _code(session, desk, person, given.code)
    digest = recovery.digest_of_typed(given.recovery_code or "")
    if factor_store.recovery_code(session, person, digest) is None:
        raise wrong_code()
    return Paper(digest)


def _own_passkey(session: Session, person: Practitioner, credential: dict[str, Any]) -> Passkey:
    found = factor_store.passkey_by_credential(session, credential["id"])
    if found is None or found[1].id != person.id:
        raise passkeys.not_accepted()
    return found[0]


def _code(session: Session, desk: Desk, person: Practitioner, typed: str) -> Step:
    row = factor_store.totp(session, person, active=True)
    if row is None:
        raise wrong_code()
    step = totp.matching_step(totp.opened(desk.keyring, row), totp.digits_of(typed), desk.now)
    if step is None or step <= row.last_step:
        raise wrong_code()
    return Step(row.id, step)


def check_passkey_alone(
    session: Session, desk: Desk, credential: dict[str, Any], purpose: str = passkeys.SIGN_IN, about: str = ""
) -> Proof:
    """Answer the proof of someone who shows a passkey that has verified its holder: two factors in one.

    Raises:
        NotSignedIn: unknown, another site's, not verified, or its person may not sign in.
    """
    found = factor_store.passkey_by_credential(session, credential["id"])
    if found is None or found[1].disabled_at is not None or about not in ("", found[1].id):
        raise passkeys.not_accepted()
    row, person = found
    use = passkeys.shown(desk.keyring, desk.site, row, credential, purpose, about, desk.now, alone=True)
    return Proof(person, use)


def spend(session: Session, proof: Proof, now: datetime) -> None:
    """Use up what was shown, in the transaction that it lets through: of many at once, one gets by.

    Raises:
        NotSignedIn: it was used meanwhile.
    """
    claim = proof.claim
    if isinstance(claim, Step) and not factor_store.use_step(session, claim.secret_id, claim.step):
        raise wrong_code()
    if isinstance(claim, Paper) and not factor_store.use_recovery_code(session, claim.digest, now):
        raise wrong_code()
    if isinstance(claim, passkeys.Use):
        fresh = passkeys.spend(session, claim.challenge, claim.practice_id, now)
        if not fresh or not factor_store.use_passkey(session, claim.passkey_id, claim.sign_count, now):
            raise passkeys.not_accepted()


def wrong_code() -> NotSignedIn:
    """Answer the refusal of a code; it is the same whether it was wrong, used or too old."""
    return NotSignedIn("wrong-code", "This code does not work. It may be mistyped, used or too old.")
