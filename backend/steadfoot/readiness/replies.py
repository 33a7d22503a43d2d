"""Turns the rules' answer into the reply, and names it by its content."""

import hashlib
import json
from collections.abc import Sequence
from dataclasses import asdict

from steadfoot.core.texts import canonical
from steadfoot.readiness.asked import Asked
from steadfoot.readiness.schemas import Caution, ReadinessDay, ReadinessItem, ReadinessShown, ReadinessTrip, SignedNote
from steadfoot.readiness.tables import ReadinessNote
from steadfoot.rules.readiness import Readiness, Verdict
from steadfoot.rules.readiness_facts import Known
from steadfoot.rules.readiness_items import Item


def shown_of(asked: Asked | None, known: Known, found: Readiness, cautions: list[Caution]) -> ReadinessShown:
    """Answer everything that a note would rest on."""
    return ReadinessShown(
        as_of=known.today,
        trip=_trip(asked) if asked else None,
        weeks_left=found.weeks_left,
        weeks_to_build=found.weeks_to_build,
        heard_on=known.heard_on,
        cautions=cautions,
        items=[_item(item) for item in found.items],
    )


def _trip(asked: Asked) -> ReadinessTrip:
    days = [ReadinessDay(name=name, **asdict(day)) for name, day in zip(asked.names, asked.trip.days, strict=True)]
    return ReadinessTrip(name=asked.name, starts_on=asked.trip.starts_on, days=days)


def _item(item: Item) -> ReadinessItem:
    cited = item.cited
    rest = asdict(item)
    del rest["cited"]
    return ReadinessItem.model_validate({**rest, "kind": cited.kind, "source": cited.source, "note": cited.note})


def text_of(shown: ReadinessShown) -> str:
    """Answer it as canonical text: what is stored with a note."""
    return canonical(shown.model_dump(mode="json"))


def digest_of(shown: ReadinessShown) -> str:
    """Answer a name of the content: another one as soon as anything shown is another."""
    return hashlib.sha256(text_of(shown).encode()).hexdigest()


def notes_of(rows: Sequence[ReadinessNote]) -> list[SignedNote]:
    """Answer the notes, newest first as they come: each but the first was superseded by the one before it."""
    newer = [None, *(row.signed_at for row in rows)]
    return [
        SignedNote(
            id=row.id,
            verdict=Verdict(row.verdict),
            words=row.words,
            signed_by=row.signed_by,
            signed_at=row.signed_at,
            superseded_at=superseded,
            shown=ReadinessShown.model_validate(json.loads(row.shown)),
        )
        for row, superseded in zip(rows, newer, strict=False)
    ]
