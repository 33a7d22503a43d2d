"""A variant as a patch on its movement (JSON merge patch, RFC 7396), and named numbers such as a step's height."""

import re
from collections.abc import Mapping
from typing import Any

_FORMULA = re.compile(r"=(-?)([a-z][a-z_]*)(?:\s*([+-])\s*(\d*\.?\d+))?")


class PoseFileBroken(Exception):
    """A pose file cannot be used; the message names the file, the variant and the field."""


def merged(whole: Any, patch: Any) -> Any:
    """Answer a document with a patch laid over it: objects merge, null removes, all else replaces."""
    if not isinstance(patch, dict):
        return patch
    result = dict(whole) if isinstance(whole, dict) else {}
    for name, value in patch.items():
        if value is None:
            result.pop(name, None)
        else:
            result[name] = merged(result.get(name), value)
    return result


def with_numbers(document: Any, numbers: Mapping[str, float], field: str = "") -> Any:
    """Answer a document whose formulas ("=step", "=-step", "=step + 0.02") are worked out.

    Raises:
        PoseFileBroken: a formula is not understood or names no number; the message begins with its field.
    """
    if isinstance(document, dict):
        return {name: with_numbers(value, numbers, f"{field}.{name}") for name, value in document.items()}
    if isinstance(document, list):
        return [with_numbers(value, numbers, f"{field}.{i}") for i, value in enumerate(document)]
    if isinstance(document, str) and document.startswith("="):
        return _worked_out(document, numbers, field.removeprefix("."))
    return document


def _worked_out(formula: str, numbers: Mapping[str, float], field: str) -> float:
    found = _FORMULA.fullmatch(formula)
    if found is None:
        raise PoseFileBroken(f"{field}: {formula!r} is no formula; write '=name', '=-name' or '=name + 0.02'")
    minus, name, sign, term = found.groups()
    if name not in numbers:
        raise PoseFileBroken(f"{field}: {formula!r} needs {name!r} under numbers")
    return (-1 if minus else 1) * numbers[name] + float(f"{sign}{term}" if sign else 0)
