"""Reading readiness, and signing notes on it."""

from datetime import date, datetime
from typing import Any, Final

from sqlmodel import Session

from steadfoot.core.clock import local_date
from steadfoot.core.ids import uuid7
from steadfoot.core.problems import Conflict, Stale
from steadfoot.identity import service as identity
from steadfoot.identity.access import PractitionerAccess
from steadfoot.intake import service as intake
from steadfoot.monitoring import service as monitoring
from steadfoot.readiness import store
from steadfoot.readiness.asked import asked_of
from steadfoot.readiness.facts import known_of
from steadfoot.readiness.replies import digest_of, notes_of, shown_of, text_of
from steadfoot.readiness.schemas import Caution, ReadinessNoteBody, ReadinessOut, ReadinessShown, SignedNote
from steadfoot.readiness.tables import ReadinessNote
from steadfoot.rules.readiness import Verdict, readiness

_NOT_WITH_GO: Final = {
    Caution.SYMPTOM: "A red-flag symptom stops training. Speak to them and clear it first, or sign adapt or defer.",
    Caution.CLEARANCE_REQUIRED: "The screening asks for a clearance. Record it first, or sign adapt or defer.",
}


def of_client(session: Session, practice_id: str, client_id: str, now: datetime) -> ReadinessOut:
    """Answer a client's readiness as it stands, and the notes on it.

    Raises:
        NotFound: the client is unknown, or another practice's.
    """
    client = identity.client_of(session, practice_id, client_id)
    shown = _shown(session, client, local_date(now, client.time_zone))
    notes = notes_of(store.notes(session, practice_id, client_id))
    return ReadinessOut(shown=shown, digest=digest_of(shown), notes=notes)


def sign(
    session: Session, access: PractitionerAccess, client_id: str, body: ReadinessNoteBody, now: datetime
) -> SignedNote:
    """Keep a note with all that it rests on; an earlier one stays as it was signed, and no longer stands.

    Raises:
        NotFound: the client is unknown, or another practice's.
        Conflict: there is no trip to be ready for, or "go" while training is stopped or a clearance is missing.
        Stale: something has changed since what the signer was shown.
    """
    client = identity.client_of(session, access.practice_id, client_id)
    shown = _shown(session, client, local_date(now, client.time_zone))
    _refuse(body, shown)
    row = ReadinessNote(
        id=uuid7(now),
        practice_id=access.practice_id,
        client_id=client_id,
        verdict=body.verdict.value,
        words=body.words,
        shown=text_of(shown),
        practitioner_id=access.practitioner_id,
        signed_by=access.display_name,
        signed_at=now,
    )
    session.add(row)
    session.flush()
    return notes_of([row])[0]


def _shown(session: Session, client: Any, today: date) -> ReadinessShown:
    asked, known = asked_of(session, client), known_of(session, client, today)
    found = readiness(asked.trip if asked else None, known)
    return shown_of(asked, known, found, _cautions(session, client))


def _cautions(session: Session, client: Any) -> list[Caution]:
    state = intake.standing_of(session, client.practice_id, client.id).state.value
    stands = monitoring.findings_standing(session, client.practice_id, client.id)
    found = {Caution.SYMPTOM: stands.stops_training, Caution.OPEN_FINDINGS: stands.open > 0}
    return [caution for caution in Caution if found.get(caution, caution.value == state)]


def _refuse(body: ReadinessNoteBody, shown: ReadinessShown) -> None:
    if shown.trip is None:
        raise Conflict("no-trip", "There is no trip to be ready for. Enter its days first.")
    if body.digest != digest_of(shown):
        raise Stale("stale", "Something has changed since you looked. Read it again, then sign.")
    for caution in shown.cautions:
        if body.verdict is Verdict.GO and caution in _NOT_WITH_GO:
            raise Conflict(f"not-with-{caution.value.replace('_', '-')}", _NOT_WITH_GO[caution])
