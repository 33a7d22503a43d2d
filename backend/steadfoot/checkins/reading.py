"""Turns one item of a batch into an event, or says why it cannot be one. Never raises: one bad item fails nothing."""

import hashlib
import json
import re
from collections.abc import Mapping
from datetime import UTC, date, datetime
from typing import Any, NamedTuple

from pydantic import ValidationError

from steadfoot.checkins.bodies import ADAPTERS, UUID_PATTERN
from steadfoot.core.problems import Invalid, Problem, field_errors
from steadfoot.core.texts import canonical

HIGHEST_SEQ = 2**31 - 1
"""The highest number that every database's integer column holds; a phone would need 60 years at one a second."""
_AT_HAND = "The phone could not send this entry. It is whole on the phone, to be sent again or saved as a file."
_YEARS = range(1970, 2201)
NOT_SENT = "not-sent"
_STAND_IN = frozenset({"not_sent", "bytes"})
_ENVELOPE = frozenset({"id", "seq", "kind", "recorded_at", "body"})
_ID = re.compile(UUID_PATTERN)
_TIME = re.compile(r"\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d{1,9})?(Z|[+-]\d{2}:\d{2})", re.ASCII)


class Item(NamedTuple):
    """One item of a batch: what it claims to be, and its event or its problem."""

    raw: Any
    event_id: str
    seq: int | None
    digest: str
    event: "Reading | None"
    problem: dict[str, Any] | None


class Reading(NamedTuple):
    """A readable event."""

    id: str
    seq: int
    kind: str
    recorded_at: str
    instant: datetime
    local_day: date
    planned_id: str | None
    body_text: str
    digest: str


def problem(code: str, detail: str, errors: list[dict[str, Any]] | None = None) -> dict[str, Any]:
    """Answer a refused item's problem."""
    return Invalid(code, detail, errors=errors or []).body()


def _seq_of(raw: Any) -> int | None:
    seq = raw.get("seq") if isinstance(raw, dict) else None
    if isinstance(seq, int) and not isinstance(seq, bool) and 1 <= seq <= HIGHEST_SEQ:
        return seq
    return None


def _id_of(raw: Any) -> str:
    value = raw.get("id") if isinstance(raw, Mapping) else None
    return value[:100] if isinstance(value, str) and value.isascii() and "\x00" not in value else ""


def _instant(text: Any) -> datetime:
    if not isinstance(text, str) or not _TIME.fullmatch(text):
        raise Invalid("time", "recorded_at must be a time with its offset, such as 2026-05-03T07:12:09+02:00.")
    try:
        found = datetime.fromisoformat(text)
        if found.year not in _YEARS:
            raise ValueError
        return found
    except ValueError:
        raise Invalid("time", "recorded_at is not a time that exists.") from None


def _stands_in(raw: Any) -> bool:
    said = raw.get("body") if isinstance(raw, dict) else None
    return isinstance(said, dict) and said.keys() == _STAND_IN


def _envelope(raw: Any, seq: int | None) -> None:
    if not isinstance(raw, dict) or raw.keys() != _ENVELOPE:
        raise Invalid("envelope", "An event has exactly id, seq, kind, recorded_at and body.")
    if seq is None:
        raise Invalid("number", "seq must be a whole number from 1.")
    if not isinstance(raw["id"], str) or not _ID.fullmatch(raw["id"]):
        raise Invalid("id", "id must be a UUID as lower-case text.")
    if not isinstance(raw["kind"], str) or raw["kind"] not in ADAPTERS:
        raise Invalid("unknown-kind", "This kind of entry is not known here. The practice may need an update.")


def _event(raw: Any, seq: int | None) -> Reading:
    if _stands_in(raw):  # first of all: the phone goes by this word, whatever else might be wrong with the entry
        raise Invalid(NOT_SENT, _AT_HAND)
    _envelope(raw, seq)
    assert seq is not None, "the envelope was checked"
    kind, said = raw["kind"], raw["body"]
    local = _instant(raw["recorded_at"])
    body, text = ADAPTERS[kind].validate_python(said), canonical(said)
    day, digest = body.day or local.date(), _digest(raw, text)
    # By place: by name it takes twice as long, and every check-in passes here.
    return Reading(raw["id"], seq, kind, raw["recorded_at"], local.astimezone(UTC), day, body.planned_id, text, digest)


def read(raw: Any) -> Item:
    """Answer an item with its event, or with the problem that says what is wrong with it."""
    seq = _seq_of(raw)
    try:
        event = _event(raw, seq)
        return Item(raw, event.id, seq, event.digest, event, None)
    except ValidationError as error:
        found = problem("body", "The entry's fields are not valid.", field_errors(error.errors(include_url=False)))
    except Problem as error:
        found = error.body()
    except (ValueError, OverflowError):
        found = problem("unstorable", "The entry has a number or a character that cannot be stored.")
    return Item(raw, _id_of(raw), seq, content_digest(raw), None, found)


def _digest(raw: Mapping[str, Any], body_text: str) -> str:
    """Answer the content digest of a readable item; in ASCII its body's text is the same in both, and need not be made
    again."""
    if not body_text.isascii():
        return content_digest(raw)
    text = f'{{"body":{body_text},"kind":"{raw["kind"]}","recorded_at":"{raw["recorded_at"]}"}}'
    return hashlib.sha256(text.encode()).hexdigest()


def content_digest(raw: Any) -> str:
    """Answer a key for what an item says, whatever number and phone it comes under."""
    fields = ("kind", "recorded_at", "body")
    content = {name: raw.get(name) for name in fields} if isinstance(raw, Mapping) else raw
    return hashlib.sha256(raw_text(content).encode()).hexdigest()


def raw_digest(device_id: str, raw: Any) -> str:
    """Answer a key for a refused item: the same item from the same phone is kept aside once."""
    text = device_id + raw_text(raw)
    return hashlib.sha256(text.encode()).hexdigest()


def raw_text(raw: Any) -> str:
    """Answer an item as ASCII that any database can hold; what could not be stored is a JSON escape in it."""
    return json.dumps(raw, sort_keys=True, separators=(",", ":"))
