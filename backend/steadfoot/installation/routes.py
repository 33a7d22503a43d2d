"""HTTP for the installation's owner and for scrapers on the inside."""

from secrets import compare_digest

from fastapi import APIRouter, Request, Response

from steadfoot.core.database import ReadSession
from steadfoot.core.metrics import CONTENT_TYPE
from steadfoot.core.problems import NotFound
from steadfoot.identity.access import ByPractitioner, Now
from steadfoot.installation.replies import reply
from steadfoot.installation.schemas import InstallationOut

router = APIRouter()
ByOwner = ByPractitioner
"""Who may see how the installation stands: the one place that says so."""
_HERE = frozenset({"127.0.0.1", "::1"})
_FROM_A_PROXY = ("x-forwarded-for", "forwarded", "via")


@router.get("/api/v1/practice/status", operation_id="readInstallation", tags=["operation"])
def get_status(access: ByOwner, session: ReadSession, at: Now, request: Request) -> InstallationOut:
    """How the installation stands: database, disk, backups, phones, what waits, the address; and what to do."""
    installation = request.app.state.installation
    return reply(installation.standing(session, access.practice_id, at), installation.settings.address())


def _is_inside(request: Request) -> bool:
    """By token where one is set; else only from this machine, and not through a proxy on it."""
    token = request.app.state.settings.metrics_token.get_secret_value()
    if token:
        return compare_digest(request.headers.get("authorization", "").encode(), f"Bearer {token}".encode())
    came_through = any(name in request.headers for name in _FROM_A_PROXY)
    return not came_through and request.client is not None and request.client.host in _HERE


@router.get("/metrics", operation_id="readMetrics", tags=["operation"], response_class=Response)
def get_metrics(request: Request) -> Response:
    """Counts for an operator; to anybody else there is no such page."""
    if not _is_inside(request):
        raise NotFound("not-found", "Not found.")
    return Response(request.app.state.metrics.text(), media_type=CONTENT_TYPE)
