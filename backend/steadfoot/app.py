"""Builds the app: the only place, with the command line, where parts are wired together."""

import asyncio
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager, suppress

from fastapi import APIRouter, FastAPI, Request
from sqlalchemy import text
from sqlmodel import Session
from starlette.middleware.gzip import GZipMiddleware

from steadfoot import __version__
from steadfoot.assessment import routes as assessment_routes
from steadfoot.audit import trail
from steadfoot.audit.writer import Writer
from steadfoot.checkins import routes as checkin_routes
from steadfoot.checkins.service import Listener, kept_aside, not_looked_at
from steadfoot.checkins.settling import Settling
from steadfoot.checkins.taking import CALLS_AT_ONCE, Taking
from steadfoot.core import pages, problems
from steadfoot.core.clock import Clock, system_clock
from steadfoot.core.database import Database, after_commit
from steadfoot.core.document import DescribedApp
from steadfoot.core.gathering import Gathering
from steadfoot.core.hosts import Hosts
from steadfoot.core.keyring import Keyring
from steadfoot.core.metrics import Metrics
from steadfoot.core.observed import Observed
from steadfoot.core.pulse import Pulse
from steadfoot.core.settings import Settings
from steadfoot.core.web import Edge
from steadfoot.custody import routes as custody_routes
from steadfoot.exercises import routes as exercise_routes
from steadfoot.exercises.gallery import Gallery
from steadfoot.exercises.studio import Studio
from steadfoot.identity import routes as identity_routes
from steadfoot.installation import gauges
from steadfoot.installation import routes as installation_routes
from steadfoot.installation.service import Installation
from steadfoot.intake import routes as intake_routes
from steadfoot.monitoring import routes as monitoring_routes
from steadfoot.monitoring.service import refresh_findings
from steadfoot.programs import routes as program_routes
from steadfoot.readiness import routes as readiness_routes
from steadfoot.seasons import routes as season_routes
from steadfoot.sheets import routes as sheet_routes
from steadfoot.trips import routes as trip_routes

_ROUTERS = (
    checkin_routes.phones,
    identity_routes.router,
    intake_routes.router,
    assessment_routes.router,
    exercise_routes.router,
    program_routes.router,
    checkin_routes.router,
    trip_routes.router,
    season_routes.router,
    monitoring_routes.router,
    readiness_routes.router,
    sheet_routes.router,
    installation_routes.router,
    custody_routes.router,
)
_QUEUES = {"kept_aside": kept_aside, "not_looked_at": not_looked_at}
"""What waits for somebody or something, as metrics and the status page name it."""


@asynccontextmanager
async def _life(app: FastAPI) -> AsyncIterator[None]:
    worker = asyncio.create_task(app.state.settling.run())
    yield
    worker.cancel()
    with suppress(asyncio.CancelledError):
        await worker
    app.state.pulse.close()
    app.state.gallery.close()
    app.state.studio.close()
    app.state.database.close()


def _on_client_changed(pulse: Pulse) -> Listener:
    """Answer what earlier steps call when something changed that later steps derive from."""

    def changed(session: Session, practice_id: str, client_id: str) -> None:
        refresh_findings(session, practice_id, client_id)
        after_commit(session, lambda: pulse.beat(practice_id, client_id))

    return changed


def _takes_in(app: FastAPI) -> None:
    """Set up what takes check-ins in, and what looks at them afterwards (decision 0011)."""
    database = app.state.database
    take = app.state.metrics.count_transaction(Taking(database, checkin_routes.calls).take)
    app.state.gathering = Gathering(take, database.write_turns, CALLS_AT_ONCE)
    app.state.settling = Settling(database, app.state.listeners, app.state.pulse.beat)


_health = APIRouter()
"""Knows no app: FastAPI keeps in mind what it is given to call, and the app with it."""


@_health.get("/healthz", operation_id="isAlive", tags=["operation"])
def healthz() -> dict[str, str]:
    """The process answers."""
    return {"status": "alive"}


@_health.get("/readyz", operation_id="isReady", tags=["operation"])
def readyz(request: Request) -> dict[str, str]:
    """The database answers too."""
    with request.app.state.database.read() as session:
        session.execute(text("SELECT 1"))
    return {"status": "ready"}


def create_app(
    settings: Settings | None = None, database: Database | None = None, clock: Clock = system_clock
) -> FastAPI:
    """Answer the app on a migrated database."""
    settings = settings or Settings()
    app = DescribedApp(
        title="Steadfoot",
        version=__version__,
        openapi_url="/openapi.json" if settings.openapi == "on" else None,
        docs_url=None,
        redoc_url=None,
        lifespan=_life,
    )
    app.state.settings = settings
    app.state.database = database or Database(settings.database())
    app.state.clock = clock
    app.state.keyring = Keyring(settings.key())
    app.state.pulse = Pulse()
    app.state.metrics = Metrics()
    app.state.gallery = Gallery(settings.figures())
    app.state.studio = Studio()
    app.state.installation = Installation(settings, app.state.database, clock, _QUEUES)
    app.state.metrics.watch(lambda: gauges.read(app.state.installation))
    app.state.listeners = (refresh_findings,)
    app.state.before_commit = trail.before_commit
    app.state.audit_writer = Writer(app.state.database)
    app.state.client_changed = _on_client_changed(app.state.pulse)
    _takes_in(app)
    problems.install(app)
    for router in _ROUTERS:
        app.include_router(router)
    app.include_router(_health)
    pages.install(app)
    # The default, 9, packs a tenth smaller and takes more than twice as long: a quarter of what a caseload costs.
    app.add_middleware(GZipMiddleware, minimum_size=1000, compresslevel=6)
    app.add_middleware(trail.Trail)
    hosts = Hosts.of(settings)
    app.add_middleware(Edge, takes_stream=trip_routes.takes_stream, keeps_nothing=pages.keeps_nothing, hosts=hosts)
    app.add_middleware(Observed, metrics=app.state.metrics)
    return app
