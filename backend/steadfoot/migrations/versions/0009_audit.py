"""The audit log, chained and only ever added to; erasures, and how long records are kept"""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0009"
down_revision = "0008"
branch_labels = None
depends_on = None

_SAYS = "the audit log is only ever added to"
_SQLITE = (
    f"CREATE TRIGGER audit_entry_changed BEFORE UPDATE ON audit_entry BEGIN SELECT RAISE(ABORT, '{_SAYS}'); END",
    f"CREATE TRIGGER audit_entry_deleted BEFORE DELETE ON audit_entry BEGIN SELECT RAISE(ABORT, '{_SAYS}'); END",
    # REPLACE deletes without calling the trigger above.
    "CREATE TRIGGER audit_entry_replaced BEFORE INSERT ON audit_entry WHEN EXISTS"
    " (SELECT 1 FROM audit_entry WHERE practice_id = NEW.practice_id AND number = NEW.number)"
    " BEGIN SELECT RAISE(ABORT, 'the audit log is only ever added to'); END",
    "CREATE TRIGGER audit_head_lowered BEFORE UPDATE ON audit_head"
    " WHEN NEW.number < OLD.number OR NEW.practice_id <> OLD.practice_id"
    f" BEGIN SELECT RAISE(ABORT, '{_SAYS}'); END",
    f"CREATE TRIGGER audit_head_deleted BEFORE DELETE ON audit_head BEGIN SELECT RAISE(ABORT, '{_SAYS}'); END",
)
_POSTGRESQL = (
    f"CREATE FUNCTION audit_refuse() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN RAISE EXCEPTION '{_SAYS}'; END $$",
    "CREATE TRIGGER audit_entry_changed BEFORE UPDATE OR DELETE ON audit_entry"
    " FOR EACH ROW EXECUTE FUNCTION audit_refuse()",
    "CREATE TRIGGER audit_entry_emptied BEFORE TRUNCATE ON audit_entry"
    " FOR EACH STATEMENT EXECUTE FUNCTION audit_refuse()",
    "CREATE TRIGGER audit_head_lowered BEFORE UPDATE ON audit_head FOR EACH ROW"
    " WHEN (NEW.number < OLD.number OR NEW.practice_id <> OLD.practice_id) EXECUTE FUNCTION audit_refuse()",
    "CREATE TRIGGER audit_head_deleted BEFORE DELETE ON audit_head FOR EACH ROW EXECUTE FUNCTION audit_refuse()",
    "CREATE TRIGGER audit_head_emptied BEFORE TRUNCATE ON audit_head"
    " FOR EACH STATEMENT EXECUTE FUNCTION audit_refuse()",
)


def _text(length: int) -> sqlmodel.sql.sqltypes.AutoString:
    return sqlmodel.sql.sqltypes.AutoString(length=length)


def upgrade() -> None:
    op.create_table(
        "audit_entry",
        sa.Column("practice_id", _text(36), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("actor_kind", _text(20), nullable=False),
        sa.Column("actor_id", _text(36), nullable=True),
        sa.Column("subject_id", _text(36), nullable=True),
        sa.Column("action", _text(60), nullable=False),
        sa.Column("outcome", _text(20), nullable=False),
        sa.Column("request_id", _text(36), nullable=False),
        sa.Column("times", sa.Integer(), nullable=False),
        sa.Column("previous", _text(64), nullable=False),
        sa.Column("digest", _text(64), nullable=False),
        sa.PrimaryKeyConstraint("practice_id", "number", name=op.f("pk_audit_entry")),
    )
    op.create_index("ix_audit_entry_subject", "audit_entry", ["practice_id", "subject_id", "number"], unique=False)
    op.create_table(
        "audit_head",
        sa.Column("practice_id", _text(36), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("digest", _text(64), nullable=False),
        sa.PrimaryKeyConstraint("practice_id", name=op.f("pk_audit_head")),
    )
    _custody()
    for statement in _SQLITE if op.get_bind().dialect.name == "sqlite" else _POSTGRESQL:
        op.execute(statement)


def _custody() -> None:
    practice = ["practice_id"], ["practice.id"]
    op.create_table(
        "erased_phone",
        sa.Column("token_digest", _text(64), nullable=False),
        sa.Column("practice_id", _text(36), nullable=False),
        sa.Column("erased_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(*practice, name=op.f("fk_erased_phone_practice_id")),
        sa.PrimaryKeyConstraint("token_digest", name=op.f("pk_erased_phone")),
    )
    op.create_index(op.f("ix_erased_phone_practice_id"), "erased_phone", ["practice_id"], unique=False)
    op.create_table(
        "erased_person",
        sa.Column("subject_id", _text(36), nullable=False),
        sa.Column("practice_id", _text(36), nullable=False),
        sa.Column("erased_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(*practice, name=op.f("fk_erased_person_practice_id")),
        sa.PrimaryKeyConstraint("subject_id", name=op.f("pk_erased_person")),
    )
    op.create_index(op.f("ix_erased_person_practice_id"), "erased_person", ["practice_id"], unique=False)
    op.create_table(
        "erasure",
        sa.Column("client_id", _text(36), nullable=False),
        sa.Column("practice_id", _text(36), nullable=False),
        sa.Column("asked_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("asked_by", _text(36), nullable=False),
        sa.Column("due_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("archived_before", sa.Boolean(), nullable=False),
        sa.ForeignKeyConstraint(["asked_by"], ["practitioner.id"], name=op.f("fk_erasure_asked_by")),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f("fk_erasure_client_id")),
        sa.ForeignKeyConstraint(*practice, name=op.f("fk_erasure_practice_id")),
        sa.PrimaryKeyConstraint("client_id", name=op.f("pk_erasure")),
    )
    op.create_index(op.f("ix_erasure_practice_id"), "erasure", ["practice_id"], unique=False)
    op.create_table(
        "retention_choice",
        sa.Column("practice_id", _text(36), nullable=False),
        sa.Column("years", sa.Integer(), nullable=True),
        sa.Column("chosen_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("chosen_by", _text(36), nullable=False),
        sa.ForeignKeyConstraint(["chosen_by"], ["practitioner.id"], name=op.f("fk_retention_choice_chosen_by")),
        sa.ForeignKeyConstraint(*practice, name=op.f("fk_retention_choice_practice_id")),
        sa.PrimaryKeyConstraint("practice_id", name=op.f("pk_retention_choice")),
    )


def downgrade() -> None:
    for table in ("retention_choice", "erasure", "erased_person", "erased_phone"):
        op.drop_table(table)
    op.drop_table("audit_head")
    op.drop_index("ix_audit_entry_subject", table_name="audit_entry")
    op.drop_table("audit_entry")
    if op.get_bind().dialect.name != "sqlite":
        op.execute("DROP FUNCTION audit_refuse()")
