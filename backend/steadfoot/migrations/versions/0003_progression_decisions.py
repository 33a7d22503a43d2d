"""What a practitioner decided about suggestions on progress"""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None


def _text(length: int) -> sqlmodel.sql.sqltypes.AutoString:
    return sqlmodel.sql.sqltypes.AutoString(length=length)


def upgrade() -> None:
    table = "progression_decision"
    op.create_table(
        table,
        sa.Column("id", _text(36), nullable=False),
        sa.Column("practice_id", _text(36), nullable=False),
        sa.Column("client_id", _text(36), nullable=False),
        sa.Column("suggestion_id", _text(32), nullable=False),
        sa.Column("prescription", _text(60), nullable=False),
        sa.Column("rule", _text(30), nullable=False),
        sa.Column("suggestion", _text(20), nullable=False),
        sa.Column("action", _text(20), nullable=False),
        sa.Column("reason", _text(4000), nullable=False),
        sa.Column("evidence", sa.Text(), nullable=False),
        sa.Column("program_number", sa.Integer(), nullable=True),
        sa.Column("practitioner_id", _text(36), nullable=False),
        sa.Column("decided_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f(f"fk_{table}_client_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f(f"fk_{table}_practice_id")),
        sa.ForeignKeyConstraint(["practitioner_id"], ["practitioner.id"], name=op.f(f"fk_{table}_practitioner_id")),
        sa.PrimaryKeyConstraint("id", name=op.f(f"pk_{table}")),
    )
    op.create_index(f"ix_{table}_client", table, ["practice_id", "client_id"], unique=False)


def downgrade() -> None:
    op.drop_index("ix_progression_decision_client", table_name="progression_decision")
    op.drop_table("progression_decision")
