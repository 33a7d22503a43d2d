"""What waits for somebody or something: how much, and since when."""

from collections.abc import Callable
from datetime import datetime
from typing import NamedTuple

from sqlmodel import Session


class Waiting(NamedTuple):
    """How many things wait (``number``), and since when the one that has waited longest; None if nothing waits."""

    number: int
    oldest: datetime | None


Queue = Callable[[Session, str | None], Waiting]
"""Answers what waits in one practice, or in all of them for None."""
