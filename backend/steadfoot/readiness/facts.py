"""Gathers what the rules of readiness judge from: walks, pain, sessions, tests. Each with its check-in."""

import json
from collections.abc import Iterable
from datetime import date, timedelta
from typing import Any

from sqlmodel import Session

from steadfoot.assessment import service as assessment
from steadfoot.checkins import service as checkins
from steadfoot.identity import service as identity
from steadfoot.monitoring.person import moment_of
from steadfoot.rules.pain import Thresholds
from steadfoot.rules.readiness_facts import RECENT_DAYS, Known, RestPain, Walk
from steadfoot.rules.vocabulary import When

_AT_REST = frozenset({When.BEFORE, When.NEXT_MORNING})


def known_of(session: Session, client: Any, today: date) -> Known:
    """Answer all that is known of a client, as of their day."""
    practice_id, since = client.practice_id, today - timedelta(days=RECENT_DAYS)
    heard = moment_of(client.time_zone, identity.last_heard_at(session, practice_id, client.id), today)
    pain = checkins.pain(session, practice_id, since, client.id)
    done = checkins.rollups(session, practice_id, since, client.id)
    return Known(
        today=today,
        heard_on=heard.heard_on,
        person=assessment.person_on(client, today),
        thresholds=Thresholds.of(client.thresholds, client.usual_pain),
        walks=tuple(_walks(checkins.events_of_kinds(session, practice_id, client.id, ("walk_logged",)))),
        tests=tuple(assessment.taken(session, client)),
        rest_pains=tuple(RestPain(one.event_id, one.day, one.rating) for one in pain if one.felt in _AT_REST),
        active_days=tuple(one.last_day for one in done if one.finished or one.sets_done > 0),
    )


def _walks(events: Iterable[Any]) -> list[Walk]:
    """Answer the walks; of several entries about one planned walk the last one counts, as everywhere."""
    newest = {event.planned_id or event.id: event for event in events}
    return [_walk(event) for event in newest.values()]


def _walk(event: Any) -> Walk:
    body = json.loads(event.body)
    return Walk(
        event.id,
        event.local_day,
        body["distance_km"],
        body["ascent_m"],
        body["descent_m"],
        body["pack_kg"],
        body.get("effort"),
    )
