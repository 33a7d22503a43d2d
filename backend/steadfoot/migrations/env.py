"""Runs migrations on the connection that ``steadfoot.migrations.upgrade`` hands over."""

from alembic import context

from steadfoot.schema import METADATA

connection = context.config.attributes["connection"]
context.configure(
    connection=connection,
    target_metadata=METADATA,
    render_as_batch=True,
    compare_type=True,
    transactional_ddl=True,
)
context.run_migrations()
