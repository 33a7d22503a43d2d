"""Every query of identity. Rows are looked up by secret digest, or within a practice."""

from collections.abc import Sequence
from datetime import datetime
from typing import NamedTuple

from sqlalchemy import func, or_, update
from sqlmodel import Session, col, select

from steadfoot.core.database import plain_rows, scoped
from steadfoot.core.ids import uuid7
from steadfoot.identity.tables import (
    Change,
    Client,
    ColleagueInvitation,
    Device,
    ErasedPhone,
    Invitation,
    Pairing,
    Practice,
    Practitioner,
    ServerEpoch,
    SignIn,
)


def practitioner_by_email(session: Session, email: str) -> Practitioner | None:
    """Answer the practitioner with this address, of any practice: nobody is signed in yet."""
    return session.exec(select(Practitioner).where(Practitioner.email == email)).first()


def practitioner(session: Session, practice_id: str, practitioner_id: str) -> Practitioner | None:
    """Answer a person of the practice."""
    return session.exec(scoped(Practitioner, practice_id).where(Practitioner.id == practitioner_id)).first()


def lock_practice(session: Session, practice_id: str, *, shared: bool = False) -> Practice:
    """Answer the practice, locked until the transaction ends: who owns it, and what it says, changes one by one.

    ``shared``: it only must not change meanwhile. ``key_share``: rows that point to it may be added meanwhile.
    """
    query = select(Practice).where(Practice.id == practice_id)
    return session.exec(query.with_for_update(read=shared, key_share=not shared)).one()


def sign_in(session: Session, digest: str) -> tuple[SignIn, Practitioner, Practice] | None:
    """Answer the open session with this cookie digest, with its person and practice."""
    query = (
        select(SignIn, Practitioner, Practice)
        .join(Practitioner, col(Practitioner.id) == SignIn.practitioner_id)
        .join(Practice, col(Practice.id) == SignIn.practice_id)
        .where(SignIn.token_digest == digest)
    )
    return session.exec(query).first()


def sign_ins(session: Session, practice_id: str, practitioner_id: str) -> Sequence[SignIn]:
    """Answer a practitioner's open sessions, oldest first."""
    query = scoped(SignIn, practice_id).where(SignIn.practitioner_id == practitioner_id)
    return session.exec(query.order_by(col(SignIn.created_at))).all()


def sign_ins_before(session: Session, instant: datetime) -> Sequence[SignIn]:
    """Answer sessions of all practices that were opened before an instant: upkeep belongs to no practice."""
    return session.exec(select(SignIn).where(SignIn.created_at < instant)).all()


def client(session: Session, practice_id: str, client_id: str) -> Client | None:
    """Answer a client of the practice."""
    return session.exec(scoped(Client, practice_id).where(Client.id == client_id)).first()


def lock_client(session: Session, practice_id: str, client_id: str, *, pass_over: bool = False) -> bool:
    """Lock a client's row until the transaction ends; SQLite has locked the whole database by then.

    ``key_share``: rows that only point to the client, such as its events, may be added meanwhile. With ``pass_over``
    the answer is False, at once, where another transaction holds the row.
    """
    query = select(Client.id).where(Client.practice_id == practice_id, Client.id == client_id)
    return session.exec(query.with_for_update(key_share=True, skip_locked=pass_over)).first() is not None


def clients(session: Session, practice_id: str) -> Sequence[Client]:
    """Answer all clients of the practice by name, archived ones too."""
    return session.exec(scoped(Client, practice_id).order_by(col(Client.display_name), col(Client.id))).all()


class ClientRow(NamedTuple):
    """What of a client the caseload tells."""

    id: str
    display_name: str
    birth_year: int | None
    time_zone: str


def active_client_rows(session: Session, practice_id: str) -> list[ClientRow]:
    """Answer the clients who are not archived, as plain values, by name."""
    order = (col(Client.display_name), col(Client.id))
    return plain_rows(session, Client, ClientRow, practice_id, col(Client.archived_at).is_(None), order_by=order)


def every_client(session: Session) -> Sequence[Client]:
    """Answer the clients of all practices: upkeep of the database belongs to no practice."""
    return session.exec(select(Client).order_by(col(Client.id))).all()


def practice(session: Session, practice_id: str) -> Practice:
    """Answer the practice with this id."""
    return session.exec(select(Practice).where(Practice.id == practice_id)).one()


def practitioners(session: Session, practice_id: str) -> Sequence[Practitioner]:
    """Answer the practice's people, longest there first."""
    return session.exec(scoped(Practitioner, practice_id).order_by(col(Practitioner.id))).all()


def redeem(session: Session, code_digest: str, now: datetime) -> Invitation | None:
    """Use up the invitation with this digest, if it may still be used.

    One statement decides, so that of any number of phones that try at once exactly one gets it.
    """
    claim = (
        update(Invitation)
        .where(
            col(Invitation.code_digest) == code_digest,
            col(Invitation.redeemed_at).is_(None),
            col(Invitation.expires_at) > now,
        )
        .values(redeemed_at=now)
        .returning(col(Invitation.id))
    )
    found = session.execute(claim).scalar()
    return session.exec(select(Invitation).where(Invitation.id == found)).first() if found else None


def colleague_invitations(session: Session, practice_id: str, now: datetime) -> Sequence[ColleagueInvitation]:
    """Answer the links that may still be used, oldest first."""
    query = scoped(ColleagueInvitation, practice_id).where(
        col(ColleagueInvitation.redeemed_at).is_(None), col(ColleagueInvitation.expires_at) > now
    )
    return session.exec(query.order_by(col(ColleagueInvitation.id))).all()


def colleague_invitation(session: Session, code_digest: str, now: datetime) -> ColleagueInvitation | None:
    """Answer the link with this digest, of any practice, if it may still be used."""
    query = select(ColleagueInvitation).where(
        ColleagueInvitation.code_digest == code_digest,
        col(ColleagueInvitation.redeemed_at).is_(None),
        col(ColleagueInvitation.expires_at) > now,
    )
    return session.exec(query).first()


def redeem_colleague(session: Session, invitation_id: str, now: datetime) -> bool:
    """Use up a link; False when it was. One statement decides."""
    claim = update(ColleagueInvitation).where(
        col(ColleagueInvitation.id) == invitation_id, col(ColleagueInvitation.redeemed_at).is_(None)
    )
    return session.execute(claim.values(redeemed_at=now).returning(col(ColleagueInvitation.id))).first() is not None


def device_by_token(session: Session, digest: str) -> tuple[Device, Client, Pairing | None] | None:
    """Answer the phone with this token digest, its client, and its pairing where it had one of its own."""
    query = (
        select(Device, Client, Pairing)
        .join(Client, col(Client.id) == Device.client_id)
        .outerjoin(Pairing, col(Pairing.device_id) == Device.id)
        .where(Device.token_digest == digest)
    )
    return session.exec(query).first()


def devices(session: Session, practice_id: str, client_id: str) -> Sequence[tuple[Device, Pairing | None]]:
    """Answer a client's phones, newest first, each with its pairing."""
    query = (
        select(Device, Pairing)
        .outerjoin(Pairing, col(Pairing.device_id) == Device.id)
        .where(Device.practice_id == practice_id, Device.client_id == client_id)
        .order_by(col(Device.id).desc())
    )
    return session.exec(query).all()


class DeviceRow(NamedTuple):
    """What of a phone the caseload tells."""

    client_id: str
    paired_at: datetime
    revoked_at: datetime | None
    last_heard_at: datetime | None


def device_rows(session: Session, practice_id: str) -> list[DeviceRow]:
    """Answer every phone of the practice as plain values."""
    return plain_rows(session, Device, DeviceRow, practice_id, order_by=(col(Device.id),))


def lock_device(session: Session, practice_id: str, device_id: str) -> Device | None:
    """Answer a phone of the practice, and hold its row until the transaction ends."""
    query = scoped(Device, practice_id).where(Device.id == device_id).with_for_update(key_share=True)
    return session.exec(query.execution_options(populate_existing=True)).first()


def device(session: Session, practice_id: str, device_id: str) -> Device | None:
    """Answer a phone of the practice."""
    return session.exec(scoped(Device, practice_id).where(Device.id == device_id)).first()


def pairing(session: Session, practice_id: str, pairing_id: str) -> Pairing | None:
    """Answer a pairing of the practice."""
    return session.exec(scoped(Pairing, practice_id).where(Pairing.id == pairing_id)).first()


def pairing_of(session: Session, practice_id: str, device_id: str) -> Pairing | None:
    """Answer the pairing that a phone came by."""
    return session.exec(scoped(Pairing, practice_id).where(Pairing.device_id == device_id)).first()


def waiting_pairings(session: Session, practice_id: str) -> Sequence[tuple[Pairing, Client]]:
    """Answer pairings that nobody has confirmed, of phones that are not revoked."""
    query = (
        select(Pairing, Client)
        .join(Client, col(Client.id) == Pairing.client_id)
        .join(Device, col(Device.id) == Pairing.device_id)
        .where(
            Pairing.practice_id == practice_id,
            col(Pairing.confirmed_at).is_(None),
            col(Device.revoked_at).is_(None),
        )
        .order_by(col(Pairing.created_at))
    )
    return session.exec(query).all()


def next_change_number(session: Session, client_id: str) -> int:
    """Take the next number of a client's changes.

    The row stays locked until the transaction ends, so numbers appear in the order of commits: a phone that has
    seen number 9 can never miss an 8 that is committed later.
    """
    claim = (
        update(Client)
        .where(col(Client.id) == client_id)
        .values(change_head=col(Client.change_head) + 1)
        .returning(col(Client.change_head))
    )
    return int(session.execute(claim).scalar_one())


def changes_after(session: Session, practice_id: str, client_id: str, number: int) -> Sequence[Change]:
    """Answer a client's changes with a higher number, in order."""
    query = scoped(Change, practice_id).where(Change.client_id == client_id, Change.number > number)
    return session.exec(query.order_by(col(Change.number))).all()


def epoch(session: Session) -> ServerEpoch | None:
    """Answer the row of the server's epoch."""
    return session.exec(select(ServerEpoch)).first()


def renew_epoch(session: Session, now: datetime) -> str:
    """Give the database a new epoch, as after a restore; answer it."""
    row = epoch(session) or ServerEpoch(id=1, value="")
    row.value = uuid7(now)
    session.add(row)
    return row.value


def newest_contacts(session: Session, practice_id: str | None) -> Sequence[tuple[datetime, datetime | None]]:
    """Answer, for each client with a phone, when the newest was paired and when any of them was last heard.

    Of one practice, or of all for None. A phone that was unpaired or not confirmed does not count, nor does a client
    who is archived.
    """
    query = (
        select(func.max(Device.paired_at), func.max(Device.last_heard_at))
        .join(Client, col(Client.id) == col(Device.client_id))
        .outerjoin(Pairing, col(Pairing.device_id) == col(Device.id))
        .where(col(Device.revoked_at).is_(None), col(Client.archived_at).is_(None))
        .where(or_(col(Pairing.id).is_(None), col(Pairing.confirmed_at).is_not(None)))
        .group_by(col(Device.client_id))
    )
    if practice_id is not None:
        query = query.where(Device.practice_id == practice_id)
    return session.exec(query).all()


def erased_phone(session: Session, digest: str) -> ErasedPhone | None:
    """Answer the mark of a phone whose client's record was erased."""
    return session.exec(select(ErasedPhone).where(ErasedPhone.token_digest == digest)).first()


def phone_digests(session: Session, practice_id: str, client_id: str) -> Sequence[str]:
    """Answer the digests of the keys of a client's phones."""
    query = select(Device.token_digest).where(Device.practice_id == practice_id, Device.client_id == client_id)
    return session.exec(query.order_by(Device.token_digest)).all()
