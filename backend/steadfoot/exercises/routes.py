"""HTTP for the library."""

from collections.abc import Mapping
from typing import Annotated, Any

from fastapi import APIRouter, Header, Query, Request, Response
from starlette.concurrency import run_in_threadpool

from steadfoot.core.database import ReadSession
from steadfoot.core.texts import Code
from steadfoot.exercises import own_routes, service
from steadfoot.exercises.alternatives import alternatives
from steadfoot.exercises.own_drawings import ask_own, own_drawing
from steadfoot.exercises.schemas import AlternativesOut, DrawingsOut, Exercise, ExerciseList, Form, Quality
from steadfoot.exercises.shelf import is_own, library_of
from steadfoot.identity.access import ByEither
from steadfoot.rules.vocabulary import Region

router = APIRouter(prefix="/api/v1", tags=["exercises"])
router.include_router(own_routes.router)  # first: "own" and "preview" are no codes
IfNoneMatch = Annotated[str | None, Header(max_length=400, description="ETag that the caller holds.")]
_ETAG = {"ETag": {"description": "Changes with the texts.", "schema": {"type": "string"}}}
_RESPONSES: dict[int | str, dict[str, Any]] = {
    200: {"headers": _ETAG},
    304: {"description": "The caller's copy is up to date.", "headers": _ETAG},
}

_PRIVATE = {"Cache-Control": "private, no-cache"}
_DRAWING_FRESH_S = 3600
"""House: how long a browser may show a drawing without asking whether there is a newer one, s."""
_LIST = {"Cache-Control": "public, no-cache"}
_DRAWING = {
    "Cache-Control": f"public, max-age={_DRAWING_FRESH_S}",
    # Opened by itself a drawing is a page: it may use its own style sheet and nothing else.
    "Content-Security-Policy": "default-src 'none'; style-src 'unsafe-inline'; sandbox; frame-ancestors 'none'",
}


def _answer(
    body: bytes, if_none_match: str | None, media_type: str = "application/json", more: Mapping[str, str] = _PRIVATE
) -> Response:
    etag = service.etag_of(body)
    # Weak comparison: a proxy that packs the reply may have marked the tag as weak.
    held = [tag.strip().removeprefix("W/") for tag in (if_none_match or "").split(",")]
    headers = {"ETag": etag, **more}
    if etag in held or "*" in held:
        return Response(status_code=304, headers=headers)
    return Response(body, media_type=media_type, headers=headers)


@router.get("/exercises", operation_id="listExercises", response_model=ExerciseList, responses=_RESPONSES)
def get_exercises(practice_id: ByEither, session: ReadSession, if_none_match: IfNoneMatch = None) -> Response:
    """The whole library and the practice's own movements, each with its variants, easiest first."""
    return _answer(service.as_json(library_of(session, practice_id)), if_none_match)


@router.get("/exercises/{code}/alternatives", operation_id="listAlternatives")
def get_alternatives(
    code: str,
    practice_id: ByEither,
    session: ReadSession,
    variant: Annotated[str | None, Query(max_length=60, description="The prescribed one; none: the easiest")] = None,
    kit: Annotated[
        str | None,
        Query(max_length=400, description="Kit in the house, commas between; empty: none; not given: any kit"),
    ] = None,
    spare: Annotated[Region | None, Query(description="A region that must not be loaded")] = None,
    trains: Annotated[Quality | None, Query(description="What must be trained; none: as the movement")] = None,
) -> AlternativesOut:
    """Other movements that can stand in for this one, the most like it first, each with its reasons."""
    return alternatives(code, variant, kit, spare, trains, library_of(session, practice_id))


@router.get("/exercises/{code}", operation_id="readExercise", response_model=Exercise, responses=_RESPONSES)
def get_exercise(code: str, practice_id: ByEither, session: ReadSession, if_none_match: IfNoneMatch = None) -> Response:
    """One movement with its ladder of variants; doses in repetitions or seconds."""
    return _answer(service.exercise(code, library_of(session, practice_id)).model_dump_json().encode(), if_none_match)


_SVG: dict[int | str, dict[str, Any]] = {
    200: {"headers": _ETAG, "content": {"image/svg+xml": {"schema": {"type": "string"}}}},
    304: {"description": "The caller's copy is up to date.", "headers": _ETAG},
}


@router.get("/exercises/{code}/figure.svg", operation_id="drawExercise", response_class=Response, responses=_SVG)
async def get_figure(
    code: str,
    request: Request,
    variant: Annotated[Code, Query(description="Variant of the ladder.")],
    form: Annotated[Form, Query(description="Moving; still, for lists and reduced motion; or a strip for paper.")] = (
        Form.MOVING
    ),
    view: Annotated[str | None, Query(max_length=20, description="Side, front ...; else the first.")] = None,
    if_none_match: IfNoneMatch = None,
) -> Response:
    """The drawing of one variant; not found where there is none. Open to all: it holds nothing personal.

    A practice's own movement has a random key in the place of its code; who was told the key may see it.
    """
    gallery = request.app.state.gallery
    if is_own(code):
        found = await run_in_threadpool(own_drawing, request.app.state.database, code, variant, view)
        drawn = await ask_own(gallery, found, code, form, view)
    else:
        drawn = await gallery.ask(code, variant, form, view)
    return _answer(drawn, if_none_match, "image/svg+xml", _DRAWING)


@router.get("/drawings", operation_id="listDrawings", response_model=DrawingsOut, responses=_RESPONSES)
def get_drawings(request: Request, if_none_match: IfNoneMatch = None) -> Response:
    """Every variant that is drawn, with the version of its moving drawing. Open to all, as the drawings are."""
    listed: DrawingsOut = request.app.state.gallery.listed()
    return _answer(listed.model_dump_json().encode(), if_none_match, more=_LIST)
