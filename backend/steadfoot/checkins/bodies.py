"""What each kind of event says (decision 0001). One model a kind; unknown fields are refused."""

from datetime import date
from typing import Annotated

from pydantic import AfterValidator, Field, StringConstraints, TypeAdapter

from steadfoot.core.texts import JSON_INT, JSON_NUMBER, Code, Day, Inward, Note
from steadfoot.intake.schemas import ScreeningAnswered as Answered
from steadfoot.rules.vocabulary import Aspect, Feel, LeftOut, Region, Side, Symptom, When


def _real_day(planned_id: str) -> str:
    date.fromisoformat(planned_id[:10])
    return planned_id


PlannedId = Annotated[str, StringConstraints(pattern=r"^\d{4}-\d{2}-\d{2}\.[1-9]$"), AfterValidator(_real_day)]
UUID_PATTERN = r"^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$"
EventId = Annotated[str, StringConstraints(pattern=UUID_PATTERN)]
Scale = Annotated[int, Field(ge=0, le=10), JSON_INT]
Minutes = Annotated[int, Field(ge=0, le=1440), JSON_INT]
Round = Annotated[int, Field(ge=1, le=20), JSON_INT]
Reps = Annotated[int, Field(ge=0, le=500), JSON_INT]
HoldS = Annotated[int, Field(ge=0, le=3600), JSON_INT]
LoadKg = Annotated[float, Field(ge=0, le=300), JSON_NUMBER]
DistanceKm = Annotated[float, Field(ge=0, le=200), JSON_NUMBER]
HeightM = Annotated[float, Field(ge=0, le=10_000), JSON_NUMBER]
VersionNumber = Annotated[int, Field(ge=1, le=100_000), JSON_INT]


class Body(Inward):
    """What every body may say besides its own fields."""

    day: Day | None = Field(default=None, description="Calendar day the entry is about, if not that of recorded_at")
    program_version: VersionNumber | None = Field(default=None, description="Version of the program on the phone")
    planned_id: PlannedId | None = Field(default=None, description="The planned session it belongs to")


class SessionStarted(Body):
    """The client opened a session and did something in it."""


class OfASet(Body):
    """Names one set: a prescription in a round of a planned session."""

    planned_id: PlannedId
    prescription: Code
    round: Round


class OfAMovement(Body):
    """Names the movement that was done, where it is not the prescribed one (decision 0007)."""

    exercise: Code | None = None


class SetTicked(OfASet, OfAMovement):
    """A set was done, both sides where the dose is for each side."""

    variant: Code | None = None
    reps: Reps | None = None
    hold_s: HoldS | None = None
    load_kg: LoadKg | None = None


class SetUnticked(OfASet):
    """A tick, or a left-out, was taken back."""


class SetLeftOut(OfASet, OfAMovement):
    """A set was left out on purpose."""

    reason: LeftOut


class VariantSwapped(OfAMovement):
    """An easier or harder variant was taken, or another movement that is allowed instead, for one planned session."""

    prescription: Code
    to_variant: Code
    from_variant: Code | None = None


class SessionFinished(Body):
    """A session's end: how long (minutes) and how hard (0 to 10, CR10-style)."""

    minutes: Minutes
    effort: Scale


class WalkLogged(Body):
    """A walk: kilometres, metres up and down, minutes, kilograms carried."""

    distance_km: DistanceKm
    ascent_m: HeightM
    descent_m: HeightM
    minutes: Minutes
    pack_kg: LoadKg
    effort: Scale | None = None


class PainReported(Body):
    """A pain: 0 to 10 numeric rating, where, on which side, when."""

    rating: Scale
    region: Region
    side: Side
    when: When
    aspect: Aspect | None = None
    feels: Annotated[list[Feel], Field(max_length=7)] = []
    prescription: Code | None = None
    exercise: Code | None = None
    variant: Code | None = None


class SymptomReported(Body):
    """A sign for which training stops and someone is asked."""

    symptom: Symptom
    note: Note | None = None


class ScreeningAnswered(Answered, Body):
    """The screening questions, answered on the phone."""


class NoteWritten(Body):
    """A line to the practice."""

    text: Annotated[Note, StringConstraints(min_length=1)]


class EntryWithdrawn(Body):
    """An earlier entry was a slip: undo."""

    event_id: EventId


class MessageRead(Body):
    """A message of the practice was opened."""

    message_id: EventId


BODIES: dict[str, type[Body]] = {
    "session_started": SessionStarted,
    "set_ticked": SetTicked,
    "set_unticked": SetUnticked,
    "set_left_out": SetLeftOut,
    "variant_swapped": VariantSwapped,
    "session_finished": SessionFinished,
    "walk_logged": WalkLogged,
    "pain_reported": PainReported,
    "symptom_reported": SymptomReported,
    "screening_answered": ScreeningAnswered,
    "note_written": NoteWritten,
    "entry_withdrawn": EntryWithdrawn,
    "message_read": MessageRead,
}
ADAPTERS = {kind: TypeAdapter(body) for kind, body in BODIES.items()}
