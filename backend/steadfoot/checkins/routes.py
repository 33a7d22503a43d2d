"""HTTP for the phone's sync call and for what is kept aside."""

from typing import Annotated, Literal

from fastapi import APIRouter, Query, Request

from steadfoot.checkins import history, service, timeline
from steadfoot.checkins.lag import lag_of
from steadfoot.checkins.schemas import (
    History,
    RefusedEventList,
    RefusedEventOut,
    RetryOut,
    SyncBody,
    SyncOut,
    Timeline,
)
from steadfoot.core.database import ReadSession, WriteSession, after_commit
from steadfoot.core.limits import Limiter
from steadfoot.identity import service as identity
from steadfoot.identity.access import ByDevice, ByPractitioner, Now

router = APIRouter(prefix="/api/v1")
SYNC_CALLS_A_MINUTE = 600
_calls = Limiter(tries=SYNC_CALLS_A_MINUTE, window_s=60)


@router.post("/sync", operation_id="sync", tags=["phones"])
def post_sync(body: SyncBody, device: ByDevice, session: WriteSession, at: Now, request: Request) -> SyncOut:
    """Send events, get changes. Sending again changes nothing; what is acknowledged is on the disk."""
    _calls.check(device.device_id)
    state = request.app.state
    with state.metrics.sync_seconds.time():
        answer = service.sync(session, device, body, state.listeners, at)
    state.metrics.count_sync(len(body.events), len(answer.refused))
    state.metrics.count_lag(lag_of(body.events, at))
    after_commit(session, lambda: state.pulse.beat(device.practice_id, device.client_id))
    return answer


@router.get("/history", operation_id="readHistory", tags=["phones"])
def get_history(device: ByDevice, session: ReadSession, at: Now) -> History:
    """What all phones of this phone's client have said of its sessions, for a phone that is new."""
    _calls.check(device.device_id)
    return history.of_client(session, device, at)


@router.get("/clients/{client_id}/timeline", operation_id="readTimeline", tags=["check-ins"])
def get_timeline(
    client_id: str,
    access: ByPractitioner,
    session: ReadSession,
    cursor: Annotated[str | None, Query(pattern=r"^[A-Za-z0-9_-]{1,200}$")] = None,
    limit: Annotated[int, Query(ge=1, le=200)] = 50,
    order: Annotated[Literal["oldest", "newest"], Query(description="Which comes first")] = "oldest",
) -> Timeline:
    """What the client's phone has said, each entry once."""
    identity.client_of(session, access.practice_id, client_id)
    return timeline.page(session, access.practice_id, client_id, cursor, limit, newest_first=order == "newest")


@router.get("/clients/{client_id}/refused-events", operation_id="listRefusedEvents", tags=["check-ins"])
def get_refused_events(client_id: str, access: ByPractitioner, session: ReadSession) -> RefusedEventList:
    """What was received but could not be taken, whole, with its problem."""
    identity.client_of(session, access.practice_id, client_id)
    found = service.refused_of(session, access.practice_id, client_id)
    return RefusedEventList(items=[RefusedEventOut.model_validate(row, from_attributes=True) for row in found])


@router.post(
    "/clients/{client_id}/refused-events/{event_id}/retries",
    operation_id="retryRefusedEvent",
    tags=["check-ins"],
)
def post_retry(
    client_id: str, event_id: str, access: ByPractitioner, session: WriteSession, at: Now, request: Request
) -> RetryOut:
    """Try a kept entry again, after a mend."""
    identity.client_of(session, access.practice_id, client_id)
    listeners = request.app.state.listeners
    left = service.retry(session, access.practice_id, client_id, event_id, listeners, at)
    after_commit(session, lambda: request.app.state.pulse.beat(access.practice_id, client_id))
    return RetryOut(accepted=left is None, problem=left)
