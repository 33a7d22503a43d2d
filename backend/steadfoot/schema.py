"""Every table of every step, in one place: migrations and tests read it."""

from sqlmodel import SQLModel

from steadfoot.assessment import tables as assessment
from steadfoot.audit import tables as audit
from steadfoot.checkins import tables as checkins
from steadfoot.custody import tables as custody
from steadfoot.exercises import tables as exercises
from steadfoot.identity import tables as identity
from steadfoot.intake import tables as intake
from steadfoot.monitoring import tables as monitoring
from steadfoot.programs import tables as programs
from steadfoot.readiness import tables as readiness
from steadfoot.trips import tables as trips

__all__ = [
    "METADATA",
    "assessment",
    "audit",
    "checkins",
    "custody",
    "exercises",
    "identity",
    "intake",
    "monitoring",
    "programs",
    "readiness",
    "trips",
]

METADATA = SQLModel.metadata
