"""HTTP for the people of the practice, which is its owners' to decide, and for joining it by a link."""

from dataclasses import dataclass
from typing import Annotated

from fastapi import APIRouter, Depends, Request, Response
from sqlmodel import Session

from steadfoot.audit.service import Actor, ActorKind
from steadfoot.audit.trail import set_actor
from steadfoot.core.database import ReadSession, WriteSession
from steadfoot.identity import account, factor_store, passwords, people, sessions, store
from steadfoot.identity.access import ByConfirmed, ByPractitioner, Now, access_of
from steadfoot.identity.account_schemas import (
    Colleague,
    ColleagueBody,
    ColleagueChange,
    ColleagueLink,
    JoinBody,
    JoinCodeBody,
    People,
    PracticeSecurity,
    WaitingColleague,
    Welcome,
)
from steadfoot.identity.cookies import COOKIE, remember, set_session
from steadfoot.identity.roles import Role
from steadfoot.identity.schemas import Me, PracticeWords
from steadfoot.identity.sign_in_routes import me_of
from steadfoot.identity.tables import ColleagueInvitation, Practitioner

router = APIRouter(tags=["people"])


def _colleague_out(session: Session, person: Practitioner) -> Colleague:
    return Colleague(
        id=person.id,
        display_name=person.display_name,
        email=person.email,
        role=Role(person.role),
        disabled_at=person.disabled_at,
        second_factor=factor_store.has_second_factor(session, person),
        created_at=person.created_at,
    )


@router.get("/practice/people", operation_id="listPeople")
def get_people(access: ByPractitioner, session: ReadSession, at: Now) -> People:
    """The people of the practice, those invited, and what it asks of them."""
    waiting = store.colleague_invitations(session, access.practice_id, at)
    return People(
        items=[_colleague_out(session, person) for person in store.practitioners(session, access.practice_id)],
        waiting=[WaitingColleague.model_validate(row, from_attributes=True) for row in waiting],
        requires_second_factor=store.practice(session, access.practice_id).requires_second_factor,
    )


@router.post("/practice/invitations", operation_id="inviteColleague", status_code=201)
def post_colleague(
    body: ColleagueBody, access: ByConfirmed, session: WriteSession, at: Now, request: Request
) -> ColleagueLink:
    """A link by which a colleague joins, once, within three days. An earlier one for this address is dead."""
    return people.invite(session, access, body, request.app.state.settings.practice_address(), at)


@router.delete("/practice/invitations/{colleague_invitation_id}", operation_id="withdrawColleague", status_code=204)
def delete_colleague(colleague_invitation_id: str, access: ByPractitioner, session: WriteSession, at: Now) -> None:
    """Make such a link worthless."""
    people.withdraw(session, access, colleague_invitation_id, at)


@router.patch("/practice/people/{practitioner_id}", operation_id="changeColleague")
def patch_colleague(
    practitioner_id: str, body: ColleagueChange, access: ByConfirmed, session: WriteSession, at: Now
) -> Colleague:
    """Change someone's role, or whether they may sign in. Their sessions end."""
    return _colleague_out(session, people.change(session, access, practitioner_id, body, at))


@router.post(
    "/practice/people/{practitioner_id}/second-factor-resets", operation_id="resetSecondFactor", status_code=201
)
def post_reset(practitioner_id: str, access: ByConfirmed, session: WriteSession) -> Colleague:
    """Take a colleague's lost second factor away; they sign in by password and set up another. Their sessions end."""
    person = people.reset_target(session, access, practitioner_id)
    account.reset_second_factor(session, person, by=access.practitioner_id)
    return _colleague_out(session, person)


@router.post("/practice/people/{practitioner_id}/welcome-links", operation_id="welcomeBack", status_code=201)
def post_welcome_link(
    practitioner_id: str,
    access: ByConfirmed,
    nobodys: Annotated[str, Depends(passwords.nobodys)],  # hashed before the writer's turn begins
    session: WriteSession,
    at: Now,
    request: Request,
) -> ColleagueLink:
    """A link for a colleague who lost password and second factor: both are gone, and their sessions end.

    By the link they choose a new password, once, within three days. An earlier one for them is dead.
    """
    person = people.reset_target(session, access, practitioner_id)
    return people.welcome_back(session, access, person, nobodys, request.app.state.settings.practice_address(), at)


@router.patch("/practice/security", operation_id="changePracticeSecurity")
def patch_security(body: PracticeSecurity, access: ByConfirmed, session: WriteSession) -> PracticeSecurity:
    """Require a second factor from everyone, or no longer."""
    people.require_second_factor(session, access, required=body.requires_second_factor)
    return body


@router.put("/practice/words", operation_id="changePracticeWords")
def put_words(body: PracticeWords, access: ByPractitioner, session: WriteSession, at: Now) -> PracticeWords:
    """Set what clients read about emergencies and replies. ``readMe`` has the present words."""
    people.change_words(session, access, body, at)
    return body


@router.post("/practice/welcomes", operation_id="readWelcome")
def post_welcome(body: JoinCodeBody, session: ReadSession, at: Now) -> Welcome:
    """Whose practice a colleague's link leads to; the link stays good. Posted, so that no log has its code."""
    return people.welcome_of(session, body.code, at)


@dataclass(frozen=True)
class _Joining:
    invitation: ColleagueInvitation
    password_hash: str


def _joining(body: JoinBody, session: ReadSession, at: Now) -> _Joining:
    """Hash the password before the writer's turn begins, and only for a link that works."""
    found, _ = people.invitation_of(session, body.code, at)
    practice = store.practice(session, found.practice_id)
    return _Joining(found, passwords.hashed(body.password, practice.name, body.display_name, found.email))


@router.post("/practice/people", operation_id="joinPractice", status_code=201)
def post_person(
    joining: Annotated[_Joining, Depends(_joining)],
    body: JoinBody,
    session: WriteSession,
    at: Now,
    request: Request,
    response: Response,
) -> Me:
    """Join by a link with a password of one's own, or come back by one; signs in."""
    person = people.join(session, joining.invitation, body.display_name, joining.password_hash, at)
    set_actor(request, Actor(ActorKind.PRACTITIONER, person.practice_id, person.id))
    token = sessions.open_session(session, person, at, request.headers.get("User-Agent", ""))
    sessions.sign_out(session, request.cookies.get(COOKIE))
    session.flush()
    set_session(response, token)
    remember(response, request, person.email)
    return me_of(access_of(session, token))
