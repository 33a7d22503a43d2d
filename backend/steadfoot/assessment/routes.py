"""HTTP for baseline tests, re-tests and ratings of what is hard."""

from fastapi import APIRouter, Request

from steadfoot.assessment import replies, service
from steadfoot.assessment.schemas import (
    ClientTests,
    FunctionalScaleBody,
    RatingOut,
    ResultOut,
    TestBody,
    TestList,
    Withdrawn,
)
from steadfoot.assessment.tables import FunctionalScale, TestResult
from steadfoot.core.database import ReadSession, WriteSession
from steadfoot.identity.access import ByPractitioner, Now

router = APIRouter(prefix="/api/v1", tags=["assessment"])


@router.get("/tests", operation_id="listTests")
def get_tests(_access: ByPractitioner) -> TestList:
    """The baseline tests: protocol, cautions, possible range."""
    return replies.catalogue()


@router.get("/clients/{client_id}/tests", operation_id="readClientTests")
def get_client_tests(client_id: str, access: ByPractitioner, session: ReadSession) -> ClientTests:
    """A client's results beside norm, other side and the time before; and what is hard for them."""
    return service.of_client(session, access.practice_id, client_id)


@router.post("/clients/{client_id}/tests", operation_id="recordTest", status_code=201)
def post_test(
    client_id: str, body: TestBody, access: ByPractitioner, session: WriteSession, at: Now, request: Request
) -> ResultOut:
    """Keep a result, and read it."""
    result = service.record(session, access, client_id, body, at)
    request.app.state.client_changed(session, access.practice_id, client_id)
    return result


@router.post("/tests/{result_id}/withdrawals", operation_id="withdrawTest", status_code=201)
def post_test_withdrawal(
    result_id: str, access: ByPractitioner, session: WriteSession, at: Now, request: Request
) -> Withdrawn:
    """Take back a result that was a slip."""
    done, client_id = service.withdraw(session, TestResult, access.practice_id, result_id, at)
    request.app.state.client_changed(session, access.practice_id, client_id)
    return done


@router.post("/clients/{client_id}/functional-scales", operation_id="rateActivities", status_code=201)
def post_functional_scale(
    client_id: str, body: FunctionalScaleBody, access: ByPractitioner, session: WriteSession, at: Now, request: Request
) -> RatingOut:
    """Keep a rating of what is hard for the client."""
    rating = service.rate(session, access, client_id, body, at)
    request.app.state.client_changed(session, access.practice_id, client_id)
    return rating


@router.post("/functional-scales/{scale_id}/withdrawals", operation_id="withdrawRating", status_code=201)
def post_rating_withdrawal(
    scale_id: str, access: ByPractitioner, session: WriteSession, at: Now, request: Request
) -> Withdrawn:
    """Take back a rating that was a slip."""
    done, client_id = service.withdraw(session, FunctionalScale, access.practice_id, scale_id, at)
    request.app.state.client_changed(session, access.practice_id, client_id)
    return done
