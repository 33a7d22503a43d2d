"""Every table of every step, in one place: migrations and tests read it."""

from sqlmodel import SQLModel

from steadfoot.checkins import tables as checkins
from steadfoot.identity import tables as identity
from steadfoot.monitoring import tables as monitoring
from steadfoot.programs import tables as programs

__all__ = ["METADATA", "checkins", "identity", "monitoring", "programs"]

METADATA = SQLModel.metadata
