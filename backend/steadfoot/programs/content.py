"""The content of a program version, as decision 0002 has it.

Types and plausible ranges are checked here; what does not fit together is found by ``checks``, so that a
half-written draft can be kept.
"""

import re
from dataclasses import asdict, fields
from datetime import date, timedelta
from typing import Annotated, Any, Literal

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, StringConstraints

from steadfoot.core.texts import JSON_INT, JSON_NUMBER, Code, JsonBool, Line, Note
from steadfoot.rules import dose
from steadfoot.rules.vocabulary import Sides

YEAR_FIRST, YEAR_LAST = 2000, 2099
SESSIONS_MAX, PRESCRIPTIONS_MAX, DAYS_MAX, ALTERNATIVES_MAX = 60, 30, 1000, 3
_ISO_DAY = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")


def _iso_day(value: Any) -> Any:
    """Refuse what pydantic takes for a day besides YYYY-MM-DD: numbers, times, years that overflow."""
    if isinstance(value, str) and not _ISO_DAY.fullmatch(value):
        raise ValueError("must be a day, YYYY-MM-DD")
    if not isinstance(value, str | date):
        raise ValueError("must be a day, YYYY-MM-DD")
    year = int(value[:4]) if isinstance(value, str) else value.year
    if not YEAR_FIRST <= year <= YEAR_LAST:
        raise ValueError(f"must lie in the years {YEAR_FIRST} to {YEAR_LAST}")
    return value


Day = Annotated[date, BeforeValidator(_iso_day)]
Title = Annotated[Line, StringConstraints(max_length=120)]
Reps = Annotated[int, Field(ge=dose.REPS_MIN, le=dose.REPS_MAX), JSON_INT]
HoldS = Annotated[int, Field(ge=dose.HOLD_MIN_S, le=dose.HOLD_MAX_S), JSON_INT]
RestS = Annotated[int, Field(ge=0, le=dose.REST_MAX_S), JSON_INT]
TempoS = Annotated[int, Field(ge=1, le=dose.TEMPO_MAX_S), JSON_INT]
LoadKg = Annotated[float, Field(ge=0, le=dose.LOAD_MAX_KG), JSON_NUMBER]
Rounds = Annotated[int, Field(ge=dose.ROUNDS_MIN, le=dose.ROUNDS_MAX), JSON_INT]
Effort = Annotated[int, Field(ge=0, le=dose.EFFORT_MAX), JSON_INT]
Minutes = Annotated[int, Field(ge=1, le=dose.MINUTES_MAX), JSON_INT]
DistanceKm = Annotated[float, Field(gt=0, le=dose.DISTANCE_MAX_KM), JSON_NUMBER]
ClimbM = Annotated[int, Field(ge=0, le=dose.CLIMB_MAX_M), JSON_INT]
PackKg = Annotated[float, Field(ge=0, le=dose.PACK_MAX_KG), JSON_NUMBER]


class Part(BaseModel):
    """Base of every part: unknown fields are refused, and answers always carry every field."""

    model_config = ConfigDict(
        extra="forbid", allow_inf_nan=False, frozen=True, json_schema_serialization_defaults_required=True
    )


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
