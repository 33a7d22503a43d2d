"""Invitations and phones: a code that works once becomes a token that a phone keeps."""

import secrets
from collections.abc import Sequence
from datetime import datetime, timedelta

from sqlmodel import Session

from steadfoot.audit import service as audit
from steadfoot.audit.service import Actor, ActorKind
from steadfoot.core.ids import digest_of, new_code, new_token, normal_code, uuid7
from steadfoot.core.problems import Invalid, NotFound, not_found
from steadfoot.core.qr import qr_svg
from steadfoot.identity import store
from steadfoot.identity.access import DeviceAccess
from steadfoot.identity.schemas import Delivery, InvitationOut, PairingOut
from steadfoot.identity.tables import Client, Device, Invitation, Pairing

LIFETIME = {Delivery.IN_PERSON: timedelta(minutes=10), Delivery.LINK: timedelta(hours=72)}


def invite(
    session: Session,
    client: Client,
    delivery: Delivery,
    address: str,
    now: datetime,
    lifetime: timedelta | None = None,
) -> InvitationOut:
    """Make a code that pairs one phone, once. Only its digest is kept, so it can be shown only now.

    The code is in the link's fragment, which no server log and no Referer header ever carries.
    """
    code = new_code()
    row = Invitation(
        id=uuid7(now),
        practice_id=client.practice_id,
        client_id=client.id,
        code_digest=digest_of(code),
        delivery=delivery.value,
        created_at=now,
        expires_at=now + (lifetime or LIFETIME[delivery]),
        redeemed_at=None,
    )
    session.add(row)
    url = f"{address}/app/#pair={code}"
    return InvitationOut(
        id=row.id,
        client_id=client.id,
        delivery=delivery,
        url=url,
        code="-".join(code[start : start + 5] for start in range(0, len(code), 5)),
        expires_at=row.expires_at,
        qr_svg=qr_svg(url),
    )


def _new_device(client: Client, label: str, now: datetime) -> tuple[Device, str]:
    token = new_token()
    device = Device(
        id=uuid7(now),
        practice_id=client.practice_id,
        client_id=client.id,
        token_digest=digest_of(token),
        label=label,
        paired_at=now,
        revoked_at=None,
        last_heard_at=None,
        acknowledged_through=0,
    )
    return device, token


def pair(session: Session, code: str, label: str, now: datetime) -> PairingOut:
    """Turn a code into a phone's token.

    Raises:
        NotFound: wrong, used up or expired; the answer is the same for each.
    """
    invitation = store.redeem(session, digest_of(normal_code(code)), now)
    client = store.client(session, invitation.practice_id, invitation.client_id) if invitation else None
    if invitation is None or client is None:
        detail = "This code does not work. It may be mistyped, used or too old: ask the practice for a new one."
        raise NotFound("code-not-valid", detail)
    device, token = _new_device(client, label, now)
    session.add(device)
    session.flush()
    audit.by(session, Actor(ActorKind.PHONE, client.practice_id, device.id))
    audit.about(session, client.id)
    in_person = invitation.delivery == Delivery.IN_PERSON
    pairing = Pairing(
        id=uuid7(now),
        practice_id=client.practice_id,
        client_id=client.id,
        device_id=device.id,
        check_number=f"{secrets.randbelow(10_000):04d}",
        created_at=now,
        confirmed_at=now if in_person else None,
        confirmed_by=None,
    )
    session.add(pairing)
    return _pairing_out(session, client, device, token, pairing)


def _pairing_out(session: Session, client: Client, device: Device, token: str, pairing: Pairing) -> PairingOut:
    people = store.practitioners(session, client.practice_id)
    practice = store.practice(session, client.practice_id)
    return PairingOut(
        device_id=device.id,
        token=token,
        pairing_id=pairing.id,
        status="active" if pairing.confirmed_at else "awaiting_confirmation",
        check_number=pairing.check_number,
        client_id=client.id,
        client_name=client.display_name,
        practice_name=practice.name,
        practitioner_name=people[0].display_name if people else practice.name,
    )


def practice_of(session: Session, paired: PairingOut) -> str:
    """Answer the practice that a fresh pairing belongs to."""
    found = store.device_by_token(session, digest_of(paired.token))
    assert found is not None, "the phone was stored a moment ago"
    return found[0].practice_id


def confirm(
    session: Session, practice_id: str, pairing_id: str, check_number: str | None, by: str, now: datetime
) -> Device:
    """Let a phone in whose number the practitioner has compared.

    Raises:
        NotFound: no such pairing in the practice.
        Invalid: the number is another one: it may be a stranger's phone.
    """
    pairing = store.pairing(session, practice_id, pairing_id)
    if pairing is None:
        raise not_found("pairing")
    if check_number is not None and check_number != pairing.check_number:
        raise Invalid(
            "check-number-differs",
            "This is not the number that the phone shows. If the client read it out rightly, refuse this phone.",
            errors=[{"pointer": "/body/check_number", "code": "differs", "detail": "Not the phone's number"}],
        )
    if pairing.confirmed_at is None:
        pairing.confirmed_at, pairing.confirmed_by = now, by
        session.add(pairing)
    return _device(session, practice_id, pairing.device_id)


def refuse(session: Session, practice_id: str, pairing_id: str, now: datetime) -> Device:
    """Turn a waiting phone away.

    Raises:
        NotFound: no such pairing in the practice.
    """
    pairing = store.pairing(session, practice_id, pairing_id)
    if pairing is None:
        raise not_found("pairing")
    return revoke(session, practice_id, pairing.device_id, now)


def _device(session: Session, practice_id: str, device_id: str) -> Device:
    device = store.device(session, practice_id, device_id)
    if device is None:
        raise not_found("phone")
    audit.about(session, device.client_id)
    return device


def revoke(session: Session, practice_id: str, device_id: str, now: datetime) -> Device:
    """Stop hearing a phone. What it sent stays; what it still holds stays on it.

    Raises:
        NotFound: no such phone in the practice.
    """
    device = _device(session, practice_id, device_id)
    if device.revoked_at is None:
        device.revoked_at = now
        session.add(device)
    return device


def devices(session: Session, practice_id: str, client_id: str) -> Sequence[tuple[Device, Pairing | None]]:
    """Answer a client's phones, newest first."""
    return store.devices(session, practice_id, client_id)


def succeed(session: Session, access: DeviceAccess, now: datetime) -> tuple[Device, str]:
    """Give a phone whose numbers another phone uses (a copy of it) a number range of its own."""
    client = store.client(session, access.practice_id, access.client_id)
    assert client is not None, "a device row cannot outlive its client"
    old = _device(session, access.practice_id, access.device_id)
    device, token = _new_device(client, old.label, now)
    session.add(device)
    return device, token
