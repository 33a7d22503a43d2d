"""HTTP for one's own account: password, second factor, where one is signed in."""

from typing import Annotated

from fastapi import APIRouter, Depends, Request, Response

from steadfoot.core.database import ReadSession, WriteSession
from steadfoot.core.problems import Conflict, Invalid, NotSignedIn
from steadfoot.identity import account, factor_store, factors, passkeys, passwords, recovery, service, sessions
from steadfoot.identity.access import ByConfirmed, ByPractitioner, Now
from steadfoot.identity.account_schemas import (
    AccountOut,
    ConfirmBody,
    NewPasskey,
    OpenSession,
    OpenSessions,
    PasskeyOptions,
    PasswordBody,
    RecoveryCodes,
    TotpBegun,
    TotpCode,
)
from steadfoot.identity.cookies import COOKIE, known_key, set_session
from steadfoot.identity.events import Kind, Someone, refusals_noted, security_event
from steadfoot.identity.factors import Proof
from steadfoot.identity.sign_in_routes import ByDesk

router = APIRouter(prefix="/account", tags=["account"])


@router.get("", operation_id="readAccount")
def get_account(access: ByPractitioner, session: ReadSession, desk: ByDesk) -> AccountOut:
    """How one signs in."""
    return account.account_of(session, access, desk.site)


def _confirmation(
    body: ConfirmBody, access: ByPractitioner, session: ReadSession, desk: ByDesk, request: Request
) -> Proof:
    key = known_key(request, access.email)
    with refusals_noted(Someone(access.practice_id, access.practitioner_id)):
        if body.password is not None:
            person = service.check_password(session, access.email, body.password, key)
            return factors.check(session, desk, person, body.given(), passkeys.CONFIRM, key)
        if body.passkey is None:
            raise Invalid("validation", "A password, or a passkey, is needed to confirm.")
        about = access.practitioner_id
        return factors.check_passkey_alone(session, desk, body.passkey.credential(), passkeys.CONFIRM, about)


@router.post("/confirmations", operation_id="confirmSession", status_code=204)
def post_confirmation(
    proof: Annotated[Proof, Depends(_confirmation)],
    access: ByPractitioner,
    session: WriteSession,
    desk: ByDesk,
    response: Response,
) -> None:
    """Show again that it is oneself, as at the sign-in: for ten minutes dangerous things may be done."""
    with refusals_noted(Someone(access.practice_id, access.practitioner_id)):
        factors.spend(session, proof, desk.now)
    set_session(response, sessions.renewed(session, access.session_id, desk.now, confirmed=True))
    security_event(session, Someone(access.practice_id, access.practitioner_id), Kind.CONFIRMED)


@router.post("/confirmation-challenges", operation_id="challengeConfirmation", status_code=201)
def post_confirmation_challenge(access: ByPractitioner, session: ReadSession, desk: ByDesk) -> PasskeyOptions:
    """A challenge for one of one's own passkeys, to confirm with."""
    rows = factor_store.passkeys(session, account.person_of(session, access))
    if not rows:
        raise Conflict("no-passkey", "There is no passkey yet.")
    about = access.practitioner_id
    options = passkeys.options_to_show(desk.keyring, desk.site, passkeys.CONFIRM, about, rows, desk.now)
    return PasskeyOptions(public_key=options)


def _new_hash(body: PasswordBody, access: ByPractitioner, session: ReadSession, request: Request) -> str:
    with refusals_noted(Someone(access.practice_id, access.practitioner_id)):
        try:
            service.check_password(session, access.email, body.current, known_key(request, access.email))
        except NotSignedIn as error:
            raise NotSignedIn("wrong-password", "The password you have now is another one.") from error
    return passwords.hashed(body.new, access.practice_name, access.display_name, access.email)


@router.post("/password", operation_id="changePassword", status_code=204)
def post_password(
    new_hash: Annotated[str, Depends(_new_hash)],
    access: ByPractitioner,
    session: WriteSession,
    at: Now,
    response: Response,
) -> None:
    """Change the password. Other sessions end."""
    person = account.person_of(session, access)
    person.password_hash = new_hash
    session.add(person)
    account.note(session, person, Kind.PASSWORD_CHANGED)
    set_session(response, account.secured(session, access, at))


@router.post("/totp", operation_id="beginTotp", status_code=201)
def post_totp(access: ByConfirmed, session: WriteSession, desk: ByDesk) -> TotpBegun:
    """A secret for an app for codes; it counts after its first right code."""
    return account.begin_totp(session, access, desk.keyring, desk.now)


@router.post("/totp/activations", operation_id="activateTotp", status_code=201)
def post_totp_activation(
    body: TotpCode, access: ByPractitioner, session: WriteSession, desk: ByDesk, response: Response
) -> RecoveryCodes:
    """Take the secret into use by its first code. Other sessions end."""
    person = account.person_of(session, access)
    codes = account.activate_totp(session, person, desk.keyring, body.code, desk.now)
    set_session(response, account.secured(session, access, desk.now))
    return RecoveryCodes(recovery_codes=codes)


@router.delete("/totp", operation_id="removeTotp", status_code=204)
def delete_totp(access: ByConfirmed, session: WriteSession, at: Now, response: Response) -> None:
    """Turn codes of an app off. Other sessions end."""
    account.remove_totp(session, account.person_of(session, access))
    set_session(response, account.secured(session, access, at))


@router.post("/recovery-codes", operation_id="renewRecoveryCodes", status_code=201)
def post_recovery_codes(access: ByConfirmed, session: WriteSession, at: Now) -> RecoveryCodes:
    """Ten new recovery codes, shown once; the old ones are dead."""
    person = account.person_of(session, access)
    if not factor_store.has_second_factor(session, person):
        raise Conflict("no-second-factor", "Recovery codes stand in for a second factor; set one up first.")
    account.note(session, person, Kind.RECOVERY_CODES_RENEWED)
    return RecoveryCodes(recovery_codes=recovery.renew(session, person, at))


@router.post("/passkey-challenges", operation_id="beginPasskey", status_code=201)
def post_passkey_challenge(access: ByConfirmed, session: ReadSession, desk: ByDesk) -> PasskeyOptions:
    """A challenge for making a passkey."""
    person = account.person_of(session, access)
    rows = factor_store.passkeys(session, person)
    return PasskeyOptions(public_key=passkeys.options_to_add(desk.keyring, desk.site, person, rows, desk.now))


@router.post("/passkeys", operation_id="addPasskey", status_code=201)
def post_passkey(
    body: NewPasskey, access: ByPractitioner, session: WriteSession, desk: ByDesk, response: Response
) -> RecoveryCodes:
    """Add a passkey that answers such a challenge. Other sessions end."""
    person = account.person_of(session, access)
    codes = account.add_passkey(session, person, desk, body.credential(), body.name)
    set_session(response, account.secured(session, access, desk.now))
    return RecoveryCodes(recovery_codes=codes)


@router.delete("/passkeys/{passkey_id}", operation_id="removePasskey", status_code=204)
def delete_passkey(passkey_id: str, access: ByConfirmed, session: WriteSession, at: Now, response: Response) -> None:
    """Take a passkey away. Other sessions end."""
    account.remove_passkey(session, account.person_of(session, access), passkey_id)
    set_session(response, account.secured(session, access, at))


@router.get("/sessions", operation_id="listSessions")
def get_sessions(access: ByPractitioner, session: ReadSession, at: Now) -> OpenSessions:
    """Where one is signed in."""
    found = sessions.alive(session, access.practice_id, access.practitioner_id, at)
    return OpenSessions(
        items=[
            OpenSession(
                id=one.id,
                browser=one.browser,
                system=one.system,
                signed_in_at=one.created_at,
                last_seen_at=one.last_seen_at,
                here=one.id == access.session_id,
            )
            for one in found
        ]
    )


@router.delete("/sessions/{session_id}", operation_id="endSession", status_code=204)
def delete_session(session_id: str, access: ByPractitioner, session: WriteSession) -> None:
    """End one session; it is refused at its next request."""
    sessions.end(session, access.practice_id, access.practitioner_id, session_id)
    security_event(session, Someone(access.practice_id, access.practitioner_id), Kind.SESSIONS_ENDED)


@router.delete("/sessions", operation_id="endSessions", status_code=204)
def delete_sessions(access: ByPractitioner, session: WriteSession, response: Response, *, here: bool = False) -> None:
    """End every other session; with ``here`` this one too."""
    keep = None if here else access.session_id
    sessions.end_all(session, access.practice_id, access.practitioner_id, keep)
    security_event(session, Someone(access.practice_id, access.practitioner_id), Kind.SESSIONS_ENDED)
    if here:
        response.delete_cookie(COOKIE, path="/", secure=True, httponly=True, samesite="strict")
