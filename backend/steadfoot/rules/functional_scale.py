"""What a person names as hard for them, rated by themselves: the patient-specific functional scale.

Three to five activities, each 0 (cannot do it) to 10 (as before). Some newer forms turn the scale round: keep
the version with the scores.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from statistics import mean
from typing import Annotated, Final

from steadfoot.rules.change import Change, change
from steadfoot.rules.ranges import within
from steadfoot.rules.sources import Cited, Kind

SCORE_MAX: Final[Annotated[int, Cited(Kind.PUBLISHED, "stratford-1995", "0 unable, 10 as before")]] = 10
ACTIVITIES_MIN: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "The form asks for three; one is enough to follow")]
] = 1
ACTIVITIES_MAX: Final[Annotated[int, Cited(Kind.PUBLISHED, "stratford-1995", "Up to five activities")]] = 5
MEAN_MDC: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "stratford-1995", "2 points of the mean, 90 percent; 2.0 itself counts")]
] = 2
SINGLE_MDC: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "stratford-1995", "3 points of a single activity, 90 percent")]
] = 3

Scores = Mapping[str, float]
"""The activity in the person's words, and its score."""


class OtherActivities(ValueError):
    """The two ratings are not of the same activities."""

    def __init__(self) -> None:
        super().__init__("The activities differ: a change can only be told for the same activities.")


@dataclass(frozen=True, slots=True)
class FunctionalChange:
    """Means before and after, and the change of the mean and of each activity."""

    before: float
    after: float
    of_mean: Change
    of_each: Mapping[str, Change]


def functional_score(scores: Scores) -> float:
    """Answer the mean of the activities' scores, 0 to 10, higher is better [stratford-1995].

    Raises:
        OutOfRange: there is no activity or are more than five, or a score is outside 0 to 10.

    >>> functional_score({"stairs": 3, "kneeling": 4, "walking down": 2})
    3
    """
    within("activities", len(scores), ACTIVITIES_MIN, ACTIVITIES_MAX)
    for score in scores.values():
        within("score", score, 0, SCORE_MAX)
    return mean(scores.values())


def functional_change(before: Scores, after: Scores) -> FunctionalChange:
    """Judge the change between two ratings of the same activities [stratford-1995].

    Raises:
        OtherActivities: they are not the same.
        OutOfRange: as in ``functional_score``.
    """
    if set(before) != set(after):
        raise OtherActivities
    first, last = functional_score(before), functional_score(after)
    each = {activity: change(before[activity], after[activity], SINGLE_MDC) for activity in before}
    return FunctionalChange(first, last, change(first, last, MEAN_MDC), each)
