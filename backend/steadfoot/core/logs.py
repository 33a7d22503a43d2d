"""Logs as lines of JSON that hold no one's data.

A line says which operation, how it ended and how long it took. It never has an address, a path, a query, a header, a
body or an error's text, since each can be somebody's name, health or key; of an error it has the type and the places in
the code. JSON writes line ends and control signs as escapes, so that nobody can write a line of their own.
"""

import json
import logging
import traceback
from contextvars import ContextVar
from datetime import UTC, datetime
from typing import Any

request_id: ContextVar[str | None] = ContextVar("request_id", default=None)
_OURS = ("steadfoot", "uvicorn")
_FRAMES = 12


def _message(record: logging.LogRecord) -> str:
    """Answer our own words whole, another library's without what it fills in."""
    return record.getMessage() if record.name.split(".")[0] in _OURS else str(record.msg)


def _place(frame: traceback.FrameSummary) -> str:
    return f"{frame.filename.rpartition('site-packages/')[2]}:{frame.lineno} {frame.name}"


def _error(error: BaseException) -> dict[str, Any]:
    frames = traceback.extract_tb(error.__traceback__)[-_FRAMES:]
    return {"error": type(error).__name__, "where": [_place(frame) for frame in frames]}


class JsonLines(logging.Formatter):
    """One record, one line."""

    def format(self, record: logging.LogRecord) -> str:
        """Answer the line; keys come in the order in which a person reads them."""
        line: dict[str, Any] = {
            "time": datetime.fromtimestamp(record.created, UTC).isoformat(timespec="milliseconds"),
            "level": record.levelname.lower(),
            "logger": record.name,
            "message": _message(record),
            "request_id": request_id.get(),
            **getattr(record, "fields", {}),
        }
        if record.exc_info and record.exc_info[1]:
            line |= _error(record.exc_info[1])
        return json.dumps(line, default=str)


def configure(level: str) -> None:
    """Send every log of this process to standard error as JSON lines; what is below the level is left out."""
    handler = logging.StreamHandler()
    handler.setFormatter(JsonLines())
    root = logging.getLogger()
    root.handlers[:] = [handler]
    root.setLevel(logging.WARNING)
    for name in _OURS:
        logging.getLogger(name).setLevel(level.upper())
    # Says "started" and "stopped" only: requests have lines of our own.
    logging.getLogger("uvicorn.access").disabled = True
