"""What is done each night: erasures whose time has come, the chains of the log, sessions nobody can use any more."""

import logging
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path
from typing import Final

from steadfoot.audit import service as audit
from steadfoot.audit.service import INSTALLATION, Act, Actor, ActorKind, Outcome, Verdict
from steadfoot.core.clock import Clock
from steadfoot.core.database import Database
from steadfoot.core.ids import uuid7
from steadfoot.core.recurring import Recurring
from steadfoot.custody import service
from steadfoot.custody.erase import wipe
from steadfoot.identity import service as identity

HOUR: Final = 2
"""Hour of the day, UTC, at which a server does it. House value."""
_CHECKED = "verifyAudit"
_log = logging.getLogger(__name__)


@dataclass(frozen=True, slots=True)
class Night:
    """What was done, and what each chain is worth."""

    erased: int
    verdicts: Sequence[Verdict]
    due: int


def run(database: Database, ledger: Path, now: datetime) -> Night:
    """Do a night's work. That it verified the log, and how that went, is itself a row of the log."""
    erased = service.carry_out_due(database, ledger, now)
    with database.write() as session:
        identity.forget_dead_sessions(session, now)
    with database.read() as session:
        verdicts = audit.verify_all(session)
        due = sum(len(found) for found in service.due_everywhere(session, now).values())
    with database.write() as session:
        audit.record_all(session, [_checked(one, now) for one in verdicts if one.practice_id != INSTALLATION])
    for one in verdicts:
        if one.broken_at is not None:
            _log.error("The audit log of %s is broken at row %d: %s", one.practice_id, one.broken_at, one.why)
    if not erased:
        wipe_leftovers(database)
    return Night(erased, verdicts, due)


def _checked(found: Verdict, now: datetime) -> Act:
    outcome = Outcome.DONE if found.broken_at is None else Outcome.FAILED
    return Act(Actor(ActorKind.SERVER, found.practice_id), _CHECKED, now, uuid7(now), outcome=outcome)


def wipe_leftovers(database: Database) -> None:
    """Clear traces that an erasure of the day could not, since the database was in use."""
    if database.is_sqlite:
        wipe(database)()


def until_next(now: datetime) -> float:
    """Answer the seconds until the next night's work."""
    begins = now.replace(hour=HOUR, minute=0, second=0, microsecond=0)
    return ((begins if begins > now else begins + timedelta(days=1)) - now).total_seconds()


def nightly(database: Database, ledger: Path, clock: Clock) -> Recurring:
    """Answer what does it each night."""
    return Recurring("the night's work", lambda: until_next(clock()), lambda: run(database, ledger, clock()))
