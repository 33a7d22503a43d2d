"""Test results and ratings of what is hard. Rows are only ever added; a slip is withdrawn and stays on record."""

from datetime import date, datetime

from sqlalchemy import Column, Index, Text
from sqlmodel import Field

from steadfoot.core.base import Table


class TestResult(Table, table=True):
    """One result of a baseline test in the test's unit. ``protocol`` is canonical JSON: how it was done."""

    __test__ = False  # not a test, in spite of its name
    __tablename__ = "test_result"
    __table_args__ = (Index("ix_test_result_client", "practice_id", "client_id"),)

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    client_id: str = Field(foreign_key="client.id", max_length=36)
    code: str = Field(max_length=60)
    side: str | None = Field(max_length=10)
    value: float
    unit: str = Field(max_length=20)
    protocol: str = Field(sa_column=Column(Text, nullable=False))
    note: str = Field(max_length=4000)
    taken_on: date
    taken_by: str = Field(foreign_key="practitioner.id", max_length=36)
    recorded_at: datetime
    withdrawn_at: datetime | None


class FunctionalScale(Table, table=True):
    """One rating of the activities that are hard. ``activities`` is canonical JSON: names with 0 to 10."""

    __tablename__ = "functional_scale"
    __table_args__ = (Index("ix_functional_scale_client", "practice_id", "client_id"),)

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    client_id: str = Field(foreign_key="client.id", max_length=36)
    activities: str = Field(sa_column=Column(Text, nullable=False))
    taken_on: date
    taken_by: str = Field(foreign_key="practitioner.id", max_length=36)
    recorded_at: datetime
    withdrawn_at: datetime | None
