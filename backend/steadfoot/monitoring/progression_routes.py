"""HTTP for suggestions on progress, for load, and for where our numbers come from."""

from typing import Any

from fastapi import APIRouter, Request

from steadfoot.core.database import ReadSession, WriteSession, after_commit
from steadfoot.identity.access import ByEither, ByPractitioner, Now
from steadfoot.monitoring import load, progression_decisions, progressions, references
from steadfoot.monitoring.progression_schemas import LoadOut, Progressed, ProgressionsBody, Sources, Suggestions

router = APIRouter()
_STALE: dict[int | str, dict[str, Any]] = {
    409: {"description": "A suggestion is not there any more, or a clearance is needed first."},
    412: {"description": "Another version was published meanwhile."},
}


@router.get("/clients/{client_id}/suggestions", operation_id="listSuggestions", tags=["progress"])
def get_suggestions(client_id: str, access: ByPractitioner, session: ReadSession, at: Now) -> Suggestions:
    """What the last sessions suggest for each prescription, with rule, evidence, source and what would change it."""
    return progressions.listed(session, access.practice_id, client_id, at)


@router.post(
    "/clients/{client_id}/progressions",
    operation_id="decideProgressions",
    tags=["progress"],
    status_code=201,
    responses=_STALE,
)
def post_progressions(
    client_id: str, body: ProgressionsBody, access: ByPractitioner, session: WriteSession, at: Now, request: Request
) -> Progressed:
    """Accept, edit or decline suggestions; all that is accepted becomes one new version."""
    decided = progression_decisions.decide(session, access, client_id, body, at)
    pulse = request.app.state.pulse
    after_commit(session, lambda: pulse.beat(access.practice_id, client_id))
    return decided


@router.get("/clients/{client_id}/load", operation_id="readLoad", tags=["monitoring"])
def get_load(client_id: str, access: ByPractitioner, session: ReadSession, at: Now) -> LoadOut:
    """Load by day and week with monotony, strain and averages, and what each of them cannot tell."""
    return load.client_load(session, access.practice_id, client_id, at)


@router.get("/sources", operation_id="listSources", tags=["monitoring"])
def get_sources(_practice_id: ByEither) -> Sources:
    """The works that the rules follow, and every number that changes advice with its source."""
    return references.sources()
