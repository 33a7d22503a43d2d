"""``steadfoot calc``: each rule of the trade by itself, without a server or a database."""

import typer

from steadfoot.calc import baseline, demand, dose, load, pain, route, screening, season
from steadfoot.calc.group import CalcGroup

app = typer.Typer(
    cls=CalcGroup,
    help="Rules of the trade by themselves: no server, no database. --json prints one object.",
    no_args_is_help=True,
)
app.command("test")(baseline.baseline)
app.command("pain")(pain.pain)
app.command("load")(load.load)
app.command("screening")(screening.screening)
app.command("dose")(dose.dose)
app.command("route")(route.route)
app.command("demand")(demand.demand)
app.command("season")(season.season)
