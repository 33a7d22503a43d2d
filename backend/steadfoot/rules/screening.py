"""Screening before a program: whether someone should be cleared by a doctor first, as a table of eight rows.

Symptoms decide before disease, disease before habit. The outcome supports licensed judgment; whoever has a
symptom now needs care now, not a form.
"""

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated, Final

from steadfoot.rules.sources import Cited, Kind


class Clearance(StrEnum):
    """What has to happen before a program."""

    NOT_NEEDED = "not_needed"
    RECOMMENDED = "recommended"
    REQUIRED = "required"

    @property
    def asked_for(self) -> bool:
        """Whether a practitioner has to record a clearance before a program may begin."""
        return self is not Clearance.NOT_NEEDED


class Intensity(StrEnum):
    """How hard the training and the trip are going to be."""

    LIGHT_TO_MODERATE = "light_to_moderate"
    VIGOROUS = "vigorous"


@dataclass(frozen=True, slots=True)
class Answers:
    """What screening asks. Known disease is cardiovascular, metabolic or renal, and nothing else."""

    regular_activity: bool
    known_disease: bool
    signs_or_symptoms: bool
    intensity: Intensity


@dataclass(frozen=True, slots=True)
class Row:
    """One row of the table: the outcome at each intensity and what it means in plain words."""

    light_to_moderate: Clearance
    vigorous: Clearance
    meaning: str


@dataclass(frozen=True, slots=True)
class Outcome:
    """The clearance asked for and why, the weightiest reason first."""

    clearance: Clearance
    reasons: tuple[str, ...]
    source: str


_FIRST = Row(
    Clearance.REQUIRED,
    Clearance.REQUIRED,
    "A doctor's clearance comes first; then begin light to moderate and build up as it is borne.",
)
_STOP = Row(
    Clearance.REQUIRED,
    Clearance.REQUIRED,
    "Stop exercise and have a doctor's clearance; training may go on after it.",
)

TABLE: Final[
    Annotated[
        dict[tuple[bool, bool, bool], Row],
        Cited(
            Kind.PUBLISHED,
            "riebe-2015",
            "Eight rows by regular activity, known disease, signs or symptoms; 12 months from memory",
        ),
    ]
] = {
    (False, False, False): Row(
        Clearance.NOT_NEEDED,
        Clearance.NOT_NEEDED,
        "No clearance is needed; begin light to moderate and build up to vigorous gradually.",
    ),
    (False, False, True): _FIRST,
    (False, True, False): _FIRST,
    (False, True, True): _FIRST,
    (True, False, False): Row(
        Clearance.NOT_NEEDED,
        Clearance.NOT_NEEDED,
        "No clearance is needed; go on at moderate or vigorous intensity and build up gradually.",
    ),
    (True, False, True): _STOP,
    (True, True, False): Row(
        Clearance.NOT_NEEDED,
        Clearance.RECOMMENDED,
        "Moderate exercise may go on; before vigorous exercise a clearance of the last 12 months is "
        "recommended, and a new one if anything has changed.",
    ),
    (True, True, True): _STOP,
}


def screen(answers: Answers) -> Outcome:
    """Answer whether clearance is asked for, with the reasons.

    Follows [riebe-2015]. Where that says clearance comes before any exercise the outcome is ``required``; where
    it says so before vigorous exercise only, ``recommended``. A heavy pack uphill is vigorous for most people.

    >>> screen(Answers(True, True, False, Intensity.VIGOROUS)).clearance.value
    'recommended'
    """
    row = TABLE[answers.regular_activity, answers.known_disease, answers.signs_or_symptoms]
    vigorous = answers.intensity is Intensity.VIGOROUS
    return Outcome(row.vigorous if vigorous else row.light_to_moderate, (*_because(answers), row.meaning), "riebe-2015")


def _because(answers: Answers) -> tuple[str, ...]:
    said = (
        "There are signs or symptoms that may come from heart, metabolism or kidneys."
        if answers.signs_or_symptoms
        else "There are no signs or symptoms.",
        "A disease of heart, vessels, metabolism or kidneys is known."
        if answers.known_disease
        else "No disease of heart, vessels, metabolism or kidneys is known.",
        "There has been regular activity over the last three months."
        if answers.regular_activity
        else "There has been no regular activity over the last three months.",
        "The plan is vigorous: most walking uphill with a pack is."
        if answers.intensity is Intensity.VIGOROUS
        else "The plan is light to moderate.",
    )
    return tuple(said)
