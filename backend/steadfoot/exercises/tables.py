"""The movements of a practice's own."""

from datetime import datetime

from sqlalchemy import CheckConstraint, Column, Text, UniqueConstraint
from sqlmodel import Field

from steadfoot.core.base import Table


class OwnExercise(Table, table=True):
    """A movement of the practice's own, and whether it is still offered."""

    __tablename__ = "own_exercise"

    code: str = Field(primary_key=True, max_length=60)
    practice_id: str = Field(foreign_key="practice.id", index=True, max_length=36)
    created_at: datetime
    archived_at: datetime | None


class OwnExerciseVersion(Table, table=True):
    """What a movement was from an instant on. Rows are only ever added."""

    __tablename__ = "own_exercise_version"
    __table_args__ = (
        UniqueConstraint("code", "number"),
        CheckConstraint("number >= 1", name="number_range"),
    )

    drawing: str = Field(primary_key=True, max_length=40)
    practice_id: str = Field(foreign_key="practice.id", index=True, max_length=36)
    code: str = Field(foreign_key="own_exercise.code", max_length=60)
    number: int
    saved_at: datetime
    saved_by: str = Field(foreign_key="practitioner.id", max_length=36)
    text: str = Field(sa_column=Column(Text, nullable=False))
    poses: str = Field(sa_column=Column(Text, nullable=False))
    findings: str = Field(sa_column=Column(Text, nullable=False))
