"""HTTP for the library."""

from typing import Annotated, Any

from fastapi import APIRouter, Header, Query, Response

from steadfoot.exercises import service
from steadfoot.exercises.alternatives import alternatives
from steadfoot.exercises.schemas import AlternativesOut, Exercise, ExerciseList, Quality
from steadfoot.identity.access import ByEither
from steadfoot.rules.vocabulary import Region

router = APIRouter(prefix="/api/v1", tags=["exercises"])
IfNoneMatch = Annotated[str | None, Header(max_length=400, description="ETag that the caller holds.")]
_ETAG = {"ETag": {"description": "Changes with the texts.", "schema": {"type": "string"}}}
_RESPONSES: dict[int | str, dict[str, Any]] = {
    200: {"headers": _ETAG},
    304: {"description": "The caller's copy is up to date.", "headers": _ETAG},
}


def _answer(body: bytes, if_none_match: str | None) -> Response:
    etag = service.etag_of(body)
    # Weak comparison: a proxy that packs the reply may have marked the tag as weak.
    held = [tag.strip().removeprefix("W/") for tag in (if_none_match or "").split(",")]
    headers = {"ETag": etag, "Cache-Control": "private, no-cache"}
    if etag in held or "*" in held:
        return Response(status_code=304, headers=headers)
    return Response(body, media_type="application/json", headers=headers)


@router.get("/exercises", operation_id="listExercises", response_model=ExerciseList, responses=_RESPONSES)
def get_exercises(_practice_id: ByEither, if_none_match: IfNoneMatch = None) -> Response:
    """The whole library: each movement with its variants, easiest first; doses in repetitions or seconds."""
    return _answer(service.LIBRARY_JSON, if_none_match)


@router.get("/exercises/{code}/alternatives", operation_id="listAlternatives")
def get_alternatives(
    code: str,
    _practice_id: ByEither,
    variant: Annotated[str | None, Query(max_length=60, description="The prescribed one; none: the easiest")] = None,
    kit: Annotated[
        str | None,
        Query(max_length=400, description="Kit in the house, commas between; empty: none; not given: any kit"),
    ] = None,
    spare: Annotated[Region | None, Query(description="A region that must not be loaded")] = None,
    trains: Annotated[Quality | None, Query(description="What must be trained; none: as the movement")] = None,
) -> AlternativesOut:
    """Other movements that can stand in for this one, the most like it first, each with its reasons."""
    return alternatives(code, variant, kit, spare, trains)


@router.get("/exercises/{code}", operation_id="readExercise", response_model=Exercise, responses=_RESPONSES)
def get_exercise(code: str, _practice_id: ByEither, if_none_match: IfNoneMatch = None) -> Response:
    """One movement with its ladder of variants; doses in repetitions or seconds."""
    return _answer(service.exercise(code).model_dump_json().encode(), if_none_match)
