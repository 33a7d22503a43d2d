"""HTTP for printed sheets."""

import re
import unicodedata
from typing import Annotated, Any

from fastapi import APIRouter, Depends, Query, Request, Response

from steadfoot.core.database import ReadSession
from steadfoot.core.texts import Code
from steadfoot.exercises.own_drawings import strips
from steadfoot.identity import pairing
from steadfoot.identity import service as identity
from steadfoot.identity.access import ByPractitioner, Now
from steadfoot.identity.schemas import Delivery, InvitationOut
from steadfoot.sheets import service
from steadfoot.sheets.layout import Language, Paper, Style
from steadfoot.sheets.schemas import ClassSheetBody

router = APIRouter(prefix="/api/v1", tags=["sheets"])
_PDF: dict[int | str, dict[str, Any]] = {200: {"content": {"application/pdf": {}}, "description": "The sheet."}}
_NAME_MAX_LETTERS = 60


class Pdf(Response):
    """A PDF to open or keep; never in a cache, as it is about a person."""

    media_type = "application/pdf"

    def __init__(self, printed: service.Printed, prefix: str) -> None:
        name = "-".join(filter(None, (prefix, _plain(printed.name))))
        disposition = f'inline; filename="{name}.pdf"'
        super().__init__(printed.pdf, headers={"Content-Disposition": disposition, "Cache-Control": "no-store"})


def _plain(name: str) -> str:
    """Answer a name in letters that every file system and header takes: "Jörg Ås" is "jorg-as"; may be empty."""
    letters = unicodedata.normalize("NFKD", name).encode("ascii", "ignore").decode().lower()
    return re.sub(r"[^a-z0-9]+", "-", letters)[:_NAME_MAX_LETTERS].strip("-")


def _style(
    paper: Annotated[Paper, Query(description="A4 or US Letter.")] = Paper.A4,
    large: Annotated[bool, Query(description="Large print.")] = False,
    language: Annotated[Language, Query(description="Of the sheet's own words.")] = Language.EN,
) -> Style:
    return Style(paper, large, language)


AsStyle = Annotated[Style, Depends(_style)]
Only = Annotated[Code | None, Query(alias="session", description="Key of one session; all of them if left out.")]


def _invitation(client_id: str, access: ByPractitioner, at: Now, request: Request) -> InvitationOut:
    """Write the invitation in a turn of its own: printing takes longer than other writers should wait."""
    with request.app.state.database.write() as session:
        service.current_program(session, access.practice_id, client_id)  # no secret for a sheet that cannot be
        client = identity.client_of(session, access.practice_id, client_id)
        return pairing.invite(session, client, Delivery.LINK, request.app.state.settings.address(), at)


@router.get(
    "/clients/{client_id}/programs/current/sheet.pdf",
    operation_id="printSheet",
    response_class=Response,
    responses=_PDF,
)
def get_sheet(
    client_id: str,
    access: ByPractitioner,
    session: ReadSession,
    at: Now,
    request: Request,
    style: AsStyle,
    only: Only = None,
) -> Response:
    """The current program on paper; its QR code opens the app and holds no secret."""
    address, strip_of = request.app.state.settings.address(), strips(request.app.state.gallery, session)
    printed = service.client_sheet(session, access, client_id, style, only, address, None, at, strip_of)
    return Pdf(printed, "home-program")


@router.post(
    "/clients/{client_id}/programs/current/sheet.pdf",
    operation_id="printSheetWithInvitation",
    response_class=Response,
    responses=_PDF,
)
def post_sheet(
    client_id: str,
    access: ByPractitioner,
    session: ReadSession,
    at: Now,
    request: Request,
    style: AsStyle,
    invitation: Annotated[InvitationOut, Depends(_invitation)],
    only: Only = None,
) -> Response:
    """The same sheet with a new invitation: its QR code pairs one phone, once, within 72 hours."""
    address, strip_of = request.app.state.settings.address(), strips(request.app.state.gallery, session)
    printed = service.client_sheet(session, access, client_id, style, only, address, invitation, at, strip_of)
    return Pdf(printed, "home-program")


@router.post("/class-sheets", operation_id="printClassSheet", response_class=Response, responses=_PDF)
def post_class_sheet(
    body: ClassSheetBody, access: ByPractitioner, session: ReadSession, at: Now, request: Request
) -> Response:
    """Movements on paper for a group class or a public talk, with no person's data; nothing is kept."""
    strip_of = strips(request.app.state.gallery, session)
    return Pdf(service.class_sheet(session, access, body, at, strip_of), "class")
