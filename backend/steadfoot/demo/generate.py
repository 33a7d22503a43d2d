"""Makes the invented practice's eight weeks, in the order in which they would have happened."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from random import Random
from zoneinfo import ZoneInfo

from sqlmodel import Session

from steadfoot.checkins.service import read, settle, sync
from steadfoot.core.clock import local_date
from steadfoot.core.database import Database
from steadfoot.demo import traverse
from steadfoot.demo.diary import Diary, Entry
from steadfoot.demo.people import EMAIL, PEOPLE, PRACTICE, PRACTITIONER, RIDGE, ZONE, Person
from steadfoot.demo.readiness import prepare
from steadfoot.demo.season import season_of
from steadfoot.identity import service as identity
from steadfoot.identity.access import DeviceAccess, PractitionerAccess
from steadfoot.identity.pairing import invite, pair
from steadfoot.identity.roles import Role
from steadfoot.identity.schemas import ClientBody, Delivery
from steadfoot.intake.schemas import ClearanceBody, ScreeningAnswers, ScreeningBody
from steadfoot.intake.service import clear, screen
from steadfoot.monitoring.service import refresh_findings
from steadfoot.programs.content import Alternative, Circuit, Goal, Prescription, ProgramContent, Walk
from steadfoot.programs.schemas import FromTemplateBody
from steadfoot.programs.service import planned_between, publish, versions_of
from steadfoot.programs.templates import lay_out, template_of
from steadfoot.rules.screening import Intensity
from steadfoot.trips import service as trips

PASSWORD = "five huts over one ridge"
_ZONE = ZoneInfo(ZONE)
_SECOND_VERSION_WEEK = 4
_LONGER = 1.2
_BATCH = 500
_LATELY_DAYS = 7
_EARLY_EVERY_DAYS = 14
_OPENING = time(9, 0)


@dataclass(frozen=True, slots=True)
class Invented:
    """What the caller needs of the invented practice."""

    access: PractitionerAccess
    client_ids: dict[str, str]


def invent(database: Database, now: datetime, chance: Random, step: Callable[[str], None]) -> Invented:
    """Fill an empty database; ``step`` hears each person's name when they are done."""
    today = local_date(now, ZONE)
    with database.write() as session:
        access = _found(session, _morning(_monday(today) - timedelta(weeks=9)))
    ids = {}
    for person in PEOPLE:
        with database.write() as session:
            ids[person.name] = _live(session, access, person, today, now, chance)
        step(person.name)
    return Invented(access, ids)


def _monday(day: date) -> date:
    return day - timedelta(days=day.weekday())


def _morning(day: date, at: time = _OPENING) -> datetime:
    return datetime.combine(day, at, _ZONE)


def _found(session: Session, at: datetime) -> PractitionerAccess:
    practice = identity.create_practice(session, PRACTICE, ZONE, at)
    person = identity.add_practitioner(session, practice, EMAIL, PRACTITIONER, PASSWORD, at)
    return PractitionerAccess(
        practice_id=practice.id,
        practitioner_id=person.id,
        display_name=person.display_name,
        email=person.email,
        practice_name=practice.name,
        time_zone=practice.time_zone,
        emergency_text=practice.emergency_text,
        reply_time_text=practice.reply_time_text,
        role=Role(person.role),
        must_set_up=False,
        session_id="",
        confirmed_at=at,
    )


def _live(
    session: Session, access: PractitionerAccess, person: Person, today: date, now: datetime, chance: Random
) -> str:
    first = _monday(today) - timedelta(weeks=person.weeks_in)
    begun = min(_morning(first, time(7, 0)), now)
    client_id = _take_on(session, access, person, today, begun)
    if person.template is None:
        return client_id
    _screen(session, access, client_id, person, begun)
    _publish_versions(session, access, client_id, person, first, today, begun)
    if person.trip == RIDGE:
        trips.save(session, access, client_id, traverse.trip(), None, begun)
    if person.paired:
        device = _pair(session, access, client_id, begun)
        planned = planned_between(versions_of(session, access.practice_id, client_id), first, today)
        entries = Diary(person.habit, first, today, _ZONE, chance).entries(planned)
        _send(session, device, entries, _contacts(person, first, today, now, chance))
        settle(session, access.practice_id, client_id, ())
    # The rules look at everything there is, so it is enough to ask them once, at the end.
    refresh_findings(session, access.practice_id, client_id)
    prepare(session, access, client_id, person.name, today, now)
    return client_id


def _take_on(session: Session, access: PractitionerAccess, person: Person, today: date, at: datetime) -> str:
    body = ClientBody(
        display_name=person.name,
        birth_year=today.year - person.age,
        kit=list(person.kit),  # type: ignore[arg-type]
        usual_pain=person.usual_pain,
        body_mass_kg=person.body_mass_kg,
    )
    return identity.create_client(session, access, body, at).id


def _screen(session: Session, access: PractitionerAccess, client_id: str, person: Person, at: datetime) -> None:
    """Ask the health questions, and record the go-ahead of whoever needed one."""
    answers = ScreeningAnswers(
        regular_activity=True,
        known_disease=person.cleared_by is not None,
        signs_or_symptoms=False,
        intensity=Intensity.VIGOROUS,
    )
    screen(session, access, client_id, ScreeningBody(answers=answers), at)
    if person.cleared_by is not None:
        clear(session, access, client_id, ClearanceBody(given_by=person.cleared_by, note="By telephone"), at)


def _publish_versions(
    session: Session,
    access: PractitionerAccess,
    client_id: str,
    person: Person,
    first: date,
    today: date,
    begun: datetime,
) -> None:
    goal = Goal(name=person.trip, date=_monday(today) + timedelta(weeks=person.trip_in_weeks, days=5))
    assert person.template is not None
    template = template_of(session, access.practice_id, person.template)
    body = FromTemplateBody(template=person.template, starts_on=first, ends_on=None, goal=goal)
    content = season_of(template, goal, person.season_weeks) if person.season_weeks else lay_out(template, body)
    content = _allowing(content, person.instead)
    if not person.paired:
        content = _begun_today(content, today)
    publish(session, access, client_id, content, 0, "First program", begun)
    second = first + timedelta(weeks=_SECOND_VERSION_WEEK)
    if second < today:
        publish(session, access, client_id, _longer_walks(content), 1, "Walks a little longer", _morning(second))


def _begun_today(content: ProgramContent, today: date) -> ProgramContent:
    """Whoever pairs a phone with the demo finds a circuit to do, on whatever day of the week that is."""
    circuits = {one.key for one in content.sessions if isinstance(one, Circuit)}
    later = today - min(day.date for day in content.days if day.session in circuits)
    moved = [day.model_copy(update={"date": day.date + later}) for day in content.days]
    days = [day for day in moved if content.ends_on is None or day.date <= content.ends_on]
    return content.model_copy(update={"starts_on": today, "days": days})


def _allowing(content: ProgramContent, instead: Mapping[str, Alternative]) -> ProgramContent:
    """Each alternative beside the prescription of its key, in every session that has it."""

    def allowed(one: Prescription) -> Prescription:
        return one.model_copy(update={"alternatives": [instead[one.key]]}) if one.key in instead else one

    sessions = [
        one.model_copy(update={"prescriptions": [allowed(each) for each in one.prescriptions]})
        if isinstance(one, Circuit)
        else one
        for one in content.sessions
    ]
    return content.model_copy(update={"sessions": sessions})


def _longer_walks(content: ProgramContent) -> ProgramContent:
    sessions = [
        one.model_copy(update={"distance_km": round(one.distance_km * _LONGER, 1)}) if isinstance(one, Walk) else one
        for one in content.sessions
    ]
    return content.model_copy(update={"sessions": sessions})


def _pair(session: Session, access: PractitionerAccess, client_id: str, at: datetime) -> DeviceAccess:
    client = identity.client_of(session, access.practice_id, client_id)
    invitation = invite(session, client, Delivery.IN_PERSON, "https://steadfoot.example", at)
    session.flush()
    paired = pair(session, invitation.code, "Phone", at)
    session.flush()
    return DeviceAccess(access.practice_id, client_id, paired.device_id, client.time_zone)


def _contacts(person: Person, first: date, today: date, now: datetime, chance: Random) -> list[datetime]:
    """Answer when the phone was in contact: now and then through the weeks, and last before it fell silent."""
    last = today - timedelta(days=person.habit.silent_days)
    span = (last - first).days
    early = range(0, max(0, span - _LATELY_DAYS), max(person.habit.sends_every_days, _EARLY_EVERY_DAYS))
    days = [*early, *range(max(0, span - _LATELY_DAYS), span, person.habit.sends_every_days)]
    times = [_morning(first + timedelta(days=day), time(21, chance.randint(0, 59))) for day in days]
    closing = _morning(last, time(6 if last == today else 20, chance.randint(41, 59)))
    return [at for at in (*times, min(closing, now)) if at <= now]


def _send(session: Session, device: DeviceAccess, entries: Sequence[Entry], contacts: Sequence[datetime]) -> None:
    events = [entry.event(place + 1) for place, entry in enumerate(entries)]
    sent, cursor = 0, 0
    for at in contacts:
        due = sum(entry.at <= at for entry in entries)
        for start in range(sent, max(due, sent + 1), _BATCH):
            batch = [read(event) for event in events[start : min(due, start + _BATCH)]]
            cursor = sync(session, device, cursor, batch, at).cursor
        sent = due
