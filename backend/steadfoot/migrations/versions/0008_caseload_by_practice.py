"""The caseload finds what is kept aside and the pain of its days within the practice"""

from alembic import op

revision = "0008"
down_revision = "0007"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_index(
        "ix_refused_event_practice", "refused_event", ["practice_id", "accepted_at", "client_id"], unique=False
    )
    op.create_index("ix_pain_entry_practice_day", "pain_entry", ["practice_id", "day"], unique=False)


def downgrade() -> None:
    op.drop_index("ix_pain_entry_practice_day", table_name="pain_entry")
    op.drop_index("ix_refused_event_practice", table_name="refused_event")
