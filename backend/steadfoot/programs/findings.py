"""A problem found in a program: where, what, how bad, and what would mend it."""

from dataclasses import dataclass
from enum import StrEnum
from typing import Any


class Severity(StrEnum):
    """An error stops publishing, a warning does not."""

    ERROR = "error"
    WARNING = "warning"


@dataclass(frozen=True, slots=True)
class Mend:
    """One value to put at a JSON pointer of the content."""

    pointer: str
    value: Any


@dataclass(frozen=True, slots=True)
class Fix:
    """A change that takes the problem away, with the words for its button."""

    label: str
    mends: tuple[Mend, ...]


@dataclass(frozen=True, slots=True)
class Finding:
    """A problem; ``pointer`` is a JSON pointer into the content as it was sent."""

    pointer: str
    code: str
    message: str
    severity: Severity
    fix: Fix | None = None


def error(pointer: str, code: str, message: str, fix: Fix | None = None) -> Finding:
    """Answer a finding that stops publishing."""
    return Finding(pointer, code, message, Severity.ERROR, fix)


def warning(pointer: str, code: str, message: str, fix: Fix | None = None) -> Finding:
    """Answer a finding that does not stop publishing."""
    return Finding(pointer, code, message, Severity.WARNING, fix)
