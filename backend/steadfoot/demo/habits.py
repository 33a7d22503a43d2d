"""How an invented person behaves through the weeks. Plain numbers; chance is drawn elsewhere."""

from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class Pain:
    """A course of pain, a rating a week; zeros are not reported."""

    region: str
    side: str
    exercise: str
    during: tuple[int, ...]
    next_morning: tuple[int, ...] = ()
    aspect: str | None = None


@dataclass(frozen=True, slots=True)
class Habit:
    """What a person tends to do.

    Attributes:
        keeps: chance that a planned session is done, 0 to 1.
        keeps_lately: the same for the last two weeks, where it differs.
        sets_share: chance that a set of a session is done, 0 to 1.
        effort_shift: how much harder than planned sessions feel, in points of 0 to 10.
        effort_lately: the same for the last two weeks, where it differs.
        moves: chance that a session is done on another day of its week.
        silent_days: for how many days the phone has not been in contact.
        sends_every_days: how many days pass between two contacts.
        pause: first and last week (0 is the first) without any session.
        extra_walks: own walks a week besides the plan, in the last three weeks.
        symptom: a red-flag symptom reported in the last days.
        pains: courses of pain.
        over_goal: for how many repetitions (seconds of a hold) above the goal each set of an exercise is good in the
            last two weeks, by the exercise's code; others are ticked without a number.
        notes: lines to the practice by week.
    """

    keeps: float = 0.93
    keeps_lately: float | None = None
    sets_share: float = 0.995
    effort_shift: int = 0
    effort_lately: int | None = None
    moves: float = 0.15
    silent_days: int = 0
    sends_every_days: int = 3
    pause: tuple[int, int] | None = None
    extra_walks: int = 0
    symptom: str | None = None
    pains: tuple[Pain, ...] = ()
    over_goal: dict[str, int] = field(default_factory=dict)
    notes: dict[int, str] = field(default_factory=dict)
