"""HTTP for the phone's sync call and for what is kept aside."""

from collections.abc import Callable, Coroutine
from typing import Annotated, Any, Literal

from fastapi import APIRouter, Depends, Query, Request, Response
from fastapi.exceptions import RequestValidationError
from starlette.concurrency import run_in_threadpool

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
from steadfoot.checkins.taking import SYNC_CALLS_A_MINUTE, Call, Taken
from steadfoot.core.clock import monotonic_s
from steadfoot.core.database import ReadSession, WriteSession, after_commit
from steadfoot.core.limits import Limiter
from steadfoot.core.problems import Problem
from steadfoot.core.strict import StrictRoute
from steadfoot.identity import service as identity
from steadfoot.identity.access import ByDevice, ByPractitioner, ByToken, DeviceAccess, Now, phone_of

router = APIRouter(prefix="/api/v1")
Handler = Callable[[Request], Coroutine[Any, Any, Response]]
calls = Limiter(tries=SYNC_CALLS_A_MINUTE, window_s=60)


class _KnownFirst(StrictRoute):
    """Tells nobody what is wrong with a body before it is known who asks. A sound body is looked at together with the
    phone, in the transaction that stores it."""

    def get_route_handler(self) -> Handler:
        """Answer the handler, which asks for the phone where the body is none."""
        handle = super().get_route_handler()

        async def known_first(request: Request) -> Response:
            try:
                return await handle(request)
            except (RequestValidationError, Problem):
                await run_in_threadpool(phone_of, request)
                raise

        return known_first


phones = APIRouter(prefix="/api/v1", route_class=_KnownFirst)
"""The one call that every phone makes all the time: the app asks here first, since looking for a route takes time."""


@phones.post("/sync", operation_id="sync", tags=["phones"], response_model=SyncOut)
async def post_sync(body: SyncBody, token: ByToken, at: Now, request: Request) -> Response:
    """Send events, get changes. Sending again changes nothing; what is acknowledged is on the disk."""
    state, begun = request.app.state, monotonic_s()
    taken: Taken = await state.gathering.do(Call.of(token, body, at))
    request.state.practice_id = taken.practice_id  # the log names its pseudonym
    state.metrics.count_sync(len(body.events), len(taken.answer.refused), monotonic_s() - begun)
    state.metrics.count_lag(lag_of(body.events, at))
    if taken.due:
        state.settling.noted(taken.practice_id, taken.client_id)
    else:
        state.pulse.beat(taken.practice_id, taken.client_id)
    return Response(taken.answer.model_dump_json(), media_type="application/json")


async def _up_to_date(device: ByDevice, request: Request) -> DeviceAccess:
    await request.app.state.settling.up_to_date(device.practice_id, device.client_id)
    return device


@router.get("/history", operation_id="readHistory", tags=["phones"])
def get_history(device: Annotated[DeviceAccess, Depends(_up_to_date)], session: ReadSession, at: Now) -> History:
    """What all phones of this phone's client have said of its sessions, for a phone that is new."""
    calls.check(device.device_id)
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
