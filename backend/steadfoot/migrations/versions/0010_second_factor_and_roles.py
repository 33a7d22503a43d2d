"""Roles, second factors, sessions that can be told apart"""

import sqlalchemy as sa
import sqlmodel
from alembic import op

from steadfoot.core.ids import uuid7

revision = "0010"
down_revision = "0009"
branch_labels = None
depends_on = None

_TIME = sqlmodel.sql.sqltypes.UTCDateTime
_NEW_TABLES = ("colleague_invitation", "totp_secret", "recovery_code", "passkey", "spent_challenge")


def _text(length: int) -> sqlmodel.sql.sqltypes.AutoString:
    return sqlmodel.sql.sqltypes.AutoString(length=length)


def _column(name: str, kind, nullable: bool = False) -> sa.Column:
    return sa.Column(name, kind, nullable=nullable)


def _table(name: str, key: str, *parts: sa.schema.SchemaItem, people: tuple[str, ...] = ("practitioner_id",)) -> None:
    keys = [
        sa.ForeignKeyConstraint([person], ["practitioner.id"], name=op.f(f"fk_{name}_{person}")) for person in people
    ]
    op.create_table(
        name,
        *parts,
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f(f"fk_{name}_practice_id")),
        *keys,
        sa.PrimaryKeyConstraint(key, name=op.f(f"pk_{name}")),
    )


def _roles() -> None:
    """Whoever is longest in a practice founded it and owns it; others go on as they did.

    The defaults stay: a server of the release before may still write rows without these columns.
    """
    with op.batch_alter_table("practice") as batch:
        batch.add_column(sa.Column("requires_second_factor", sa.Boolean(), nullable=False, server_default=sa.false()))
    with op.batch_alter_table("practitioner") as batch:
        batch.add_column(sa.Column("role", _text(20), nullable=False, server_default="practitioner"))
        batch.add_column(_column("disabled_at", _TIME(), nullable=True))
    op.execute(
        "UPDATE practitioner SET role = 'owner' WHERE id IN (SELECT MIN(id) FROM practitioner GROUP BY practice_id)"
    )


def _sessions() -> None:
    """Open sessions go on: each gets an id, and counts as confirmed when it was opened."""
    with op.batch_alter_table("sign_in") as batch:
        for name, kind in (("id", _text(36)), ("confirmed_at", _TIME())):
            batch.add_column(_column(name, kind, nullable=True))
        for name in ("browser", "system"):
            batch.add_column(sa.Column(name, _text(20), nullable=False, server_default="unknown"))
    rows = sa.table("sign_in", *(sa.column(name) for name in ("token_digest", "id", "confirmed_at")))
    opened = sa.column("created_at", _TIME())
    connection = op.get_bind()
    for digest, created_at in connection.execute(sa.select(rows.c.token_digest, opened).select_from(rows)).all():
        connection.execute(
            rows.update().where(rows.c.token_digest == digest).values(id=uuid7(created_at), confirmed_at=opened)
        )
    with op.batch_alter_table("sign_in") as batch:
        for name, kind in (("id", _text(36)), ("confirmed_at", _TIME())):
            batch.alter_column(name, existing_type=kind, nullable=False)
        batch.create_unique_constraint(op.f("uq_sign_in_id"), ["id"])


def _colleagues() -> None:
    name = "colleague_invitation"
    _table(
        name,
        "id",
        _column("id", _text(36)),
        _column("practice_id", _text(36)),
        _column("code_digest", _text(64)),
        _column("email", _text(254)),
        _column("display_name", _text(120)),
        _column("role", _text(20)),
        _column("created_at", _TIME()),
        _column("created_by", _text(36)),
        _column("expires_at", _TIME()),
        _column("redeemed_at", _TIME(), nullable=True),
        sa.UniqueConstraint("code_digest", name=op.f(f"uq_{name}_code_digest")),
        people=("created_by",),
    )
    op.create_index(op.f(f"ix_{name}_practice_id"), name, ["practice_id"], unique=False)


def _whose() -> tuple[sa.Column, ...]:
    return (_column("practice_id", _text(36)), _column("practitioner_id", _text(36)))


def _factors() -> None:
    _table(
        "totp_secret",
        "id",
        _column("id", _text(36)),
        *_whose(),
        _column("sealed", _text(200)),
        _column("created_at", _TIME()),
        _column("activated_at", _TIME(), nullable=True),
        _column("last_step", sa.Integer()),
    )
    _table(
        "recovery_code",
        "digest",
        _column("digest", _text(64)),
        *_whose(),
        _column("created_at", _TIME()),
        _column("used_at", _TIME(), nullable=True),
    )
    _table(
        "passkey",
        "id",
        _column("id", _text(36)),
        *_whose(),
        _column("credential_id", _text(1400)),
        _column("public_key", _text(3000)),
        _column("sign_count", sa.BigInteger()),
        _column("name", _text(120)),
        _column("created_at", _TIME()),
        _column("last_used_at", _TIME(), nullable=True),
        sa.UniqueConstraint("credential_id", name=op.f("uq_passkey_credential_id")),
    )
    for table in ("totp_secret", "recovery_code", "passkey"):
        op.create_index(op.f(f"ix_{table}_practitioner_id"), table, ["practitioner_id"], unique=False)
    _table(
        "spent_challenge",
        "digest",
        _column("digest", _text(64)),
        _column("practice_id", _text(36)),
        _column("expires_at", _TIME()),
        people=(),
    )
    op.create_index(op.f("ix_spent_challenge_expires_at"), "spent_challenge", ["expires_at"], unique=False)


def upgrade() -> None:
    _roles()
    _sessions()
    _colleagues()
    _factors()


def downgrade() -> None:
    for table in reversed(_NEW_TABLES):
        op.drop_table(table)
    with op.batch_alter_table("sign_in") as batch:
        batch.drop_constraint(op.f("uq_sign_in_id"), type_="unique")
        for name in ("id", "confirmed_at", "browser", "system"):
            batch.drop_column(name)
    with op.batch_alter_table("practitioner") as batch:
        batch.drop_column("disabled_at")
        batch.drop_column("role")
    with op.batch_alter_table("practice") as batch:
        batch.drop_column("requires_second_factor")
