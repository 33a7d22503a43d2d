"""Templates: programs without dates, laid onto a calendar."""

from collections.abc import Iterator
from datetime import date, datetime, timedelta

from sqlmodel import Session

from steadfoot.core.ids import uuid7
from steadfoot.core.problems import Conflict, Invalid, not_found
from steadfoot.core.texts import canonical
from steadfoot.exercises.service import Library
from steadfoot.exercises.shelf import library_of
from steadfoot.programs import store
from steadfoot.programs.checks_sessions import session_findings
from steadfoot.programs.content import PlannedDay, ProgramContent, normalise
from steadfoot.programs.findings import Finding, Severity, error
from steadfoot.programs.schemas import (
    FromTemplateBody,
    TemplateBody,
    TemplateDay,
    TemplateOut,
    TemplatePatch,
)
from steadfoot.programs.season import WEEKDAYS
from steadfoot.programs.tables import Template
from steadfoot.rules.vocabulary import Kit

LONGEST = timedelta(weeks=104)
_WEEK_DAYS = 7


def all_templates(session: Session, practice_id: str) -> list[TemplateOut]:
    """Answer the practice's own templates by name, then those that come with the program."""
    own = [_own(row) for row in store.templates(session, practice_id)]
    shipped = [_out(code, body, shipped=True) for code, body in store.shipped_templates().items()]
    return own + shipped


def template_of(session: Session, practice_id: str, template_id: str) -> TemplateOut:
    """Answer one template.

    Raises:
        NotFound: unknown, or another practice's.
    """
    shipped = store.shipped_templates().get(template_id)
    if shipped:
        return _out(template_id, shipped, shipped=True)
    row = store.template(session, practice_id, template_id)
    if row is None:
        raise not_found("template")
    return _own(row)


def save_template(session: Session, practice_id: str, body: TemplateBody, now: datetime) -> TemplateOut:
    """Keep a template of the practice.

    Raises:
        Conflict: a template of that name is there already.
        Invalid: a session or a week has an error; names each place.
    """
    _refuse_taken_name(session, practice_id, body.name)
    found = [one for one in template_findings(body, library_of(session, practice_id)) if one.severity is Severity.ERROR]
    if found:
        errors = [{"pointer": f"/body{one.pointer}", "code": one.code, "detail": one.message} for one in found]
        raise Invalid("template-has-errors", "The template has errors.", errors=errors)
    text = canonical(body.model_dump(mode="json"))
    row = Template(id=uuid7(now), practice_id=practice_id, name=body.name, created_at=now, body=text)
    session.add(row)
    session.flush()
    return _own(row)


def change_template(session: Session, practice_id: str, template_id: str, patch: TemplatePatch) -> TemplateOut:
    """Rename a template of the practice or describe it anew; its sessions and weeks stay.

    Raises:
        NotFound: unknown, or another practice's.
        Conflict: it comes with the program, or another template has that name.
    """
    row = _own_row(session, practice_id, template_id)
    new = patch.model_dump(exclude_none=True)
    if patch.name is not None:
        _refuse_taken_name(session, practice_id, patch.name, except_id=row.id)
    body = TemplateBody.model_validate_json(row.body).model_copy(update=new)
    row.name, row.body = body.name, canonical(body.model_dump(mode="json"))
    session.add(row)
    session.flush()
    return _own(row)


def delete_template(session: Session, practice_id: str, template_id: str) -> None:
    """Take a template of the practice away; programs that were laid out from it stay.

    Raises:
        NotFound: unknown, or another practice's.
        Conflict: it comes with the program.
    """
    session.delete(_own_row(session, practice_id, template_id))


def _own_row(session: Session, practice_id: str, template_id: str) -> Template:
    if template_id in store.shipped_templates():
        raise Conflict("template-shipped", "This template comes with the program and stays as it is.")
    row = store.template(session, practice_id, template_id)
    if row is None:
        raise not_found("template")
    return row


def _refuse_taken_name(session: Session, practice_id: str, name: str, except_id: str | None = None) -> None:
    """Two of one name could not be told apart where one is chosen; case does not tell them apart."""
    others = [one for one in all_templates(session, practice_id) if one.id != except_id]
    if any(one.name.casefold() == name.casefold() for one in others):
        raise Conflict("template-name-taken", f"There is already a template named {name}. Choose another name.")


def template_findings(body: TemplateBody, library: Library) -> Iterator[Finding]:
    """Answer the problems of a template: those of its sessions, and week entries without a session."""
    bare = ProgramContent(title=body.name, starts_on=date(2000, 1, 1), sessions=body.sessions, days=[])
    yield from (one for one in session_findings(bare, list(Kit), library) if one.code != "never_planned")
    keys = {session.key for session in body.sessions}
    for week, entries in enumerate(body.weeks):
        for place, entry in enumerate(entries):
            if entry.session not in keys:
                text = f"There is no session {entry.session} in the template."
                yield error(f"/weeks/{week}/{place}/session", "unknown_session", text)


def lay_out(template: TemplateOut, body: FromTemplateBody) -> ProgramContent:
    """Answer a program's content from a template and its dates; sessions that no date takes are left out.

    Week one begins on the day the program starts; each session falls on its own day of the week.

    Raises:
        Invalid: no end and no goal, an end before the start, or more than two years.
    """
    frame = ProgramContent(
        title=template.name,
        goal=body.goal,
        starts_on=body.starts_on,
        ends_on=body.ends_on,
        sessions=[],
        days=[],
    )
    end = _checked_end(body.starts_on, normalise(frame).ends_on)
    days = [
        PlannedDay(date=day, session=entry.session, fixed_day=entry.fixed_day)
        for day in _each_day(body.starts_on, end)
        for entry in _entries(template, (day - body.starts_on).days // _WEEK_DAYS)
        if entry.weekday is WEEKDAYS[day.weekday()]
    ]
    used = {day.session for day in days}
    sessions = [session for session in template.sessions if session.key in used]
    return normalise(frame.model_copy(update={"sessions": sessions, "days": days}))


def _checked_end(start: date, end: date | None) -> date:
    if end is None:
        raise _bad_end("no_end", "Say when the program ends, or which trip it leads up to.")
    if end < start:
        raise _bad_end("end_before_start", "The program would end before it starts.")
    if end - start > LONGEST:
        raise _bad_end("too_long", f"The program would be longer than {LONGEST.days // _WEEK_DAYS} weeks.")
    return end


def _bad_end(code: str, text: str) -> Invalid:
    return Invalid("validation", text, errors=[{"pointer": "/body/ends_on", "code": code, "detail": text}])


def _each_day(first: date, last: date) -> Iterator[date]:
    for days in range((last - first).days + 1):
        yield first + timedelta(days=days)


def _entries(template: TemplateOut, week: int) -> list[TemplateDay]:
    return template.weeks[min(week, len(template.weeks) - 1)]


def _own(row: Template) -> TemplateOut:
    return _out(row.id, TemplateBody.model_validate_json(row.body), shipped=False)


def _out(template_id: str, body: TemplateBody, *, shipped: bool) -> TemplateOut:
    return TemplateOut(
        id=template_id,
        shipped=shipped,
        name=body.name,
        about=body.about,
        sessions=body.sessions,
        weeks=body.weeks,
    )
