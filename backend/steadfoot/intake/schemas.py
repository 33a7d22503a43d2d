"""Request and reply bodies of intake."""

from collections.abc import Iterable, Mapping
from datetime import date, datetime
from enum import StrEnum
from typing import Annotated, Any, Literal

from pydantic import BaseModel, Field, ValidationInfo, field_validator

from steadfoot.core.texts import Code, Day, Inward, JsonBool, Name, Note
from steadfoot.rules import screening as rules
from steadfoot.rules.screening_questions import QUESTIONS, Feeds
from steadfoot.rules.sources import BIBLIOGRAPHY

_FEEDS = {question.code: question.feeds for question in QUESTIONS}


class ScreeningState(StrEnum):
    """Where a client stands by their newest screening."""

    NOT_SCREENED = "not_screened"
    CLEAR = "clear"
    CLEARANCE_RECOMMENDED = "clearance_recommended"
    CLEARANCE_REQUIRED = "clearance_required"
    CLEARED = "cleared"


class SourceWork(BaseModel):
    """The work that a rule or a norm follows."""

    key: str
    authors: str
    year: str
    title: str
    where: str
    population: str


def source_work(key: str) -> SourceWork:
    """Answer a work of the bibliography by its key."""
    return SourceWork.model_validate(BIBLIOGRAPHY[key], from_attributes=True)


class ScreeningAnswers(Inward):
    """The inputs of the table. Known disease is of heart, vessels, metabolism or kidneys."""

    regular_activity: JsonBool
    known_disease: JsonBool
    signs_or_symptoms: JsonBool
    intensity: rules.Intensity = Field(description="How hard training and trip will be")

    def for_rules(self) -> rules.Answers:
        """Answer them as the rules take them."""
        return rules.Answers(self.regular_activity, self.known_disease, self.signs_or_symptoms, self.intensity)


Details = Annotated[list[Code], Field(max_length=30, description="Codes of the questions answered with yes")]


def _agree(details: Iterable[str], inputs: Mapping[str, Any]) -> None:
    """Refuse a yes that the inputs deny: one of the two is wrong, and it may be the one that matters.

    Raises:
        ValueError: so, or a code is none of our questions.
    """
    for code in details:
        if code not in _FEEDS:
            raise ValueError("names a question that is not asked here")
        if inputs.get(_FEEDS[code].value) is False:
            raise ValueError("says yes to a question whose group is answered with no")


class ScreeningAnswered(ScreeningAnswers):
    """Answers in one, as the phone sends them."""

    details: Details = []

    @field_validator("details")
    @classmethod
    def _details_agree(cls, value: list[str], info: ValidationInfo) -> list[str]:
        _agree(value, info.data)
        return value


class ScreeningBody(Inward):
    """Answers taken with the practitioner."""

    answers: ScreeningAnswers
    details: Details = []

    @field_validator("details")
    @classmethod
    def _details_agree(cls, value: list[str], info: ValidationInfo) -> list[str]:
        answers = info.data.get("answers")
        _agree(value, answers.model_dump() if answers else {})
        return value


class ClearanceBody(Inward):
    """Who has said that the client may train. Without a screening it answers the newest one."""

    given_by: Name
    given_on: Day | None = Field(default=None, description="The client's today if left out")
    note: Note = ""
    screening_id: Annotated[str, Field(max_length=36)] | None = None


class QuestionOut(BaseModel):
    """A question, answered yes or no. Yes to any question of a group makes the group true."""

    code: str
    question: str
    help: str
    maps_to: Feeds


class QuestionList(BaseModel):
    """The questions in the order in which they are asked, and the work that the groups follow."""

    items: list[QuestionOut]
    source: SourceWork


class ClearanceOut(BaseModel):
    """A clearance that was recorded."""

    id: str
    screening_id: str
    given_on: date
    given_by: str
    note: str
    recorded_by: str = Field(description="Name of the practitioner")
    recorded_at: datetime


class ScreeningReason(BaseModel):
    """One reason of an outcome, the weightiest first."""

    text: str


class ScreeningOut(BaseModel):
    """A screening with what it asked for."""

    id: str
    answered_at: datetime
    local_day: date
    source: Literal["client", "practitioner"]
    answered_by: str | None = Field(description="Name of the practitioner; null where the client answered")
    answers: ScreeningAnswers
    details: list[str]
    outcome: rules.Clearance
    reasons: list[ScreeningReason]
    source_work: SourceWork
    cleared: ClearanceOut | None


class ScreeningList(BaseModel):
    """Screenings, newest first, and where the client stands by the newest."""

    items: list[ScreeningOut]
    state: ScreeningState
