"""Request and reply bodies of the log, of erasure and of retention."""

from datetime import datetime

from pydantic import BaseModel, Field

from steadfoot.audit.service import ActorKind, Outcome


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
