"""The command ``steadfoot demo``: a throw-away practice, made anew at each start, served until stopped."""

import json
import shutil
from datetime import datetime, timedelta
from pathlib import Path
from random import Random
from typing import Any

from rich.console import Console
from rich.progress import Progress

from steadfoot import serving
from steadfoot.core.clock import system_clock
from steadfoot.core.database import Database
from steadfoot.core.settings import Settings
from steadfoot.demo.generate import PASSWORD, Invented, invent
from steadfoot.demo.people import EMAIL, PEOPLE
from steadfoot.identity import service as identity
from steadfoot.identity.pairing import invite
from steadfoot.identity.schemas import Delivery

NOTE = "demo.json"
_PAIRING_CLIENT = "Jonna Stroud"
_LINK_LIFETIME = timedelta(hours=12)


class NotADemo(Exception):
    """The data folder holds something that the demo did not make."""


def run_demo(settings: Settings, seed: int, out: Console) -> None:
    """Make the practice, write and print how to get in, and serve.

    Raises:
        PortInUse: something else listens there.
        NotADemo: the data folder is not the demo's to clear.
    """
    serving.free_port(settings.host, settings.port)
    _clear(settings.data_dir)
    database = serving.open_database(settings)
    now = system_clock()
    with Progress(console=out, transient=True) as progress:
        task = progress.add_task("Inventing 24 people and eight weeks", total=len(PEOPLE))
        invented = invent(database, now, Random(seed), lambda _: progress.advance(task))
    note = _note(settings, database, invented, now)
    (settings.data_dir / NOTE).write_text(json.dumps(note, indent=1) + "\n", encoding="utf-8")
    _tell(out, settings, note)
    serving.serve(settings, database)


def _clear(folder: Path) -> None:
    """Empty the folder if an earlier demo made it; never touch anything else."""
    if not folder.exists() or not any(folder.iterdir()):
        return
    if not (folder / NOTE).is_file():
        raise NotADemo(f"{folder} holds something else. Choose an empty folder in STEADFOOT_DATA_DIR for the demo.")
    shutil.rmtree(folder)


def _note(settings: Settings, database: Database, invented: Invented, now: datetime) -> dict[str, Any]:
    with database.write() as session:
        client = identity.client_of(session, invented.access.practice_id, invented.client_ids[_PAIRING_CLIENT])
        invitation = invite(session, client, Delivery.IN_PERSON, settings.address(), now, _LINK_LIFETIME)
    return {
        "address": settings.address(),
        "sign_in": {"email": EMAIL, "password": PASSWORD},
        "pairing_link": invitation.url,
        "pairing_code": invitation.code,
        "pairing_client": {"id": client.id, "display_name": client.display_name},
    }


def _tell(out: Console, settings: Settings, note: dict[str, Any]) -> None:
    out.print("\n[bold]Thornwater Physical Therapy[/bold], an invented practice, is ready.\n")
    out.print(f"  Practitioner   {settings.practice_address()}/desk/")
    out.print(f"  Sign in with   {note['sign_in']['email']}   password: {note['sign_in']['password']}")
    out.print(f"  Phone          {note['pairing_link']}")
    out.print(f"                 pairs once, as {note['pairing_client']['display_name']}; try it at phone width")
    out.print(f"  Kept in        {settings.data_dir / NOTE}\n")
    out.print("The people are invented and thrown away at the next start. Stop with Ctrl+C.")
