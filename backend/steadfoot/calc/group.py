"""The group of commands: every refusal leaves as a sentence on standard error, and exit code 2.

With ``--json`` the refusal is also one problem object (RFC 9457) on standard output.
"""

import json
from typing import Any

import typer
from typer.core import TyperGroup
from typer.exceptions import TyperException

from steadfoot.calc.refusals import problem

EXIT_REFUSED = 2


class CalcGroup(TyperGroup):
    """Runs a command and tells its refusals."""

    def invoke(self, ctx: Any) -> Any:
        """Run the command that the arguments name."""
        as_json = "--json" in ctx.args
        try:
            return super().invoke(ctx)
        except TyperException as error:
            # Typer tells it on standard error by itself and leaves with the code of a wrong call.
            if as_json:
                typer.echo(json.dumps(problem(error)))
            raise
        except ValueError as error:
            typer.echo(f"Not possible: {error}", err=True)
            if as_json:
                typer.echo(json.dumps(problem(error)))
            raise typer.Exit(EXIT_REFUSED) from error
