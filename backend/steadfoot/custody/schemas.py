"""Request and reply bodies of the log, of erasure and of retention."""

from datetime import datetime
from enum import StrEnum
from typing import Annotated

from pydantic import BaseModel, Field

from steadfoot.audit.service import ActorKind, Outcome
from steadfoot.core.texts import JSON_INT, Inward


class AuditRow(BaseModel):
    """One act, with the names that its ids have today; null where nobody has that id any more."""

    number: int
    at: datetime
    actor_kind: ActorKind
    actor_id: str | None
    actor_name: str | None
    subject_id: str | None
    subject_name: str | None
    action: str = Field(description="An operation's id of this document, or a job's name.")
    outcome: Outcome
    times: int = Field(description="How many calls the row stands for: more than one in a flood of refusals.")


class Named(BaseModel):
    """Somebody to choose by."""

    id: str
    name: str


class AuditPage(BaseModel):
    """Rows, newest first."""

    items: list[AuditRow]
    next: int | None = Field(description="Ask again with this as `below` for older rows; null: these are the last.")
    practitioners: list[Named]
    clients: list[Named]


class ChainState(BaseModel):
    """Whether the practice's chain is whole, as walked just now."""

    whole: bool
    rows: int
    head: str = Field(description="Digest of the newest row: note it where this server cannot write.")
    broken_at: int | None = Field(description="Number of the first row that does not fit.")
    why: str


class When(StrEnum):
    """When a record is erased: at once, or after days in which that can be taken back."""

    NOW = "now"
    LATER = "later"


class ErasureBody(Inward):
    """The person's name, typed to confirm."""

    name: Annotated[str, Field(max_length=300)]
    when: When


class ErasureOut(BaseModel):
    """An erasure that is asked for."""

    client_id: str
    asked_at: datetime
    due_at: datetime


class ErasureDone(BaseModel):
    """What came of it: erased, or to be erased."""

    erased: bool
    asked: ErasureOut | None


class ErasureState(BaseModel):
    """What goes with a record, in numbers, and what stays."""

    asked: ErasureOut | None
    entries: int
    programs: int
    tests: int
    screenings: int
    messages: int
    notes: int
    phones: int
    log_rows_kept: int = Field(description="Rows of the log stay, with ids that then name nobody.")
    undo_days: int


class Due(BaseModel):
    """An archived client who is past the practice's time."""

    client_id: str
    display_name: str
    archived_at: datetime
    due_since: datetime


class RetentionBody(Inward):
    """Years after archiving, or null: kept until someone decides. It must be said; there is no default."""

    years: Annotated[int, Field(ge=1, le=100), JSON_INT] | None


class RetentionOut(BaseModel):
    """How long records are kept, and what is due."""

    chosen_at: datetime | None = Field(description="null: nobody has chosen yet.")
    years: int | None
    due: list[Due]
    erasures: list[ErasureOut]
    names: dict[str, str] = Field(description="Names of archived clients by id.")
