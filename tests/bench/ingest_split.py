"""Where the time of taking in goes: the parts of it without HTTP, and how soon a page has it."""

import json
from collections import Counter
from collections.abc import Callable
from pathlib import Path
from statistics import median
from time import perf_counter
from typing import Any

import pytest
from sqlalchemy import RootTransaction

from steadfoot.checkins import taking
from steadfoot.checkins.schemas import SyncBody
from steadfoot.checkins.taking import Call, Taken, Taking
from steadfoot.core.bulk import Bulk
from steadfoot.core.clock import system_clock
from steadfoot.core.database import Database
from steadfoot.core.ids import digest_of
from steadfoot.core.limits import Limiter
from tests.bench.wire import Wire
from tests.builders import PASSWORD, Phone

_ENDLESS = 10**9
_KNOWN_CURSOR = 3
_PARTS = ((taking, "read", "validate"), (Bulk, "insert", "insert"), (RootTransaction, "commit", "commit"))
Part = Callable[..., Any]


def show(file: Path, phones: list[Phone], logs: list[list[dict[str, Any]]], at_once: int) -> None:
    """Print the milliseconds of each part of a transaction that takes in one call of each phone."""
    database, spent = Database(f"sqlite:///{file}"), Counter[str]()
    rounds = len(logs[0]) // at_once
    with pytest.MonkeyPatch.context() as patch:
        for owner, name, part in _PARTS:
            patch.setattr(owner, name, _timed(getattr(owner, name), part, spent))
        take = Taking(database, Limiter(_ENDLESS, 1)).take
        for turn in range(rounds):
            batches = [log[turn * at_once : (turn + 1) * at_once] for log in logs]
            _one_round(take, phones, batches, spent)
    database.close()
    spent["look up, rest"] = spent.pop("all") - spent["insert"] - spent["commit"]
    spent["parse"] -= spent["validate"]
    parts = ", ".join(f"{part} {1000 * seconds / rounds:.2f}" for part, seconds in spent.most_common())
    print(f"{len(phones)} x {at_once} events in one transaction, milliseconds without HTTP: {parts}")


def _one_round(take: Part, phones: list[Phone], batches: list[list[dict[str, Any]]], spent: Counter[str]) -> None:
    bodies = [json.dumps({"cursor": _KNOWN_CURSOR, "events": batch}) for batch in batches]
    now, tokens = system_clock(), [digest_of(phone.token) for phone in phones]

    def calls_of() -> list[Call]:
        parsed = [SyncBody.model_validate(json.loads(body)) for body in bodies]
        return [Call.of(token, body, now) for token, body in zip(tokens, parsed, strict=True)]

    calls: list[Call] = _timed(calls_of, "parse", spent)()
    taken: list[Taken] = _timed(take, "all", spent)(calls)
    _timed(lambda: [one.answer.model_dump_json() for one in taken], "answer", spent)()


def _timed(work: Part, part: str, spent: Counter[str]) -> Part:
    def timed(*args: Any) -> Any:
        begun = perf_counter()
        try:
            return work(*args)
        finally:
            spent[part] += perf_counter() - begun

    return timed


def soon(address: str, phone: Phone, events: list[dict[str, Any]]) -> tuple[float, float]:
    """Answer two medians in milliseconds after a single event was acknowledged: until the caseload that is asked for at
    once is there, and until open pages hear that the worker has looked."""
    with Wire(address) as wire:
        signed = {"email": "maren@thornwater.example", "password": PASSWORD}
        cookie = (wire.ask("POST", "/api/v1/sign-in", signed)[1] or "").partition(";")[0]
    asked, told = [], []
    with (
        Wire(address, phone.token) as sender,
        Wire(address, cookie=cookie) as page,
        Wire(address, cookie=cookie) as left,
    ):
        live = left.lines("/api/v1/live")
        for first, second in zip(events[::2], events[1::2], strict=True):
            sender.sync([first])
            begun = perf_counter()
            page.get("/api/v1/caseload")
            asked.append(1000 * (perf_counter() - begun))
            _next_beat(live)
            sender.sync([second])
            begun = perf_counter()
            _next_beat(live)
            told.append(1000 * (perf_counter() - begun))
    return median(asked), median(told)


def _next_beat(live: Any) -> None:
    while not live.readline().startswith(b"data"):
        pass
