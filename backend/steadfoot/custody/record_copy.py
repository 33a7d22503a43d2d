"""A complete copy of one person's record: JSON for programs, a page for people, in one zip."""

import io
import json
import zipfile
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime
from html import escape
from typing import Any, Final

from sqlmodel import Session

from steadfoot.custody import person
from steadfoot.custody.copy_words import Language, said, title
from steadfoot.identity import service as identity

FORMAT: Final = "steadfoot-record/1"
_Rows = Mapping[str, Sequence[Mapping[str, Any]]]
_JSON_TEXT: Final = frozenset(
    (
        *("answers", "details", "reasons", "protocol", "activities", "changes", "content", "sets", "left_out", "swaps"),
        *("walk", "feels", "body", "raw", "from_file", "evidence", "suggestion", "covers", "shown"),
    )
)
"""Text columns that hold JSON: it is put in as such. What is none stays text."""


@dataclass(frozen=True, slots=True)
class RecordCopy:
    """A person's rows by table, and who is who among the practice's ids."""

    client_id: str
    name: str
    practice: str
    at: datetime
    tables: _Rows
    people: Mapping[str, str]


def copy_of(session: Session, practice_id: str, client_id: str, now: datetime) -> RecordCopy:
    """Answer everything that is held of a client.

    Raises:
        NotFound: the client is unknown, or another practice's.
    """
    client = identity.client_of(session, practice_id, client_id)
    found = {
        table.name: [_row(table.name, row) for row in person.rows_of(session, table, practice_id, client_id)]
        for table in person.tables()
    }
    practice = identity.practice_name(session, practice_id)
    people = identity.practitioner_names(session, practice_id)
    named = {key: name for key, name in people.items() if key in json.dumps(found, ensure_ascii=False)}
    return RecordCopy(client_id, client.display_name, practice, now, found, named)


def _row(table: str, row: Mapping[str, Any]) -> dict[str, Any]:
    return {name: _value(name, value) for name, value in row.items() if (table, name) not in person.WITHHELD}


def _value(column: str, value: Any) -> Any:
    if isinstance(value, datetime):
        return value.astimezone(UTC).isoformat()
    if isinstance(value, date):
        return value.isoformat()
    if column in _JSON_TEXT and isinstance(value, str):
        try:
            return json.loads(value)
        except ValueError:
            return value
    return value


def zipped(copy: RecordCopy, language: Language) -> bytes:
    """Answer the copy as a zip of ``index.html`` and ``record.json``."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as file:
        file.writestr("index.html", _page(copy, language))
        file.writestr("record.json", _machine(copy))
    return out.getvalue()


def _machine(copy: RecordCopy) -> str:
    withheld = [{"table": table, "column": column, "reason": why} for (table, column), why in person.WITHHELD.items()]
    whole = {
        "format": FORMAT,
        "client_id": copy.client_id,
        "practice": copy.practice,
        "made_at": copy.at.astimezone(UTC).isoformat(),
        "tables": copy.tables,
        "people": copy.people,
        "withheld": withheld,
    }
    return json.dumps(whole, ensure_ascii=False, indent=1)


def _page(copy: RecordCopy, language: Language) -> str:
    def sentence(key: str, **values: str) -> str:
        return escape(said(key, language).format(**values))

    heading = sentence("title", name=copy.name)
    made = sentence("made", at=copy.at.astimezone(UTC).isoformat(timespec="minutes"), practice=copy.practice)
    withheld = "".join(f"<li>{escape(f'{t}.{c}: {why}')}</li>" for (t, c), why in person.WITHHELD.items())
    people = "".join(f"<li>{escape(f'{name}: {key}')}</li>" for key, name in copy.people.items())
    parts = "".join(_part(name, copy.tables[name], language) for name in person.LINKED)
    return (
        f'<!doctype html><html lang="{language}"><head><meta charset="utf-8"><title>{heading}</title>'
        '<meta name="viewport" content="width=device-width"><style>body{font:1rem/1.5 sans-serif;margin:1rem}'
        "div{overflow-x:auto}table{border-collapse:collapse}th,td{border:1px solid;padding:.2rem .4rem;text-align:left;"
        f"vertical-align:top}}</style></head><body><h1>{heading}</h1><p>{made}</p><p><b>{sentence('health')}</b></p>"
        f"<p>{sentence('machine')}</p><p>{sentence('times')}</p><p>{sentence('withheld')}</p><ul>{withheld}</ul>"
        f"<h2>{sentence('people')}</h2><ul>{people}</ul>{parts}</body></html>"
    )


def _part(table: str, rows: Sequence[Mapping[str, Any]], language: Language) -> str:
    heading = f"<h2>{escape(title(table, language))} ({len(rows)})</h2>"
    if not rows:
        return f"{heading}<p>{escape(said('none', language))}</p>"
    head = "".join(f'<th scope="col">{escape(name)}</th>' for name in rows[0])
    lines = "".join(f"<tr>{''.join(f'<td>{escape(_shown(cell))}</td>' for cell in row.values())}</tr>" for row in rows)
    return f'{heading}<div tabindex="0"><table><thead><tr>{head}</tr></thead><tbody>{lines}</tbody></table></div>'


def _shown(cell: Any) -> str:
    if cell is None:
        return ""
    return cell if isinstance(cell, str) else json.dumps(cell, ensure_ascii=False)
