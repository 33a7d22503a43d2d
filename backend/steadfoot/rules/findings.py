"""What a rule has found in check-ins, with the check-ins that show it, and the card of each rule."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import Annotated, Final, Protocol, TypeVar

from steadfoot.rules.sources import Cited, Kind
from steadfoot.rules.words import day_words

EPISODE_GAP_DAYS: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "Two quiet weeks and then the same again is a new episode")]
] = 14


class Rule(StrEnum):
    """The rules that read check-ins, the most urgent first."""

    RED_FLAG_SYMPTOM = "red_flag_symptom"
    PAIN_TOO_HIGH = "pain_too_high"
    PAIN_NEXT_MORNING = "pain_next_morning"
    PAIN_RISING = "pain_rising"
    PAIN_AFTER = "pain_after"
    PAIN_MOVED = "pain_moved"
    USUAL_PAIN_UP = "usual_pain_up"
    EFFORT_RISING = "effort_rising"


class Action(StrEnum):
    """What a practitioner can answer to a finding."""

    ACKNOWLEDGE = "acknowledge"
    EASE_OFF = "ease_off"
    HOLD = "hold"
    MESSAGE = "message"
    CLEAR = "clear"
    """Spoken to, may train again: lifts the stop that a red-flag symptom put on training."""
    CLOSE = "close"


@dataclass(frozen=True, slots=True)
class Card:
    """What a page says of a rule: its title, where it comes from, what it suggests by default."""

    title: str
    cited: Cited
    action: Action
    suggestion: str


CARDS: Final = {
    Rule.RED_FLAG_SYMPTOM: Card(
        "A symptom that needs a person now",
        Cited(Kind.PUBLISHED, "finucane-2020", "Red flags; groups beyond the spine by clinical consensus"),
        Action.HOLD,
        "Call now. Training stops until you have spoken.",
    ),
    Rule.PAIN_TOO_HIGH: Card(
        "Pain above what training may bring",
        Cited(Kind.PUBLISHED, "silbernagel-2007", "Pain above 5 of 10 is too much"),
        Action.EASE_OFF,
        "Ease off one rung and ask how it is.",
    ),
    Rule.PAIN_NEXT_MORNING: Card(
        "Pain that has not settled by the next morning",
        Cited(Kind.PUBLISHED, "silbernagel-2007", "Pain must be back to usual the next morning"),
        Action.EASE_OFF,
        "Ease off one rung until mornings are as usual.",
    ),
    Rule.PAIN_RISING: Card(
        "Pain that rises from week to week",
        Cited(Kind.DERIVED, "silbernagel-2007", "Pain must not rise from week to week; three weeks is ours"),
        Action.EASE_OFF,
        "Ease off one rung and watch next week.",
    ),
    Rule.PAIN_AFTER: Card(
        "Pain that comes after the session",
        Cited(Kind.DERIVED, "farrar-2001", "2 points are a change that matters; here from during to after"),
        Action.HOLD,
        "Hold the dose and ask how the evening was.",
    ),
    Rule.PAIN_MOVED: Card(
        "Pain that moved or spread to another place",
        Cited(Kind.HOUSE, "house", "A new place within two weeks of another one"),
        Action.MESSAGE,
        "Ask what changed, and look at how it is done.",
    ),
    Rule.USUAL_PAIN_UP: Card(
        "Sessions begin with more pain than usual",
        Cited(Kind.HOUSE, "house", "Above the usual level before three sessions running"),
        Action.HOLD,
        "Hold the dose, and ask whether the usual level is still right.",
    ),
    Rule.EFFORT_RISING: Card(
        "Sessions feel harder than planned",
        Cited(Kind.HOUSE, "house", "2 or more above plan, three sessions running"),
        Action.HOLD,
        "Hold the dose for a week.",
    ),
}


@dataclass(frozen=True, slots=True)
class Evidence:
    """One check-in that shows a finding, in words without its day, so that the day can be told from today."""

    event_id: str
    day: date
    what: str
    aside: str = ""

    def sentence(self, today: date) -> str:
        """Tell it: "Right knee hurt 7 of 10 during the step-down on Monday; usual is 1."."""
        end = f"; {self.aside}." if self.aside else "."
        return f"{self.what} {day_words(self.day, today)}{end}"


@dataclass(frozen=True, slots=True)
class Finding:
    """A rule's finding about a subject (a place on the body, a symptom, effort), through one episode."""

    rule: Rule
    subject: str
    evidence: tuple[Evidence, ...]

    @property
    def since(self) -> date:
        """The day of the first check-in of the episode."""
        return self.evidence[0].day


class _Dated(Protocol):
    @property
    def day(self) -> date: ...


D = TypeVar("D", bound=_Dated)


def episodes(hits: Iterable[D]) -> Sequence[Sequence[D]]:
    """Split hits, sorted by day, wherever more than ``EPISODE_GAP_DAYS`` lie between two of them."""
    found: list[list[D]] = []
    for hit in hits:
        if found and (hit.day - found[-1][-1].day).days <= EPISODE_GAP_DAYS:
            found[-1].append(hit)
        else:
            found.append([hit])
    return found
