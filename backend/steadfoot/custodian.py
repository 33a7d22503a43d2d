"""``steadfoot audit`` and ``steadfoot retention``: what whoever runs the server does about log and old records."""

import json
from pathlib import Path
from typing import Annotated

import typer

from steadfoot.audit import service as audit
from steadfoot.audit.service import Verdict

audit_app = typer.Typer(help="The log of who saw and did what.", no_args_is_help=True)

_EMPTY = "No log has a row yet."

Heads = Annotated[
    Path | None, typer.Option(help="Heads that were noted elsewhere, as `steadfoot audit heads` printed them.")
]


def _noted(path: Path | None) -> dict[str, dict[int, str]]:
    noted: dict[str, dict[int, str]] = {}
    for line in path.read_text().splitlines() if path else ():
        found = json.loads(line)
        noted.setdefault(found["practice_id"], {})[int(found["number"])] = str(found["digest"])
    return noted


def _say(found: Verdict) -> str:
    if found.broken_at is None:
        return f"{found.practice_id}: {found.rows} rows, whole. Head: {found.head}"
    return f"{found.practice_id}: BROKEN at row {found.broken_at}: {found.why}."


@audit_app.command("verify")
def verify(heads: Heads = None) -> None:
    """Walk every practice's chain from its first row; names the first row that does not fit, and then exits with 1."""
    from steadfoot import serving
    from steadfoot.wiring import settings_with

    try:
        noted = _noted(heads)
    except (OSError, ValueError, KeyError, TypeError) as error:
        typer.echo(f"Not done: {heads} cannot be read: {error}", err=True)
        raise typer.Exit(1) from error
    database = serving.open_existing(settings_with(None, None))
    with database.read() as session:
        verdicts = audit.verify_all(session, noted)
    database.close()
    if not verdicts:
        typer.echo(_EMPTY)
    for one in verdicts:
        typer.echo(_say(one))
    if any(one.broken_at is not None for one in verdicts):
        raise typer.Exit(1)


@audit_app.command("heads")
def heads() -> None:
    """Print the head of every chain, a line of JSON each: keep them where this server cannot write."""
    from steadfoot import serving
    from steadfoot.wiring import settings_with

    database = serving.open_existing(settings_with(None, None))
    with database.read() as session:
        found = list(audit.heads(session))
        if not found:
            typer.echo(_EMPTY, err=True)
        for head in found:
            line = {"practice_id": head.practice_id, "number": head.number, "digest": head.digest}
            typer.echo(json.dumps(line, sort_keys=True))
    database.close()


def retention() -> None:
    """Do the night's work now: erasures whose day has come, the log's chains, and say whose record is past its time."""
    from steadfoot import serving
    from steadfoot.core.clock import system_clock
    from steadfoot.custody import nightly, service
    from steadfoot.wiring import settings_with

    settings, now = settings_with(None, None), system_clock()
    database = serving.open_existing(settings)
    done = nightly.run(database, settings.erasures(), now)
    with database.read() as session:
        due = service.due_everywhere(session, now)
    database.close()
    typer.echo(f"{done.erased} records erased, as was asked for.")
    for practice_id, found in due.items():
        for one in found:
            typer.echo(f"{practice_id}: {one.client_id} is due since {one.due_since.date()}; the practice decides.")
    for one_chain in done.verdicts:
        typer.echo(_say(one_chain))
    if any(one_chain.broken_at is not None for one_chain in done.verdicts):
        raise typer.Exit(1)
