"""Random but lawful histories of one client: what a phone could log in some weeks, corrections and undos included."""

from datetime import UTC, date, datetime, timedelta
from random import Random
from typing import Any

from steadfoot.core.ids import derived_uuid7, uuid7

DAY_ONE = date(2026, 5, 11)
"""A Monday, four weeks and some days before the tests' today."""
DAYS = 30
_ZONES = ("+02:00", "+02:00", "+02:00", "-07:00", "+00:00")
_REGIONS = (("knee", "left"), ("knee", "left"), ("hip", "right"), ("lower_back", "middle"))
_KINDS = (
    ["set_ticked"] * 8
    + ["set_unticked", "set_left_out", "set_left_out", "session_started", "session_finished", "session_finished"]
    + ["pain_reported", "pain_reported", "walk_logged", "variant_swapped", "note_written", "symptom_reported"]
    + ["screening_answered", "entry_withdrawn", "entry_withdrawn"]
)


def _planned(rng: Random) -> str:
    return f"{DAY_ONE + timedelta(days=rng.randrange(DAYS))}.{rng.choice((1, 1, 1, 2))}"


def _of_a_set(rng: Random) -> dict[str, Any]:
    return {"planned_id": _planned(rng), "prescription": rng.choice(("p1", "p2")), "round": rng.randint(1, 3)}


def _body(rng: Random, kind: str, earlier: list[dict[str, Any]]) -> dict[str, Any]:
    maybe_planned = {"planned_id": _planned(rng)} if rng.random() < 0.6 else {}
    if kind in ("set_ticked", "set_unticked"):
        return _of_a_set(rng)
    if kind == "set_left_out":
        return {**_of_a_set(rng), "reason": rng.choice(("pain", "too_hard", "no_time"))}
    if kind == "session_finished":
        return {"minutes": rng.randint(5, 60), "effort": rng.randint(0, 10), **maybe_planned}
    if kind == "walk_logged":
        climb = rng.randint(0, 900)
        return {
            "distance_km": rng.randint(1, 200) / 10,
            "ascent_m": climb,
            "descent_m": climb,
            "minutes": rng.randint(10, 400),
            "pack_kg": rng.randint(0, 12),
            **maybe_planned,
        }
    if kind == "pain_reported":
        region, side = rng.choice(_REGIONS)
        when = rng.choice(("during", "after", "next_morning"))
        return {"rating": rng.randint(0, 10), "region": region, "side": side, "when": when, **maybe_planned}
    return _plain_body(rng, kind, earlier) | (maybe_planned if kind != "entry_withdrawn" else {})


def _plain_body(rng: Random, kind: str, earlier: list[dict[str, Any]]) -> dict[str, Any]:
    if kind == "entry_withdrawn":
        unknown = "01977777-7777-7777-8777-777777777777"
        return {"event_id": rng.choice(earlier)["id"] if earlier else unknown}
    if kind == "variant_swapped":
        return {"prescription": "p1", "to_variant": rng.choice(("step-10", "step-15", "step-20"))}
    if kind == "screening_answered":
        names = ("regular_activity", "known_disease", "signs_or_symptoms")
        intensity = rng.choice(("light_to_moderate", "vigorous"))
        return {name: rng.random() < 0.5 for name in names} | {"intensity": intensity}
    if kind == "symptom_reported":
        return {"symptom": rng.choice(("chest_pain", "calf_swelling", "other"))}
    return {"text": f"line {rng.randrange(100)}"} if kind == "note_written" else {}


def history(rng: Random, count: int, phones: int = 1) -> list[list[dict[str, Any]]]:
    """Answer each phone's events in the order they were logged; some share a moment, some withdraw another's."""
    logs: list[list[dict[str, Any]]] = [[] for _ in range(phones)]
    earlier: list[dict[str, Any]] = []
    for number in range(count):
        log, kind = rng.choice(logs), rng.choice(_KINDS)
        at = datetime(2026, 5, 11, 6, tzinfo=UTC) + timedelta(minutes=rng.randrange(DAYS * 24) * 60)
        body = _body(rng, kind, earlier)
        if rng.random() < 0.2:
            body["day"] = str(DAY_ONE + timedelta(days=rng.randrange(DAYS)))
        if rng.random() < 0.5:
            body["program_version"] = rng.randint(1, 2)
        zone = rng.choice(_ZONES)
        hours = int(zone[:3])
        written = (at + timedelta(hours=hours)).replace(tzinfo=None).isoformat() + zone
        event_id = derived_uuid7(uuid7(at), str(number), str(rng.random()))
        event = {"id": event_id, "seq": len(log) + 1, "kind": kind, "recorded_at": written, "body": body}
        log.append(event)
        earlier.append(event)
    return logs


def shuffled_batches(
    rng: Random, logs: list[list[dict[str, Any]]], repeats: int = 10
) -> list[tuple[int, list[dict[str, Any]]]]:
    """Answer (phone, batch) pairs in an order as bad as it gets: split anywhere, shuffled, some events many times."""
    sent = [(phone, event) for phone, log in enumerate(logs) for event in log]
    sent += rng.choices(sent, k=repeats) if sent else []
    rng.shuffle(sent)
    batches: list[tuple[int, list[dict[str, Any]]]] = []
    while sent:
        size = rng.randint(1, 20)
        taken, sent = sent[:size], sent[size:]
        for phone in range(len(logs)):
            batch = [event for owner, event in taken if owner == phone]
            if batch:
                batches.append((phone, batch))
    return batches
