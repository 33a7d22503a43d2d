"""The database's schema, step by step. Alembic is imported only when there is a step to take: it costs a second."""

HEAD = "0011"
