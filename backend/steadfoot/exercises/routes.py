"""HTTP for the library."""

from typing import Annotated, Any

from fastapi import APIRouter, Header, Query, Response

from steadfoot.core.texts import Code
from steadfoot.exercises import drawings, service
from steadfoot.exercises.schemas import Exercise, ExerciseList, Form
from steadfoot.identity.access import ByEither

router = APIRouter(prefix="/api/v1", tags=["exercises"])
IfNoneMatch = Annotated[str | None, Header(max_length=400, description="ETag that the caller holds.")]
_ETAG = {"ETag": {"description": "Changes with the texts.", "schema": {"type": "string"}}}
_RESPONSES: dict[int | str, dict[str, Any]] = {
    200: {"headers": _ETAG},
    304: {"description": "The caller's copy is up to date.", "headers": _ETAG},
}


def _answer(body: bytes, if_none_match: str | None, media_type: str = "application/json") -> Response:
    etag = service.etag_of(body)
    # Weak comparison: a proxy that packs the reply may have marked the tag as weak.
    held = [tag.strip().removeprefix("W/") for tag in (if_none_match or "").split(",")]
    headers = {"ETag": etag, "Cache-Control": "private, no-cache"}
    if etag in held or "*" in held:
        return Response(status_code=304, headers=headers)
    return Response(body, media_type=media_type, headers=headers)


@router.get("/exercises", operation_id="listExercises", response_model=ExerciseList, responses=_RESPONSES)
def get_exercises(_practice_id: ByEither, if_none_match: IfNoneMatch = None) -> Response:
    """The whole library: each movement with its variants, easiest first; doses in repetitions or seconds."""
    return _answer(service.LIBRARY_JSON, if_none_match)


@router.get("/exercises/{code}", operation_id="readExercise", response_model=Exercise, responses=_RESPONSES)
def get_exercise(code: str, _practice_id: ByEither, if_none_match: IfNoneMatch = None) -> Response:
    """One movement with its ladder of variants; doses in repetitions or seconds."""
    return _answer(service.exercise(code).model_dump_json().encode(), if_none_match)


_SVG: dict[int | str, dict[str, Any]] = {
    200: {"headers": _ETAG, "content": {"image/svg+xml": {"schema": {"type": "string"}}}},
    304: {"description": "The caller's copy is up to date.", "headers": _ETAG},
}


@router.get("/exercises/{code}/figure.svg", operation_id="drawExercise", response_class=Response, responses=_SVG)
def get_figure(
    code: str,
    _practice_id: ByEither,
    variant: Annotated[Code, Query(description="Variant of the ladder.")],
    form: Annotated[Form, Query(description="Moving; still, for lists and reduced motion; or a strip for paper.")] = (
        Form.MOVING
    ),
    view: Annotated[str | None, Query(max_length=20, description="Side, front ...; else the first.")] = None,
    if_none_match: IfNoneMatch = None,
) -> Response:
    """The drawing of one variant; not found where there is none yet."""
    return _answer(drawings.drawing(code, variant, form, view), if_none_match, "image/svg+xml")
