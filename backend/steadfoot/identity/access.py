"""Who is asking: a practitioner by cookie, a client's phone by bearer token. The two never mix."""

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Annotated

from fastapi import Depends, Request
from fastapi.security import APIKeyCookie, HTTPBearer
from fastapi.security.http import HTTPAuthorizationCredentials
from sqlmodel import Session

from steadfoot.audit.service import Actor, ActorKind
from steadfoot.audit.trail import set_actor
from steadfoot.core.database import Database
from steadfoot.core.ids import digest_of
from steadfoot.core.problems import Forbidden, NotSignedIn
from steadfoot.identity import factor_store, roles, store
from steadfoot.identity.cookies import COOKIE
from steadfoot.identity.roles import Role
from steadfoot.identity.tables import Practice, Practitioner, SignIn

IDLE_LIMIT = timedelta(minutes=60)
SESSION_LIMIT = timedelta(hours=12)
CONFIRMED_FOR = timedelta(minutes=10)
"""How long after showing password and second factor the dangerous things may be done. House value."""
_TOUCH_EVERY = timedelta(minutes=2)

_cookie = APIKeyCookie(name=COOKIE, auto_error=False, description="Practitioner's session, set by sign-in")
_bearer = HTTPBearer(auto_error=False, description="A phone's token, given once by pairing")


@dataclass(frozen=True, slots=True)
class PractitionerAccess:
    """A signed-in practitioner."""

    practice_id: str
    practitioner_id: str
    display_name: str
    email: str
    practice_name: str
    time_zone: str
    emergency_text: str
    reply_time_text: str
    role: Role
    must_set_up: bool
    """Whether the practice requires a second factor that this person does not have yet."""
    session_id: str
    confirmed_at: datetime


@dataclass(frozen=True, slots=True)
class DeviceAccess:
    """A client's phone."""

    practice_id: str
    client_id: str
    device_id: str
    client_time_zone: str


async def now(request: Request) -> datetime:
    """Answer the present instant by the app's clock. Async: a thread to read a clock in costs more than the clock."""
    answer: datetime = request.app.state.clock()
    return answer


Now = Annotated[datetime, Depends(now)]


def _unauthorized(detail: str) -> NotSignedIn:
    return NotSignedIn("not-signed-in", detail, headers={"WWW-Authenticate": "Bearer"})


def _touch(database: Database, digest: str, at: datetime) -> None:
    with database.write() as session:
        found = store.sign_in(session, digest)
        if found:
            found[0].last_seen_at = at
            session.add(found[0])


def is_alive(signed_in: SignIn, at: datetime) -> bool:
    """Say whether a session has outlived neither its rest nor its length."""
    return at - signed_in.last_seen_at <= IDLE_LIMIT and at - signed_in.created_at <= SESSION_LIMIT


def practitioner_of(
    database: Database, token: str | None, at: datetime, *, seen: bool = True
) -> PractitionerAccess | None:
    """Answer who holds this session cookie, if it is alive; being ``seen`` keeps it so."""
    if not token:
        return None
    digest = digest_of(token)
    with database.read() as session:
        found = store.sign_in(session, digest)
        if found is None or not is_alive(found[0], at) or found[1].disabled_at is not None:
            return None
        access = _access(session, *found)
    if seen and at - found[0].last_seen_at > _TOUCH_EVERY:
        _touch(database, digest, at)
    return access


def access_of(session: Session, token: str) -> PractitionerAccess:
    """Answer who holds a session cookie that was set in this very transaction."""
    found = store.sign_in(session, digest_of(token))
    assert found is not None, "the session was stored a moment ago"
    return _access(session, *found)


def _access(session: Session, signed_in: SignIn, person: Practitioner, practice: Practice) -> PractitionerAccess:
    return PractitionerAccess(
        practice_id=practice.id,
        practitioner_id=person.id,
        display_name=person.display_name,
        email=person.email,
        practice_name=practice.name,
        time_zone=practice.time_zone,
        emergency_text=practice.emergency_text,
        reply_time_text=practice.reply_time_text,
        role=Role(person.role),
        must_set_up=practice.requires_second_factor and not factor_store.has_second_factor(session, person),
        session_id=signed_in.id,
        confirmed_at=signed_in.confirmed_at,
    )


def device_of(session: Session, digest: str) -> DeviceAccess:
    """Answer whose phone holds the token with this digest.

    Raises:
        NotSignedIn: no phone has it, or it was revoked; the phone keeps all it holds.
        Forbidden: ``pairing-not-confirmed`` until a practitioner has compared the check number.
    """
    found = store.device_by_token(session, digest)
    if found is None:
        raise unknown_phone(session, digest)
    device, client, pairing = found
    return admit(
        DeviceAccess(device.practice_id, client.id, device.id, client.time_zone),
        revoked=device.revoked_at is not None,
        waits=pairing is not None and pairing.confirmed_at is None,
    )


def admit(access: DeviceAccess, *, revoked: bool, waits: bool) -> DeviceAccess:
    """Let a known phone in.

    Raises:
        NotSignedIn: it was revoked.
        Forbidden: ``pairing-not-confirmed``.
    """
    if revoked:
        raise NotSignedIn("device-revoked", "This phone was unpaired by the practice. What it holds stays on it.")
    if waits:
        raise Forbidden("pairing-not-confirmed", "The practice has not confirmed this phone yet.")
    return access


def unknown_phone(session: Session, digest: str) -> NotSignedIn:
    """Answer what a phone hears that nobody knows, or nobody knows any more."""
    if store.erased_phone(session, digest):
        detail = "The practice has erased your record. What this phone holds stays on it until you remove it."
        return NotSignedIn("record-erased", detail)
    return _unauthorized("This phone is not paired.")


def signed_in(request: Request, at: Now, token: Annotated[str | None, Depends(_cookie)]) -> PractitionerAccess:
    """Answer the signed-in practitioner.

    Raises:
        NotSignedIn: there is none.
        Forbidden: their role may not ask this operation, or the practice requires a second factor first.
    """
    found = practitioner_of(request.app.state.database, token, at)
    if found is None:
        raise _unauthorized("Please sign in.")
    request.state.practice_id = found.practice_id  # the log names its pseudonym
    set_actor(request, Actor(ActorKind.PRACTITIONER, found.practice_id, found.practitioner_id))
    operation = request.scope["route"].operation_id
    if found.must_set_up:
        roles.refuse_until_set_up(operation)
    roles.refuse_beyond(found.role, request.method, operation)
    return found


async def current_practitioner(
    request: Request, access: Annotated[PractitionerAccess, Depends(signed_in)]
) -> PractitionerAccess:
    """Answer the signed-in practitioner, once all that is derived of whom the path names is up to date (decision 0011).

    Raises:
        NotSignedIn: there is none.
        Forbidden: their role may not ask this operation, or the practice requires a second factor first.
    """
    await request.app.state.settling.up_to_date(access.practice_id, request.path_params.get("client_id"))
    return access


def recently_confirmed(
    access: Annotated[PractitionerAccess, Depends(current_practitioner)], at: Now
) -> PractitionerAccess:
    """Answer the practitioner who has just shown again that it is them, for what a borrowed desk must not do.

    Raises:
        NotSignedIn: ``confirm-first``: more than ten minutes ago. POST /account/confirmations mends it.
    """
    if at - access.confirmed_at > CONFIRMED_FOR:
        raise NotSignedIn("confirm-first", "Please confirm that it is you: sign-in data are asked again for this.")
    return access


async def device_token(credentials: Annotated[HTTPAuthorizationCredentials | None, Depends(_bearer)]) -> str:
    """Answer the digest of the token that a phone claims to hold; nobody has looked it up yet.

    Raises:
        NotSignedIn: there is none.
    """
    if credentials is None:
        raise _unauthorized("This call needs the token of a paired phone.")
    return digest_of(credentials.credentials)


def current_device(request: Request, digest: Annotated[str, Depends(device_token)]) -> DeviceAccess:
    """Answer the phone that is asking.

    Raises:
        NotSignedIn, Forbidden: as ``device_of``.
    """
    with request.app.state.database.read() as session:
        found = device_of(session, digest)
    request.state.practice_id = found.practice_id  # the log names its pseudonym
    set_actor(request, Actor(ActorKind.PHONE, found.practice_id, found.device_id), found.client_id)
    return found


def phone_of(request: Request) -> DeviceAccess:
    """Answer the phone that is asking, where the request has a token of one.

    Raises:
        NotSignedIn, Forbidden: as ``device_of``.
    """
    return current_device(request, digest_of(request.headers.get("Authorization", "").partition(" ")[2]))


def current_practice(
    request: Request,
    at: Now,
    token: Annotated[str | None, Depends(_cookie)],
    credentials: Annotated[HTTPAuthorizationCredentials | None, Depends(_bearer)],
) -> str:
    """Answer the practice id of whoever is asking, practitioner or phone."""
    if credentials is not None:
        return current_device(request, digest_of(credentials.credentials)).practice_id
    return signed_in(request, at, token).practice_id


ByPractitioner = Annotated[PractitionerAccess, Depends(current_practitioner)]
ByConfirmed = Annotated[PractitionerAccess, Depends(recently_confirmed)]
ByDevice = Annotated[DeviceAccess, Depends(current_device)]
ByToken = Annotated[str, Depends(device_token)]
ByEither = Annotated[str, Depends(current_practice)]
