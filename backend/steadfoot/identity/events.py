"""Security events of identity: the one place that all of them pass through."""

import json
import logging
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from enum import StrEnum

from sqlmodel import Session

from steadfoot.core.problems import NotSignedIn, TooMany

_log = logging.getLogger("steadfoot.security")


class Kind(StrEnum):
    """What happened. Ids only are told beside it: no name, no address, no secret."""

    SIGNED_IN = "signed_in"
    SIGNED_OUT = "signed_out"
    SIGN_IN_REFUSED = "sign_in_refused"
    CONFIRMED = "confirmed"
    SESSIONS_ENDED = "sessions_ended"
    PASSWORD_CHANGED = "password_changed"  # noqa: S105  the name of an event
    TOTP_ADDED = "totp_added"
    TOTP_REMOVED = "totp_removed"
    PASSKEY_ADDED = "passkey_added"
    PASSKEY_REMOVED = "passkey_removed"
    RECOVERY_CODES_RENEWED = "recovery_codes_renewed"
    RECOVERY_CODE_USED = "recovery_code_used"
    SECOND_FACTOR_RESET = "second_factor_reset"
    COLLEAGUE_INVITED = "colleague_invited"
    COLLEAGUE_WITHDRAWN = "colleague_withdrawn"
    COLLEAGUE_JOINED = "colleague_joined"
    COLLEAGUE_CHANGED = "colleague_changed"
    COLLEAGUE_WELCOMED_BACK = "colleague_welcomed_back"
    SECURITY_CHANGED = "security_changed"


@dataclass(frozen=True, slots=True)
class Someone:
    """Whom an event is about, and who did it where that was somebody else. None: nobody known."""

    practice_id: str | None = None
    practitioner_id: str | None = None
    by: str | None = None


def security_event(session: Session | None, someone: Someone, kind: Kind) -> None:
    """Note an event. ``session`` is the transaction it belongs to; None where that one is rolled back: a refusal."""
    fields = {"practice": someone.practice_id, "practitioner": someone.practitioner_id, "by": someone.by}
    line = {"event": kind.value} | {name: value for name, value in fields.items() if value is not None}
    level = logging.INFO if session is not None else logging.WARNING
    _log.log(level, json.dumps(line, sort_keys=True))


@contextmanager
def refusals_noted(someone: Someone | None = None) -> Iterator[None]:
    """Note that a sign-in, or a confirmation of one, was refused. That a second factor is asked for is no refusal."""
    try:
        yield
    except (NotSignedIn, TooMany) as refused:
        if refused.code != "second-factor-needed":
            security_event(None, someone or Someone(), Kind.SIGN_IN_REFUSED)
        raise
