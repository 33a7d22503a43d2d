"""The content of a program version, as decision 0002 has it.

Types and plausible ranges are checked here; what does not fit together is found by ``checks``, so that a
half-written draft can be kept.
"""

from dataclasses import asdict, fields
from datetime import timedelta
from typing import Annotated, Any, Literal

from pydantic import Field

from steadfoot.core.texts import Code, JsonBool, Note
from steadfoot.programs.parts import (
    ClimbM,
    Day,
    DistanceKm,
    Effort,
    HoldS,
    LoadKg,
    Minutes,
    PackKg,
    Part,
    Reps,
    RestS,
    Rounds,
    TempoS,
    Title,
)
from steadfoot.programs.season import SeasonPlan
from steadfoot.rules import dose
from steadfoot.rules.vocabulary import Sides

SESSIONS_MAX, PRESCRIPTIONS_MAX, DAYS_MAX, ALTERNATIVES_MAX = 150, 30, 1000, 3
"""A season of a year has two walks of its own in each of its 53 weeks, beside circuits."""


class Alternative(Part):
    """Another movement that the client may do instead, with a dose of its own (decision 0007)."""

    exercise: Code
    variant: Code
    sides: Sides = Field(description="Each side in turn, or both together.")
    reps_low: Reps | None = Field(default=None, description="Fewest repetitions in a set, 1 to 50.")
    reps_high: Reps | None = Field(default=None, description="Most repetitions in a set, 1 to 50.")
    hold_s: HoldS | None = Field(default=None, description="Hold in seconds, 1 to 300.")
    load_kg: LoadKg | None = Field(default=None, description="Weight in kg, 0 to 200.")
    reason: Title = Field(default="", description="Why or when, in the practitioner's words; the client sees it.")


class Prescription(Part):
    """One exercise variant with its dose: repetitions or a hold, never both."""

    key: Code = Field(description="Unique in the program; kept when the program is edited.")
    exercise: Code
    variant: Code
    sides: Sides = Field(description="Each side in turn, or both together.")
    reps_low: Reps | None = Field(default=None, description="Fewest repetitions in a set, 1 to 50.")
    reps_high: Reps | None = Field(default=None, description="Most repetitions in a set, 1 to 50.")
    hold_s: HoldS | None = Field(default=None, description="Hold in seconds, 1 to 300.")
    load_kg: LoadKg | None = Field(default=None, description="Weight in kg, 0 to 200.")
    tempo_down_s: TempoS | None = Field(default=None, description="Seconds on the way down, 1 to 10.")
    rest_s: RestS = Field(default=0, description="Rest after the set in seconds, 0 to 600.")
    note: Note = ""
    alternatives: Annotated[list[Alternative], Field(max_length=ALTERNATIVES_MAX)] = Field(
        default=[], description="What the client may do instead."
    )


class _Session(Part):
    key: Code = Field(description="Unique in the program; kept when the program is edited.")
    name: Title
    note: Note = ""


class _Effortful(_Session):
    expected_effort: Effort = Field(description="Expected session effort, 0 to 10.")
    expected_minutes: Minutes | None = Field(default=None, description="Minutes; null: estimated from the dose.")


class Circuit(_Effortful):
    """Prescriptions done in order, for a number of rounds."""

    kind: Literal["circuit"]
    rounds: Rounds = Field(description="Rounds, 1 to 10.")
    prescriptions: Annotated[list[Prescription], Field(max_length=PRESCRIPTIONS_MAX)]


class Walk(_Effortful):
    """A walk, with or without a pack."""

    kind: Literal["walk"]
    distance_km: DistanceKm = Field(description="Kilometres, up to 100.")
    ascent_m: ClimbM = Field(default=0, description="Metres up, 0 to 5000.")
    descent_m: ClimbM = Field(default=0, description="Metres down, 0 to 5000.")
    pack_kg: PackKg = Field(default=0, description="Weight of the pack in kg, 0 to 60.")


class Cardio(_Effortful):
    """Other endurance work."""

    kind: Literal["cardio"]
    activity: Title


class Rest(_Session):
    """A day named as rest. It is never prescribed work and never counted."""

    kind: Literal["rest"]


Session = Annotated[Circuit | Walk | Cardio | Rest, Field(discriminator="kind")]


class PlannedDay(Part):
    """One planned session: a date and the session for it."""

    date: Day
    session: Code = Field(description="Key of the session.")
    fixed_day: JsonBool = Field(default=False, description="On this day only; otherwise until the end of its week.")


class Goal(Part):
    """What the program leads up to."""

    name: Title
    date: Day


class ProgramContent(Part):
    """Everything that a program version says."""

    title: Title
    goal: Goal | None = None
    starts_on: Day = Field(description="First day, YYYY-MM-DD.")
    ends_on: Day | None = Field(default=None, description="Last day; null with a goal: the day before the goal.")
    sessions: Annotated[list[Session], Field(max_length=SESSIONS_MAX)]
    days: Annotated[list[PlannedDay], Field(max_length=DAYS_MAX)]
    season: SeasonPlan | None = Field(
        default=None,
        exclude_if=lambda season: season is None,
        description="What its season was planned from; absent where it was written by hand.",
    )


AnySession = Circuit | Walk | Cardio | Rest


def normalise(content: ProgramContent) -> ProgramContent:
    """Answer the content with its days sorted by date (those of one date in their order) and its end."""
    ends_on = content.ends_on
    if ends_on is None and content.goal is not None:
        ends_on = content.goal.date - timedelta(days=1)
    days = sorted(content.days, key=lambda day: day.date)
    return content.model_copy(update={"ends_on": ends_on, "days": days})


def to_json(content: ProgramContent) -> dict[str, Any]:
    """Answer the content as a JSON object with every field in it."""
    return content.model_dump(mode="json")


def rule_prescription(prescription: Prescription) -> dose.Prescription:
    """Answer a prescription in the plain form that the rules of dose take."""
    return dose.Prescription(**{one.name: getattr(prescription, one.name) for one in fields(dose.Prescription)})


def with_dose(prescription: Prescription, moved: dose.Prescription) -> Prescription:
    """Answer the prescription with what the rules of dose made of it; its alternatives stay."""
    return Prescription(**asdict(moved), alternatives=prescription.alternatives)


def instead(prescription: Prescription, alternative: Alternative) -> Prescription:
    """Answer what stands in the place of a prescription when an alternative is done; its rest stays."""
    own = {name: getattr(alternative, name) for name in Alternative.model_fields if name != "reason"}
    other = own | {"alternatives": [], "tempo_down_s": None, "note": ""}
    return prescription.model_copy(update=other)


def expected_minutes(session: AnySession) -> int | None:
    """Answer the minutes that a session should take: as written, or estimated; None where nothing tells."""
    if isinstance(session, Rest):
        return None
    if session.expected_minutes is not None:
        return session.expected_minutes
    if isinstance(session, Circuit):
        return dose.circuit_minutes(session.rounds, [rule_prescription(one) for one in session.prescriptions])
    return dose.walk_minutes(session.distance_km, session.ascent_m) if isinstance(session, Walk) else None


def planned_sets(session: AnySession) -> int:
    """Answer how many sets a session asks for: a walk or other cardio is one, rest is none."""
    if isinstance(session, Circuit):
        return dose.planned_sets(session.rounds, len(session.prescriptions))
    return 0 if isinstance(session, Rest) else 1


def planned_load(session: AnySession) -> float | None:
    """Answer the planned load of a session (effort times minutes); None where its minutes are not known."""
    minutes = expected_minutes(session)
    if isinstance(session, Rest) or minutes is None:
        return None
    return dose.planned_load(session.expected_effort, minutes)
