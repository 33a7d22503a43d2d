"""HTTP for practices, sign-in, clients and phones."""

from collections.abc import AsyncIterator
from typing import Annotated

from fastapi import APIRouter, Depends, Header, Request, Response
from fastapi.concurrency import run_in_threadpool
from fastapi.responses import StreamingResponse

from steadfoot.audit import service as audit
from steadfoot.core.database import ReadSession, WriteSession, after_commit
from steadfoot.core.limits import Limiter
from steadfoot.identity import account_routes, pairing, people_routes, service, sign_in_routes, store
from steadfoot.identity.access import ByDevice, ByPractitioner, Now, practitioner_of
from steadfoot.identity.cookies import COOKIE
from steadfoot.identity.schemas import (
    ClientBody,
    ClientList,
    ClientOut,
    ClientPatch,
    ConfirmationBody,
    DeviceList,
    DeviceOut,
    InvitationBody,
    InvitationOut,
    PairingBody,
    PairingOut,
    SuccessorOut,
    WaitingMark,
    WaitingPairing,
    WaitingPairings,
)
from steadfoot.identity.tables import Client, Device, Pairing

router = APIRouter(prefix="/api/v1")
for _part in (sign_in_routes.router, account_routes.router, people_routes.router):
    router.include_router(_part)
_PAIRING_TRIES = Limiter(tries=20, window_s=3600)
IfMatch = Annotated[str | None, Header(max_length=40)]


def _client_out(client: Client, response: Response | None = None) -> ClientOut:
    if response is not None:
        response.headers["ETag"] = f'"v{client.version}"'
    return ClientOut.model_validate(client, from_attributes=True)


def _device_out(device: Device, paired: Pairing | None) -> DeviceOut:
    waits = paired is not None and paired.confirmed_at is None and device.revoked_at is None
    return DeviceOut(
        id=device.id,
        client_id=device.client_id,
        label=device.label,
        paired_at=device.paired_at,
        revoked_at=device.revoked_at,
        last_heard_at=device.last_heard_at,
        acknowledged_through=device.acknowledged_through,
        waiting=WaitingMark(pairing_id=paired.id, check_number=paired.check_number) if paired and waits else None,
    )


@router.get("/clients", operation_id="listClients", tags=["clients"])
def get_clients(access: ByPractitioner, session: ReadSession) -> ClientList:
    """All clients of the practice, by name."""
    return ClientList(items=[_client_out(client) for client in service.clients_of(session, access.practice_id)])


@router.post("/clients", operation_id="createClient", tags=["clients"], status_code=201)
def post_client(body: ClientBody, access: ByPractitioner, session: WriteSession, at: Now) -> ClientOut:
    """Take on a client."""
    client = service.create_client(session, access, body, at)
    audit.about(session, client.id)
    return _client_out(client)


@router.get("/clients/{client_id}", operation_id="readClient", tags=["clients"])
def get_client(client_id: str, access: ByPractitioner, session: ReadSession, response: Response) -> ClientOut:
    """One client, with an ETag."""
    return _client_out(service.client_of(session, access.practice_id, client_id), response)


@router.patch("/clients/{client_id}", operation_id="updateClient", tags=["clients"])
def patch_client(
    client_id: str,
    body: ClientPatch,
    access: ByPractitioner,
    session: WriteSession,
    at: Now,
    response: Response,
    request: Request,
    if_match: IfMatch = None,
) -> ClientOut:
    """Change what is known of a client; If-Match guards a colleague's change."""
    client = service.client_of(session, access.practice_id, client_id)
    changed = service.update_client(session, client, body, if_match, at)
    request.app.state.client_changed(session, access.practice_id, client_id)
    return _client_out(changed, response)


@router.post("/clients/{client_id}/invitations", operation_id="inviteClient", tags=["phones"], status_code=201)
def post_invitation(
    client_id: str,
    body: InvitationBody,
    access: ByPractitioner,
    session: WriteSession,
    at: Now,
    request: Request,
) -> InvitationOut:
    """A code that pairs one phone, once."""
    client = service.client_of(session, access.practice_id, client_id)
    return pairing.invite(session, client, body.delivery, request.app.state.settings.address(), at)


@router.get("/clients/{client_id}/devices", operation_id="listDevices", tags=["phones"])
def get_devices(client_id: str, access: ByPractitioner, session: ReadSession) -> DeviceList:
    """A client's phones, newest first."""
    service.client_of(session, access.practice_id, client_id)
    found = pairing.devices(session, access.practice_id, client_id)
    return DeviceList(items=[_device_out(device, paired) for device, paired in found])


@router.post("/devices/{device_id}/revocations", operation_id="revokeDevice", tags=["phones"], status_code=201)
def post_revocation(device_id: str, access: ByPractitioner, session: WriteSession, at: Now) -> DeviceOut:
    """Stop hearing a phone; what it sent stays."""
    device = pairing.revoke(session, access.practice_id, device_id, at)
    return _device_out(device, store.pairing_of(session, access.practice_id, device.id))


def _guard_pairing(request: Request) -> None:
    _PAIRING_TRIES.check(request.client.host if request.client else "")


@router.post(
    "/pairings",
    operation_id="pairPhone",
    tags=["phones"],
    status_code=201,
    dependencies=[Depends(_guard_pairing)],
)
def post_pairing(body: PairingBody, session: WriteSession, at: Now, request: Request) -> PairingOut:
    """Turn a code into a phone's token, which is shown once."""
    paired = pairing.pair(session, body.code, body.label, at)
    _PAIRING_TRIES.forgive(request.client.host if request.client else "")
    practice_id, pulse = pairing.practice_of(session, paired), request.app.state.pulse
    after_commit(session, lambda: pulse.beat(practice_id, "pairing"))
    return paired


@router.get("/pairings", operation_id="listWaitingPairings", tags=["phones"])
def get_pairings(access: ByPractitioner, session: ReadSession) -> WaitingPairings:
    """Phones that wait until someone has compared their number."""
    found = store.waiting_pairings(session, access.practice_id)
    return WaitingPairings(
        items=[
            WaitingPairing(
                id=paired.id,
                client_id=client.id,
                client_name=client.display_name,
                check_number=paired.check_number,
                created_at=paired.created_at,
            )
            for paired, client in found
        ]
    )


@router.post("/pairings/{pairing_id}/confirmations", operation_id="confirmPairing", tags=["phones"], status_code=201)
def post_confirmation(
    pairing_id: str,
    access: ByPractitioner,
    session: WriteSession,
    at: Now,
    body: ConfirmationBody | None = None,
) -> DeviceOut:
    """Let in a phone whose number was compared."""
    number = body.check_number if body else None
    device = pairing.confirm(session, access.practice_id, pairing_id, number, access.practitioner_id, at)
    return _device_out(device, store.pairing_of(session, access.practice_id, device.id))


@router.post("/pairings/{pairing_id}/refusals", operation_id="refusePairing", tags=["phones"], status_code=201)
def post_refusal(pairing_id: str, access: ByPractitioner, session: WriteSession, at: Now) -> DeviceOut:
    """Turn a waiting phone away."""
    device = pairing.refuse(session, access.practice_id, pairing_id, at)
    return _device_out(device, store.pairing_of(session, access.practice_id, device.id))


@router.post("/devices/current/successors", operation_id="succeedDevice", tags=["phones"], status_code=201)
def post_successor(device: ByDevice, session: WriteSession, at: Now) -> SuccessorOut:
    """A number range of its own for a phone that finds its numbers used by a copy of itself."""
    fresh, token = pairing.succeed(session, device, at)
    return SuccessorOut(device_id=fresh.id, token=token)


@router.get("/live", operation_id="listen", tags=["live"], response_class=StreamingResponse)
async def get_live(request: Request, access: ByPractitioner) -> StreamingResponse:
    """Server-sent events: something changed, ask again. They carry ids only, and end with the session."""
    state, token = request.app.state, request.cookies.get(COOKIE)

    async def lines() -> AsyncIterator[str]:
        yield "retry: 3000\n\n"
        async for word in state.pulse.listen(access.practice_id):
            if not await run_in_threadpool(practitioner_of, state.database, token, state.clock(), seen=False):
                return
            if not word:
                yield ": still here\n\n"
            elif word == "pairing":
                yield "event: pairing\ndata: {}\n\n"
            else:
                yield f"event: changed\ndata: {word}\n\n"

    return StreamingResponse(lines(), media_type="text/event-stream")
