"""What the parts of a program are made of: days, texts, and numbers in their plausible ranges."""

import re
from datetime import date
from typing import Annotated, Any

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, StringConstraints

from steadfoot.core.texts import JSON_INT, JSON_NUMBER, Line
from steadfoot.rules import dose

YEAR_FIRST, YEAR_LAST = 2000, 2099
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
