"""The people of a practice, as its owners decide: who joins, in which role, who may no longer sign in."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from sqlmodel import Session

from steadfoot.core.ids import digest_of, new_code, normal_code, uuid7
from steadfoot.core.problems import Conflict, NotFound, not_found
from steadfoot.identity import account, factor_store, feed, sessions, store
from steadfoot.identity.access import PractitionerAccess
from steadfoot.identity.account_schemas import ColleagueBody, ColleagueChange, ColleagueLink, Welcome
from steadfoot.identity.events import Kind, Someone, security_event
from steadfoot.identity.roles import Role
from steadfoot.identity.schemas import PracticeWords
from steadfoot.identity.service import enroll
from steadfoot.identity.tables import ColleagueInvitation, Practitioner

LINK_FOR = timedelta(hours=72)
"""As long as a link that pairs a phone. House value."""


def _note(session: Session, access: PractitionerAccess, kind: Kind, about: str | None = None) -> None:
    security_event(session, Someone(access.practice_id, about, access.practitioner_id), kind)


@dataclass(frozen=True, slots=True)
class _Whose:
    email: str
    display_name: str
    role: Role
    practitioner_id: str | None = None


def _link(session: Session, access: PractitionerAccess, whose: _Whose, address: str, now: datetime) -> ColleagueLink:
    """Make a link for someone; an earlier one for their address is dead."""
    for old in store.colleague_invitations(session, access.practice_id, now):
        if old.email == whose.email:
            session.delete(old)
    code = new_code()
    row = ColleagueInvitation(
        id=uuid7(now),
        practice_id=access.practice_id,
        code_digest=digest_of(code),
        email=whose.email,
        display_name=whose.display_name,
        role=whose.role.value,
        created_at=now,
        created_by=access.practitioner_id,
        expires_at=now + LINK_FOR,
        redeemed_at=None,
        practitioner_id=whose.practitioner_id,
    )
    session.add(row)
    # In the fragment, which no server log and no Referer header ever carries.
    return ColleagueLink(id=row.id, url=f"{address}/desk/#join={code}", expires_at=row.expires_at)


def invite(
    session: Session, access: PractitionerAccess, body: ColleagueBody, address: str, now: datetime
) -> ColleagueLink:
    """Make a link by which a colleague joins, once. Only its digest is kept, so it can be shown only now.

    Raises:
        Conflict: someone signs in with this address already.
    """
    if store.practitioner_by_email(session, body.email):
        raise Conflict("email-taken", "Someone already signs in with this address.")
    _note(session, access, Kind.COLLEAGUE_INVITED)
    return _link(session, access, _Whose(body.email, body.display_name, body.role), address, now)


def withdraw(session: Session, access: PractitionerAccess, invitation_id: str, now: datetime) -> None:
    """Make a link worthless.

    Raises:
        NotFound: no such link waits in the practice.
    """
    for row in store.colleague_invitations(session, access.practice_id, now):
        if row.id == invitation_id:
            session.delete(row)
            _note(session, access, Kind.COLLEAGUE_WITHDRAWN)
            return
    raise not_found("invitation")


def invitation_of(session: Session, code: str, now: datetime) -> tuple[ColleagueInvitation, Practitioner | None]:
    """Answer the invitation that a link's code belongs to, and who comes back by it.

    Raises:
        NotFound: wrong, used up, withdrawn or expired; the answer is the same for each.
    """
    found = store.colleague_invitation(session, digest_of(normal_code(code)), now)
    if found is None:
        raise link_not_valid()
    return found, _returning(session, found)


def _returning(session: Session, invitation: ColleagueInvitation) -> Practitioner | None:
    """Answer who comes back by a link; None where it is for somebody new.

    Raises:
        NotFound: they may no longer sign in.
    """
    if invitation.practitioner_id is None:
        return None
    person = store.practitioner(session, invitation.practice_id, invitation.practitioner_id)
    if person is None or person.disabled_at is not None:
        raise link_not_valid()
    return person


def welcome_of(session: Session, code: str, now: datetime) -> Welcome:
    """Answer what whoever opens a link is shown.

    Raises:
        NotFound: the link does not work.
    """
    invitation, person = invitation_of(session, code, now)
    return Welcome(
        practice_name=store.practice(session, invitation.practice_id).name,
        email=invitation.email,
        display_name=person.display_name if person else invitation.display_name,
        role=Role(person.role if person else invitation.role),
        returning=person is not None,
    )


def link_not_valid() -> NotFound:
    """Answer the refusal of a link."""
    return NotFound("link-not-valid", "This link does not work. It may be used or too old: ask for a new one.")


def join(
    session: Session, invitation: ColleagueInvitation, display_name: str, password_hash: str, now: datetime
) -> Practitioner:
    """Use the link up and add the colleague; who comes back has the new password and keeps name and role.

    Raises:
        NotFound: somebody used it a moment ago.
        Conflict: someone signs in with its address meanwhile.
    """
    if not store.redeem_colleague(session, invitation.id, now):
        raise link_not_valid()
    if (back := _returning(session, invitation)) is not None:
        back.password_hash = password_hash
        session.add(back)
        account.note(session, back, Kind.PASSWORD_CHANGED)
        return back
    whose = (invitation.practice_id, invitation.email, display_name)
    person = enroll(session, *whose, password_hash, now, Role(invitation.role))
    someone = Someone(person.practice_id, person.id, invitation.created_by)
    security_event(session, someone, Kind.COLLEAGUE_JOINED)
    return person


def _found(session: Session, practice_id: str, practitioner_id: str) -> Practitioner:
    person = store.practitioner(session, practice_id, practitioner_id)
    if person is None:
        raise not_found("person")
    return person


def change(
    session: Session, access: PractitionerAccess, practitioner_id: str, body: ColleagueChange, now: datetime
) -> Practitioner:
    """Change someone's role, or whether they may sign in. Their sessions end: the next begins with the new rights.

    Raises:
        NotFound: no such person in the practice.
        Conflict: the practice would have no owner who can sign in.
    """
    store.lock_practice(session, access.practice_id)
    person = _found(session, access.practice_id, practitioner_id)
    session.refresh(person)
    before = (person.role, person.disabled_at)
    if body.role is not None:
        person.role = body.role.value
    if body.disabled is not None:
        person.disabled_at = (person.disabled_at or now) if body.disabled else None
    if (person.role, person.disabled_at) == before:
        return person
    session.add(person)
    session.flush()
    _keep_an_owner(store.practitioners(session, access.practice_id))
    sessions.end_all(session, person.practice_id, person.id)
    _note(session, access, Kind.COLLEAGUE_CHANGED, person.id)
    return person


def _keep_an_owner(people: Sequence[Practitioner]) -> None:
    if not any(person.role == Role.OWNER and person.disabled_at is None for person in people):
        detail = "A practice needs an owner who can sign in. Make someone else an owner first."
        raise Conflict("last-owner", detail)


def reset_target(session: Session, access: PractitionerAccess, practitioner_id: str) -> Practitioner:
    """Answer the colleague who lost what they sign in with, and whom an owner helps.

    Raises:
        NotFound: no such person in the practice.
        Conflict: it is the owner; they do that under their own account.
    """
    person = _found(session, access.practice_id, practitioner_id)
    if person.id == access.practitioner_id:
        raise Conflict("own-account", "You change your own password and second factor under Account and security.")
    return person


def welcome_back(
    session: Session, access: PractitionerAccess, person: Practitioner, nobodys: str, address: str, now: datetime
) -> ColleagueLink:
    """Take away all that a colleague signs in with, and make a link by which they choose a new password, once.

    Raises:
        Conflict: they may not sign in at all.
    """
    if person.disabled_at is not None:
        raise Conflict("disabled", "They may not sign in. Let them sign in again first.")
    person.password_hash = nobodys
    session.add(person)
    account.reset_second_factor(session, person, by=access.practitioner_id)
    _note(session, access, Kind.COLLEAGUE_WELCOMED_BACK, person.id)
    whose = _Whose(person.email, person.display_name, Role(person.role), person.id)
    return _link(session, access, whose, address, now)


def require_second_factor(session: Session, access: PractitionerAccess, *, required: bool) -> None:
    """Set whether everyone needs a second factor: who has none sets it up before anything else.

    Raises:
        Conflict: the owner has none yet.
    """
    practice = store.lock_practice(session, access.practice_id)
    if required and not factor_store.has_second_factor(session, _found(session, practice.id, access.practitioner_id)):
        raise Conflict("own-first", "Set up your own second factor first, so that you know what you ask for.")
    practice.requires_second_factor = required
    session.add(practice)
    _note(session, access, Kind.SECURITY_CHANGED)


def change_words(session: Session, access: PractitionerAccess, words: PracticeWords, now: datetime) -> None:
    """Set what clients read about emergencies and replies; each phone has it at its next contact.

    Of two owners at once the last one's words are kept. The same words again are no news to anyone.
    """
    practice = store.lock_practice(session, access.practice_id)
    if (practice.emergency_text, practice.reply_time_text) == (words.emergency_text, words.reply_time_text):
        return
    practice.emergency_text, practice.reply_time_text = words.emergency_text, words.reply_time_text
    session.add(practice)
    feed.announce_practice_to_all(session, practice, now)
