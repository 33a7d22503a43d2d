"""What waits for a client's phone: numbered changes (decision 0001, point 6)."""

from datetime import datetime
from typing import Any

from sqlmodel import Session

from steadfoot.core.ids import uuid7
from steadfoot.identity import store
from steadfoot.identity.tables import Change, Client, Practice


def announce(session: Session, client: Client, kind: str, body: dict[str, Any], now: datetime) -> Change:
    """Put a change into a client's feed; the phone has it at its next contact."""
    number = store.next_change_number(session, client.id)
    change = Change(
        id=uuid7(now),
        practice_id=client.practice_id,
        client_id=client.id,
        number=number,
        kind=kind,
        at=now,
        body=body,
    )
    session.add(change)
    return change


def _practice_body(session: Session, practice: Practice) -> dict[str, Any]:
    people = store.practitioners(session, practice.id)
    return {
        "name": practice.name,
        "practitioner": people[0].display_name if people else practice.name,
        "emergency_text": practice.emergency_text,
        "reply_time_text": practice.reply_time_text,
    }


def announce_practice(session: Session, client: Client, now: datetime) -> None:
    """Tell the phone whose client its owner is, and what the practice says about emergencies and replies."""
    # Shared: words that change at this moment reach either this change or the list of those who are told.
    practice = store.lock_practice(session, client.practice_id, shared=True)
    announce(session, client, "practice", _practice_body(session, practice), now)


def announce_practice_to_all(session: Session, practice: Practice, now: datetime) -> None:
    """Tell the phones of all clients the same, whose practice the caller has locked.

    Archived ones too: whoever is taken on again must not have the old number on their phone.
    """
    body = _practice_body(session, practice)
    for client in store.clients(session, practice.id):
        announce(session, client, "practice", body, now)


def announce_settings(session: Session, client: Client, now: datetime) -> None:
    """Tell the phone its owner's name, time zone and the thresholds that its advice uses."""
    thresholds = dict(client.thresholds) | {"usual_pain": client.usual_pain}
    body = {"display_name": client.display_name, "time_zone": client.time_zone, "thresholds": thresholds}
    announce(session, client, "settings", body, now)


def changes_since(session: Session, practice_id: str, client_id: str, cursor: int) -> tuple[list[Change], int]:
    """Answer the changes after a cursor and the new cursor.

    A cursor beyond the newest number comes from before a restore: everything is sent again.
    """
    client = store.client(session, practice_id, client_id)
    head = client.change_head if client else 0
    start = cursor if cursor <= head else 0
    found = list(store.changes_after(session, practice_id, client_id, start))
    return found, found[-1].number if found else start
