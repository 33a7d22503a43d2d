"""Movements of a practice's own"""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None


def _text(length: int) -> sqlmodel.sql.sqltypes.AutoString:
    return sqlmodel.sql.sqltypes.AutoString(length=length)


def upgrade() -> None:
    moment = sqlmodel.sql.sqltypes.UTCDateTime
    table = "own_exercise"
    op.create_table(
        table,
        sa.Column("code", _text(60), nullable=False),
        sa.Column("practice_id", _text(36), nullable=False),
        sa.Column("created_at", moment(), nullable=False),
        sa.Column("archived_at", moment(), nullable=True),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f(f"fk_{table}_practice_id")),
        sa.PrimaryKeyConstraint("code", name=op.f(f"pk_{table}")),
    )
    op.create_index(op.f(f"ix_{table}_practice_id"), table, ["practice_id"], unique=False)
    table = "own_exercise_version"
    op.create_table(
        table,
        sa.Column("drawing", _text(40), nullable=False),
        sa.Column("practice_id", _text(36), nullable=False),
        sa.Column("code", _text(60), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("saved_at", moment(), nullable=False),
        sa.Column("saved_by", _text(36), nullable=False),
        sa.Column("text", sa.Text(), nullable=False),
        sa.Column("poses", sa.Text(), nullable=False),
        sa.Column("findings", sa.Text(), nullable=False),
        sa.CheckConstraint("number >= 1", name=op.f(f"ck_{table}_number_range")),
        sa.ForeignKeyConstraint(["code"], ["own_exercise.code"], name=op.f(f"fk_{table}_code")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f(f"fk_{table}_practice_id")),
        sa.ForeignKeyConstraint(["saved_by"], ["practitioner.id"], name=op.f(f"fk_{table}_saved_by")),
        sa.PrimaryKeyConstraint("drawing", name=op.f(f"pk_{table}")),
        sa.UniqueConstraint("code", "number", name=op.f(f"uq_{table}_code_number")),
    )
    op.create_index(op.f(f"ix_{table}_practice_id"), table, ["practice_id"], unique=False)


def downgrade() -> None:
    for table in ("own_exercise_version", "own_exercise"):
        op.drop_index(op.f(f"ix_{table}_practice_id"), table_name=table)
        op.drop_table(table)
