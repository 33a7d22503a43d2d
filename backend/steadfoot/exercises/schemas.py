"""What one file of the library holds. Strict: a misspelt field or an unknown code stops the start."""

from enum import StrEnum
from typing import Annotated, Generic, Self, TypeVar

from pydantic import BaseModel, ConfigDict, Field, StringConstraints, model_validator

from steadfoot.core.texts import JSON_INT, STORABLE, Code
from steadfoot.rules.alternatives import Because
from steadfoot.rules.dose import HOLD_MAX_S, HOLD_MIN_S, REPS_MAX, REPS_MIN
from steadfoot.rules.vocabulary import Kit, Region, Sides

SHORT_MAX_LETTERS = 14
Words = Annotated[str, StringConstraints(min_length=1, max_length=60, strip_whitespace=True), STORABLE]
Sentence = Annotated[str, StringConstraints(min_length=3, max_length=140, pattern=r"^\p{Lu}.*[.]$"), STORABLE]


class Quality(StrEnum):
    """What a movement trains."""

    HIP_CONTROL = "hip_control"
    KNEE_CONTROL = "knee_control"
    SINGLE_LEG_STRENGTH = "single_leg_strength"
    CALF_STRENGTH = "calf_strength"
    DESCENT_CONTROL = "descent_control"
    TRUNK_CONTROL = "trunk_control"
    SHOULDER_CONTROL = "shoulder_control"
    BALANCE = "balance"
    POWER = "power"
    CARRYING = "carrying"
    MOBILITY = "mobility"


class LoadNeed(StrEnum):
    """Whether a variant is done with a weight."""

    NONE = "none"
    OPTIONAL = "optional"
    REQUIRED = "required"


class Form(StrEnum):
    """How a variant is drawn."""

    MOVING = "moving"
    STILL = "still"
    STRIP = "strip"


class _Entry(BaseModel):
    model_config = ConfigDict(extra="forbid", frozen=True)


_Repetitions = Annotated[int, Field(ge=REPS_MIN, le=REPS_MAX), JSON_INT]
_Seconds = Annotated[int, Field(ge=HOLD_MIN_S, le=HOLD_MAX_S), JSON_INT]


class RepetitionDose(_Entry):
    """Usual dose of a variant that is counted."""

    reps: tuple[_Repetitions, _Repetitions] = Field(
        description="Fewest and most repetitions in a set, a side where done for each side."
    )


class HoldDose(_Entry):
    """Usual dose of a variant that is held."""

    hold_s: tuple[_Seconds, _Seconds] = Field(
        description="Shortest and longest hold in seconds, a side where done for each side."
    )


class Fault(_Entry):
    """A way it goes wrong, and what to do instead."""

    see: Sentence
    instead: Sentence


class VariantText(_Entry):
    """One rung of the ladder, as it is written."""

    variant: Code = Field(description="Code of the variant, unique within its exercise.")
    name: Words = Field(description="Name in full words, read after the exercise's: 'hand on the rail'.")
    short: Annotated[str, StringConstraints(max_length=SHORT_MAX_LETTERS), STORABLE] = Field(
        description="Caption for a narrow place, at most 14 letters; may be empty."
    )
    sides: Sides = Field(description="Done for each side in turn, or with both together.")
    kit: list[Kit] = Field(description="What is needed in the house, all of it.", max_length=4)
    how: list[Sentence] = Field(description="What the client does, in order.", min_length=2, max_length=4)
    dose: RepetitionDose | HoldDose
    load: LoadNeed


class Variant(VariantText):
    """One rung of the ladder."""

    drawn: bool = Field(default=False, description="Whether there is a drawing of it; set from the poses.")


_Rung = TypeVar("_Rung", bound=VariantText)


class _Told(_Entry, Generic[_Rung]):
    """What is said of a movement; the ladder's rungs with or without what the program adds to them."""

    name: Words
    trains: list[Quality] = Field(min_length=1, max_length=6, description="What it trains, most first.")
    loads: list[Region] = Field(
        min_length=1, max_length=12, description="Body regions that it loads by common practice, most loaded first."
    )
    why: Sentence = Field(description="One sentence for the client: what it is good for on the trail.")
    sides: Sides = Field(description="How the easiest variant is done; harder ones may be one-legged.")
    cues: list[Sentence] = Field(min_length=3, max_length=4, description="What to think of while doing it.")
    faults: list[Fault] = Field(min_length=1, max_length=4)
    cautions: list[Sentence] = Field(min_length=1, max_length=4)
    ladder: list[_Rung] = Field(min_length=1, max_length=5, description="Variants, easiest first.")

    @model_validator(mode="after")
    def _holds_together(self) -> Self:
        _refuse_repeats("variant codes", [rung.variant for rung in self.ladder])
        _refuse_repeats("variant names", [rung.name for rung in self.ladder])
        _refuse_repeats("cues", self.cues)
        if self.sides is not self.ladder[0].sides:
            raise ValueError("sides must be those of the easiest variant")
        for rung in self.ladder:
            low, high = rung.dose.reps if isinstance(rung.dose, RepetitionDose) else rung.dose.hold_s
            if low > high:
                raise ValueError(f"the dose of {rung.variant} runs from high to low")
        return self


class ExerciseText(_Told[VariantText]):
    """A movement as a practice writes it; it gets its code from the program."""


class OwnMark(_Entry):
    """Marks a movement of the practice's own."""

    version: int = Field(description="Number of the version, 1 for the first.")
    drawing: str = Field(description="Takes the place of the code in the address of a drawing.")
    archived: bool = Field(description="It is offered nowhere; programs that have it keep it.")


class Exercise(_Told[Variant]):
    """One movement with its ladder, easiest variant first."""

    code: Code
    own: OwnMark | None = Field(default=None, description="Of the practice's own; null for the library's.")


class ExerciseFile(Exercise):
    """One file of the library: its ladder is long enough to go both ways."""

    ladder: list[Variant] = Field(min_length=3, max_length=5, description="Variants, easiest first.")


class ExerciseList(BaseModel):
    """The whole library."""

    items: list[Exercise]


class DrawingOut(BaseModel):
    """A moving drawing that the library has."""

    exercise: str
    variant: str
    version: str = Field(description="Another one whenever the drawing may look different.")
    ready: bool = Field(description="Whether it is finished. One that is not is computed when asked for, in a second.")


class DrawingsOut(BaseModel):
    """Every moving drawing: what a phone may keep for the time without a network."""

    items: list[DrawingOut]


class ReasonOut(BaseModel):
    """One reason for another movement."""

    because: Because = Field(description="What the reason is about.")
    sentence: str


class AlternativeOut(BaseModel):
    """A movement that can stand in for another one, on the variant that comes nearest."""

    exercise: str
    name: str
    variant: str
    variant_name: str
    reasons: list[ReasonOut] = Field(description="Why it is offered, and what else changes with it.")


class AlternativesOut(BaseModel):
    """What fits, the most like the prescribed movement first."""

    items: list[AlternativeOut]
    nothing_fits: str | None = Field(description="Why nothing fits, in a sentence; null where something does.")


def _refuse_repeats(what: str, values: list[str]) -> None:
    if len(set(values)) != len(values):
        raise ValueError(f"{what} must differ from each other")
