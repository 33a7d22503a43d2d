"""First schema"""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "practice",
        sa.Column("id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("name", sqlmodel.sql.sqltypes.AutoString(length=120), nullable=False),
        sa.Column("time_zone", sqlmodel.sql.sqltypes.AutoString(length=60), nullable=False),
        sa.Column("emergency_text", sqlmodel.sql.sqltypes.AutoString(length=300), nullable=False),
        sa.Column("reply_time_text", sqlmodel.sql.sqltypes.AutoString(length=300), nullable=False),
        sa.Column("created_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_practice")),
    )
    op.create_table(
        "server_epoch",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("value", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_server_epoch")),
    )
    op.create_table(
        "client",
        sa.Column("id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("practice_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("display_name", sqlmodel.sql.sqltypes.AutoString(length=120), nullable=False),
        sa.Column("birth_year", sa.Integer(), nullable=True),
        sa.Column("time_zone", sqlmodel.sql.sqltypes.AutoString(length=60), nullable=False),
        sa.Column("kit", sa.JSON(), nullable=False),
        sa.Column("usual_pain", sa.Integer(), nullable=False),
        sa.Column("thresholds", sa.JSON(), nullable=False),
        sa.Column("note", sqlmodel.sql.sqltypes.AutoString(length=4000), nullable=False),
        sa.Column("created_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("archived_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=True),
        sa.Column("version", sa.Integer(), nullable=False),
        sa.Column("change_head", sa.Integer(), nullable=False),
        sa.CheckConstraint("usual_pain BETWEEN 0 AND 10", name=op.f("ck_client_usual_pain_range")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_client_practice_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_client")),
    )
    with op.batch_alter_table("client", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_client_practice_id"), ["practice_id"], unique=False)

    op.create_table(
        "practitioner",
        sa.Column("id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("practice_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("email", sqlmodel.sql.sqltypes.AutoString(length=254), nullable=False),
        sa.Column("display_name", sqlmodel.sql.sqltypes.AutoString(length=120), nullable=False),
        sa.Column("password_hash", sqlmodel.sql.sqltypes.AutoString(length=300), nullable=False),
        sa.Column("created_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_practitioner_practice_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_practitioner")),
        sa.UniqueConstraint("email", name=op.f("uq_practitioner_email")),
    )
    with op.batch_alter_table("practitioner", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_practitioner_practice_id"), ["practice_id"], unique=False)

    op.create_table(
        "template",
        sa.Column("id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("practice_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("name", sqlmodel.sql.sqltypes.AutoString(length=120), nullable=False),
        sa.Column("created_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("body", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_template_practice_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_template")),
    )
    with op.batch_alter_table("template", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_template_practice_id"), ["practice_id"], unique=False)

    op.create_table(
        "change",
        sa.Column("id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("practice_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("client_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("kind", sqlmodel.sql.sqltypes.AutoString(length=30), nullable=False),
        sa.Column("at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("body", sa.JSON(), nullable=False),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f("fk_change_client_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_change_practice_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_change")),
        sa.UniqueConstraint("client_id", "number", name=op.f("uq_change_client_id_number")),
    )
    op.create_table(
        "client_sheet",
        sa.Column("client_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("practice_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("content", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f("fk_client_sheet_client_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_client_sheet_practice_id")),
        sa.PrimaryKeyConstraint("client_id", name=op.f("pk_client_sheet")),
    )
    with op.batch_alter_table("client_sheet", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_client_sheet_practice_id"), ["practice_id"], unique=False)

    op.create_table(
        "device",
        sa.Column("id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("practice_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("client_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("token_digest", sqlmodel.sql.sqltypes.AutoString(length=64), nullable=False),
        sa.Column("label", sqlmodel.sql.sqltypes.AutoString(length=120), nullable=False),
        sa.Column("paired_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("revoked_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=True),
        sa.Column("last_heard_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=True),
        sa.Column("acknowledged_through", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f("fk_device_client_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_device_practice_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_device")),
        sa.UniqueConstraint("token_digest", name=op.f("uq_device_token_digest")),
    )
    with op.batch_alter_table("device", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_device_client_id"), ["client_id"], unique=False)
        batch_op.create_index(batch_op.f("ix_device_practice_id"), ["practice_id"], unique=False)

    op.create_table(
        "finding",
        sa.Column("id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("practice_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("client_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("rule", sqlmodel.sql.sqltypes.AutoString(length=30), nullable=False),
        sa.Column("subject", sqlmodel.sql.sqltypes.AutoString(length=40), nullable=False),
        sa.Column("since", sa.Date(), nullable=False),
        sa.Column("evidence", sa.Text(), nullable=False),
        sa.Column("suggestion", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f("fk_finding_client_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_finding_practice_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_finding")),
    )
    with op.batch_alter_table("finding", schema=None) as batch_op:
        batch_op.create_index("ix_finding_client", ["practice_id", "client_id"], unique=False)

    op.create_table(
        "flag_decision",
        sa.Column("id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("practice_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("client_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("flag_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("rule", sqlmodel.sql.sqltypes.AutoString(length=30), nullable=False),
        sa.Column("subject", sqlmodel.sql.sqltypes.AutoString(length=40), nullable=False),
        sa.Column("action", sqlmodel.sql.sqltypes.AutoString(length=20), nullable=False),
        sa.Column("note", sqlmodel.sql.sqltypes.AutoString(length=4000), nullable=False),
        sa.Column("message", sqlmodel.sql.sqltypes.AutoString(length=4000), nullable=False),
        sa.Column("covers", sa.Text(), nullable=False),
        sa.Column("program_number", sa.Integer(), nullable=True),
        sa.Column("practitioner_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("decided_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f("fk_flag_decision_client_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_flag_decision_practice_id")),
        sa.ForeignKeyConstraint(
            ["practitioner_id"], ["practitioner.id"], name=op.f("fk_flag_decision_practitioner_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_flag_decision")),
    )
    with op.batch_alter_table("flag_decision", schema=None) as batch_op:
        batch_op.create_index("ix_flag_decision_client", ["practice_id", "client_id"], unique=False)

    op.create_table(
        "invitation",
        sa.Column("id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("practice_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("client_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("code_digest", sqlmodel.sql.sqltypes.AutoString(length=64), nullable=False),
        sa.Column("delivery", sqlmodel.sql.sqltypes.AutoString(length=20), nullable=False),
        sa.Column("created_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("expires_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("redeemed_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=True),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f("fk_invitation_client_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_invitation_practice_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_invitation")),
        sa.UniqueConstraint("code_digest", name=op.f("uq_invitation_code_digest")),
    )
    with op.batch_alter_table("invitation", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_invitation_client_id"), ["client_id"], unique=False)
        batch_op.create_index(batch_op.f("ix_invitation_practice_id"), ["practice_id"], unique=False)

    op.create_table(
        "message",
        sa.Column("id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("practice_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("client_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("practitioner_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("flag_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=True),
        sa.Column("text", sqlmodel.sql.sqltypes.AutoString(length=4000), nullable=False),
        sa.Column("sent_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f("fk_message_client_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_message_practice_id")),
        sa.ForeignKeyConstraint(["practitioner_id"], ["practitioner.id"], name=op.f("fk_message_practitioner_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_message")),
    )
    with op.batch_alter_table("message", schema=None) as batch_op:
        batch_op.create_index("ix_message_client", ["practice_id", "client_id"], unique=False)

    op.create_table(
        "pain_entry",
        sa.Column("event_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("client_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("practice_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("day", sa.Date(), nullable=False),
        sa.Column("instant", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("rating", sa.Integer(), nullable=False),
        sa.Column("region", sqlmodel.sql.sqltypes.AutoString(length=20), nullable=False),
        sa.Column("side", sqlmodel.sql.sqltypes.AutoString(length=10), nullable=False),
        sa.Column("aspect", sqlmodel.sql.sqltypes.AutoString(length=10), nullable=True),
        sa.Column("felt", sqlmodel.sql.sqltypes.AutoString(length=20), nullable=False),
        sa.Column("feels", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("planned_id", sqlmodel.sql.sqltypes.AutoString(length=20), nullable=True),
        sa.Column("prescription", sqlmodel.sql.sqltypes.AutoString(length=60), nullable=True),
        sa.CheckConstraint("rating BETWEEN 0 AND 10", name=op.f("ck_pain_entry_rating_range")),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f("fk_pain_entry_client_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_pain_entry_practice_id")),
        sa.PrimaryKeyConstraint("event_id", name=op.f("pk_pain_entry")),
    )
    with op.batch_alter_table("pain_entry", schema=None) as batch_op:
        batch_op.create_index("ix_pain_entry_day", ["practice_id", "client_id", "day"], unique=False)

    op.create_table(
        "program_draft",
        sa.Column("client_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("practice_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("base_number", sa.Integer(), nullable=True),
        sa.Column("version", sa.Integer(), nullable=False),
        sa.Column("saved_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("saved_by", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("content", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f("fk_program_draft_client_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_program_draft_practice_id")),
        sa.ForeignKeyConstraint(["saved_by"], ["practitioner.id"], name=op.f("fk_program_draft_saved_by")),
        sa.PrimaryKeyConstraint("client_id", name=op.f("pk_program_draft")),
    )
    with op.batch_alter_table("program_draft", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_program_draft_practice_id"), ["practice_id"], unique=False)

    op.create_table(
        "program_version",
        sa.Column("id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("practice_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("client_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("published_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("published_by", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("effective_on", sa.Date(), nullable=False),
        sa.Column("note", sqlmodel.sql.sqltypes.AutoString(length=4000), nullable=False),
        sa.Column("changes", sa.Text(), nullable=False),
        sa.Column("content", sa.Text(), nullable=False),
        sa.CheckConstraint("number >= 1", name=op.f("ck_program_version_number_range")),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f("fk_program_version_client_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_program_version_practice_id")),
        sa.ForeignKeyConstraint(["published_by"], ["practitioner.id"], name=op.f("fk_program_version_published_by")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_program_version")),
        sa.UniqueConstraint("client_id", "number", name=op.f("uq_program_version_client_id_number")),
    )
    with op.batch_alter_table("program_version", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_program_version_practice_id"), ["practice_id"], unique=False)

    op.create_table(
        "session_rollup",
        sa.Column("client_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("planned_id", sqlmodel.sql.sqltypes.AutoString(length=20), nullable=False),
        sa.Column("practice_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("planned_day", sa.Date(), nullable=False),
        sa.Column("last_day", sa.Date(), nullable=False),
        sa.Column("program_version", sa.Integer(), nullable=True),
        sa.Column("sets_done", sa.Integer(), nullable=False),
        sa.Column("sets", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("left_out", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("swaps", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("minutes", sa.Integer(), nullable=True),
        sa.Column("effort", sa.Integer(), nullable=True),
        sa.Column("finished", sa.Boolean(), nullable=False),
        sa.Column("walk", sqlmodel.sql.sqltypes.AutoString(), nullable=True),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f("fk_session_rollup_client_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_session_rollup_practice_id")),
        sa.PrimaryKeyConstraint("client_id", "planned_id", name=op.f("pk_session_rollup")),
    )
    with op.batch_alter_table("session_rollup", schema=None) as batch_op:
        batch_op.create_index("ix_session_rollup_day", ["practice_id", "client_id", "planned_day"], unique=False)

    op.create_table(
        "sign_in",
        sa.Column("token_digest", sqlmodel.sql.sqltypes.AutoString(length=64), nullable=False),
        sa.Column("practice_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("practitioner_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("created_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("last_seen_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_sign_in_practice_id")),
        sa.ForeignKeyConstraint(["practitioner_id"], ["practitioner.id"], name=op.f("fk_sign_in_practitioner_id")),
        sa.PrimaryKeyConstraint("token_digest", name=op.f("pk_sign_in")),
    )
    with op.batch_alter_table("sign_in", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_sign_in_practice_id"), ["practice_id"], unique=False)
        batch_op.create_index(batch_op.f("ix_sign_in_practitioner_id"), ["practitioner_id"], unique=False)

    op.create_table(
        "event",
        sa.Column("id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("practice_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("client_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("device_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("seq", sa.Integer(), nullable=False),
        sa.Column("kind", sqlmodel.sql.sqltypes.AutoString(length=30), nullable=False),
        sa.Column("recorded_at", sqlmodel.sql.sqltypes.AutoString(length=40), nullable=False),
        sa.Column("instant", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("received_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("local_day", sa.Date(), nullable=False),
        sa.Column("planned_id", sqlmodel.sql.sqltypes.AutoString(length=20), nullable=True),
        sa.Column("body", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("content_digest", sqlmodel.sql.sqltypes.AutoString(length=64), nullable=False),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f("fk_event_client_id")),
        sa.ForeignKeyConstraint(["device_id"], ["device.id"], name=op.f("fk_event_device_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_event_practice_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_event")),
    )
    with op.batch_alter_table("event", schema=None) as batch_op:
        batch_op.create_index("ix_event_planned", ["client_id", "planned_id"], unique=False)
        batch_op.create_index("ix_event_time", ["client_id", "instant", "id"], unique=False)

    op.create_table(
        "pairing",
        sa.Column("id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("practice_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("client_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("device_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("check_number", sqlmodel.sql.sqltypes.AutoString(length=4), nullable=False),
        sa.Column("created_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("confirmed_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=True),
        sa.Column("confirmed_by", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=True),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f("fk_pairing_client_id")),
        sa.ForeignKeyConstraint(["device_id"], ["device.id"], name=op.f("fk_pairing_device_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_pairing_practice_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_pairing")),
        sa.UniqueConstraint("device_id", name=op.f("uq_pairing_device_id")),
    )
    with op.batch_alter_table("pairing", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_pairing_client_id"), ["client_id"], unique=False)
        batch_op.create_index(batch_op.f("ix_pairing_practice_id"), ["practice_id"], unique=False)

    op.create_table(
        "receipt",
        sa.Column("device_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("seq", sa.Integer(), nullable=False),
        sa.Column("practice_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("event_id", sqlmodel.sql.sqltypes.AutoString(length=100), nullable=False),
        sa.ForeignKeyConstraint(["device_id"], ["device.id"], name=op.f("fk_receipt_device_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_receipt_practice_id")),
        sa.PrimaryKeyConstraint("device_id", "seq", name=op.f("pk_receipt")),
    )
    op.create_table(
        "refused_event",
        sa.Column("digest", sqlmodel.sql.sqltypes.AutoString(length=64), nullable=False),
        sa.Column("practice_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("client_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("device_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=False),
        sa.Column("event_id", sqlmodel.sql.sqltypes.AutoString(length=100), nullable=False),
        sa.Column("content_digest", sqlmodel.sql.sqltypes.AutoString(length=64), nullable=False),
        sa.Column("seq", sa.Integer(), nullable=True),
        sa.Column("raw", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("problem", sa.JSON(), nullable=False),
        sa.Column("received_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=False),
        sa.Column("accepted_at", sqlmodel.sql.sqltypes.UTCDateTime(), nullable=True),
        sa.ForeignKeyConstraint(["client_id"], ["client.id"], name=op.f("fk_refused_event_client_id")),
        sa.ForeignKeyConstraint(["device_id"], ["device.id"], name=op.f("fk_refused_event_device_id")),
        sa.ForeignKeyConstraint(["practice_id"], ["practice.id"], name=op.f("fk_refused_event_practice_id")),
        sa.PrimaryKeyConstraint("digest", name=op.f("pk_refused_event")),
    )
    with op.batch_alter_table("refused_event", schema=None) as batch_op:
        batch_op.create_index("ix_refused_event_client", ["client_id", "received_at"], unique=False)


def downgrade() -> None:
    with op.batch_alter_table("refused_event", schema=None) as batch_op:
        batch_op.drop_index("ix_refused_event_client")

    op.drop_table("refused_event")
    op.drop_table("receipt")
    with op.batch_alter_table("pairing", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_pairing_practice_id"))
        batch_op.drop_index(batch_op.f("ix_pairing_client_id"))

    op.drop_table("pairing")
    with op.batch_alter_table("event", schema=None) as batch_op:
        batch_op.drop_index("ix_event_time")
        batch_op.drop_index("ix_event_planned")

    op.drop_table("event")
    with op.batch_alter_table("sign_in", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_sign_in_practitioner_id"))
        batch_op.drop_index(batch_op.f("ix_sign_in_practice_id"))

    op.drop_table("sign_in")
    with op.batch_alter_table("session_rollup", schema=None) as batch_op:
        batch_op.drop_index("ix_session_rollup_day")

    op.drop_table("session_rollup")
    with op.batch_alter_table("program_version", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_program_version_practice_id"))

    op.drop_table("program_version")
    with op.batch_alter_table("program_draft", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_program_draft_practice_id"))

    op.drop_table("program_draft")
    with op.batch_alter_table("pain_entry", schema=None) as batch_op:
        batch_op.drop_index("ix_pain_entry_day")

    op.drop_table("pain_entry")
    with op.batch_alter_table("message", schema=None) as batch_op:
        batch_op.drop_index("ix_message_client")

    op.drop_table("message")
    with op.batch_alter_table("invitation", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_invitation_practice_id"))
        batch_op.drop_index(batch_op.f("ix_invitation_client_id"))

    op.drop_table("invitation")
    with op.batch_alter_table("flag_decision", schema=None) as batch_op:
        batch_op.drop_index("ix_flag_decision_client")

    op.drop_table("flag_decision")
    with op.batch_alter_table("finding", schema=None) as batch_op:
        batch_op.drop_index("ix_finding_client")

    op.drop_table("finding")
    with op.batch_alter_table("device", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_device_practice_id"))
        batch_op.drop_index(batch_op.f("ix_device_client_id"))

    op.drop_table("device")
    with op.batch_alter_table("client_sheet", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_client_sheet_practice_id"))

    op.drop_table("client_sheet")
    op.drop_table("change")
    with op.batch_alter_table("template", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_template_practice_id"))

    op.drop_table("template")
    with op.batch_alter_table("practitioner", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_practitioner_practice_id"))

    op.drop_table("practitioner")
    with op.batch_alter_table("client", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_client_practice_id"))

    op.drop_table("client")
    op.drop_table("server_epoch")
    op.drop_table("practice")
