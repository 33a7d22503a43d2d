"""Which rows of which tables belong to one person: the one list that the export and the erasure go by.

A test walks the schema: a table that is linked to a client and is not named here fails it.
"""

from collections.abc import Mapping, Sequence
from typing import Any, Final

from sqlalchemy import ColumnElement, Table, select
from sqlmodel import Session, SQLModel

LINKED: Final[Mapping[str, str]] = {
    "client": "id",
    "invitation": "client_id",
    "device": "client_id",
    "pairing": "client_id",
    "change": "client_id",
    "screening": "client_id",
    "clearance": "client_id",
    "test_result": "client_id",
    "functional_scale": "client_id",
    "program_draft": "client_id",
    "program_version": "client_id",
    "event": "client_id",
    "receipt": "device_id",
    "due": "client_id",
    "refused_event": "client_id",
    "session_rollup": "client_id",
    "pain_entry": "client_id",
    "trip": "client_id",
    "trip_leg": "client_id",
    "finding": "client_id",
    "client_sheet": "client_id",
    "flag_decision": "client_id",
    "progression_decision": "client_id",
    "message": "client_id",
    "readiness_note": "client_id",
    "erasure": "client_id",
    "audit_entry": "subject_id",
}
"""The column by which each table's rows are a person's; ``device_id`` means: of one of their phones."""
WITHHELD: Final[Mapping[tuple[str, str], str]] = {
    ("device", "token_digest"): "What a phone's key is checked against: it says nothing of the person.",
    ("invitation", "code_digest"): "What a code is checked against: it says nothing of the person.",
}
"""Columns that a copy of the record leaves out, each with the reason."""
KEPT: Final[Mapping[str, str]] = {
    "audit_entry": "Who saw and did what must stay to be checked; it holds ids only, which then name nobody.",
}
"""Tables whose rows an erasure leaves, each with the reason."""
NOT_LINKED: Final[Mapping[str, str]] = {
    "erased_person": "Says that an id was erased, so that no backup brings it back; it is nobody's any more.",
}
"""Tables that name an id of a person and hold nothing of them, each with the reason."""


def tables() -> list[Table]:
    """Answer the linked tables, parents before children."""
    return [table for table in SQLModel.metadata.sorted_tables if table.name in LINKED]


def belongs(table: Table, practice_id: str, client_id: str) -> ColumnElement[bool]:
    """Answer the condition for a table's rows of one person."""
    column = table.c[LINKED[table.name]]
    if LINKED[table.name] != "device_id":
        return (table.c.practice_id == practice_id) & (column == client_id)
    device = SQLModel.metadata.tables["device"]
    phones = select(device.c.id).where(belongs(device, practice_id, client_id))
    return (table.c.practice_id == practice_id) & column.in_(phones)


def rows_of(session: Session, table: Table, practice_id: str, client_id: str) -> Sequence[Mapping[str, Any]]:
    """Answer a person's rows of one table, in the order of its key."""
    query = select(table).where(belongs(table, practice_id, client_id)).order_by(*table.primary_key.columns)
    return [dict(row) for row in session.execute(query).mappings()]
