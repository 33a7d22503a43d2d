"""How hard a session was: its load, and sessions that keep feeling harder than planned."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Annotated, Final

from steadfoot.rules.findings import Evidence, Finding, Rule
from steadfoot.rules.sources import Cited, Kind

EFFORT_MAX: Final[Annotated[int, Cited(Kind.PUBLISHED, "foster-2001", "Scale of 0 to 10")]] = 10
EFFORT_ABOVE_PLAN: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "One point is within a person's own scatter; two is a change of word")]
] = 2
EFFORT_SESSIONS: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "One hard day is a hard day; three running are a dose too high")]
] = 3


@dataclass(frozen=True, slots=True)
class Rated:
    """A finished session: its effort as planned and as felt, both 0 to 10."""

    event_id: str
    day: date
    name: str
    expected_effort: int
    effort: int

    @property
    def above_plan(self) -> bool:
        """Whether it felt clearly harder than planned."""
        return self.effort - self.expected_effort >= EFFORT_ABOVE_PLAN


def session_load(effort: int, minutes: float) -> float:
    """Answer the load of a session in arbitrary units: effort (0 to 10) times minutes.

    Follows [foster-2001]: session rating of perceived exertion times duration.

    Raises:
        ValueError: effort outside 0 to 10, or negative minutes.

    >>> session_load(5, 60)
    300
    """
    if not 0 <= effort <= EFFORT_MAX or minutes < 0:
        raise ValueError(f"effort {effort} must be 0 to {EFFORT_MAX} and minutes {minutes} not negative")
    return effort * minutes


def effort_findings(sessions: Iterable[Rated]) -> list[Finding]:
    """Find runs of ``EFFORT_SESSIONS`` or more sessions, in the order done, each felt clearly harder than
    planned."""
    runs: list[list[Rated]] = [[]]
    for session in sessions:
        if session.above_plan:
            runs[-1].append(session)
        elif runs[-1]:
            runs.append([])
    return [_finding(run) for run in runs if len(run) >= EFFORT_SESSIONS]


def _finding(run: Sequence[Rated]) -> Finding:
    return Finding(Rule.EFFORT_RISING, "effort", tuple(_evidence(session) for session in run))


def _evidence(session: Rated) -> Evidence:
    what = f"{session.name} felt {session.effort} of {EFFORT_MAX}"
    return Evidence(session.event_id, session.day, what, f"planned was {session.expected_effort}")
