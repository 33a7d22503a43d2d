"""Request and reply bodies of programs."""

from datetime import date, datetime
from typing import Annotated, Any

from pydantic import BaseModel, Field

from steadfoot.core.texts import JSON_INT, Code, Inward, JsonBool, Line, Name, Note
from steadfoot.programs.content import SESSIONS_MAX, Goal, ProgramContent, Session
from steadfoot.programs.findings import Severity
from steadfoot.programs.parts import Day, Part
from steadfoot.programs.season import Weekday

WEEKS_MAX, WEEK_ENTRIES_MAX = 52, 28


class TemplateDay(Part):
    """One planned session of a template's week."""

    weekday: Weekday
    session: Code = Field(description="Key of the session.")
    fixed_day: JsonBool = Field(default=False, description="On this day only; otherwise until the end of its week.")


Week = Annotated[list[TemplateDay], Field(max_length=WEEK_ENTRIES_MAX)]


class TemplateBody(Part):
    """A program without dates: sessions, and which of them come in which week."""

    name: Name
    about: Line = Field(default="", description="For whom and for what.")
    sessions: Annotated[list[Session], Field(min_length=1, max_length=SESSIONS_MAX)]
    weeks: Annotated[list[Week], Field(min_length=1, max_length=WEEKS_MAX)] = Field(
        description="Week by week from the start; the last one repeats until the program ends."
    )


class TemplatePatch(Inward):
    """What to change of a template; what is left out stays."""

    name: Name | None = None
    about: Line | None = None


class TemplateFile(TemplateBody):
    """A template that comes with the program, as its file holds it."""

    code: Code


class TemplateOut(BaseModel):
    """A template, the practice's own or one that comes with the program."""

    id: str = Field(description="UUIDv7 of the practice's own, a code for those that come with the program.")
    shipped: bool
    name: str
    about: str
    sessions: list[Session]
    weeks: list[list[TemplateDay]]


class TemplateList(BaseModel):
    """All templates: the practice's own by name, then those that come with the program."""

    items: list[TemplateOut]


class FromTemplateBody(Inward):
    """Which template, and when. Without an end it runs to the day before the goal."""

    template: Code = Field(description="Id of the template.")
    starts_on: Day
    ends_on: Day | None = None
    goal: Goal | None = None


class DraftBody(Inward):
    """A program in the making."""

    content: ProgramContent
    base_number: Annotated[int, Field(ge=1, le=1_000_000), JSON_INT] | None = Field(
        default=None, description="Number of the published version it was begun from."
    )


class PersonOut(BaseModel):
    """A practitioner."""

    id: str
    display_name: str


class DraftOut(BaseModel):
    """A draft as it was last saved."""

    content: ProgramContent
    base_number: int | None
    saved_at: datetime
    saved_by: PersonOut
    version: int


class CheckBody(Inward):
    """A program to look over."""

    content: ProgramContent


class MendOut(BaseModel):
    """A value to put at a JSON pointer of the content."""

    pointer: str
    value: Any


class FixOut(BaseModel):
    """What takes a problem away, and the words for its button."""

    label: str
    mends: list[MendOut]


class ProblemOut(BaseModel):
    """Something in a program that does not fit."""

    pointer: str = Field(description="JSON pointer into the content as it was sent.")
    code: str
    message: str
    severity: Severity = Field(description="An error stops publishing, a warning does not.")
    fix: FixOut | None


class SessionSum(BaseModel):
    """What one session asks for."""

    key: str
    sets: int
    minutes: int | None = Field(description="Expected minutes; null where nothing tells.")
    planned_load: float | None = Field(description="Expected effort (0 to 10) times minutes, arbitrary units.")


class WeekSum(BaseModel):
    """What one week asks for, Monday to Sunday."""

    starts_on: date
    sessions: int
    minutes: int | None = Field(description="Expected minutes; null where those of a session are not known.")
    planned_load: float | None = Field(description="Sum of effort times minutes; null where not known.")


class ChecksOut(BaseModel):
    """What does not fit, what would change for the client, and what it all asks for."""

    problems: list[ProblemOut]
    changes: list[str]
    sessions: list[SessionSum]
    weeks: list[WeekSum]


class PublishBody(Inward):
    """A program to publish."""

    content: ProgramContent
    note: Note = Field(default="", description="Why, for the record; the client does not see it.")


class ProgramSummary(BaseModel):
    """A published version without its content."""

    id: str
    number: int
    title: str
    published_at: datetime
    published_by: PersonOut
    effective_on: date = Field(description="The client's own calendar day of publishing.")
    changes: list[str]
    note: str


class ProgramOut(ProgramSummary):
    """A published version."""

    content: ProgramContent


class ProgramList(BaseModel):
    """All published versions of a client, newest first."""

    items: list[ProgramSummary]
