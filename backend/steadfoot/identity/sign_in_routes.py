"""HTTP for signing in, with whatever the person has, and for who is signed in."""

from typing import Annotated

from fastapi import APIRouter, Depends, Request, Response

from steadfoot.audit.service import Actor, ActorKind
from steadfoot.audit.trail import set_actor
from steadfoot.core.database import ReadSession, WriteSession
from steadfoot.identity import factor_store, factors, passkeys, service, sessions, store
from steadfoot.identity.access import ByPractitioner, Now, PractitionerAccess, access_of
from steadfoot.identity.account_schemas import ChallengeBody, PasskeyOptions, PasskeySignInBody, SignInBody
from steadfoot.identity.cookies import COOKIE, known_key, remember, set_session
from steadfoot.identity.events import Kind, Someone, refusals_noted, security_event
from steadfoot.identity.factors import Desk, Proof
from steadfoot.identity.schemas import Me, PracticeOut, PractitionerOut

router = APIRouter(tags=["sign-in"])


def desk_of(request: Request, at: Now) -> Desk:
    """Answer what checking a second factor needs of this installation."""
    state = request.app.state
    return Desk(state.keyring, passkeys.site_of(state.settings.practice_address()), at)


ByDesk = Annotated[Desk, Depends(desk_of)]


def me_of(access: PractitionerAccess) -> Me:
    """Answer who someone is, and where."""
    return Me(
        practitioner=PractitionerOut(
            id=access.practitioner_id, display_name=access.display_name, email=access.email, role=access.role
        ),
        practice=PracticeOut(
            id=access.practice_id,
            name=access.practice_name,
            time_zone=access.time_zone,
            emergency_text=access.emergency_text,
            reply_time_text=access.reply_time_text,
        ),
        must_set_up_second_factor=access.must_set_up,
    )


def _tried(session: ReadSession, request: Request, email: str) -> Someone:
    """Answer whose address it is: whoever tries, that practice has it in its log; for an unknown address nobody's.

    Asked whoever it is, so that its time tells nothing.
    """
    person = store.practitioner_by_email(session, email)
    if person is None:
        return Someone()
    set_actor(request, Actor(ActorKind.NOBODY, person.practice_id, person.id))
    return Someone(person.practice_id, person.id)


def _proof(body: SignInBody, session: ReadSession, desk: ByDesk, request: Request) -> Proof:
    key = known_key(request, body.email)
    with refusals_noted(_tried(session, request, body.email)):
        person = service.check_password(session, body.email, body.password, key)
        return factors.check(session, desk, person, body.given(), passkeys.SIGN_IN, key)


def _passkey_proof(body: PasskeySignInBody, session: ReadSession, desk: ByDesk) -> Proof:
    with refusals_noted():
        return factors.check_passkey_alone(session, desk, body.passkey.credential())


def _let_in(proof: Proof, session: WriteSession, desk: Desk, request: Request, response: Response) -> Me:
    person = proof.person
    set_actor(request, Actor(ActorKind.PRACTITIONER, person.practice_id, person.id))
    with refusals_noted(Someone(person.practice_id, person.id)):
        factors.spend(session, proof, desk.now)
    token = sessions.open_session(session, person, desk.now, request.headers.get("User-Agent", ""))
    sessions.sign_out(session, request.cookies.get(COOKIE))
    session.flush()
    set_session(response, token)
    remember(response, request, person.email)
    _tell(session, proof)
    return me_of(access_of(session, token))


def _tell(session: WriteSession, proof: Proof) -> None:
    someone = Someone(proof.person.practice_id, proof.person.id)
    if isinstance(proof.claim, factors.Paper):
        security_event(session, someone, Kind.RECOVERY_CODE_USED)
    security_event(session, someone, Kind.SIGNED_IN)


# The password is hashed, and the second factor looked at, before the writer's turn begins: guessing slows no phone.
@router.post("/sign-in", operation_id="signIn")
def post_sign_in(
    proof: Annotated[Proof, Depends(_proof)], session: WriteSession, desk: ByDesk, request: Request, response: Response
) -> Me:
    """Sign in with address, password and second factor; sets the session cookie. The session it replaces ends.

    Where a second factor is missing the problem ``second-factor-needed`` names the ``ways`` there are.
    """
    return _let_in(proof, session, desk, request, response)


@router.post("/sign-in/passkeys", operation_id="signInWithPasskey")
def post_passkey_sign_in(
    proof: Annotated[Proof, Depends(_passkey_proof)],
    session: WriteSession,
    desk: ByDesk,
    request: Request,
    response: Response,
) -> Me:
    """Sign in with a passkey alone, which must have verified its holder; sets the session cookie."""
    return _let_in(proof, session, desk, request, response)


@router.post("/sign-in/challenges", operation_id="challengeSignIn", status_code=201)
def post_challenge(
    session: ReadSession, desk: ByDesk, request: Request, body: ChallengeBody | None = None
) -> PasskeyOptions:
    """A challenge for a passkey: of the one whose address and password are given, else of whoever has one."""
    rows, about = [], ""
    if body is not None:
        with refusals_noted(_tried(session, request, body.email)):
            person = service.check_password(session, body.email, body.password, known_key(request, body.email))
        rows, about = list(factor_store.passkeys(session, person)), person.id
    options = passkeys.options_to_show(desk.keyring, desk.site, passkeys.SIGN_IN, about, rows, desk.now)
    return PasskeyOptions(public_key=options)


@router.get("/me", operation_id="readMe")
def get_me(access: ByPractitioner) -> Me:
    """Who is signed in."""
    return me_of(access)


@router.post("/sign-out", operation_id="signOut", status_code=204)
def post_sign_out(request: Request, session: WriteSession, response: Response) -> None:
    """End this session, here and on the server."""
    person = sessions.sign_out(session, request.cookies.get(COOKIE))
    if person is not None:
        set_actor(request, Actor(ActorKind.PRACTITIONER, person.practice_id, person.id))
        security_event(session, Someone(person.practice_id, person.id), Kind.SIGNED_OUT)
    response.delete_cookie(COOKIE, path="/", secure=True, httponly=True, samesite="strict")
