"""HTTP for trips: what is kept, what a file says, what it asks."""

import re
from tempfile import SpooledTemporaryFile
from typing import Annotated, Any, BinaryIO, Final, cast

from fastapi import APIRouter, Depends, Header, Query, Request, Response
from starlette.concurrency import run_in_threadpool

from steadfoot.core.database import ReadSession, Turns, WriteSession
from steadfoot.core.limits import Limiter
from steadfoot.core.problems import not_found
from steadfoot.core.texts import JSON_INT
from steadfoot.identity import service as identity
from steadfoot.identity.access import ByPractitioner, Now
from steadfoot.rules.dose import DISTANCE_MAX_KM
from steadfoot.rules.route import ASCENT_THRESHOLD_M
from steadfoot.trips import reading, replies, service
from steadfoot.trips.gpx import LEGS_MAX
from steadfoot.trips.schemas import DemandOut, ReadingOut, TripBody, TripOut

router = APIRouter(prefix="/api/v1", tags=["trips"])
IfMatch = Annotated[str | None, Header(max_length=40, description='ETag that the change was made from; "0": none yet.')]
Days = Annotated[int | None, Query(ge=1, le=LEGS_MAX, description="Cut into days of even moving time"), JSON_INT]
CutKm = Annotated[float, Query(gt=0, le=DISTANCE_MAX_KM * LEGS_MAX)]
_STALE: dict[int | str, dict[str, Any]] = {412: {"description": "Someone else changed it first."}}
_LARGE: dict[int | str, dict[str, Any]] = {413: {"description": "More bytes than are taken."}}
_IN_MEMORY_BYTES: Final = 1_000_000
_READINGS: Final = Limiter(tries=120, window_s=3600)
_turns: Final = Turns(2)
_UPLOAD: Final = re.compile(r"/api/v1/clients/[^/]+/trip/readings")
_BODY: Final = {"requestBody": {"required": True, "content": {"application/gpx+xml": {"schema": {"type": "string"}}}}}


def takes_stream(method: str, path: str) -> bool:
    """Answer whether a route here reads the body by itself, piece by piece and with its own limit."""
    return method == "POST" and _UPLOAD.fullmatch(path) is not None


def _known_client(request: Request, client_id: str, access: ByPractitioner) -> None:
    """Refuse another practice's client before the file is taken; no session is held while it comes."""
    with request.app.state.database.read() as session:
        identity.client_of(session, access.practice_id, client_id)
    _READINGS.check(access.practitioner_id)


@router.post(
    "/clients/{client_id}/trip/readings",
    operation_id="readRoute",
    dependencies=[Depends(_known_client)],
    responses=_LARGE,
    openapi_extra=_BODY,
)
async def post_reading(
    request: Request,
    days: Days = None,
    cut_km: Annotated[list[CutKm], Query(max_length=LEGS_MAX, description="Else: where days end")] = [],  # noqa: B006
) -> ReadingOut:
    """The legs that a GPX file says, gzipped or not; nothing is saved. Without a split, one for each track or route."""
    with SpooledTemporaryFile(max_size=_IN_MEMORY_BYTES) as spooled:
        file = cast(BinaryIO, spooled)
        await _take(request, file)
        async with _turns.here():
            return await run_in_threadpool(_reading, file, days, cut_km)


async def _take(request: Request, file: BinaryIO) -> None:
    """Write the body to a file as it comes; a stated length over the limit is refused before any of it."""
    stated = request.headers.get("content-length", "0")
    if stated.isdecimal() and int(stated) > reading.UPLOAD_MAX_BYTES:
        raise reading.too_large()
    size = 0
    async for piece in request.stream():
        size += len(piece)
        if size > reading.UPLOAD_MAX_BYTES:
            raise reading.too_large()
        file.write(piece)


def _reading(file: BinaryIO, days: int | None, cuts_km: list[float]) -> ReadingOut:
    try:
        legs, remarks = reading.legs_of(file, days, cuts_km)
    except ValueError as error:
        raise reading.problem_of(error) from error
    return ReadingOut(legs=legs, ascent_threshold_m=ASCENT_THRESHOLD_M, remarks=list(remarks))


@router.get("/clients/{client_id}/trip", operation_id="readTrip")
def get_trip(client_id: str, access: ByPractitioner, session: ReadSession, response: Response) -> TripOut:
    """The trip as it is kept, with an ETag; version 0 and no legs where nothing is."""
    answer, response.headers["ETag"] = service.kept(session, access.practice_id, client_id)
    return answer


@router.put("/clients/{client_id}/trip", operation_id="saveTrip", responses=_STALE)
def put_trip(
    client_id: str,
    body: TripBody,
    access: ByPractitioner,
    session: WriteSession,
    at: Now,
    request: Request,
    response: Response,
    if_match: IfMatch = None,
) -> TripOut:
    """Keep the whole trip in place of the one before; the phone hears of its days at its next contact."""
    service.save(session, access, client_id, body, if_match, at)
    request.app.state.client_changed(session, access.practice_id, client_id)
    answer, response.headers["ETag"] = service.kept(session, access.practice_id, client_id)
    return answer


@router.delete("/clients/{client_id}/trip", operation_id="removeTrip", status_code=204, responses=_STALE)
def delete_trip(
    client_id: str,
    access: ByPractitioner,
    session: WriteSession,
    at: Now,
    request: Request,
    if_match: IfMatch = None,
) -> None:
    """Take the trip away, here and on the phone; the program and its goal stay."""
    service.remove(session, access, client_id, if_match, at)
    request.app.state.client_changed(session, access.practice_id, client_id)


@router.get("/clients/{client_id}/trip/demand", operation_id="readDemand")
def get_demand(client_id: str, access: ByPractitioner, session: ReadSession) -> DemandOut:
    """What the trip asks of this client, leg by leg and day by day, with the band of the models."""
    found = service.demand_of(session, access.practice_id, client_id)
    if found is None:
        raise not_found("trip")
    return replies.demand_of(found)
