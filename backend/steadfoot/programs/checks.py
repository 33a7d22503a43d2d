"""What does not fit in a program, said so that the practitioner can mend it.

Errors are contradictions inside the content, such as a date after the end: they stop publishing. Whatever
depends on the house or on the day (kit, a trip that has passed) only warns, since time alone must never keep
a practitioner from easing a running program off.
"""

from collections.abc import Collection, Iterator
from datetime import date

from steadfoot.exercises.service import Library
from steadfoot.programs.checks_days import day_findings
from steadfoot.programs.checks_sessions import session_findings
from steadfoot.programs.content import Goal, ProgramContent, normalise
from steadfoot.programs.findings import Finding, Fix, Mend, Severity, error, warning
from steadfoot.programs.words import full_day_words
from steadfoot.rules.vocabulary import Kit


def validate(content: ProgramContent, kit: Collection[Kit], library: Library, today: date) -> list[Finding]:
    """Answer every problem of a program, errors first, each pointing into the content as it was given.

    Args:
        content: as sent; it need not be normalised.
        kit: what the client has in the house.
        library: the exercises that may be used.
        today: the client's calendar day.
    """
    found = [
        *_frame_findings(content, today),
        *session_findings(content, kit, library),
        *day_findings(content),
    ]
    return sorted(found, key=lambda finding: finding.severity is not Severity.ERROR)


def _frame_findings(content: ProgramContent, today: date) -> Iterator[Finding]:
    if not content.title:
        yield error("/title", "no_title", "Give the program a name; the client sees it.")
    if not content.sessions:
        yield error("/sessions", "no_sessions", "The program has no session yet.")
    if content.goal is not None:
        yield from _goal_findings(content.goal, today, ends=content.ends_on is not None)
    yield from _end_findings(content)


def _goal_findings(goal: Goal, today: date, *, ends: bool) -> Iterator[Finding]:
    if not goal.name:
        yield error("/goal/name", "no_goal_name", "Give the trip a name; the client sees it.")
    if goal.date < today:
        fix = Fix("Take the trip out", (Mend("/goal", None),)) if ends else None
        text = f"The trip on {full_day_words(goal.date)} has passed."
        yield warning("/goal/date", "goal_past", text, fix)


def _end_findings(content: ProgramContent) -> Iterator[Finding]:
    end = normalise(content).ends_on
    pointer = "/ends_on" if content.ends_on is not None else "/goal/date"
    if end is None:
        yield error("/ends_on", "no_end", "Say when the program ends, or which trip it leads up to.")
    elif end < content.starts_on:
        start = full_day_words(content.starts_on)
        text = f"The program ends on {full_day_words(end)}, before it starts on {start}."
        yield error(pointer, "end_before_start", text)
