"""A client's trip and its legs"""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None


def _text(length: int) -> sqlmodel.sql.sqltypes.AutoString:
    return sqlmodel.sql.sqltypes.AutoString(length=length)


def _trip() -> None:
    op.create_table(
        "trip",
        sa.Column("client_id", _text(36), nullable=False),
        sa.Column("practice_id", _text(36), nullable=False),
        sa.Column("pack_kg", sa.Float(), nullable=False),
        sa.Column("ground", _text(20), nullable=False),
        sa.Column("version", sa.Integer(), nullable=False),
        sa.Column("saved_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("saved_by", _text(36), nullable=False),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f("fk_trip_client_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_trip_practice_id")),
        sa.ForeignKeyConstraint(["saved_by"], ["practitioner.id"], name=op.f("fk_trip_saved_by")),
        sa.PrimaryKeyConstraint("client_id", name=op.f("pk_trip")),
    )


def _leg() -> None:
    op.create_table(
        "trip_leg",
        sa.Column("client_id", _text(36), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("practice_id", _text(36), nullable=False),
        sa.Column("day", sa.Integer(), nullable=False),
        sa.Column("name", _text(120), nullable=False),
        sa.Column("distance_km", sa.Float(), nullable=False),
        sa.Column("ascent_m", sa.Float(), nullable=True),
        sa.Column("descent_m", sa.Float(), nullable=True),
        sa.Column("pack_kg", sa.Float(), nullable=True),
        sa.Column("from_file", sa.Text(), nullable=True),
        sa.CheckConstraint("day >= 1", name=op.f("ck_trip_leg_day_range")),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f("fk_trip_leg_client_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_trip_leg_practice_id")),
        sa.PrimaryKeyConstraint("client_id", "position", name=op.f("pk_trip_leg")),
    )


def upgrade() -> None:
    _trip()
    _leg()
    for table in ("trip", "trip_leg"):
        op.create_index(op.f(f"ix_{table}_practice_id"), table, ["practice_id"], unique=False)


def downgrade() -> None:
    for table in ("trip_leg", "trip"):
        op.drop_index(op.f(f"ix_{table}_practice_id"), table_name=table)
        op.drop_table(table)
