"""The cases that the phone's own fold is held to, run through the server's: the two must say the same."""

import json
from datetime import UTC, date, datetime
from itertools import groupby
from pathlib import Path
from random import Random
from typing import Any

import pytest

from steadfoot.checkins.fold import Fact, fold_session, session_key, withdrawn_ids

CASES = json.loads((Path(__file__).parents[1] / "vectors" / "fold.json").read_text(encoding="utf-8"))["cases"]


def _fact(raw: dict[str, Any]) -> Fact:
    written = datetime.fromisoformat(raw["recorded_at"])
    body = raw["body"]
    day = date.fromisoformat(body["day"]) if body.get("day") else written.date()
    return Fact(raw["id"], raw["seq"], raw["kind"], written.astimezone(UTC), day, body.get("planned_id"), body)


def _folded(events: list[dict[str, Any]]) -> list[dict[str, Any]]:
    facts = list({raw["id"]: _fact(raw) for raw in events}.values())
    withdrawn = withdrawn_ids(facts)
    keyed = [(session_key(fact.kind, fact.planned_id, fact.local_day), fact) for fact in facts]
    sessions = sorted(((key, fact) for key, fact in keyed if key is not None), key=lambda pair: pair[0])
    folds = [
        fold_session(key, [fact for _, fact in group], withdrawn)
        for key, group in groupby(sessions, key=lambda pair: pair[0])
    ]
    return [_shown(fold.row()) for fold in folds if fold is not None]


def _shown(row: dict[str, Any]) -> dict[str, Any]:
    """A row in the shape of the vectors, which know JSON and no columns."""
    plain = ("planned_id", "program_version", "minutes", "effort", "finished")
    walk = None if row["walk"] is None else json.loads(row["walk"])
    texts = {"left_out": row["left_out"], "swaps": row["swaps"], "sets_done": row["sets"]}
    return (
        {name: row[name] for name in plain} | {name: json.loads(text) for name, text in texts.items()} | {"walk": walk}
    )


@pytest.mark.parametrize("case", CASES, ids=[case["name"] for case in CASES])
def test_the_server_folds_as_the_phone_does_in_any_order_and_with_repeats(case: dict[str, Any]) -> None:
    assert _folded(case["events"]) == case["expected"]
    for seed in range(10):
        rng, events = Random(seed), case["events"]
        mixed = rng.sample(events, len(events)) + rng.choices(events, k=3 if events else 0)
        assert _folded(mixed) == case["expected"]
