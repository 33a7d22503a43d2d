"""Refusals as problem objects: which rule refused, what it was given, and what is possible."""

import re
from typing import Any

from typer.exceptions import TyperException

UNPROCESSABLE = 422


class NotReadable(ValueError):
    """Text that is not of the form asked for."""

    def __init__(self, name: str, value: str, form: str) -> None:
        self.name, self.value, self.form = name, value, form
        super().__init__(f"{name} is {value!r}; it must be {form}.")


def problem(error: Exception) -> dict[str, Any]:
    """Answer an error as a problem object: type, title, status, code, detail, and what the error knows.

    The code is the error's name in lower case: ``OutOfRange`` is ``out-of-range``.
    """
    code = "usage" if isinstance(error, TyperException) else _dashed(type(error).__name__)
    detail = error.format_message() if isinstance(error, TyperException) else str(error)
    known = {key: value for key, value in vars(error).items() if isinstance(value, str | int | float)}
    more = {} if code == "usage" else {key: _plain(value) for key, value in known.items()}
    return {
        "type": f"/problems/{code}",
        "title": "Not possible",
        "status": UNPROCESSABLE,
        "code": code,
        "detail": detail,
    } | more


def _dashed(name: str) -> str:
    return re.sub(r"(?<=[a-z])(?=[A-Z])", "-", name).lower()


def _plain(value: str | float) -> str | float:
    """Infinity and not-a-number have no form in JSON: tell them as text."""
    return value if isinstance(value, str) or -float("inf") < value < float("inf") else str(value)
