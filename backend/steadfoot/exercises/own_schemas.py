"""Request and reply bodies of a practice's own movements and their drawings."""

from datetime import datetime
from enum import StrEnum
from typing import Annotated

from pydantic import BaseModel, Field

from steadfoot.core.texts import JSON_NUMBER, Code, Inward, JsonBool
from steadfoot.exercises.figures.schema import Movement, Name, View
from steadfoot.exercises.schemas import ExerciseText

RUNGS_MAX = 5
PATHS_MAX = 20
PAPER_MAX = 5000.0
"""House, drawing units: five times a person's height from the middle of the picture."""
Poses = Annotated[dict[Code, Movement], Field(max_length=RUNGS_MAX, description="Drawing of each drawn variant.")]
_Path = Annotated[str, Field(max_length=40)]
_Value = Annotated[float, Field(ge=-360, le=360), JSON_NUMBER]
_Paper = Annotated[float, Field(ge=-PAPER_MAX, le=PAPER_MAX), JSON_NUMBER]


class Fault(StrEnum):
    """What a check of drawings found."""

    STRETCHED = "bone stretched"
    REACH = "out of reach"
    UNSOLVED = "not solved"
    SLIDES = "slides"
    SINKS = "sinks in"
    RANGE = "joint range"
    FALLS = "falls over"
    JUMPS = "jumps"


class FindingOut(BaseModel):
    """Something in a drawing that a body cannot do. A drawing with any is kept, and not used."""

    fault: Fault
    detail: str = Field(description="In plain words, with the amount and the time from 0 to 1.")


class OwnBody(Inward):
    """A movement of the practice's own."""

    text: ExerciseText
    poses: Poses = Field(default={})


class OwnPatch(Inward):
    """Whether it is offered."""

    archived: JsonBool


class OwnOut(BaseModel):
    """A movement of the practice's own, to go on with."""

    code: str
    version: int
    saved_at: datetime
    archived: bool
    text: ExerciseText
    poses: dict[str, Movement]
    findings: dict[str, list[FindingOut]] = Field(description="By variant; a variant with findings is not drawn.")


class Drag(Inward):
    """A joint taken hold of and brought to a spot on paper."""

    point: Annotated[str, Field(max_length=20, description="Name of a handle.")]
    to: tuple[_Paper, _Paper] = Field(description="x and y in drawing units, y down.")


class PreviewBody(Inward):
    """A movement, the key that is looked at, and what is to be changed in it."""

    movement: Movement
    key: Name
    view: View
    set: Annotated[dict[_Path, _Value], Field(max_length=PATHS_MAX, description="New numbers by path.")] = {}
    drag: Drag | None = None
    mirror: JsonBool = Field(default=False, description="Do the same on the other side.")
    whole: JsonBool = Field(default=False, description="Draw and check the whole movement instead of the one key.")


class HandleOut(BaseModel):
    """A joint that can be dragged, on paper."""

    point: str
    x: float
    y: float


class ControlOut(BaseModel):
    """A number that can be set."""

    path: str
    value: float
    low: float
    high: float
    length: bool = Field(description="A fraction of stature; otherwise degrees.")


class PreviewOut(BaseModel):
    """What came of it."""

    movement: Movement = Field(description="With the change; every key says all of its numbers.")
    svg: str
    frame: tuple[int, int, int, int] = Field(description="Left, top, width, height in drawing units.")
    findings: list[FindingOut] = Field(description="Of the keys alone, or of the whole movement where asked.")
    handles: list[HandleOut]
    controls: list[ControlOut]


class StartOut(BaseModel):
    """A movement to begin from; every key says all of its numbers."""

    movement: Movement
