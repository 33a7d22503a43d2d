"""A hundred thousand letters in any text that a body takes are judged at once: no pattern runs away."""

import time
from collections.abc import Iterator
from contextlib import suppress

import pytest
from pydantic import TypeAdapter, ValidationError
from pydantic.fields import FieldInfo

from steadfoot import app as _every_schema
from steadfoot.core.texts import Inward

assert _every_schema
LENGTH, AT_MOST_S = 100_000, 0.05
_PIECES = ["a", "-", " ", "0", "@", "a@", "a-", "a.", "1.", "e\u0301", "\u202e", "ﬃ", "2026-", "\n"]


def _inward(base: type[Inward]) -> Iterator[type[Inward]]:
    for one in base.__subclasses__():
        yield one
        yield from _inward(one)


def _text_fields() -> dict[str, TypeAdapter[object]]:
    """Answer a judge for each sort of text that any body has: fields with the same rule are one sort."""
    found: dict[str, TypeAdapter[object]] = {}
    for model in _inward(Inward):
        for field in model.model_fields.values():
            judge = _judge(field)
            if '"string"' in str(judge.json_schema()).replace("'", '"'):
                found.setdefault(f"{field.annotation} {field.metadata}", judge)
    return found


def _judge(field: FieldInfo) -> TypeAdapter[object]:
    return TypeAdapter(field.rebuild_annotation())


def _seconds(judge: TypeAdapter[object], text: str) -> float:
    began = time.thread_time()
    with suppress(ValidationError):
        judge.validate_python(text)
    return time.thread_time() - began


@pytest.mark.parametrize("piece", _PIECES)
def test_no_text_takes_long_to_judge(piece: str) -> None:
    fields = _text_fields()
    assert len(fields) > 25
    text = (piece * LENGTH)[:LENGTH] + "!"
    slow = {
        name: took
        for name, judge in fields.items()
        if (took := min(_seconds(judge, text) for _ in range(2))) > AT_MOST_S
    }
    assert not slow
