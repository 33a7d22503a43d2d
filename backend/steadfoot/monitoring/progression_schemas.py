"""Request and reply bodies of suggestions on progress, of load, and of the sources of numbers."""

from datetime import date, datetime
from typing import Annotated, Literal

from pydantic import BaseModel, Field, StringConstraints

from steadfoot.core.texts import JSON_INT, Inward, Line, Note
from steadfoot.programs.content import Prescription
from steadfoot.rules.load import LoadNumber
from steadfoot.rules.progression_words import ProgressionRule, Suggested
from steadfoot.rules.sources import Kind

DECISIONS_MAX = 100
SuggestionId = Annotated[str, StringConstraints(pattern=r"^[0-9a-f]{32}$")]


class ReasonEvidence(BaseModel):
    """One reason in words, with the check-in that shows it and its day where there is one."""

    text: str
    event_id: str | None
    day: date | None


class SuggestionOut(BaseModel):
    """What the last sessions suggest for one prescription. Nothing is changed until a person accepts it."""

    id: str
    prescription: str = Field(description="Key of the prescription.")
    session: str = Field(description="Name of the circuit that it belongs to.")
    exercise: str
    variant: str
    suggestion: Suggested
    sentence: str
    effect: str | None = Field(description="What the phone would show; null where nothing would change.")
    reasons: list[ReasonEvidence]
    rule: ProgressionRule
    kind: Kind
    source: str
    would_change: str
    can_accept: bool = Field(description="Whether accepting changes the program.")
    now: Prescription
    then: Prescription | None = Field(description="The prescription after accepting, to be edited; null: as it is.")


class DeclinedOut(SuggestionOut):
    """A suggestion that was declined on this very evidence; accepting it is still possible."""

    reason: str
    by: str
    decided_at: datetime


class Suggestions(BaseModel):
    """Suggestions for every prescription of the running program; those that change something first."""

    program_number: int | None
    items: list[SuggestionOut]
    declined: list[DeclinedOut]


class SuggestionsShort(BaseModel):
    """How many movements are ready for more, and that in a sentence; null where there is none."""

    ready: int
    sentence: str | None


class Choice(Inward):
    """What was decided about one suggestion. Declining needs a reason; ``edited`` stands in the suggestion's place."""

    suggestion_id: SuggestionId
    action: Literal["accept", "decline"]
    reason: Line = ""
    edited: Prescription | None = None


class ProgressionsBody(Inward):
    """Decisions made at once: all that is accepted becomes one new version."""

    program_number: Annotated[int, Field(ge=1, le=1_000_000), JSON_INT]
    decisions: Annotated[list[Choice], Field(min_length=1, max_length=DECISIONS_MAX)]
    note: Note = ""


class Progressed(BaseModel):
    """The version that was published, null where all was declined, and what it changes."""

    program_number: int | None
    changes: list[str]


class DayLoad(BaseModel):
    """Load of one day: effort times minutes."""

    day: date
    load: float


class WeekLoad(BaseModel):
    """Load of one week, Monday to Sunday."""

    starts_on: date
    load: float


class LoadWords(BaseModel):
    """What a number can and cannot tell, in English; ``code`` is what a page says it in another language by."""

    code: LoadNumber
    about: str
    can_tell: str
    cannot_tell: str
    source: str


class LoadOut(BaseModel):
    """Load through the last day heard. Numbers are null while fewer than seven days are known."""

    through: date | None = Field(description="Last day that the phone has told about; null: never heard.")
    days: list[DayLoad]
    weekly: list[WeekLoad]
    weekly_load: float | None
    monotony: float | None
    strain: float | None
    ewma_7: float | None
    ewma_28: float | None
    words: list[LoadWords]
    caution: str


class WorkOut(BaseModel):
    """A work of the bibliography: what it is, whom it studied, how far it was read."""

    key: str
    authors: str
    year: str
    title: str
    where: str
    population: str
    read_as: str


class NumberOut(BaseModel):
    """A number that changes advice. ``value`` is null for a whole table."""

    name: str
    value: float | None
    unit: str
    kind: Kind
    source: str
    note: str
    where: str = Field(description="File of the rules that has it.")


class Sources(BaseModel):
    """Where our numbers come from."""

    works: list[WorkOut]
    numbers: list[NumberOut]
