"""Types for request bodies: text that every database can hold, and numbers that are numbers.

pydantic's lax mode takes "7" and true for an integer and its strict mode refuses 7.0, which JSON's integers allow;
text may carry NUL and lone surrogates, on which databases fail. These types close both gaps in one place.
"""

import json
import re
import unicodedata
from datetime import date
from typing import Annotated, Any

from pydantic import BaseModel, BeforeValidator, ConfigDict, StringConstraints

# Kept, since json.dumps makes a new encoder at each call that is not its plainest.
_CANONICAL = json.JSONEncoder(sort_keys=True, separators=(",", ":"), ensure_ascii=False, allow_nan=False).encode
_DAY = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")


def _json_int(value: Any) -> Any:
    if isinstance(value, bool | str | bytes):
        raise ValueError("must be a number")
    return int(value) if isinstance(value, float) and value.is_integer() else value


def _json_number(value: Any) -> Any:
    if isinstance(value, bool | str | bytes):
        raise ValueError("must be a number")
    return value


def _json_bool(value: Any) -> Any:
    if not isinstance(value, bool):
        raise ValueError("must be true or false")
    return value


def _only_a_day(value: Any) -> Any:
    if not isinstance(value, str) or not _DAY.fullmatch(value):
        raise ValueError("must be a day, such as 2026-05-03")
    return value


def _clean(value: Any) -> Any:
    if not isinstance(value, str):
        return value
    if "\x00" in value or any("\ud800" <= letter <= "\udfff" for letter in value):
        raise ValueError("has a character that cannot be stored")
    return unicodedata.normalize("NFC", value)


# Bounds go inside: Annotated[int, Field(ge=0), JSON_INT]; the other order loses them from the OpenAPI document.
JSON_INT = BeforeValidator(_json_int)
JSON_NUMBER = BeforeValidator(_json_number)
Day = Annotated[date, BeforeValidator(_only_a_day)]
"""A calendar day and nothing else: pydantic also takes a time at midnight and seconds since 1970."""
JsonBool = Annotated[bool, BeforeValidator(_json_bool)]
# Before the length is counted: normalising can make text longer, and a column holds what it holds.
STORABLE = BeforeValidator(_clean)
Name = Annotated[str, StringConstraints(strip_whitespace=True, min_length=1, max_length=120), STORABLE]
Line = Annotated[str, StringConstraints(strip_whitespace=True, max_length=300), STORABLE]
Note = Annotated[str, StringConstraints(max_length=4000), STORABLE]
Words = Annotated[str, StringConstraints(strip_whitespace=True, min_length=1, max_length=4000), STORABLE]
"""A note that must say something."""
Code = Annotated[str, StringConstraints(pattern=r"^[a-z0-9][a-z0-9-]{0,59}$")]


class Inward(BaseModel):
    """Base of what callers send: unknown fields are refused, infinities too."""

    model_config = ConfigDict(extra="forbid", allow_inf_nan=False)


def canonical(value: Any) -> str:
    """Answer a JSON value as text that is the same for equal values: sorted keys, no spaces, no escapes."""
    return _CANONICAL(value)
