"""Request and reply bodies of assessment."""

from datetime import date, datetime
from typing import Annotated, Literal

from pydantic import BaseModel, Field, StringConstraints

from steadfoot.assessment.conduct import Measure
from steadfoot.core.texts import JSON_INT, JSON_NUMBER, Day, Inward, Line, Name, Note
from steadfoot.intake.schemas import SourceWork
from steadfoot.rules.baseline_catalogue import TestCode
from steadfoot.rules.functional_scale import ACTIVITIES_MAX, ACTIVITIES_MIN, SCORE_MAX
from steadfoot.rules.norms import Shape, TestSide
from steadfoot.rules.sources import Kind

PROTOCOL_ENTRIES_MAX = 20
ProtocolKey = Annotated[str, StringConstraints(pattern=r"^[a-z][a-z0-9_]{0,39}$")]
Rating = Annotated[int, Field(ge=0, le=SCORE_MAX), JSON_INT]


class TestBody(Inward):
    """A result in the test's unit. Only results of one protocol are compared with each other."""

    __test__ = False  # not a test, in spite of its name

    code: TestCode
    value: Annotated[float, JSON_NUMBER]
    side: TestSide | None = Field(default=None, description="Needed for tests of one side, refused for the others")
    taken_on: Day | None = Field(default=None, description="The client's today if left out")
    protocol: Annotated[dict[ProtocolKey, Line], Field(max_length=PROTOCOL_ENTRIES_MAX)] = Field(
        default={}, description='How it was done, where that can differ: {"step_cm": "15"}'
    )
    note: Note = ""


class Activity(Inward):
    """Something that is hard for the client, in their words; 0 cannot do it, 10 as before."""

    name: Name
    rating: Rating


class FunctionalScaleBody(Inward):
    """A rating of what is hard; the same names in each rating, or they cannot be compared."""

    activities: Annotated[list[Activity], Field(min_length=ACTIVITIES_MIN, max_length=ACTIVITIES_MAX)]
    taken_on: Day | None = Field(default=None, description="The client's today if left out")


class RangeOut(BaseModel):
    """The lowest and the highest result that are possible."""

    low: float
    high: float


class TestOut(BaseModel):
    """A baseline test: how it is done, and what can come of it."""

    __test__ = False  # not a test, in spite of its name

    code: TestCode
    name: str
    unit: str
    better: Literal["higher", "lower"]
    sides: bool
    kind: Measure
    protocol: list[str]
    cautions: list[str]
    range: RangeOut
    counter_seconds: int | None = Field(description="Length of a test of a fixed time; null where it ends by itself")
    mdc: float | None = Field(description="Smallest real change in the unit; null where none is known")
    source_work: SourceWork


class TestList(BaseModel):
    """The baseline tests."""

    __test__ = False  # not a test, in spite of its name

    items: list[TestOut]


class ReferenceOut(BaseModel):
    """The norm that a result is read beside, in the test's unit."""

    shape: Shape
    group: str
    low: float | None
    middle: float | None
    high: float | None
    grade: str | None
    kind: Kind
    note: str
    source_work: SourceWork


class ResultOut(BaseModel):
    """One result. ``why_no_norm`` says why there is no reference, where there is none."""

    id: str
    code: TestCode
    taken_on: date
    side: TestSide | None
    value: float
    unit: str
    reading: str
    reference: ReferenceOut | None
    why_no_norm: str | None
    protocol: dict[str, str]
    note: str
    taken_by: str = Field(description="Name of the practitioner")
    recorded_at: datetime


class SymmetryOut(BaseModel):
    """The newest results of both sides: the lower in percent of the higher."""

    percent: float
    even_enough: bool
    words: str


class ChangePart(BaseModel):
    """The change of one side, or of one activity."""

    of: str | None = Field(description="left, right or the activity; null where there is only one")
    words: str
    is_real: bool
    better: bool | None = Field(description="Null unless the change is real")


class ChangeOut(BaseModel):
    """The change since the time before; real only from the smallest real change on."""

    words: str
    is_real: bool
    mdc: float | None
    parts: list[ChangePart]


class TrendOut(BaseModel):
    """The course from the first result to the last, from three results on."""

    words: str


class TestItem(BaseModel):
    """A client's results of one test, newest first."""

    __test__ = False  # not a test, in spite of its name

    code: TestCode
    name: str
    unit: str
    results: list[ResultOut]
    symmetry: SymmetryOut | None
    change: ChangeOut | None
    trend: TrendOut | None


class RatingOut(BaseModel):
    """One rating of what is hard; the mean is 0 to 10, higher is better."""

    id: str
    taken_on: date
    activities: list[Activity]
    mean: float
    taken_by: str = Field(description="Name of the practitioner")
    recorded_at: datetime


class FunctionalScaleOut(BaseModel):
    """Ratings, newest first, and the change between the last two."""

    items: list[RatingOut]
    change: ChangeOut | None
    why_not_compared: str | None
    source_work: SourceWork


class ClientTests(BaseModel):
    """The tests of which the client has results, and the ratings of what is hard."""

    items: list[TestItem]
    functional_scale: FunctionalScaleOut


class Withdrawn(BaseModel):
    """A slip that was taken back; it stays on record and shows nowhere."""

    id: str
    withdrawn_at: datetime
