"""Turns what the service answers into reply bodies."""

from dataclasses import asdict

from steadfoot.programs.content import ProgramContent, expected_minutes, normalise, planned_load, planned_sets
from steadfoot.programs.findings import Finding
from steadfoot.programs.plan import Version, weeks_of
from steadfoot.programs.schemas import (
    ChecksOut,
    PersonOut,
    ProblemOut,
    ProgramOut,
    ProgramSummary,
    SessionSum,
    WeekSum,
)


def summary_of(version: Version, names: dict[str, str]) -> ProgramSummary:
    """Answer a version without its content; ``names`` are the practitioners' by id."""
    return ProgramSummary(
        id=version.id,
        number=version.number,
        title=version.content.title,
        published_at=version.published_at,
        published_by=PersonOut(id=version.published_by, display_name=names[version.published_by]),
        effective_on=version.effective_on,
        changes=list(version.changes),
        note=version.note,
    )


def program_of(version: Version, names: dict[str, str]) -> ProgramOut:
    """Answer a version whole."""
    return ProgramOut(**dict(summary_of(version, names)), content=version.content)


def checks_of(content: ProgramContent, findings: list[Finding], changed: list[str]) -> ChecksOut:
    """Answer problems and changes with what each session and each week asks for."""
    return ChecksOut(
        problems=[ProblemOut.model_validate(asdict(one)) for one in findings],
        changes=changed,
        sessions=[
            SessionSum(
                key=session.key,
                sets=planned_sets(session),
                minutes=expected_minutes(session),
                planned_load=planned_load(session),
            )
            for session in content.sessions
        ],
        weeks=[WeekSum.model_validate(asdict(week)) for week in weeks_of(normalise(content))],
    )
