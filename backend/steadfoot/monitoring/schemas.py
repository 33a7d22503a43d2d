"""Request and reply bodies of flags, decisions and messages."""

from datetime import date, datetime
from typing import Annotated

from pydantic import AfterValidator, BaseModel, Field

from steadfoot.core.texts import Inward, Note
from steadfoot.rules.findings import Action
from steadfoot.rules.sources import Kind


def _not_blank(value: str) -> str:
    if not value.strip():
        raise ValueError("must not be empty")
    return value.strip()


MessageText = Annotated[Note, Field(min_length=1), AfterValidator(_not_blank)]


class FlagShort(BaseModel):
    """A flag in one line."""

    id: str
    rule: str
    title: str
    since: date


class FlagSource(BaseModel):
    """The work that a rule follows."""

    key: str
    title: str
    authors: str
    year: str


class EvidenceOut(BaseModel):
    """A check-in that shows a finding."""

    event_id: str
    day: date
    sentence: str


class FlagSuggestion(BaseModel):
    """What the rule suggests, and what it would change for the client."""

    action: Action
    sentence: str
    effect: str


class Answer(BaseModel):
    """Something that may be answered to a flag."""

    action: Action
    label_key: str
    needs_message: bool


class DecisionOut(BaseModel):
    """What was answered, when, by whom; the program version where one was published."""

    action: Action
    note: str
    message: str
    decided_at: datetime
    by: str
    program_number: int | None


class Flag(BaseModel):
    """A rule's finding that a practitioner should see."""

    id: str
    client_id: str
    client_name: str
    rule: str
    kind: Kind = Field(description="How much weight the rule bears: published, derived or house.")
    source: FlagSource
    title: str
    since: date
    status: str = Field(description="open, acknowledged or closed.")
    evidence: list[EvidenceOut]
    suggestion: FlagSuggestion | None
    answers: list[Answer]
    decisions: list[DecisionOut]


class FlagList(BaseModel):
    """Flags, the most urgent first."""

    items: list[Flag]


class DecisionBody(Inward):
    """A practitioner's answer. ``hold`` and ``message`` need a message, ``close`` and ``clear`` a note.

    ``clear`` (spoken to, may train again) answers red-flag symptoms only, also after another answer.
    """

    action: Action
    note: Note = ""
    message: Note = ""


class Decided(BaseModel):
    """The flag after the answer, and the version that was published with it."""

    flag: Flag
    program_number: int | None


class MessageBody(Inward):
    """Words for a client."""

    text: MessageText


class MessageOut(BaseModel):
    """A message to a client; ``read_at`` is when the phone said that it was read."""

    id: str
    text: str
    from_: str = Field(serialization_alias="from", validation_alias="from")
    sent_at: datetime
    flag_id: str | None
    read_at: datetime | None


class MessageList(BaseModel):
    """Messages, oldest first."""

    items: list[MessageOut]
