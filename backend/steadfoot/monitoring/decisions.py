"""A practitioner's answer to a flag, and what follows from it, all in one transaction."""

import json
from datetime import datetime
from typing import Final

from sqlmodel import Session

from steadfoot.audit import service as audit
from steadfoot.core.ids import uuid7
from steadfoot.core.problems import Conflict, Invalid
from steadfoot.core.texts import canonical
from steadfoot.identity import service as identity
from steadfoot.identity.access import PractitionerAccess
from steadfoot.monitoring import flags, messages, upkeep
from steadfoot.monitoring.flags import FlagStatus, Stored
from steadfoot.monitoring.schemas import Decided, DecisionBody, Flag
from steadfoot.monitoring.suggestions import eased_off
from steadfoot.monitoring.tables import FlagDecision
from steadfoot.programs import service as programs
from steadfoot.rules.findings import CARDS, Action

_WHY: Final = {
    Action.CLEAR: "Write whom you spoke to and why training may go on.",
    Action.CLOSE: "Write why nothing needs to change.",
}


def decide(session: Session, access: PractitionerAccess, flag_id: str, body: DecisionBody, now: datetime) -> Decided:
    """Answer a flag: keep the decision, publish the eased program if that is the answer, tell the phone.

    Raises:
        NotFound: the flag is unknown, or another practice's.
        Invalid: a message or a note is missing, nothing can be eased off, or nothing has to be cleared.
        Conflict: it is answered already and nothing new came; carries the earlier decision.
    """
    standing = flags.standing_of(session, access.practice_id, flag_id)
    audit.about(session, standing.finding.client_id)
    _refuse_repeat(standing, body, identity.practitioner_names(session, access.practice_id))
    _refuse_incomplete(standing, body)
    number = _ease_off(session, access, standing, body, now) if body.action is Action.EASE_OFF else None
    decision = _kept(access, standing, body, number, now)
    session.add(decision)
    _tell(session, access, decision, now)
    session.flush()
    return Decided(flag=_flag_after(session, access, standing, now), program_number=number)


def _refuse_repeat(standing: Stored, body: DecisionBody, names: dict[str, str]) -> None:
    if body.action is Action.CLEAR and standing.stops_training:
        return
    again = standing.status is FlagStatus.ACKNOWLEDGED and body.action is Action.ACKNOWLEDGE
    if standing.status is FlagStatus.CLOSED or again:
        earlier = flags.decision_out(standing.decisions[-1], names).model_dump(mode="json")
        raise Conflict("already-answered", "This flag is answered, and nothing new has come since.", decision=earlier)


def _refuse_incomplete(standing: Stored, body: DecisionBody) -> None:
    if body.action is Action.CLEAR and not standing.stops_training:
        raise Invalid("nothing-to-clear", "Only a symptom that stops training can be cleared.")
    if body.action in (Action.HOLD, Action.MESSAGE) and not body.message.strip():
        raise _missing("message", "Write the message that the client will read.")
    if body.action in _WHY and not body.note.strip():
        raise _missing("note", _WHY[body.action])


def _missing(field: str, detail: str) -> Invalid:
    errors = [{"pointer": f"/body/{field}", "code": "missing", "detail": detail}]
    return Invalid(f"{field}-needed", detail, errors=errors)


def _ease_off(session: Session, access: PractitionerAccess, standing: Stored, body: DecisionBody, now: datetime) -> int:
    client_id, keys = standing.finding.client_id, json.loads(standing.finding.suggestion)["keys"]
    current = programs.current(session, access.practice_id, client_id)
    kit = programs.kit_of(session, access.practice_id, client_id)
    eased = eased_off(current, standing.finding.subject, keys, kit) if current and keys else None
    if current is None or eased is None or not eased.moved:
        detail = "The program has nothing here that can be made easier."
        raise Invalid("nothing-to-ease", detail)
    note = body.note or f"{CARDS[standing.rule].title}."
    version = programs.publish(session, access, client_id, eased.content, current.number, note, now)
    return version.number


def _kept(
    access: PractitionerAccess, standing: Stored, body: DecisionBody, number: int | None, now: datetime
) -> FlagDecision:
    return FlagDecision(
        id=uuid7(now),
        practice_id=access.practice_id,
        client_id=standing.finding.client_id,
        flag_id=standing.finding.id,
        rule=standing.finding.rule,
        subject=standing.finding.subject,
        action=body.action.value,
        note=body.note,
        message=body.message,
        covers=canonical(sorted(one.event_id for one in standing.evidence)),
        program_number=number,
        practitioner_id=access.practitioner_id,
        decided_at=now,
    )


def _tell(session: Session, access: PractitionerAccess, decision: FlagDecision, now: datetime) -> None:
    client = identity.client_of(session, access.practice_id, decision.client_id)
    if decision.message.strip():
        messages.send(session, access, client.id, decision.message, decision.flag_id, now)
    answer = {
        "flag_id": decision.flag_id,
        "action": decision.action,
        "event_ids": json.loads(decision.covers),
        "message": decision.message,
        "decided_at": messages.wire_time(now),
    }
    identity.announce(session, client, "flag_answer", answer, now)


def _flag_after(session: Session, access: PractitionerAccess, standing: Stored, now: datetime) -> Flag:
    """A new program may change what is suggested, so the findings are built again before the answer is told."""
    client_id, flag_id = standing.finding.client_id, standing.finding.id
    upkeep.refresh(session, access.practice_id, client_id)
    client = identity.client_of(session, access.practice_id, client_id)
    after = flags.standing_of(session, access.practice_id, flag_id)
    return flags.flag(after, client, identity.practitioner_names(session, access.practice_id), now)
