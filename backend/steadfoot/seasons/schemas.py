"""Request and reply bodies of seasons."""

from datetime import date
from typing import Annotated

from pydantic import BaseModel, Field

from steadfoot.core.texts import Code, Inward
from steadfoot.programs.content import ProgramContent
from steadfoot.programs.parts import Day, Title
from steadfoot.programs.season import STRENGTH_KINDS_MAX, SeasonPlan, WalkLevel
from steadfoot.rules.season import Phase
from steadfoot.rules.season_replan import Pause
from steadfoot.rules.season_request import Activity
from steadfoot.rules.season_walks import Thing


class SeasonBody(Inward):
    """A season to plan."""

    season: SeasonPlan


class SeasonSession(BaseModel):
    """A proposed session."""

    date: date
    activity: Activity
    effort: int = Field(description="Expected effort, 0 to 10.")
    minutes: int
    walk: WalkLevel | None
    pinned: bool
    locked: bool


class SeasonWeek(BaseModel):
    """A week counted back from the trip; the first may be shorter."""

    starts_on: date
    ends_on: date
    phase: Phase
    planned_load: int = Field(description="Effort times minutes, summed, arbitrary units.")
    sessions: list[SeasonSession]


class ShortfallOut(BaseModel):
    """What walks do not grow to in time, in the unit that the thing's name ends with."""

    thing: Thing
    reached: float
    wanted: float
    short_by: float
    weeks_more: int = Field(description="Weeks that the whole goal would take more.")
    accepted: bool


class SeasonOut(BaseModel):
    """A season as the rules propose it; nothing is stored."""

    weeks: list[SeasonWeek]
    shortfalls: list[ShortfallOut]
    notes: list[str] = Field(description="What else to know, a sentence each.")


class SeasonStart(BaseModel):
    """What a season page begins with: what was planned before, and what is known of the person."""

    today: date = Field(description="The client's calendar day.")
    season: SeasonPlan | None = Field(description="What the draft, else the current program, was planned from.")
    starts_on: date
    trip_name: str
    trip_on: date | None
    walking: WalkLevel
    walked_on: date | None = Field(description="Day of the logged walk that the level is from; null: it is assumed.")
    longest_day: WalkLevel
    longest_day_known: bool = Field(description="Whether the longest day is the trip's own, or assumed.")


class ResumeBody(Inward):
    """A season that paused: why, its first day missed, and the day on which it is taken up again."""

    season: SeasonPlan
    reason: Pause
    since: Day
    resume_on: Day


class Resumption(BaseModel):
    """The rest of the season to plan, and the step back that it begins with."""

    season: SeasonPlan
    before: WalkLevel = Field(description="The longest walk that was planned before the pause.")
    keeps_percent: int = Field(description="How much of it the first walk keeps.")


class SeasonNames(Inward):
    """What the sessions are called that the season brings; the client sees these."""

    long_walk: Title = "Long walk"
    short_walk: Title = "Shorter walk"
    cardio: Title = "Easy endurance"
    cardio_activity: Title = "Bike, swim or brisk walk, easy"
    rest: Title = "Rest and packing"


class LayOutBody(Inward):
    """A season to lay into a program."""

    season: SeasonPlan
    content: ProgramContent | None = Field(default=None, description="The program to go on from; null: a new one.")
    template: Code | None = Field(default=None, description="Where the circuits are from; null: from the content.")
    circuits: Annotated[list[Code], Field(max_length=STRENGTH_KINDS_MAX)] = Field(
        description="Keys of the circuits that strength sessions take in turn."
    )
    trip_name: Title
    names: SeasonNames = SeasonNames()
