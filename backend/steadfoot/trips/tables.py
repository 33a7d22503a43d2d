"""A client's trip and its legs (decision 0008). The trip's name and date are the goal of the current program."""

from datetime import datetime

from sqlalchemy import CheckConstraint, Column, Text
from sqlmodel import Field

from steadfoot.core.base import Table


class Trip(Table, table=True):
    """What holds for all legs: the pack in kg, the ground, and the version that guards a colleague's change."""

    client_id: str = Field(primary_key=True, foreign_key="client.id", max_length=36)
    practice_id: str = Field(foreign_key="practice.id", index=True, max_length=36)
    pack_kg: float
    ground: str = Field(max_length=20)
    version: int
    saved_at: datetime
    saved_by: str = Field(foreign_key="practitioner.id", max_length=36)


class TripLeg(Table, table=True):
    """A leg at its place in the trip. Metres up or down are null where nobody knows them.

    ``pack_kg`` is null where the trip's own holds; ``from_file`` is canonical JSON of what a GPX file said, or null.
    """

    __tablename__ = "trip_leg"
    __table_args__ = (CheckConstraint("day >= 1", name="day_range"),)

    client_id: str = Field(primary_key=True, foreign_key="client.id", max_length=36)
    position: int = Field(primary_key=True)
    practice_id: str = Field(foreign_key="practice.id", index=True, max_length=36)
    day: int
    name: str = Field(max_length=120)
    distance_km: float
    ascent_m: float | None
    descent_m: float | None
    pack_kg: float | None
    from_file: str | None = Field(sa_column=Column(Text, nullable=True))
