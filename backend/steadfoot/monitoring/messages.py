"""Words from the practitioner to the client."""

import json
from datetime import datetime

from sqlmodel import Session

from steadfoot.checkins import service as checkins
from steadfoot.core.ids import uuid7
from steadfoot.identity import service as identity
from steadfoot.identity.access import PractitionerAccess
from steadfoot.monitoring import store
from steadfoot.monitoring.schemas import MessageOut
from steadfoot.monitoring.tables import Message


def wire_time(at: datetime) -> str:
    """Answer a time as the phone is told it."""
    return at.isoformat(timespec="milliseconds").replace("+00:00", "Z")


def send(
    session: Session, access: PractitionerAccess, client_id: str, text: str, flag_id: str | None, now: datetime
) -> MessageOut:
    """Keep a message and put it into the client's feed; the phone has it at its next contact.

    Raises:
        NotFound: the client is unknown, or another practice's.
    """
    client = identity.client_of(session, access.practice_id, client_id)
    message = Message(
        id=uuid7(now),
        practice_id=access.practice_id,
        client_id=client_id,
        practitioner_id=access.practitioner_id,
        flag_id=flag_id,
        text=text,
        sent_at=now,
    )
    session.add(message)
    body = {
        "id": message.id,
        "from": access.display_name,
        "text": text,
        "sent_at": wire_time(now),
        "flag_id": flag_id,
    }
    identity.announce(session, client, "message", body, now)
    return _out(message, access.display_name, None)


def listed(session: Session, practice_id: str, client_id: str) -> list[MessageOut]:
    """Answer the messages to a client, oldest first, with when each was read.

    Raises:
        NotFound: the client is unknown, or another practice's.
    """
    identity.client_of(session, practice_id, client_id)
    names = identity.practitioner_names(session, practice_id)
    read = _read_times(session, practice_id, client_id)
    found = store.messages(session, practice_id, client_id)
    return [_out(message, names.get(message.practitioner_id, ""), read.get(message.id)) for message in found]


def _read_times(session: Session, practice_id: str, client_id: str) -> dict[str, datetime]:
    events = checkins.events_of_kinds(session, practice_id, client_id, ("message_read",))
    return {json.loads(event.body)["message_id"]: event.instant for event in reversed(events)}


def _out(message: Message, sender: str, read_at: datetime | None) -> MessageOut:
    return MessageOut(
        id=message.id,
        text=message.text,
        **{"from": sender},
        sent_at=message.sent_at,
        flag_id=message.flag_id,
        read_at=read_at,
    )
