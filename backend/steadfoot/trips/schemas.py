"""Request and reply bodies of trips."""

from datetime import date, datetime
from typing import Annotated, Self

from pydantic import BaseModel, Field, StringConstraints, model_validator

from steadfoot.core.texts import JSON_INT, JSON_NUMBER, Inward, Line
from steadfoot.rules import dose
from steadfoot.rules.route import HEIGHT_MAX_M, HEIGHT_MIN_M, ROUTE_MAX_KM
from steadfoot.trips.gpx import LEGS_MAX, POINTS_MAX, SEGMENTS_MAX
from steadfoot.trips.plan import Ground

STRETCHES_MAX = 2000
"""1000 of 100 m in the longest leg, and two more at each break."""
REMARKS_MAX = 12
_ROUNDING_M = 1.0
_SLACK = 0.01
_M = 1000

Title = Annotated[Line, StringConstraints(max_length=120)]
DistanceKm = Annotated[float, Field(gt=0, le=dose.DISTANCE_MAX_KM), JSON_NUMBER]
ClimbM = Annotated[float, Field(ge=0, le=dose.DISTANCE_MAX_KM * _M), JSON_NUMBER]
PackKg = Annotated[float, Field(ge=0, le=dose.PACK_MAX_KG), JSON_NUMBER]
HeightM = Annotated[float, Field(ge=HEIGHT_MIN_M, le=HEIGHT_MAX_M), JSON_NUMBER]
RiseM = Annotated[float, Field(ge=-HEIGHT_MAX_M, le=HEIGHT_MAX_M), JSON_NUMBER]
WayM = Annotated[float, Field(ge=0, le=ROUTE_MAX_KM * _M), JSON_NUMBER]
LongM = Annotated[float, Field(gt=0, le=ROUTE_MAX_KM * _M), JSON_NUMBER]
DayNumber = Annotated[int, Field(ge=1, le=LEGS_MAX), JSON_INT]
Points = Annotated[int, Field(ge=0, le=POINTS_MAX), JSON_INT]


class StretchPart(Inward):
    """A piece of the way, in metres: where it starts, how long it is, the height at its start, how much it gains."""

    start_m: WayM
    length_m: LongM
    height_m: HeightM | None
    rise_m: RiseM | None = Field(description="Negative for lost; null where no height is known")


class CountedPart(Inward):
    """Ascent and descent if a height counts once it lies so many metres from the last one counted."""

    threshold_m: Annotated[int, Field(ge=0, le=100), JSON_INT]
    ascent_m: ClimbM
    descent_m: ClimbM


class FromFile(Inward):
    """What a GPX file said of a leg. It holds no place, no time and no name."""

    points: Points
    points_with_height: Points
    segments: Annotated[int, Field(ge=1, le=SEGMENTS_MAX), JSON_INT]
    highest_m: HeightM | None
    lowest_m: HeightM | None
    counted: Annotated[list[CountedPart], Field(max_length=10)]
    stretches: Annotated[list[StretchPart], Field(min_length=1, max_length=STRETCHES_MAX)]
    remarks: Annotated[list[Line], Field(max_length=REMARKS_MAX)]


class LegBody(Inward):
    """A leg: typed, or as a file said it. Metres are null where nobody knows them; the pack where the trip's holds."""

    name: Title = ""
    day: DayNumber
    distance_km: DistanceKm
    ascent_m: ClimbM | None
    descent_m: ClimbM | None
    pack_kg: PackKg | None = None
    from_file: FromFile | None = None

    @model_validator(mode="after")
    def _can_be(self) -> Self:
        """Refuse what no ground can be, and lengths that contradict the stretches they came with."""
        length_m = self.distance_km * _M
        if (self.ascent_m is None) != (self.descent_m is None):
            raise ValueError("say both how far it goes up and how far down, or neither")
        if self.from_file is None and (self.ascent_m or 0) + (self.descent_m or 0) > length_m:
            raise ValueError("it cannot go up and down by more than its length")
        if self.from_file:
            told_m = sum(one.length_m for one in self.from_file.stretches)
            if abs(told_m - length_m) > max(_ROUNDING_M * len(self.from_file.stretches), _SLACK * length_m):
                raise ValueError("its length is not that of its stretches")
        return self


class TripBody(Inward):
    """The whole trip, as it shall be from now on."""

    pack_kg: PackKg = Field(default=0, description="Pack with all in it, where a leg has none of its own")
    ground: Ground = Field(default=Ground.DIRT_ROAD, description="What most of the way is made of")
    legs: Annotated[list[LegBody], Field(max_length=LEGS_MAX)]

    @model_validator(mode="after")
    def _in_order(self) -> Self:
        days = [one.day for one in self.legs]
        if days != sorted(days):
            raise ValueError("the days of the legs must not run backwards")
        return self


class GradeOut(BaseModel):
    """Kilometres at a grade from ``from_percent`` to below ``to_percent``; null is open to that side."""

    from_percent: int | None
    to_percent: int | None
    distance_km: float


class DescentOut(BaseModel):
    """A steep piece downhill: where it starts, its length, metres lost, grade in percent (negative)."""

    from_km: float
    length_m: float
    descent_m: float
    grade_percent: float


class LegOut(BaseModel):
    """A leg as it is kept."""

    name: str
    day: int
    distance_km: float
    ascent_m: float | None
    descent_m: float | None
    pack_kg: float | None
    from_file: FromFile | None


class SlopesOut(BaseModel):
    """How steep a leg is; both empty for a typed leg, and where no heights are known."""

    grades: list[GradeOut]
    steepest_descents: list[DescentOut]


class TripOut(BaseModel):
    """The trip. Name and first day are the goal of the current program, null where there is none."""

    name: str | None
    starts_on: date | None
    pack_kg: float
    ground: Ground
    legs: list[LegOut]
    slopes: list[SlopesOut] = Field(description="Of each leg, in the order of the legs")
    version: int = Field(description="0: nothing is kept yet")
    saved_at: datetime | None
    saved_by: str | None = Field(description="Name of the practitioner")


class ReadingOut(BaseModel):
    """Legs that a file says; nothing is saved. ``ascent_threshold_m`` is the rule by which ascent is counted."""

    legs: list[LegOut]
    ascent_threshold_m: int
    remarks: list[str] = Field(description="What is odd, missing or approximate; whole sentences in English")


class EnergyOut(BaseModel):
    """Energy in kcal with the band of the models that hold, rates in MET and beside the six-minute walk."""

    kcal: float
    low_kcal: float
    high_kcal: float
    mean_met: float
    peak_met: float
    pack_percent: float
    metres_by_model: dict[str, float]
    zigzag_m: float
    unknown_m: float
    mean_percent_shown: float | None
    peak_percent_shown: float | None


class LegDemandOut(BaseModel):
    """What a leg asks. Null where heights or the body mass are not known."""

    number: int
    day: int
    name: str
    distance_km: float
    ascent_m: float | None
    descent_m: float | None
    pack_kg: float
    hours: float
    hours_by_rule: float
    steps: int
    descent_work_kj: float | None
    energy: EnergyOut | None


class DayDemandOut(BaseModel):
    """What a day asks, all its legs together."""

    day: int
    distance_km: float
    ascent_m: float | None
    descent_m: float | None
    hours: float
    low_kcal: float | None
    high_kcal: float | None
    descent_work_kj: float | None


class DemandOut(BaseModel):
    """What the trip asks of this client, computed now."""

    legs: list[LegDemandOut]
    days: list[DayDemandOut]
    body_mass_kg: float | None
    pace: float | None = Field(description="Own time over the rule's; null: not known, the rule's is used")
    walks: int
    walks_needed: int
    six_minute_walk_m: float | None
    pack_habit_percent: int
    sources: list[str] = Field(description="Keys of the bibliography")
