"""Loads what a sheet needs, composes it and prints it."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from zoneinfo import ZoneInfo

from sqlmodel import Session

from steadfoot.core.clock import local_date
from steadfoot.core.problems import Invalid, not_found
from steadfoot.exercises.schemas import RepetitionDose, Variant
from steadfoot.exercises.service import Library, offered, variant_of
from steadfoot.exercises.shelf import library_of
from steadfoot.identity import service as identity
from steadfoot.identity.access import PractitionerAccess
from steadfoot.identity.schemas import InvitationOut
from steadfoot.programs import service as programs
from steadfoot.programs.plan import Version
from steadfoot.rules.dose import Prescription
from steadfoot.rules.pain import PAIN_STOP
from steadfoot.sheets import press
from steadfoot.sheets.compose import Shown, StripOf, class_section, sections_of
from steadfoot.sheets.layout import Code, Language, Section, Sheet, Style
from steadfoot.sheets.schemas import ClassSheetBody, PickBody
from steadfoot.sheets.wording import Wording


@dataclass(frozen=True, slots=True)
class Printed:
    """A PDF and whose it is, for its file name."""

    pdf: bytes
    name: str


def current_program(session: Session, practice_id: str, client_id: str) -> Version:
    """Answer the program to print.

    Raises:
        NotFound: unknown client, another practice's, or nothing published yet.
    """
    identity.client_of(session, practice_id, client_id)
    version = programs.current(session, practice_id, client_id)
    if version is None:
        raise not_found("program")
    return version


def client_sheet(
    session: Session,
    access: PractitionerAccess,
    client_id: str,
    style: Style,
    only: str | None,
    address: str,
    invitation: InvitationOut | None,
    now: datetime,
    strip_of: StripOf,
) -> Printed:
    """Print a client's current program: all of it, or the one session with the key ``only``.

    The QR code leads to the app's ``address``, or pairs a phone where an ``invitation`` is given.

    Raises:
        NotFound: no such client, program or session.
    """
    version = current_program(session, access.practice_id, client_id)
    client = identity.client_of(session, access.practice_id, client_id)
    words = Wording(style.language)
    today = local_date(now, client.time_zone)
    sections = sections_of(version.content, only, today, words, Shown(version.library, strip_of))
    if not sections:
        raise not_found("session")
    lines = [words.say("for_person", name=client.display_name)]
    if version.content.goal is not None:
        goal = version.content.goal
        lines.append(words.say("goal", name=goal.name, day=words.day(goal.date)))
    since = words.day(version.effective_on)
    lines.append(words.say("version", number=version.number, day=since, printed=words.day(today)))
    stop = int(client.thresholds.get("pain_stop", PAIN_STOP))
    care = _care(words, stop, access.display_name, "licensed")
    code = _code(words, address, invitation, client.time_zone)
    sheet = _sheet(version.content.title, lines, sections, care, code, access, words)
    return Printed(press.to_pdf(sheet, style), client.display_name)


def _care(words: Wording, stop: int, who: str, last: str) -> list[str]:
    return [words.say("pain", stop=stop), words.say("ask", who=who), words.labels["steady"], words.labels[last]]


def _code(words: Wording, address: str, invitation: InvitationOut | None, time_zone: str) -> Code:
    if invitation is None:
        app = f"{address}/app/"
        return Code(press.qr_svg(app), words.labels["qr_app"], app)
    until = words.moment(invitation.expires_at.astimezone(ZoneInfo(time_zone)))
    return Code(press.qr_svg(invitation.url), words.say("qr_pair", until=until), invitation.code)


def _sheet(
    title: str,
    lines: Sequence[str],
    sections: Sequence[Section],
    care: Sequence[str],
    code: Code | None,
    access: PractitionerAccess,
    words: Wording,
) -> Sheet:
    own_text = access.emergency_text
    if own_text == identity.EMERGENCY_TEXT:  # it speaks of the app; the sheet has words of its own for the same
        own_text = ""
    return Sheet(
        title=title,
        practice=access.practice_name,
        lines=tuple(lines),
        sections=tuple(sections),
        care=tuple(care),
        urgent=words.labels["urgent"],
        practice_says=words.say("practice_says", practice=access.practice_name, text=own_text) if own_text else "",
        code=code,
        labels=words.labels,
    )


def class_sheet(
    session: Session, access: PractitionerAccess, body: ClassSheetBody, now: datetime, strip_of: StripOf
) -> Printed:
    """Print the picked movements for a group. Nothing of any client is read.

    Raises:
        Invalid: a movement or its way of doing is not in the library; names each place.
    """
    words = Wording(body.language)
    library = offered(library_of(session, access.practice_id))
    picks = _picks(body.movements, library)
    printed = words.say("class_printed", printed=words.day(local_date(now, access.time_zone)))
    lines = [line for line in (body.about, printed) if line]
    care = [words.labels["public"], *_care(words, PAIN_STOP, access.practice_name, "licensed")]
    section = class_section("", picks, words, Shown(library, strip_of))
    sheet = _sheet(body.title, lines, [section], care, None, access, words)
    return Printed(press.to_pdf(sheet, Style(body.paper, body.large, Language(body.language))), body.title)


def _picks(movements: Sequence[PickBody], library: Library) -> list[Prescription]:
    found = [(one, _rung(one, library)) for one in movements]
    errors = [
        {"pointer": f"/body/movements/{place}", "code": "unknown", "detail": "Not in the library"}
        for place, (_, rung) in enumerate(found)
        if rung is None
    ]
    if errors:
        raise Invalid("not-in-library", "A movement of the sheet is not in the library.", errors=errors)
    return [_usual(one, rung) for one, rung in found if rung is not None]


def _rung(one: PickBody, library: Library) -> Variant | None:
    entry = library.get(one.exercise)
    return variant_of(entry, one.variant) if entry else None


def _usual(one: PickBody, rung: Variant) -> Prescription:
    """Answer the usual dose; of a range of holds the shortest, as nobody has tested the group."""
    reps = rung.dose.reps if isinstance(rung.dose, RepetitionDose) else (None, None)
    return Prescription(
        key="pick",
        exercise=one.exercise,
        variant=one.variant,
        sides=rung.sides,
        reps_low=reps[0],
        reps_high=reps[1],
        hold_s=None if isinstance(rung.dose, RepetitionDose) else rung.dose.hold_s[0],
        load_kg=None,
        tempo_down_s=None,
        rest_s=0,
        note="",
    )


__all__ = ["Printed", "class_sheet", "client_sheet", "current_program"]
