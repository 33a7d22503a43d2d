"""The log as files: a table to read, and lines by which an outsider can check the chain."""

from collections.abc import Iterator, Sequence

from steadfoot.audit import service as audit
from steadfoot.audit.entries import FIELDS, said
from steadfoot.core.database import Database
from steadfoot.core.texts import canonical
from steadfoot.custody.cells import line_of
from steadfoot.custody.log import Wanted, page_of
from steadfoot.custody.schemas import AuditRow
from steadfoot.identity.access import PractitionerAccess

_COLUMNS = (
    *("number", "at", "actor_kind", "actor_name", "actor_id"),
    *("action", "subject_name", "subject_id", "outcome", "times"),
)


def table(database: Database, access: PractitionerAccess, wanted: Wanted) -> Iterator[str]:
    """Yield the wanted rows as comma-separated lines, newest first, the names of the columns above them."""
    yield line_of(_COLUMNS)
    below: int | None = None
    while True:
        with database.read() as session:
            found = page_of(session, access, wanted, below)
        yield "".join(_lines(found.items))
        if found.next is None:
            return
        below = found.next


def _lines(rows: Sequence[AuditRow]) -> Iterator[str]:
    for row in rows:
        cells = row.model_dump(mode="json")
        yield line_of(cells[name] for name in _COLUMNS)


def chain(database: Database, practice_id: str) -> Iterator[str]:
    """Yield every row of the practice as a line of JSON with its digest, oldest first."""
    with database.read() as session:
        for row in audit.chain(session, practice_id):
            values = row.model_dump()
            yield canonical({**said({name: values[name] for name in FIELDS}), "digest": row.digest}) + "\n"
