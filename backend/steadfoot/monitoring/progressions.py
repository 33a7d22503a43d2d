"""Suggestions on progress for one client, worked out at reading from the sheet. Nothing is changed here."""

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from typing import Any

from sqlmodel import Session

from steadfoot.core.clock import local_date
from steadfoot.exercises.schemas import Exercise
from steadfoot.exercises.service import variant_of
from steadfoot.identity import service as identity
from steadfoot.monitoring import flags, sheet, store
from steadfoot.monitoring.movements import Movement, around_of, circuits
from steadfoot.monitoring.person import LONG_SPAN_DAYS, adherence, judged, moment_of
from steadfoot.monitoring.progression_changes import easy_days
from steadfoot.monitoring.progression_facts import Standpoint, open_ones, ready_sentence, suggestion_id
from steadfoot.monitoring.progression_schemas import (
    DeclinedOut,
    ReasonEvidence,
    SuggestionOut,
    Suggestions,
    SuggestionsShort,
)
from steadfoot.monitoring.tables import ProgressionDecision
from steadfoot.programs import service as programs
from steadfoot.programs.content import Circuit, Prescription, with_dose
from steadfoot.programs.plan import Version
from steadfoot.rules.progression import decide
from steadfoot.rules.progression_steps import Suggestion, suggest
from steadfoot.rules.progression_words import Suggested
from steadfoot.rules.vocabulary import Kit

DECLINE = "decline"


@dataclass(frozen=True, slots=True)
class Offer:
    """A suggestion with the place in the program that it is about. ``easier_from`` is the first day of an easier
    week."""

    id: str
    movement: Movement
    circuit: Circuit
    prescription: Prescription
    entry: Exercise
    suggestion: Suggestion
    easier_from: date | None
    effect: str | None

    @property
    def then(self) -> Prescription | None:
        """The prescription after accepting."""
        return with_dose(self.prescription, self.suggestion.step.prescription) if self.suggestion.step else None


def standpoint(session: Session, client: Any, now: datetime) -> Standpoint:
    """Answer a client's program as of now."""
    today = local_date(now, client.time_zone)
    moment = moment_of(client.time_zone, identity.last_heard_at(session, client.practice_id, client.id), today)
    known = sheet.read(store.sheet(session, client.practice_id, client.id))
    lately = judged(known.sessions(moment.ago(LONG_SPAN_DAYS), today), moment)
    return Standpoint(
        client_id=client.id,
        sheet=known,
        today=today,
        adherence=adherence(lately, moment.ago(LONG_SPAN_DAYS), today).by_session,
        open_flags=open_ones(flags.standings_of(session, client.practice_id, client.id)),
        answered={one.suggestion_id for one in store.progression_decisions(session, client.practice_id, client.id)},
    )


def offers(here: Standpoint, version: Version | None, kit: Collection[Kit]) -> list[Offer]:
    """Answer what the rules suggest for every prescription of the running version."""
    if version is None:
        return []
    places = {one.key: (circuit, one) for circuit in circuits(version) for one in circuit.prescriptions}
    return [
        _offer(here, movement, *places[movement.key], version, kit)
        for movement in here.sheet.movements()
        if movement.key in places
    ]


def _offer(
    here: Standpoint,
    movement: Movement,
    circuit: Circuit,
    prescription: Prescription,
    version: Version,
    kit: Collection[Kit],
) -> Offer:
    facts, around = here.facts(movement), around_of(prescription, circuit.rounds, kit, version.library)
    assert around is not None, "a movement is of the library"
    suggestion = suggest(facts, around)
    first = _easier_from(here, circuit, suggestion, version)
    named = suggestion_id(here.client_id, movement.key, decide(facts))
    effect = _effect(movement, circuit, suggestion, first)
    entry = version.library[prescription.exercise]
    return Offer(named, movement, circuit, prescription, entry, suggestion, first, effect)


def _easier_from(here: Standpoint, circuit: Circuit, suggestion: Suggestion, version: Version) -> date | None:
    """Answer the first day of an easier week; None where there is nothing to make easier."""
    first = here.next_day(circuit.key)
    if suggestion.suggested is not Suggested.DELOAD or suggestion.rounds == circuit.rounds or first is None:
        return None
    return first if easy_days(version.content, circuit.key, first) else None


def _effect(movement: Movement, circuit: Circuit, suggestion: Suggestion, first: date | None) -> str | None:
    exercise = movement.name.partition(",")[0]
    if suggestion.step is not None:
        return f"The phone then shows: {exercise}: {suggestion.step.change}."
    if suggestion.suggested is Suggested.PROGRESS_ROUNDS:
        return f"The phone then shows {suggestion.rounds} rounds of {circuit.name} instead of {circuit.rounds}."
    if first is not None:
        rounds = f"{suggestion.rounds} of {circuit.rounds} rounds"
        return f"The phone then shows {rounds} of {circuit.name} for one week; after that it is as before."
    return None


def listed(session: Session, practice_id: str, client_id: str, now: datetime) -> Suggestions:
    """Answer the suggestions of one client, those that change something first.

    Raises:
        NotFound: the client is unknown, or another practice's.
    """
    client = identity.client_of(session, practice_id, client_id)
    here, version = standpoint(session, client, now), programs.current(session, practice_id, client_id)
    found = offers(here, version, frozenset(Kit(code) for code in client.kit))
    names = identity.practitioner_names(session, practice_id)
    declined = {
        one.suggestion_id: one
        for one in store.progression_decisions(session, practice_id, client_id)
        if one.action == DECLINE
    }
    items = [out(one) for one in found if one.id not in here.answered]
    return Suggestions(
        program_number=version.number if version else None,
        items=sorted(items, key=lambda item: not item.can_accept),
        declined=[_declined(one, declined[one.id], names) for one in found if one.id in declined],
    )


def short(session: Session, client: Any, now: datetime) -> SuggestionsShort:
    """Answer how many movements of a client are ready for more."""
    ready = standpoint(session, client, now).ready()
    return SuggestionsShort(ready=len(ready), sentence=ready_sentence(ready))


def out(offer: Offer) -> SuggestionOut:
    """Answer an offer as the page takes it."""
    suggestion, entry = offer.suggestion, offer.entry
    rung = variant_of(entry, offer.prescription.variant)
    return SuggestionOut(
        id=offer.id,
        prescription=offer.prescription.key,
        session=offer.circuit.name,
        exercise=entry.name,
        variant=rung.name if rung else offer.prescription.variant,
        suggestion=suggestion.suggested,
        sentence=suggestion.sentence,
        effect=offer.effect,
        reasons=reasons(offer),
        rule=suggestion.rule,
        kind=suggestion.cited.kind,
        source=suggestion.cited.source,
        would_change=suggestion.would_change,
        can_accept=offer.effect is not None,
        now=offer.prescription,
        then=offer.then,
    )


def reasons(offer: Offer) -> list[ReasonEvidence]:
    """Answer each reason once for each check-in that shows it."""
    days = offer.movement.days()
    return [
        ReasonEvidence(text=reason.words, event_id=event_id, day=days.get(event_id) if event_id else None)
        for reason in offer.suggestion.reasons
        for event_id in reason.event_ids or (None,)
    ]


def _declined(offer: Offer, decision: ProgressionDecision, names: Mapping[str, str]) -> DeclinedOut:
    by = names.get(decision.practitioner_id, "")
    return DeclinedOut(**dict(out(offer)), reason=decision.reason, by=by, decided_at=decision.decided_at)


def of_same_easier_week(offer: Offer, others: Sequence[Offer]) -> list[Offer]:
    """Answer the offers that an easier week of the same circuit answers too."""
    if offer.easier_from is None:
        return [offer]
    return [one for one in others if one.circuit.key == offer.circuit.key and one.easier_from is not None]
