"""Adding to the log: inside a transaction, so that an act and its row are kept or lost together."""

from collections.abc import Iterable, Sequence

from sqlmodel import Session

from steadfoot.audit import store
from steadfoot.audit.entries import INSTALLATION, NOBODY, Act, Actor, ActorKind, Outcome
from steadfoot.audit.store import chain, heads, page
from steadfoot.audit.verify import Verdict, verify, verify_all

__all__ = [
    "INSTALLATION",
    "NOBODY",
    "Act",
    "Actor",
    "ActorKind",
    "Outcome",
    "Verdict",
    "about",
    "by",
    "chain",
    "heads",
    "page",
    "record",
    "record_all",
    "verify",
    "verify_all",
]

SUBJECT, ACTOR = "audit_subject", "audit_actor"


def about(session: Session, subject_id: str) -> None:
    """Say whom this transaction is about, where the address does not."""
    session.info[SUBJECT] = subject_id


def by(session: Session, actor: Actor) -> None:
    """Say who acts in this transaction, where it is known only inside it."""
    session.info[ACTOR] = actor


def record(session: Session, act: Act) -> None:
    """Add one row in the session's transaction. Do it last: the practice's chain is locked until the commit."""
    record_all(session, [act])


def record_all(session: Session, acts: Iterable[Act]) -> None:
    """Add rows, of any practices, in the session's transaction.

    Practices come in the order of their ids: two writers who need the same chains never wait for one another in turn.
    """
    session.flush()
    waiting: dict[str, list[Act]] = {}
    for act in acts:
        waiting.setdefault(act.actor.practice_id, []).append(act)
    for practice_id in sorted(waiting):
        _chain_up(session, practice_id, waiting[practice_id])


def _chain_up(session: Session, practice_id: str, acts: Sequence[Act]) -> None:
    number, previous = store.take_numbers(session, practice_id, len(acts))
    rows = []
    for place, act in enumerate(acts, start=number + 1):
        rows.append(act.row(place, previous))
        previous = rows[-1]["digest"]
    store.put(session, practice_id, rows)
