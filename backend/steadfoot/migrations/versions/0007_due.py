"""Check-ins that are held and not yet folded"""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0007"
down_revision = "0006"
branch_labels = None
depends_on = None


def _id() -> sqlmodel.sql.sqltypes.AutoString:
    return sqlmodel.sql.sqltypes.AutoString(length=36)


def upgrade() -> None:
    op.create_table(
        "due",
        sa.Column("device_id", _id(), nullable=False),
        sa.Column("first_seq", sa.Integer(), nullable=False),
        sa.Column("last_seq", sa.Integer(), nullable=False),
        sa.Column("practice_id", _id(), nullable=False),
        sa.Column("client_id", _id(), nullable=False),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f("fk_due_client_id")),
        sa.ForeignKeyConstraint(["device_id"], ["device.id"], name=op.f("fk_due_device_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_due_practice_id")),
        sa.PrimaryKeyConstraint("device_id", "first_seq", name=op.f("pk_due")),
    )
    op.create_index("ix_due_client", "due", ["practice_id", "client_id"], unique=False)


def downgrade() -> None:
    op.drop_index("ix_due_client", table_name="due")
    op.drop_table("due")
