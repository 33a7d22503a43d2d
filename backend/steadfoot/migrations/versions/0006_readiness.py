"""Notes on readiness, each with what it rested on"""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0006"
down_revision = "0005"
branch_labels = None
depends_on = None


def _text(length: int) -> sqlmodel.sql.sqltypes.AutoString:
    return sqlmodel.sql.sqltypes.AutoString(length=length)


def upgrade() -> None:
    table = "readiness_note"
    op.create_table(
        table,
        sa.Column("id", _text(36), nullable=False),
        sa.Column("practice_id", _text(36), nullable=False),
        sa.Column("client_id", _text(36), nullable=False),
        sa.Column("verdict", _text(10), nullable=False),
        sa.Column("words", _text(4000), nullable=False),
        sa.Column("shown", sa.Text(), nullable=False),
        sa.Column("practitioner_id", _text(36), nullable=False),
        sa.Column("signed_by", _text(120), nullable=False),
        sa.Column("signed_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f(f"fk_{table}_client_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f(f"fk_{table}_practice_id")),
        sa.ForeignKeyConstraint(["practitioner_id"], ["practitioner.id"], name=op.f(f"fk_{table}_practitioner_id")),
        sa.PrimaryKeyConstraint("id", name=op.f(f"pk_{table}")),
    )
    op.create_index(f"ix_{table}_client", table, ["practice_id", "client_id"], unique=False)


def downgrade() -> None:
    op.drop_index("ix_readiness_note_client", table_name="readiness_note")
    op.drop_table("readiness_note")
