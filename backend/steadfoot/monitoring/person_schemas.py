"""Reply bodies that show one client's weeks: adherence, ridge, pain; alone and in the caseload."""

from datetime import date, datetime
from typing import Any, Literal

from pydantic import BaseModel, Field

from steadfoot.monitoring.progression_schemas import SuggestionsShort
from steadfoot.monitoring.schemas import EvidenceOut, Flag, FlagShort, MessageOut
from steadfoot.rules.attention import Group
from steadfoot.rules.findings import Action
from steadfoot.rules.sources import Kind
from steadfoot.rules.vocabulary import Status


class RatioOut(BaseModel):
    """Done over prescribed among what was due, 0 to 1: a range while some of it is not heard."""

    prescribed: int
    done: int
    low: float | None = Field(description="Null where nothing was prescribed.")
    high: float | None


class SpanAdherence(BaseModel):
    """Adherence over a span of days, by session and by set."""

    by_session: RatioOut
    by_set: RatioOut


class AdherencePair(BaseModel):
    """Adherence over the last 7 and the last 28 days, today included."""

    days_7: SpanAdherence
    days_28: SpanAdherence


class DayMark(BaseModel):
    """A planned session in short."""

    planned_id: str
    date: date
    name: str
    status: Status
    settled: bool = Field(description="False while the phone may hold more than it has told.")


class SessionOut(DayMark):
    """A planned session with what was reported. Loads are effort times minutes."""

    kind: str
    sets_done: int
    sets_prescribed: int
    program_version: int
    done_on: date | None
    effort: int | None
    minutes: int | None
    planned_load: float | None
    done_load: float | None


class AdherenceOut(SpanAdherence):
    """Adherence of one client from one day to another."""

    client_id: str
    from_: date = Field(serialization_alias="from", validation_alias="from")
    to: date
    sessions: list[SessionOut]


class GoalOut(BaseModel):
    """What the program leads up to."""

    name: str
    date: date


class GoalAhead(GoalOut):
    """A goal with the days left; negative once it has passed."""

    days_to: int


class RidgeWeek(BaseModel):
    """One week of the ridge, Monday to Sunday."""

    starts_on: date
    planned_load: float
    done_load: float
    heard: Literal["all", "part", "none"]
    due_share: float | None = Field(
        description="Running week only: share of its planned load that was due by the last day heard, over 0 to 1. "
        "Draw the week at done_load / due_share; null while nothing is due."
    )


class Ridge(BaseModel):
    """The weeks of a program as loads, planned and done."""

    weeks: list[RidgeWeek]
    today: date
    heard_until: date | None
    goal: GoalOut | None


class RowClient(BaseModel):
    """Whose row it is. The age is that of the year, since only the year of birth is kept."""

    id: str
    display_name: str
    age: int | None


class ReasonOut(BaseModel):
    """Why a client has their place."""

    rule: str
    sentence: str
    since: date | None
    kind: Kind
    source: str


class RowSuggestion(BaseModel):
    """What could be done next, and the flag that is answered by it; ``decide`` leads to the suggestions on
    progress."""

    sentence: str
    flag_id: str | None
    action: Action | Literal["decide"] | None


class WorstPain(BaseModel):
    """The highest rating of the last 7 days."""

    worst_7d: int
    region: str
    side: str
    on: date


class Row(BaseModel):
    """One client in the caseload."""

    client: RowClient
    goal: GoalAhead | None
    weeks_to_trip: int | None
    place: int
    group: Group
    reason: ReasonOut
    happened: str
    suggestion: RowSuggestion | None
    ready: int = Field(description="How many movements are ready for more.")
    adherence: AdherencePair
    last_heard_at: datetime | None
    pain: WorstPain | None
    open_flags: list[FlagShort]
    last_days: list[DayMark]
    ridge: Ridge


class Headline(BaseModel):
    """How many clients there are, and how many of them need something."""

    people: int
    need_you: int
    silent: int


class CaseloadHead(BaseModel):
    """What stands above the rows."""

    as_of: datetime
    today: date
    headline: Headline


class Caseload(CaseloadHead):
    """Every client of the practice who is not archived, in the order in which they need someone."""

    items: list[Row]


class OverviewClient(RowClient):
    """A client in short."""

    birth_year: int | None
    time_zone: str
    kit: list[str]
    usual_pain: int
    thresholds: dict[str, Any]
    note: str
    archived_at: datetime | None
    version: int


class ProgramShort(BaseModel):
    """The program in force."""

    number: int
    published_at: datetime
    title: str


class PainOut(BaseModel):
    """One pain report."""

    event_id: str
    day: date
    at: datetime
    rating: int
    region: str
    side: str
    aspect: str | None
    when: str
    planned_id: str | None


class PainRegion(BaseModel):
    """One place that hurt: the worst of each of the 8 weeks, oldest first, and the days since it hurt more than
    usual."""

    region: str
    side: str
    quiet_days: int | None
    worst_by_week: list[int | None]


class PainNote(BaseModel):
    """Pain of one place that became less in a way that matters, with the two reports that show it."""

    region: str
    side: str
    sentence: str
    evidence: list[EvidenceOut]
    kind: Kind
    source: str


class NoteOut(BaseModel):
    """A client's note."""

    event_id: str
    day: date
    text: str


class PossibleDouble(BaseModel):
    """A session outside the plan on a day on which a planned one was done too: perhaps the same."""

    day: date
    planned_id: str
    name: str


class Overview(BaseModel):
    """One client whole."""

    client: OverviewClient
    program: ProgramShort | None
    current_number: int | None
    phone_number: int | None = Field(description="The highest version that the phone's entries have named.")
    goal: GoalAhead | None
    heard_until: datetime | None
    adherence_7: SpanAdherence
    adherence_28: SpanAdherence
    ridge: Ridge
    days: list[SessionOut]
    pain: list[PainOut]
    pain_regions: list[PainRegion]
    pain_notes: list[PainNote]
    flags: list[Flag]
    messages: list[MessageOut]
    notes: list[NoteOut]
    refused_count: int
    possible_doubles: list[PossibleDouble]
    suggestions: SuggestionsShort
