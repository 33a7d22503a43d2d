"""The questions of screening in our own plain words, and what the answers to them mean."""

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated, Final

from steadfoot.rules.screening import Answers, Intensity
from steadfoot.rules.sources import Cited, Kind


class Feeds(StrEnum):
    """The input of the table that a question feeds."""

    REGULAR_ACTIVITY = "regular_activity"
    KNOWN_DISEASE = "known_disease"
    SIGNS_OR_SYMPTOMS = "signs_or_symptoms"


@dataclass(frozen=True, slots=True)
class Question:
    """One question, answered yes or no. Yes to any question of an input makes that input true."""

    code: str
    feeds: Feeds
    text: str
    help: str


class Unanswered(ValueError):
    """Questions that have no answer: silence is not a no."""

    def __init__(self, codes: tuple[str, ...]) -> None:
        self.codes = codes
        super().__init__(f"Not answered yet: {', '.join(codes)}.")


ACTIVE_DAYS_A_WEEK: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "riebe-2015", "Regular is on 3 or more days a week")]
] = 3
ACTIVE_MINUTES: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "riebe-2015", "Regular is 30 or more minutes, moderate")]
] = 30
ACTIVE_MONTHS: Final[Annotated[int, Cited(Kind.PUBLISHED, "riebe-2015", "Regular is over the last 3 months")]] = 3

QUESTIONS: Final = (
    Question(
        "active",
        Feeds.REGULAR_ACTIVITY,
        f"Over the last {ACTIVE_MONTHS} months, have you exercised on {ACTIVE_DAYS_A_WEEK} or more days in most weeks?",
        f"Count brisk walks, cycling or sport that you planned, {ACTIVE_MINUTES} minutes or more at a time, hard "
        "enough that you breathe faster but can still talk.",
    ),
    Question(
        "heart-or-vessels",
        Feeds.KNOWN_DISEASE,
        "Has a doctor told you of a disease of your heart or blood vessels?",
        "For example a heart attack, a stent or bypass, heart failure, a valve problem, an irregular beat, a stroke, "
        "or narrow arteries in the legs.",
    ),
    Question(
        "diabetes",
        Feeds.KNOWN_DISEASE,
        "Do you have diabetes?",
        "Either type. Say yes also when pills, injections or food keep it well in hand.",
    ),
    Question(
        "kidneys",
        Feeds.KNOWN_DISEASE,
        "Has a doctor told you of a kidney disease?",
        "A kidney stone or a bladder infection that is over does not count.",
    ),
    Question(
        "chest",
        Feeds.SIGNS_OR_SYMPTOMS,
        "Do you get pain, pressure or tightness in your chest, neck, jaw or arms?",
        "At rest, on effort or after a meal. If you have it now, call your local emergency number.",
    ),
    Question(
        "breath",
        Feeds.SIGNS_OR_SYMPTOMS,
        "Do you get short of breath at rest, on light effort, or when you lie flat at night?",
        "Breathing hard on a steep hill is normal. Being out of breath from dressing or a slow walk is not.",
    ),
    Question(
        "faint",
        Feeds.SIGNS_OR_SYMPTOMS,
        "Do you get dizzy, or have you fainted or nearly fainted?",
        "Say yes above all when it came during or right after effort.",
    ),
    Question(
        "heartbeat",
        Feeds.SIGNS_OR_SYMPTOMS,
        "Does your heart race, flutter or skip without a reason you know, or has a murmur been found?",
        "A fast beat from climbing stairs is normal.",
    ),
    Question(
        "ankles",
        Feeds.SIGNS_OR_SYMPTOMS,
        "Do both your ankles swell?",
        "If one leg alone is swollen, warm and sore, have it seen today.",
    ),
    Question(
        "legs",
        Feeds.SIGNS_OR_SYMPTOMS,
        "Do your calves cramp or ache when you walk, and stop when you stand still?",
        "Sore muscles the day after training do not count.",
    ),
    Question(
        "tired",
        Feeds.SIGNS_OR_SYMPTOMS,
        "Do everyday things leave you far more tired or breathless than they used to?",
        "For example making a bed or carrying shopping.",
    ),
)
"""One question on habit, three on disease, seven on signs and symptoms; the groups follow [riebe-2015], the words
are ours."""


def answers_of(said: Mapping[str, bool], intensity: Intensity) -> Answers:
    """Answer the table's inputs from a person's yes and no by code.

    Raises:
        Unanswered: a question has no answer.
    """
    open_codes = tuple(one.code for one in QUESTIONS if one.code not in said)
    if open_codes:
        raise Unanswered(open_codes)
    true = {one.feeds for one in QUESTIONS if said[one.code]}
    return Answers(
        Feeds.REGULAR_ACTIVITY in true, Feeds.KNOWN_DISEASE in true, Feeds.SIGNS_OR_SYMPTOMS in true, intensity
    )
