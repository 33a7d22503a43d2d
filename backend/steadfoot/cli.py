"""The command line: ``steadfoot``."""

import sys
from pathlib import Path
from typing import Annotated

import typer
from rich.console import Console
from rich.markup import escape

from steadfoot import calc, custodian

app = typer.Typer(help="Home programs for people who prepare for hiking.", no_args_is_help=True, add_completion=False)
practice_app = typer.Typer(help="The practice and its people.", no_args_is_help=True)
app.add_typer(practice_app, name="practice")
app.add_typer(calc.app, name="calc")
app.add_typer(custodian.audit_app, name="audit")
app.command("retention")(custodian.retention)
_out = Console(highlight=False, soft_wrap=True)
_err = Console(stderr=True, highlight=False, soft_wrap=True)

Port = Annotated[int | None, typer.Option(min=1, max=65535, help="Port to listen on; STEADFOOT_PORT, else 8000.")]
Host = Annotated[str | None, typer.Option(help="Address to listen on; STEADFOOT_HOST, else 127.0.0.1.")]


def _fail(error: Exception) -> typer.Exit:
    _err.print(f"[bold]Not done:[/bold] {error}")
    return typer.Exit(1)


@app.command()
def serve(host: Host = None, port: Port = None) -> None:
    """Serve the practice's pages and its clients' phones until stopped."""
    from steadfoot import serving
    from steadfoot.core.keyring import Keyring, KeyUnusable
    from steadfoot.migrations.upgrade import NewerSchema
    from steadfoot.wiring import settings_with

    settings = settings_with(host, port)
    try:
        serving.free_port(settings.host, settings.port)
        Keyring(settings.key()).load()
        database = serving.open_database(settings)
    except (serving.PortInUse, NewerSchema, KeyUnusable) as error:
        raise _fail(error) from error
    _out.print(f"Steadfoot serves at {settings.address()} (data in {settings.data_dir}). Stop it with Ctrl+C.")
    serving.serve(settings, database)


@app.command()
def demo(
    host: Host = None,
    port: Port = None,
    seed: Annotated[int, typer.Option(help="Another seed invents another eight weeks.")] = 7,
) -> None:
    """Invent a practice with 24 people and eight weeks of history, and serve it."""
    from steadfoot import serving
    from steadfoot.demo.run import NotADemo, run_demo
    from steadfoot.wiring import demo_settings

    try:
        run_demo(demo_settings(host, port), seed, _out)
    except (serving.PortInUse, NotADemo) as error:
        raise _fail(error) from error


@practice_app.command("create")
def create_practice(
    name: Annotated[str, typer.Argument(help="The practice's name, as clients read it.")],
    email: Annotated[str, typer.Option(help="Address the first practitioner signs in with.")],
    practitioner: Annotated[str, typer.Option(help="Their name, as clients read it.")] = "",
    time_zone: Annotated[str, typer.Option(help="IANA name, such as Europe/Vienna.")] = "UTC",
) -> None:
    """Found a practice with its first practitioner; asks for the password or reads it from standard input."""
    from steadfoot.core.problems import Problem
    from steadfoot.founding import NotValid, found_practice
    from steadfoot.wiring import settings_with

    settings, password = settings_with(None, None), _password()
    try:
        found_practice(settings, name, email, practitioner, time_zone, password)
    except (Problem, NotValid) as error:
        raise _fail(error) from error
    _out.print(f"{name} is founded (data in {settings.data_dir}). {email} can sign in where the server uses the same.")


Email = Annotated[str, typer.Argument(help="The address they sign in with.")]


@practice_app.command("set-password")
def set_password(email: Email) -> None:
    """Give someone a new password, asked for or read from standard input. They are signed out everywhere."""
    from steadfoot.core.problems import Problem
    from steadfoot.founding import NotValid
    from steadfoot.founding import set_password as given
    from steadfoot.wiring import settings_with

    password = _password()
    try:
        given(settings_with(None, None), email, password)
    except (Problem, NotValid) as error:
        raise _fail(error) from error
    _out.print(f"{email} has a new password and is signed out everywhere.")


@practice_app.command("reset-second-factor")
def reset_second_factor(email: Email) -> None:
    """Take away a second factor that someone lost: app, passkeys, recovery codes. They are signed out everywhere.

    Make sure first, in person, that it is them who ask: from now on the password alone lets in.
    """
    from steadfoot.core.problems import Problem
    from steadfoot.founding import NotValid
    from steadfoot.founding import reset_second_factor as reset
    from steadfoot.wiring import settings_with

    try:
        reset(settings_with(None, None), email)
    except (Problem, NotValid) as error:
        raise _fail(error) from error
    _out.print(f"{email} signs in with the password alone until they set up a second factor again.")


def _password() -> str:
    if sys.stdin.isatty():
        return str(typer.prompt("Password (12 characters or more)", hide_input=True, confirmation_prompt=True))
    return sys.stdin.readline().rstrip("\r\n")


@app.command()
def migrate() -> None:
    """Bring the database to this version's schema, and end: where the server itself may not change it."""
    from steadfoot import serving
    from steadfoot.migrations.upgrade import NewerSchema
    from steadfoot.wiring import settings_with

    try:
        serving.open_database(settings_with(None, None)).close()
    except NewerSchema as error:
        raise _fail(error) from error
    _out.print("The schema is this version's.")


@app.command()
def backup(
    file: Annotated[
        Path | None, typer.Argument(help="Where the copy goes; must not exist. Left out: into STEADFOOT_BACKUP_DIR.")
    ] = None,
    days: Annotated[int, typer.Option(min=1, help="Without FILE: how many days are kept, the newest of each.")] = 30,
    months: Annotated[int, typer.Option(min=0, help="Without FILE: how many months are kept beside them.")] = 12,
) -> None:
    """Copy the database beside the running server, whole and checked. Without FILE: also restored once, and rotated."""
    from steadfoot import backups, operations
    from steadfoot.core.clock import system_clock
    from steadfoot.wiring import settings_with

    settings = settings_with(None, None)
    try:
        if file is not None:
            _out.print(f"{file}: {operations.backup(settings, file):,} bytes, checked.")
            return
        made = backups.make(settings, system_clock, days, months)
    except operations.NotPossible as error:
        raise _fail(error) from error
    _out.print(f"{settings.backups() / made.file}: {made.size_bytes:,} bytes, restored once and counted.")


@app.command()
def restore(
    file: Annotated[Path, typer.Argument(help="A copy made by steadfoot backup, decrypted.")],
    replace: Annotated[bool, typer.Option("--replace", help="Do not ask before taking a database's place.")] = False,
) -> None:
    """Put a backup in the place of the database. Phones then send again what it lacks."""
    from steadfoot import operations
    from steadfoot.core.clock import system_clock
    from steadfoot.wiring import settings_with

    try:
        kept = operations.restore(
            settings_with(None, None), file, system_clock(), lambda there: replace or _agreed(there)
        )
    except operations.NotPossible as error:
        raise _fail(error) from error
    _out.print("Restored. Phones send again what the backup lacks; what only the practice wrote since is gone.")
    if kept:
        _out.print(f"What was there is kept as {kept}; delete it when all is well.")


@app.command()
def restored() -> None:
    """Say that the database was put back by other means, as PostgreSQL's own: phones then send again what it lacks."""
    from steadfoot import operations, serving
    from steadfoot.core.clock import system_clock
    from steadfoot.wiring import settings_with

    settings = settings_with(None, None)
    serving.insist_on_database(settings)
    operations.renew_epoch(settings, system_clock())
    _out.print("Phones send again what the database lacks, each at its next contact.")


def _agreed(there: Path) -> bool:
    """Ask a person; a script is never taken to have agreed."""
    return sys.stdin.isatty() and typer.confirm(f"{there} is there already. Put the backup in its place?")


@app.command()
def rebuild() -> None:
    """Make every derived table again from the events; pages show the same afterwards."""
    from steadfoot import operations, serving
    from steadfoot.wiring import settings_with

    database = serving.open_existing(settings_with(None, None))
    _out.print(f"Rebuilt for {operations.rebuild(database)} clients.")
    database.close()


def main() -> None:
    """Run the command line; what an operator can mend is told in a sentence, not in a traceback."""
    try:
        app()
    except Exception as error:
        from steadfoot.telling import sentence_for

        sentence = sentence_for(error)
        if sentence is None:
            raise
        _err.print(f"[bold]Not done:[/bold] {escape(sentence)}")
        sys.exit(1)


if __name__ == "__main__":
    main()
