"""Screenings, clearances, test results, ratings of what is hard; sex, height and body mass of clients"""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None


def _text(length: int) -> sqlmodel.sql.sqltypes.AutoString:
    return sqlmodel.sql.sqltypes.AutoString(length=length)


def _owned(table: str, *columns: sa.Column, by: str) -> None:
    """Create a table of rows about one client, with its index; ``by`` names the column of who entered a row."""
    op.create_table(
        table,
        sa.Column("id", _text(36), nullable=False),
        sa.Column("practice_id", _text(36), nullable=False),
        sa.Column("client_id", _text(36), nullable=False),
        *columns,
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f(f"fk_{table}_client_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f(f"fk_{table}_practice_id")),
        sa.ForeignKeyConstraint([by], ["practitioner.id"], name=op.f(f"fk_{table}_{by}")),
        sa.PrimaryKeyConstraint("id", name=op.f(f"pk_{table}")),
    )
    op.create_index(f"ix_{table}_client", table, ["practice_id", "client_id"], unique=False)


def upgrade() -> None:
    with op.batch_alter_table("client", schema=None) as batch_op:
        batch_op.add_column(sa.Column("sex", _text(10), nullable=True))
        batch_op.add_column(sa.Column("height_cm", sa.Float(), nullable=True))
        batch_op.add_column(sa.Column("body_mass_kg", sa.Float(), nullable=True))
    _owned(
        "screening",
        sa.Column("answered_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("local_day", sa.Date(), nullable=False),
        sa.Column("source", _text(20), nullable=False),
        sa.Column("event_id", _text(36), nullable=True),
        sa.Column("answers", sa.Text(), nullable=False),
        sa.Column("details", sa.Text(), nullable=False),
        sa.Column("outcome", _text(20), nullable=False),
        sa.Column("reasons", sa.Text(), nullable=False),
        sa.Column("answered_by", _text(36), nullable=True),
        by="answered_by",
    )
    _owned(
        "clearance",
        sa.Column("screening_id", _text(36), nullable=False),
        sa.Column("given_on", sa.Date(), nullable=False),
        sa.Column("given_by", _text(120), nullable=False),
        sa.Column("note", _text(4000), nullable=False),
        sa.Column("recorded_by", _text(36), nullable=False),
        sa.Column("recorded_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        by="recorded_by",
    )
    _owned(
        "test_result",
        sa.Column("code", _text(60), nullable=False),
        sa.Column("side", _text(10), nullable=True),
        sa.Column("value", sa.Float(), nullable=False),
        sa.Column("unit", _text(20), nullable=False),
        sa.Column("protocol", sa.Text(), nullable=False),
        sa.Column("note", _text(4000), nullable=False),
        *_taken(),
        by="taken_by",
    )
    _owned("functional_scale", sa.Column("activities", sa.Text(), nullable=False), *_taken(), by="taken_by")


def _taken() -> list[sa.Column]:
    return [
        sa.Column("taken_on", sa.Date(), nullable=False),
        sa.Column("taken_by", _text(36), nullable=False),
        sa.Column("recorded_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("withdrawn_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=True),
    ]


def downgrade() -> None:
    for table in ("functional_scale", "test_result", "clearance", "screening"):
        op.drop_index(f"ix_{table}_client", table_name=table)
        op.drop_table(table)
    with op.batch_alter_table("client", schema=None) as batch_op:
        batch_op.drop_column("body_mass_kg")
        batch_op.drop_column("height_cm")
        batch_op.drop_column("sex")
