"""Recording results and ratings, taking slips back, and reading them for one client."""

from datetime import date, datetime
from typing import Any

from sqlmodel import Session

from steadfoot.assessment import replies, store
from steadfoot.assessment.schemas import (
    ClientTests,
    FunctionalScaleBody,
    RatingOut,
    ResultOut,
    TestBody,
    Withdrawn,
)
from steadfoot.assessment.store import Row
from steadfoot.assessment.tables import FunctionalScale, TestResult
from steadfoot.audit import service as audit
from steadfoot.core.clock import local_date
from steadfoot.core.ids import uuid7
from steadfoot.core.problems import Invalid, not_found
from steadfoot.core.texts import canonical
from steadfoot.identity import service as identity
from steadfoot.identity.access import PractitionerAccess
from steadfoot.rules.baseline import check
from steadfoot.rules.baseline_catalogue import TESTS, BaselineTest, TestCode
from steadfoot.rules.norms import TestSide
from steadfoot.rules.ranges import NotWhole, OutOfRange
from steadfoot.rules.readiness_facts import Taken

person_on = replies.person_on


def of_client(session: Session, practice_id: str, client_id: str) -> ClientTests:
    """Answer a client's results, read for who they are now, and their ratings.

    Raises:
        NotFound: the client is unknown, or another practice's.
    """
    client = identity.client_of(session, practice_id, client_id)
    names = identity.practitioner_names(session, practice_id)
    results = store.kept(session, TestResult, practice_id, client_id)
    ratings = store.kept(session, FunctionalScale, practice_id, client_id)
    return ClientTests(
        items=replies.items_of(results, client, names), functional_scale=replies.scale_of(ratings, names)
    )


def taken(session: Session, client: Any) -> list[Taken]:
    """Answer a client's results as the rules of readiness take them, oldest first."""
    rows = store.kept(session, TestResult, client.practice_id, client.id)
    return [
        Taken(
            row.id,
            TestCode(row.code),
            row.taken_on,
            None if row.side is None else TestSide(row.side),
            row.value,
            person_on(client, row.taken_on),
        )
        for row in rows
    ]


def record(session: Session, access: PractitionerAccess, client_id: str, body: TestBody, now: datetime) -> ResultOut:
    """Keep a result.

    Raises:
        NotFound: the client is unknown, or another practice's.
        Invalid: the value cannot be, the side is missing or one too many, or the day has not come yet.
    """
    client = identity.client_of(session, access.practice_id, client_id)
    test = TESTS[body.code]
    _check_side(test, body.side)
    _check_value(test, body.value)
    row = TestResult(
        id=uuid7(now),
        practice_id=access.practice_id,
        client_id=client_id,
        code=body.code.value,
        side=None if body.side is None else body.side.value,
        value=body.value,
        unit=test.unit,
        protocol=canonical(body.protocol),
        note=body.note,
        taken_on=_day(body.taken_on, local_date(now, client.time_zone)),
        taken_by=access.practitioner_id,
        recorded_at=now,
        withdrawn_at=None,
    )
    session.add(row)
    session.flush()
    return replies.result_of(row, client, identity.practitioner_names(session, access.practice_id))


def rate(
    session: Session, access: PractitionerAccess, client_id: str, body: FunctionalScaleBody, now: datetime
) -> RatingOut:
    """Keep a rating of what is hard.

    Raises:
        NotFound: the client is unknown, or another practice's.
        Invalid: an activity is named twice, or the day has not come yet.
    """
    client = identity.client_of(session, access.practice_id, client_id)
    names = [one.name for one in body.activities]
    if len(set(names)) < len(names):
        raise _invalid("activities", "named-twice", "Each activity is rated once.")
    row = FunctionalScale(
        id=uuid7(now),
        practice_id=access.practice_id,
        client_id=client_id,
        activities=canonical([one.model_dump() for one in body.activities]),
        taken_on=_day(body.taken_on, local_date(now, client.time_zone)),
        taken_by=access.practitioner_id,
        recorded_at=now,
        withdrawn_at=None,
    )
    session.add(row)
    session.flush()
    return replies.rating_of(row, identity.practitioner_names(session, access.practice_id))


def withdraw(session: Session, table: type[Row], practice_id: str, row_id: str, now: datetime) -> tuple[Withdrawn, str]:
    """Take a slip back, once; answer it with its client's id.

    Raises:
        NotFound: unknown, or another practice's.
    """
    row = store.row(session, table, practice_id, row_id)
    if row is None:
        raise not_found("result")
    audit.about(session, row.client_id)
    row.withdrawn_at = row.withdrawn_at or now
    session.add(row)
    session.flush()
    return Withdrawn(id=row.id, withdrawn_at=row.withdrawn_at), row.client_id


def _check_side(test: BaselineTest, side: TestSide | None) -> None:
    if test.sided and side is None:
        raise _invalid("side", "side-needed", "Say which side was tested.")
    if side is not None and not test.sided:
        raise _invalid("side", "no-sides", "This test has no sides: leave the side out.")


def _check_value(test: BaselineTest, value: float) -> None:
    try:
        check(test, value)
    except OutOfRange as error:
        detail = f"The result must be {error.low:g} to {error.high:g} {error.unit}."
        raise _invalid("value", "out-of-range", detail) from None
    except NotWhole as error:
        raise _invalid("value", "not-whole", f"{error.unit.capitalize()} are counted whole.") from None


def _day(day: date | None, today: date) -> date:
    if day is not None and day > today:
        raise _invalid("taken_on", "in-the-future", "The day has not come yet.")
    return day or today


def _invalid(field: str, code: str, detail: str) -> Invalid:
    return Invalid(code, detail, errors=[{"pointer": f"/body/{field}", "code": code, "detail": detail}])
