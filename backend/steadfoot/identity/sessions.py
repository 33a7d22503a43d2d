"""Open sessions of practitioners: begun, renewed, listed, ended. What is ended is refused at its next request."""

from collections.abc import Sequence
from datetime import datetime

from sqlalchemy import update
from sqlmodel import Session, col

from steadfoot.core.ids import digest_of, new_token, uuid7
from steadfoot.core.problems import not_found
from steadfoot.identity import store
from steadfoot.identity.access import is_alive
from steadfoot.identity.browsers import UNKNOWN, words_of
from steadfoot.identity.tables import Practitioner, SignIn

OPEN_SESSIONS_LIMIT = 10


def open_session(session: Session, person: Practitioner, now: datetime, agent: str = UNKNOWN) -> str:
    """Open a session of someone who has shown who they are; answer the secret of its cookie."""
    for old in store.sign_ins(session, person.practice_id, person.id)[: -OPEN_SESSIONS_LIMIT + 1]:
        session.delete(old)
    browser, system = words_of(agent)
    token = new_token()
    session.add(
        SignIn(
            token_digest=digest_of(token),
            practice_id=person.practice_id,
            practitioner_id=person.id,
            created_at=now,
            last_seen_at=now,
            id=uuid7(now),
            confirmed_at=now,
            browser=browser,
            system=system,
        )
    )
    return token


def renewed(session: Session, session_id: str, now: datetime, *, confirmed: bool = False) -> str:
    """Give a session a new secret, as whenever its rights grow or change; answer it. The old one is dead."""
    token = new_token()
    values: dict[str, object] = {"token_digest": digest_of(token)} | ({"confirmed_at": now} if confirmed else {})
    session.execute(update(SignIn).where(col(SignIn.id) == session_id).values(**values))
    return token


def alive(session: Session, practice_id: str, practitioner_id: str, now: datetime) -> Sequence[SignIn]:
    """Answer where someone is signed in, newest use first."""
    found = [one for one in store.sign_ins(session, practice_id, practitioner_id) if is_alive(one, now)]
    return sorted(found, key=lambda one: one.last_seen_at, reverse=True)


def end(session: Session, practice_id: str, practitioner_id: str, session_id: str) -> None:
    """End one session.

    Raises:
        NotFound: it is none of this person's.
    """
    for one in store.sign_ins(session, practice_id, practitioner_id):
        if one.id == session_id:
            session.delete(one)
            return
    raise not_found("session")


def end_all(session: Session, practice_id: str, practitioner_id: str, keep: str | None = None) -> None:
    """End every session of someone but ``keep``."""
    for one in store.sign_ins(session, practice_id, practitioner_id):
        if one.id != keep:
            session.delete(one)


def sign_out(session: Session, token: str | None) -> Practitioner | None:
    """End the session with this cookie, if there is one; answer whose it was."""
    found = store.sign_in(session, digest_of(token)) if token else None
    if found is None:
        return None
    session.delete(found[0])
    return found[1]
