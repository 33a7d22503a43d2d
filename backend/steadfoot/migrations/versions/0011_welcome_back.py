"""A link may let someone in again who is of the practice already"""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0011"
down_revision = "0010"
branch_labels = None
depends_on = None


def upgrade() -> None:
    with op.batch_alter_table("colleague_invitation") as batch:
        batch.add_column(sa.Column("practitioner_id", sqlmodel.sql.sqltypes.AutoString(length=36), nullable=True))
        batch.create_foreign_key(
            op.f("fk_colleague_invitation_practitioner_id"), "practitioner", ["practitioner_id"], ["id"]
        )


def downgrade() -> None:
    with op.batch_alter_table("colleague_invitation") as batch:
        batch.drop_constraint(op.f("fk_colleague_invitation_practitioner_id"), type_="foreignkey")
        batch.drop_column("practitioner_id")
