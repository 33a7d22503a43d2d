"""``steadfoot calc dose``."""

from typing import Annotated

import typer

from steadfoot.calc.answer import AsJson, source_fields, tell
from steadfoot.calc.refusals import NotReadable
from steadfoot.rules.dose import REPS_MAX, REPS_MIN
from steadfoot.rules.effort import EFFORT_MAX
from steadfoot.rules.pain import Zone
from steadfoot.rules.progression import Facts, Goal, SessionDone, decide
from steadfoot.rules.progression_steps import without_ladder
from steadfoot.rules.ranges import within


def dose(
    goal: Annotated[str, typer.Option(help="Repetitions aimed at in a set: 12-15, or 12.")],
    sessions: Annotated[
        str, typer.Option(help='Repetitions of each set, sessions apart by ;, oldest first: "15,17;16,18".')
    ],
    load_kg: Annotated[float | None, typer.Option(help="Load of the last sessions, in kg.")] = None,
    step_kg: Annotated[float | None, typer.Option(help="Smallest step of load at hand, in kg.")] = None,
    effort: Annotated[int | None, typer.Option(help="Effort of the last session, 0 to 10.")] = None,
    target_effort: Annotated[int | None, typer.Option(help="Effort planned for it, 0 to 10.")] = None,
    pain_zone: Annotated[Zone | None, typer.Option(help="Zone of the last pain.")] = None,
    as_json: AsJson = False,
) -> None:
    """Say whether to progress, hold or regress one exercise, and why."""
    for name, value in (("effort", effort), ("target_effort", target_effort)):
        if value is not None:
            within(name, value, 0, EFFORT_MAX)
    verdict = decide(
        Facts(
            goal=_goal(goal),
            sessions=_sessions(sessions, load_kg, effort),
            target_effort=target_effort,
            pain_zone=pain_zone,
        )
    )
    found, next_load_kg = without_ladder(verdict, load_kg, step_kg)
    answer = {
        "value": next_load_kg,
        "unit": "kg",
        "suggestion": found.suggested.value,
        "next_load_kg": next_load_kg,
        "rule": found.rule.value,
        "sentence": found.sentence,
        "reasons": [reason.words for reason in found.reasons],
        "would_change": found.would_change,
        **source_fields(found.cited),
    }
    tell("Dose", answer, as_json=as_json)


def _goal(text: str) -> Goal:
    numbers = [_whole("goal", part, text) for part in text.split("-")]
    low, high = numbers[0], numbers[-1]
    if len(numbers) > len(("low", "high")) or low > high:
        raise NotReadable("goal", text, "repetitions such as 12-15, the lower first, or 12")
    for one in (low, high):
        within("goal", one, REPS_MIN, REPS_MAX, "repetitions")
    return Goal(low, high)


def _sessions(text: str, load_kg: float | None, effort: int | None) -> list[SessionDone]:
    parts = text.split(";")
    done = [[_whole("sessions", number, text) for number in part.split(",")] for part in parts]
    for reps in (reps for session in done for reps in session):
        within("repetitions", reps, 0, REPS_MAX, "repetitions")
    last = len(parts) - 1
    return [
        SessionDone(tuple(session), load_kg=load_kg, effort=effort if place == last else None)
        for place, session in enumerate(done)
    ]


def _whole(name: str, part: str, text: str) -> int:
    if not part.strip().isdecimal():
        raise NotReadable(name, text, "whole numbers of repetitions, sets apart by , and sessions by ;")
    return int(part)
