"""Practices, people, phones, and the numbered changes that wait for a phone."""

from datetime import datetime
from typing import Any

from sqlalchemy import JSON, BigInteger, CheckConstraint, Column, UniqueConstraint
from sqlmodel import Field

from steadfoot.core.base import Table


class Practice(Table, table=True):
    """A clinic: the tenant. Nothing crosses it."""

    id: str = Field(primary_key=True, max_length=36)
    name: str = Field(max_length=120)
    time_zone: str = Field(max_length=60)
    emergency_text: str = Field(max_length=300)
    reply_time_text: str = Field(max_length=300)
    created_at: datetime
    requires_second_factor: bool = False


class Practitioner(Table, table=True):
    """A person of the practice who signs in."""

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", index=True, max_length=36)
    email: str = Field(unique=True, max_length=254)
    display_name: str = Field(max_length=120)
    password_hash: str = Field(max_length=300)
    created_at: datetime
    role: str = Field(max_length=20)
    disabled_at: datetime | None = None


class SignIn(Table, table=True):
    """A practitioner's open session; only the digest of its cookie is kept."""

    __tablename__ = "sign_in"

    token_digest: str = Field(primary_key=True, max_length=64)
    practice_id: str = Field(foreign_key="practice.id", index=True, max_length=36)
    practitioner_id: str = Field(foreign_key="practitioner.id", index=True, max_length=36)
    created_at: datetime
    last_seen_at: datetime
    id: str = Field(unique=True, max_length=36)
    confirmed_at: datetime
    browser: str = Field(max_length=20)
    system: str = Field(max_length=20)


class ColleagueInvitation(Table, table=True):
    """A single-use link by which a colleague joins the practice; only the digest of its code is kept.

    ``practitioner_id``: who is let in again by it, with a new password; None for somebody new.
    """

    __tablename__ = "colleague_invitation"

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", index=True, max_length=36)
    code_digest: str = Field(unique=True, max_length=64)
    email: str = Field(max_length=254)
    display_name: str = Field(max_length=120)
    role: str = Field(max_length=20)
    created_at: datetime
    created_by: str = Field(foreign_key="practitioner.id", max_length=36)
    expires_at: datetime
    redeemed_at: datetime | None
    practitioner_id: str | None = Field(default=None, foreign_key="practitioner.id", max_length=36)


class TotpSecret(Table, table=True):
    """The secret of someone's app for codes, sealed. ``last_step`` is the newest 30 s that a code was used of."""

    __tablename__ = "totp_secret"

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    practitioner_id: str = Field(foreign_key="practitioner.id", index=True, max_length=36)
    sealed: str = Field(max_length=200)
    created_at: datetime
    activated_at: datetime | None
    last_step: int


class RecoveryCode(Table, table=True):
    """A code for when app and passkey are lost, once. It has 120 random bits, so a plain digest cannot be guessed."""

    __tablename__ = "recovery_code"

    digest: str = Field(primary_key=True, max_length=64)
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    practitioner_id: str = Field(foreign_key="practitioner.id", index=True, max_length=36)
    created_at: datetime
    used_at: datetime | None


class Passkey(Table, table=True):
    """A key pair of an authenticator; here is its public half."""

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    practitioner_id: str = Field(foreign_key="practitioner.id", index=True, max_length=36)
    credential_id: str = Field(unique=True, max_length=1400)
    public_key: str = Field(max_length=3000)
    sign_count: int = Field(sa_type=BigInteger)  # 32 bits without a sign
    name: str = Field(max_length=120)
    created_at: datetime
    last_used_at: datetime | None


class SpentChallenge(Table, table=True):
    """A challenge that was answered, until it is too old to be answered again."""

    __tablename__ = "spent_challenge"

    digest: str = Field(primary_key=True, max_length=64)
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    expires_at: datetime = Field(index=True)


class Client(Table, table=True):
    """A person who trains."""

    __table_args__ = (CheckConstraint("usual_pain BETWEEN 0 AND 10", name="usual_pain_range"),)

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", index=True, max_length=36)
    display_name: str = Field(max_length=120)
    birth_year: int | None
    sex: str | None = Field(max_length=10)
    height_cm: float | None
    body_mass_kg: float | None
    time_zone: str = Field(max_length=60)
    kit: list[str] = Field(sa_column=Column(JSON, nullable=False))
    usual_pain: int
    thresholds: dict[str, Any] = Field(sa_column=Column(JSON, nullable=False))
    note: str = Field(max_length=4000)
    created_at: datetime
    archived_at: datetime | None
    version: int
    change_head: int


class Invitation(Table, table=True):
    """A single-use code that pairs one phone; only its digest is kept."""

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", index=True, max_length=36)
    client_id: str = Field(foreign_key="client.id", index=True, max_length=36)
    code_digest: str = Field(unique=True, max_length=64)
    delivery: str = Field(max_length=20)
    created_at: datetime
    expires_at: datetime
    redeemed_at: datetime | None


class Device(Table, table=True):
    """A phone that speaks for a client; only the digest of its token is kept."""

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", index=True, max_length=36)
    client_id: str = Field(foreign_key="client.id", index=True, max_length=36)
    token_digest: str = Field(unique=True, max_length=64)
    label: str = Field(max_length=120)
    paired_at: datetime
    revoked_at: datetime | None
    last_heard_at: datetime | None
    acknowledged_through: int


class Pairing(Table, table=True):
    """One use of an invitation. By link it waits until the practitioner has compared the check number."""

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", index=True, max_length=36)
    client_id: str = Field(foreign_key="client.id", index=True, max_length=36)
    device_id: str = Field(foreign_key="device.id", unique=True, max_length=36)
    check_number: str = Field(max_length=4)
    created_at: datetime
    confirmed_at: datetime | None
    confirmed_by: str | None = Field(max_length=36)


class Change(Table, table=True):
    """Something that a client's phone should have, numbered per client without gaps."""

    __table_args__ = (UniqueConstraint("client_id", "number"),)

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    client_id: str = Field(foreign_key="client.id", max_length=36)
    number: int
    kind: str = Field(max_length=30)
    at: datetime
    body: dict[str, Any] = Field(sa_column=Column(JSON, nullable=False))


class ServerEpoch(Table, table=True):
    """One row whose value a restore renews, so that phones compare numbers again. It belongs to no practice."""

    __tablename__ = "server_epoch"

    id: int = Field(primary_key=True)
    value: str = Field(max_length=36)


class ErasedPhone(Table, table=True):
    """The digest of a key whose client's record was erased: the phone is told so, and not that it is unknown."""

    __tablename__ = "erased_phone"

    token_digest: str = Field(primary_key=True, max_length=64)
    practice_id: str = Field(foreign_key="practice.id", index=True, max_length=36)
    erased_at: datetime
