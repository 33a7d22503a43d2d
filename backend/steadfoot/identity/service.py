"""Signing in, clients of a practice, and the way other steps reach identity."""

from collections.abc import Iterable, Sequence
from datetime import datetime, timedelta
from typing import Any

from sqlmodel import Session

from steadfoot.core.ids import uuid7
from steadfoot.core.limits import Limiter
from steadfoot.core.problems import Conflict, NotSignedIn, Stale, not_found
from steadfoot.identity import feed, passwords, store
from steadfoot.identity.access import SESSION_LIMIT, PractitionerAccess
from steadfoot.identity.feed import announce, changes_since
from steadfoot.identity.roles import Role
from steadfoot.identity.schemas import ClientBody, ClientPatch
from steadfoot.identity.store import active_client_rows, device_rows, lock_client, newest_contacts, phone_digests
from steadfoot.identity.tables import Client, ErasedPhone, Practice, Practitioner

__all__ = [
    "EMERGENCY_TEXT",
    "active_client_rows",
    "add_practitioner",
    "announce",
    "changes_since",
    "check_password",
    "client_of",
    "clients_of",
    "create_client",
    "create_practice",
    "device_rows",
    "enroll",
    "epoch_of",
    "every_client",
    "last_heard_at",
    "lock_client",
    "lock_device",
    "mark_heard",
    "newest_contacts",
    "phone_digests",
    "practitioner_names",
    "renew_epoch",
    "update_client",
]

_MAY_BE_UNKNOWN = frozenset({"birth_year", "sex", "height_cm", "body_mass_kg"})
_GUESSES = Limiter(tries=10, window_s=timedelta(minutes=15).total_seconds())
EMERGENCY_TEXT = "Call your local emergency number. This app calls nobody."
_REPLY_TIME_TEXT = "Your practice reads this when it arrives, and answers on working days."


def create_practice(session: Session, name: str, time_zone: str, now: datetime) -> Practice:
    """Found a practice."""
    practice = Practice(
        id=uuid7(now),
        name=name,
        time_zone=time_zone,
        emergency_text=EMERGENCY_TEXT,
        reply_time_text=_REPLY_TIME_TEXT,
        created_at=now,
    )
    session.add(practice)
    if store.epoch(session) is None:
        store.renew_epoch(session, now)
    session.flush()
    return practice


def add_practitioner(
    session: Session,
    practice: Practice,
    email: str,
    display_name: str,
    password: str,
    now: datetime,
    role: Role = Role.OWNER,
) -> Practitioner:
    """Add a person who may sign in; the first of a practice owns it.

    Raises:
        Conflict: the address is taken.
        Invalid: the password is too short or too long, or among the first that are guessed.
    """
    password_hash = passwords.hashed(password, practice.name, display_name, email)
    return enroll(session, practice.id, email, display_name, password_hash, now, role)


def enroll(
    session: Session,
    practice_id: str,
    email: str,
    display_name: str,
    password_hash: str,
    now: datetime,
    role: Role,
) -> Practitioner:
    """Add a person whose password is hashed already.

    Raises:
        Conflict: the address is taken.
    """
    if store.practitioner_by_email(session, email):
        raise Conflict("email-taken", "Someone already signs in with this address.")
    person = Practitioner(
        id=uuid7(now),
        practice_id=practice_id,
        email=email,
        display_name=display_name,
        password_hash=password_hash,
        created_at=now,
        role=role.value,
    )
    session.add(person)
    session.flush()
    return person


def check_password(session: Session, email: str, password: str, key: str = "") -> Practitioner:
    """Answer whose address and password these are. Takes a quarter of a second: never inside a writer's turn.

    ``key``: whose tries are counted, if not the address's.

    Raises:
        NotSignedIn: the address or the password is wrong, or the person is disabled; it does not say which.
        TooMany: ten tries in a quarter of an hour.
    """
    _GUESSES.check(key or email)
    person = store.practitioner_by_email(session, email)
    right = passwords.is_right(password, person.password_hash if person else None)
    if not right or person is None or person.disabled_at is not None:
        raise NotSignedIn("wrong-sign-in", "The address or the password is not right.")
    _GUESSES.forgive(key or email)
    return person


def client_of(session: Session, practice_id: str, client_id: str) -> Client:
    """Answer a client of the practice.

    Raises:
        NotFound: unknown, or another practice's.
    """
    found = store.client(session, practice_id, client_id)
    if found is None:
        raise not_found("client")
    return found


def clients_of(session: Session, practice_id: str) -> Sequence[Client]:
    """Answer all clients of the practice, by name."""
    return store.clients(session, practice_id)


def every_client(session: Session) -> Sequence[Client]:
    """Answer the clients of all practices, for upkeep of the whole database by its owner."""
    return store.every_client(session)


def create_client(session: Session, access: PractitionerAccess, body: ClientBody, now: datetime) -> Client:
    """Take on a client; the phone's first changes are written now, so that pairing finds them."""
    client = Client(
        id=uuid7(now),
        practice_id=access.practice_id,
        display_name=body.display_name,
        birth_year=body.birth_year,
        sex=None if body.sex is None else body.sex.value,
        height_cm=body.height_cm,
        body_mass_kg=body.body_mass_kg,
        time_zone=body.time_zone or access.time_zone,
        kit=[item.value for item in body.kit],
        usual_pain=body.usual_pain,
        thresholds=body.thresholds.model_dump(),
        note=body.note,
        created_at=now,
        archived_at=None,
        version=1,
        change_head=0,
    )
    session.add(client)
    session.flush()
    feed.announce_practice(session, client, now)
    feed.announce_settings(session, client, now)
    session.refresh(client)
    return client


def _new_values(patch: ClientPatch, client: Client, now: datetime) -> dict[str, Any]:
    given = patch.model_dump(exclude_unset=True, mode="json")
    archived = given.pop("archived", None)
    values = {name: value for name, value in given.items() if value is not None or name in _MAY_BE_UNKNOWN}
    if archived is not None:
        values["archived_at"] = (client.archived_at or now) if archived else None
    return values


def update_client(session: Session, client: Client, patch: ClientPatch, if_match: str | None, now: datetime) -> Client:
    """Change what is known of a client.

    Raises:
        Stale: ``if_match`` names an older version.
    """
    session.refresh(client, with_for_update=True)  # of two colleagues at once, the second sees what the first did
    if if_match is not None and if_match.strip('"') != f"v{client.version}":
        raise Stale("stale", "Someone changed this client first.", headers={"ETag": f'"v{client.version}"'})
    for name, value in _new_values(patch, client, now).items():
        setattr(client, name, value)
    client.version += 1
    session.add(client)
    session.flush()
    feed.announce_settings(session, client, now)
    session.refresh(client)
    return client


def last_heard_at(session: Session, practice_id: str, client_id: str) -> datetime | None:
    """Answer when any phone of the client was last in contact."""
    times = [device.last_heard_at for device, _ in store.devices(session, practice_id, client_id)]
    return max((time for time in times if time is not None), default=None)


def lock_device(session: Session, practice_id: str, device_id: str) -> int:
    """Hold the phone's row until the transaction ends; answer the end of its gapless numbers."""
    device = store.lock_device(session, practice_id, device_id)
    if device is None:
        raise not_found("phone")
    return device.acknowledged_through


def mark_heard(session: Session, practice_id: str, device_id: str, acknowledged_through: int, now: datetime) -> None:
    """Note that a phone was in contact, and the end of its gapless numbers."""
    device = store.device(session, practice_id, device_id)
    if device is not None:
        device.last_heard_at = now
        device.acknowledged_through = acknowledged_through
        session.add(device)


def epoch_of(session: Session) -> str:
    """Answer the server's epoch; a phone that sees a new one compares numbers and sends again."""
    row = store.epoch(session)
    assert row is not None, "an epoch is written with the first practice"
    return row.value


def renew_epoch(session: Session, now: datetime) -> str:
    """Give the database a new epoch after a restore, so that phones compare numbers and send again."""
    return store.renew_epoch(session, now)


def practitioner_names(session: Session, practice_id: str) -> dict[str, str]:
    """Answer the display name of every practitioner of the practice by id."""
    return {person.id: person.display_name for person in store.practitioners(session, practice_id)}


def forget_dead_sessions(session: Session, now: datetime) -> None:
    """Delete what is left of sessions that are too old to be used."""
    for row in store.sign_ins_before(session, now - SESSION_LIMIT):
        session.delete(row)


def practice_name(session: Session, practice_id: str) -> str:
    """Answer the practice's name."""
    return store.practice(session, practice_id).name


def has_practice(session: Session, practice_id: str) -> bool:
    """Answer whether this database has the practice."""
    return session.get(Practice, practice_id) is not None


def set_archived(session: Session, client: Client, at: datetime | None) -> None:
    """Take a client out of the caseload, or bring them back with None. Who is archived stays so since then."""
    client.archived_at = None if at is None else client.archived_at or at
    client.version += 1
    session.add(client)
    session.flush()


def remember_erased_phones(session: Session, practice_id: str, digests: Iterable[str], now: datetime) -> None:
    """Keep the digests of keys whose client's record is gone, so that the phones can be told."""
    for digest in sorted(digests):
        if store.erased_phone(session, digest) is None:
            session.add(ErasedPhone(token_digest=digest, practice_id=practice_id, erased_at=now))
