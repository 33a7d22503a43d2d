"""One's own account: password, second factor, recovery codes. A change of how one signs in ends the other sessions."""

from datetime import datetime, timedelta
from typing import Any

from sqlmodel import Session

from steadfoot.core.ids import uuid7
from steadfoot.core.keyring import Keyring
from steadfoot.core.problems import Conflict, Invalid, not_found
from steadfoot.core.qr import qr_svg
from steadfoot.identity import factor_store, passkeys, recovery, sessions, store, totp
from steadfoot.identity.access import CONFIRMED_FOR, PractitionerAccess
from steadfoot.identity.account_schemas import AccountOut, PasskeyOut, TotpBegun
from steadfoot.identity.events import Kind, Someone, security_event
from steadfoot.identity.factors import Desk
from steadfoot.identity.passkeys import Site
from steadfoot.identity.tables import Practitioner, TotpSecret

TOTP_WAITS = timedelta(minutes=15)
"""How long a new secret waits for its first code. House value."""
PASSKEYS_LIMIT = 10


def person_of(session: Session, access: PractitionerAccess) -> Practitioner:
    """Answer the row of whoever is signed in."""
    found = store.practitioner(session, access.practice_id, access.practitioner_id)
    assert found is not None, "nobody's row goes while they are signed in"
    return found


def note(session: Session, person: Practitioner, kind: Kind) -> None:
    """Note what someone did with their own account."""
    security_event(session, Someone(person.practice_id, person.id), kind)


def secured(session: Session, access: PractitionerAccess, now: datetime) -> str:
    """End someone's other sessions; answer the new secret of this one."""
    session.flush()
    sessions.end_all(session, access.practice_id, access.practitioner_id, keep=access.session_id)
    return sessions.renewed(session, access.session_id, now)


def account_of(session: Session, access: PractitionerAccess, site: Site) -> AccountOut:
    """Answer how someone signs in."""
    person = person_of(session, access)
    app, keys = factor_store.totp(session, person, active=True), factor_store.passkeys(session, person)
    return AccountOut(
        email=person.email,
        display_name=person.display_name,
        role=access.role,
        totp_since=app.activated_at if app else None,
        passkeys=[PasskeyOut.model_validate(row, from_attributes=True) for row in keys],
        passkeys_possible=site.possible,
        recovery_codes_left=factor_store.recovery_codes_left(session, person),
        required=store.practice(session, access.practice_id).requires_second_factor,
        confirmed_until=access.confirmed_at + CONFIRMED_FOR,
    )


def begin_totp(session: Session, access: PractitionerAccess, keyring: Keyring, now: datetime) -> TotpBegun:
    """Make a secret for an app for codes. One in use stays in use until the new one's first code is right."""
    person = person_of(session, access)
    active = factor_store.totp(session, person, active=True)
    factor_store.drop_totp(session, person, keep=active.id if active else "")
    secret = totp.new_secret()
    session.add(
        TotpSecret(
            id=uuid7(now),
            practice_id=person.practice_id,
            practitioner_id=person.id,
            sealed=keyring.seal(secret, person.id),
            created_at=now,
            activated_at=None,
            last_step=totp.NO_STEP,
        )
    )
    address = totp.uri(secret, person.email, access.practice_name)
    return TotpBegun(secret=secret, uri=address, qr_svg=qr_svg(address))


def activate_totp(session: Session, person: Practitioner, keyring: Keyring, typed: str, now: datetime) -> list[str]:
    """Take the new secret into use once its code was right; answer recovery codes, if these are the first.

    Raises:
        Conflict: nothing was begun, or it waited for too long.
        Invalid: the code is not the one of this moment.
    """
    row = factor_store.totp(session, person, active=False)
    if row is None or now - row.created_at > TOTP_WAITS:
        raise Conflict("nothing-begun", "This took too long, or was begun anew elsewhere. Please begin again.")
    step = totp.matching_step(totp.opened(keyring, row), totp.digits_of(typed), now)
    if step is None:
        detail = "This is not the code of the moment. Check that the clock of the phone is right."
        raise Invalid("wrong-code", detail)
    factor_store.drop_totp(session, person, keep=row.id)
    row.activated_at, row.last_step = now, step
    session.add(row)
    note(session, person, Kind.TOTP_ADDED)
    return _first_codes(session, person, now)


def _first_codes(session: Session, person: Practitioner, now: datetime) -> list[str]:
    if factor_store.recovery_codes_left(session, person):
        return []
    return recovery.renew(session, person, now)


def add_passkey(session: Session, person: Practitioner, desk: Desk, credential: dict[str, Any], name: str) -> list[str]:
    """Add a passkey; answer recovery codes, if these are the first.

    Raises:
        Invalid: it does not answer a challenge of ours, or answers one again.
        Conflict: there are too many, or it is known already.
    """
    if len(factor_store.passkeys(session, person)) >= PASSKEYS_LIMIT:
        raise Conflict("too-many-passkeys", f"There are {PASSKEYS_LIMIT} passkeys. Please remove one first.")
    row, challenge = passkeys.made(desk.keyring, desk.site, person, credential, name, desk.now)
    if not passkeys.spend(session, challenge, person.practice_id, desk.now):
        raise Invalid("passkey-not-valid", "This passkey could not be checked. Please begin again.")
    if factor_store.passkey_by_credential(session, row.credential_id):
        raise Conflict("passkey-known", "This passkey is known already.")
    session.add(row)
    session.flush()
    note(session, person, Kind.PASSKEY_ADDED)
    return _first_codes(session, person, desk.now)


def remove_totp(session: Session, person: Practitioner) -> None:
    """Turn codes of an app off.

    Raises:
        Conflict: the practice requires a second factor, and this is the last.
    """
    if factor_store.drop_totp(session, person):
        _after_removal(session, person, Kind.TOTP_REMOVED)


def remove_passkey(session: Session, person: Practitioner, passkey_id: str) -> None:
    """Take a passkey away.

    Raises:
        NotFound: it is none of this person's.
        Conflict: the practice requires a second factor, and this is the last.
    """
    if not factor_store.drop_passkey(session, person, passkey_id):
        raise not_found("passkey")
    _after_removal(session, person, Kind.PASSKEY_REMOVED)


def _after_removal(session: Session, person: Practitioner, kind: Kind) -> None:
    if not factor_store.has_second_factor(session, person):
        if store.practice(session, person.practice_id).requires_second_factor:
            detail = "Your practice requires a second factor. Set up another one before you remove this."
            raise Conflict("last-second-factor", detail)
        factor_store.drop_recovery_codes(session, person)
    note(session, person, kind)


def reset_second_factor(session: Session, person: Practitioner, by: str | None) -> None:
    """Take away whatever someone signs in with beside the password, and end their sessions."""
    factor_store.drop_totp(session, person)
    factor_store.drop_passkeys(session, person)
    factor_store.drop_recovery_codes(session, person)
    sessions.end_all(session, person.practice_id, person.id)
    security_event(session, Someone(person.practice_id, person.id, by), Kind.SECOND_FACTOR_RESET)
