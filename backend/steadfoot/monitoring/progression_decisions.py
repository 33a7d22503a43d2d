"""What a practitioner decides about suggestions: all that is accepted becomes one version, in one transaction."""

from collections import Counter
from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import Any

from sqlmodel import Session

from steadfoot.core.ids import uuid7
from steadfoot.core.problems import Conflict, Invalid, Stale
from steadfoot.core.texts import canonical
from steadfoot.identity import service as identity
from steadfoot.identity.access import PractitionerAccess
from steadfoot.monitoring import upkeep
from steadfoot.monitoring.progression_changes import Accepted, EasierWeek, changed
from steadfoot.monitoring.progression_schemas import Choice, Progressed, ProgressionsBody
from steadfoot.monitoring.progressions import DECLINE, Offer, of_same_easier_week, offers, reasons, standpoint
from steadfoot.monitoring.tables import ProgressionDecision
from steadfoot.programs import service as programs
from steadfoot.programs.clearance import refuse_uncleared
from steadfoot.programs.content import ProgramContent
from steadfoot.programs.findings import Severity
from steadfoot.programs.plan import Version
from steadfoot.rules.progression_words import Suggested
from steadfoot.rules.vocabulary import Kit

_EASIER = frozenset({Suggested.REGRESS, Suggested.DELOAD})
Chosen = list[tuple[Choice, Offer]]


def decide(
    session: Session, access: PractitionerAccess, client_id: str, body: ProgressionsBody, now: datetime
) -> Progressed:
    """Keep what was decided, and publish all that was accepted as one version.

    Raises:
        NotFound: the client is unknown, or another practice's.
        Stale: the suggestions were about an earlier version.
        Conflict: a suggestion is not there any more, or a clearance is needed first.
        Invalid: a reason is missing, nothing can be accepted, or a prescription has errors; names each.
    """
    client = identity.client_of(session, access.practice_id, client_id)
    current = programs.current(session, access.practice_id, client_id)
    _refuse_stale(body, current)
    kit = frozenset(Kit(code) for code in client.kit)
    found = offers(standpoint(session, client, now), current, kit)
    chosen = _chosen(body.decisions, found)
    _refuse_incomplete(chosen)
    version = _published(session, access, client_id, chosen, current, body.note, now)
    number = version.number if version else None
    session.add_all(_kept(access, client_id, chosen, found, number, now))
    session.flush()
    upkeep.refresh(session, access.practice_id, client_id)
    return Progressed(program_number=number, changes=list(version.changes) if version else [])


def _refuse_stale(body: ProgressionsBody, current: Version | None) -> None:
    number = current.number if current else None
    if number != body.program_number:
        text = f"Version {number} was published meanwhile." if number else "Nothing is published for this client yet."
        raise Stale("stale", f"{text} Look at the suggestions again.", current_number=number)


def _chosen(decisions: Sequence[Choice], found: Sequence[Offer]) -> Chosen:
    by_id = {offer.id: offer for offer in found}
    gone = [f"/body/decisions/{place}" for place, one in enumerate(decisions) if one.suggestion_id not in by_id]
    if gone:
        errors = [{"pointer": pointer, "code": "gone", "detail": "This is not suggested any more."} for pointer in gone]
        raise Conflict("suggestion-gone", "New check-ins came in. Look at the suggestions again.", errors=errors)
    repeated = [one for one, times in Counter(one.suggestion_id for one in decisions).items() if times > 1]
    if repeated:
        raise Invalid("decided-twice", "A suggestion was decided about twice.", errors=[])
    return [(one, by_id[one.suggestion_id]) for one in decisions]


def _refuse_incomplete(chosen: Chosen) -> None:
    errors = [
        {"pointer": f"/body/decisions/{place}/{field}", "code": code, "detail": f"{offer.movement.name}: {detail}"}
        for place, (choice, offer) in enumerate(chosen)
        for field, code, detail in _missing(choice, offer)
    ]
    if errors:
        raise Invalid(errors[0]["code"], errors[0]["detail"], errors=errors)


def _missing(choice: Choice, offer: Offer) -> list[tuple[str, str, str]]:
    if choice.action == DECLINE:
        return [] if choice.reason else [("reason", "reason-needed", "write why not.")]
    if choice.edited is None:
        detail = "there is nothing to accept; edit it, or leave it as it is."
        return [] if offer.effect is not None else [("action", "nothing-to-accept", detail)]
    if choice.edited.key != offer.prescription.key:
        return [("edited", "another-prescription", "what was edited is another prescription.")]
    return []


def _published(
    session: Session,
    access: PractitionerAccess,
    client_id: str,
    chosen: Chosen,
    current: Version | None,
    note: str,
    now: datetime,
) -> Version | None:
    taken = [(choice, offer) for choice, offer in chosen if choice.action != DECLINE]
    if not taken or current is None:
        return None
    if any(choice.edited or offer.suggestion.suggested not in _EASIER for choice, offer in taken):
        refuse_uncleared(session, access.practice_id, client_id)
    content = changed(current.content, _accepted(taken))
    if content == current.content:
        raise Invalid("nothing-changes", "What was accepted is what the program says already.")
    _refuse_errors(session, access, client_id, content, chosen, now)
    return programs.publish(session, access, client_id, content, current.number, note or _note(taken), now)


def _accepted(taken: Chosen) -> Accepted:
    prescriptions = {offer.prescription.key: new for choice, offer in taken if (new := choice.edited or offer.then)}
    whole = [offer for choice, offer in taken if choice.edited is None]
    rounds = {
        one.circuit.key: one.suggestion.rounds
        for one in whole
        if one.suggestion.rounds is not None and one.suggestion.suggested is Suggested.PROGRESS_ROUNDS
    }
    easier = {
        one.circuit.key: EasierWeek(one.circuit.key, one.suggestion.rounds, one.easier_from)
        for one in whole
        if one.suggestion.rounds is not None and one.easier_from is not None
    }
    return Accepted(prescriptions, rounds, list(easier.values()))


def _note(taken: Chosen) -> str:
    return "; ".join(dict.fromkeys(offer.suggestion.sentence for _, offer in taken))


def _refuse_errors(
    session: Session,
    access: PractitionerAccess,
    client_id: str,
    content: ProgramContent,
    chosen: Chosen,
    now: datetime,
) -> None:
    """Name the prescription that does not fit, where the fault is in one of those decided about."""
    found = programs.findings_for(session, access.practice_id, client_id, content, now)
    wrong = [one for one in found if one.severity is Severity.ERROR]
    if wrong:
        places = _places(content, chosen)
        errors = [_error(places, one.pointer, one.code, one.message) for one in wrong]
        raise Invalid("program-has-errors", f"{errors[0]['detail']} Nothing was published.", errors=errors)


def _places(content: ProgramContent, chosen: Chosen) -> dict[str, tuple[int, str]]:
    """Answer which decision and which movement stand behind a pointer into the content."""
    decided = {offer.prescription.key: (place, offer.movement.name) for place, (_, offer) in enumerate(chosen)}
    return {
        f"/sessions/{number}/prescriptions/{row}": decided[one.key]
        for number, session in enumerate(content.sessions)
        for row, one in enumerate(getattr(session, "prescriptions", ()))
        if one.key in decided
    }


def _error(places: Mapping[str, tuple[int, str]], pointer: str, code: str, message: str) -> dict[str, Any]:
    for start, (place, name) in places.items():
        if f"{pointer}/".startswith(f"{start}/"):
            field = f"/body/decisions/{place}/edited{pointer.removeprefix(start)}"
            return {"pointer": field, "code": code, "detail": f"{name}: {message}"}
    return {"pointer": "/body/decisions", "code": code, "detail": message}


def _kept(
    access: PractitionerAccess,
    client_id: str,
    chosen: Chosen,
    found: Sequence[Offer],
    number: int | None,
    now: datetime,
) -> list[ProgressionDecision]:
    rows: dict[str, ProgressionDecision] = {}
    for choice, offer in chosen:
        accepted = choice.action != DECLINE
        for one in of_same_easier_week(offer, found) if accepted and choice.edited is None else [offer]:
            named = one is offer or one.id not in rows
            if named:
                rows[one.id] = _row(access, client_id, choice, one, number if accepted else None, now)
    return list(rows.values())


def _row(
    access: PractitionerAccess, client_id: str, choice: Choice, offer: Offer, number: int | None, now: datetime
) -> ProgressionDecision:
    return ProgressionDecision(
        id=uuid7(now),
        practice_id=access.practice_id,
        client_id=client_id,
        suggestion_id=offer.id,
        prescription=offer.prescription.key,
        rule=offer.suggestion.rule.value,
        suggestion=offer.suggestion.suggested.value,
        action="edit" if choice.edited else choice.action,
        reason=choice.reason,
        evidence=canonical([one.model_dump(mode="json") for one in reasons(offer)]),
        program_number=number,
        practitioner_id=access.practitioner_id,
        decided_at=now,
    )
