"""Request and reply bodies of readiness."""

from datetime import date, datetime
from enum import StrEnum
from typing import Annotated

from pydantic import BaseModel, Field, StringConstraints

from steadfoot.core.texts import Inward, Words
from steadfoot.rules.norms import TestSide
from steadfoot.rules.readiness import Verdict
from steadfoot.rules.readiness_items import Closing, Doubt, EvidenceKind, Mark, Subject
from steadfoot.rules.sources import Kind

DIGEST_PATTERN = r"^[0-9a-f]{64}$"


class Caution(StrEnum):
    """What a person should know before they sign. The first two do not go together with "go"."""

    SYMPTOM = "symptom"
    """A red-flag symptom stops training and nobody has cleared it."""
    CLEARANCE_REQUIRED = "clearance_required"
    CLEARANCE_RECOMMENDED = "clearance_recommended"
    NOT_SCREENED = "not_screened"
    OPEN_FINDINGS = "open_findings"


class ReadinessDay(BaseModel):
    """One day of the trip; null where the trip does not say it."""

    name: str
    distance_km: float = Field(description="0 on a day of rest.")
    ascent_m: float | None
    descent_m: float | None
    pack_kg: float | None


class ReadinessTrip(BaseModel):
    """What is asked."""

    name: str | None
    starts_on: date | None
    days: list[ReadinessDay]


class ReadinessEvidence(BaseModel):
    """A check-in or a test result, with the value that it shows."""

    kind: EvidenceKind
    id: str
    day: date
    value: float
    side: TestSide | None


class ReadinessPart(BaseModel):
    """One thing of several that one day asks for at once."""

    subject: Subject
    asked: float
    shown: float


class ReadinessItem(BaseModel):
    """What is asked beside what was shown, in ``unit``; ``low`` to ``high`` is what the value shown may really be."""

    subject: Subject
    mark: Mark
    unit: str
    asked: float | None
    shown: float | None
    low: float | None
    high: float | None
    at_most: bool = Field(description="Less is better.")
    parts: list[ReadinessPart]
    evidence: list[ReadinessEvidence]
    doubts: list[Doubt]
    closing: Closing
    weeks: int | None = Field(description="What closing the gap takes; null where no number can be given.")
    in_time: bool | None = Field(description="Whether the weeks before the taper suffice; null if one is not known.")
    kind: Kind
    source: str
    note: str = Field(description="What draws the line between the marks.")


class ReadinessShown(BaseModel):
    """Everything that a note rests on."""

    as_of: date
    trip: ReadinessTrip | None = Field(description="Null while no day of the trip is known.")
    weeks_left: int | None = Field(description="Null without a date.")
    weeks_to_build: int | None = Field(description="Those of the weeks left that are not the taper.")
    heard_on: date | None
    cautions: list[Caution]
    items: list[ReadinessItem]


class SignedNote(BaseModel):
    """A note as it was signed, with what it rested on then."""

    id: str
    verdict: Verdict
    words: str
    signed_by: str
    signed_at: datetime
    superseded_at: datetime | None = Field(description="When a newer note took its place; null while it stands.")
    shown: ReadinessShown


class ReadinessOut(BaseModel):
    """Readiness as it stands, and the notes, newest first."""

    shown: ReadinessShown
    digest: str = Field(description="Names what is shown; a note is signed for exactly this.")
    notes: list[SignedNote]


class ReadinessNoteBody(Inward):
    """A note to sign: go as planned, go with changes, or not yet, with the reasons in words."""

    verdict: Verdict
    words: Words
    digest: Annotated[str, StringConstraints(pattern=DIGEST_PATTERN)] = Field(
        description="The digest of what was shown to the person who signs."
    )
