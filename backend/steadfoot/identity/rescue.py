"""For whoever runs the server: letting in again someone who lost a password or a second factor."""

from sqlmodel import Session

from steadfoot.core.problems import NotFound
from steadfoot.identity import account, passwords, sessions, store
from steadfoot.identity.events import Kind
from steadfoot.identity.tables import Practitioner


def _found(session: Session, email: str) -> Practitioner:
    person = store.practitioner_by_email(session, email)
    if person is None:
        raise NotFound("not-found", f"Nobody signs in with {email}.")
    return person


def set_password(session: Session, email: str, password: str) -> None:
    """Give someone a new password and end their sessions.

    Raises:
        NotFound: nobody signs in with this address.
        Invalid: the password is too short, too long, or among the first that are guessed.
    """
    person = _found(session, email)
    practice = store.practice(session, person.practice_id)
    person.password_hash = passwords.hashed(password, practice.name, person.display_name, email)
    session.add(person)
    sessions.end_all(session, person.practice_id, person.id)
    account.note(session, person, Kind.PASSWORD_CHANGED)


def reset_second_factor(session: Session, email: str) -> None:
    """Take someone's second factor away and end their sessions.

    Raises:
        NotFound: nobody signs in with this address.
    """
    account.reset_second_factor(session, _found(session, email), by=None)
