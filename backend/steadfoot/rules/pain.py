"""Pain while training: which ratings are fine, which are too much, and what follows for the dose.

The model was tried in tendinopathy and kneecap pain, not in acute injury, bone stress or nerve pain: there it
does not apply. It supports a licensed practitioner's judgment and never replaces it.
"""

from collections.abc import Mapping
from dataclasses import asdict, dataclass
from enum import StrEnum
from typing import Annotated, Any, Final

from steadfoot.rules.sources import Cited, Kind

PAIN_MAX: Final[Annotated[int, Cited(Kind.PUBLISHED, "farrar-2001", "Numeric rating scale of 0 to 10")]] = 10
PAIN_STOP: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "silbernagel-2007", "Up to 5 of 10 is allowed, so 6 is the first too much")]
] = 6
PAIN_ACCEPTABLE_FROM: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "thomee-1997", "0 to 2 is safe; of the bands in use we take 3 to 5 next")]
] = 3
USUAL_PAIN: Final[Annotated[int, Cited(Kind.HOUSE, "house", "None, until the practitioner has asked")]] = 0


class Zone(StrEnum):
    """The three bands of a rating."""

    SAFE = "safe"
    ACCEPTABLE = "acceptable"
    HIGH = "high"


class Advice(StrEnum):
    """What the model says of the dose."""

    PROGRESS_ALLOWED = "progress_allowed"
    HOLD = "hold"
    REGRESS = "regress"


@dataclass(frozen=True, slots=True)
class Thresholds:
    """The ratings (0 to 10) at which advice changes, as set for one client."""

    pain_stop: int = PAIN_STOP
    acceptable_from: int = PAIN_ACCEPTABLE_FROM
    usual_pain: int = USUAL_PAIN

    @classmethod
    def of(cls, stored: Mapping[str, Any], usual_pain: int) -> "Thresholds":
        """Take what a practitioner has set; the rest stays as published."""
        return cls(
            int(stored.get("pain_stop", PAIN_STOP)),
            int(stored.get("acceptable_from", PAIN_ACCEPTABLE_FROM)),
            usual_pain,
        )

    def table(self) -> dict[str, int]:
        """Answer the thresholds as a plain table, the same that a phone is given."""
        return asdict(self)


def zone(rating: int, thresholds: Thresholds) -> Zone:
    """Answer the band of a rating, 0 to 10.

    Follows the pain-monitoring model [silbernagel-2007], with integer bands 0-2, 3-5, 6-10 unless set
    otherwise.

    Raises:
        ValueError: the rating is outside 0 to 10.

    >>> zone(5, Thresholds()).value
    'acceptable'
    """
    _check(rating)
    if rating >= thresholds.pain_stop:
        return Zone.HIGH
    return Zone.ACCEPTABLE if rating >= thresholds.acceptable_from else Zone.SAFE


def advise(during: int, next_morning: int, thresholds: Thresholds, *, week_worse: bool = False) -> Advice:
    """Answer what the dose may do after a session.

    Parameters:
        during: worst rating while or right after training, 0 to 10.
        next_morning: rating on the next morning, 0 to 10, against ``thresholds.usual_pain``.
        week_worse: whether pain or stiffness has risen from week to week.

    Returns:
        Regress when the rating was too high, has not settled by morning, or the weeks rise; hold in the
        acceptable band; otherwise progress is allowed. Follows [silbernagel-2007].

    Raises:
        ValueError: a rating is outside 0 to 10.
    """
    _check(next_morning)
    band = zone(during, thresholds)
    if band is Zone.HIGH or next_morning > thresholds.usual_pain or week_worse:
        return Advice.REGRESS
    return Advice.HOLD if band is Zone.ACCEPTABLE else Advice.PROGRESS_ALLOWED


def _check(rating: int) -> None:
    if not 0 <= rating <= PAIN_MAX:
        raise ValueError(f"a pain rating is 0 to {PAIN_MAX}, not {rating}")
