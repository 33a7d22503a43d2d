"""What every answer must keep, and the counts of a run."""

from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field
from itertools import chain

import httpx
import schemathesis
from hypothesis import HealthCheck, Phase, given, seed, settings
from schemathesis.core.failures import FailureGroup
from schemathesis.schemas import APIOperation

from tests.made_up.asking import HOST, Ask, Made
from tests.made_up.sweeping import sweep
from tests.made_up.world import NOBODY, PHONE, PRACTITIONER, World, may

WHO = (PRACTITIONER, PHONE, NOBODY)
_ENDLESS = "listen"
BEYOND = {_ENDLESS: "its answer has no end, so nobody who may ask it is tried"}
"""What need not be done, and why."""
_LEAKS = ("Traceback (most recent", 'File "/', "site-packages", "sqlalchemy", "pydantic", "sqlite3", "psycopg")


@dataclass
class Run:
    """What came of a run: how often each status came, and every fault with the request that showed it."""

    statuses: dict[tuple[str, str], Counter[int]] = field(default_factory=dict)
    faults: list[str] = field(default_factory=list)

    def answers(self) -> int:
        """Answer how many answers there were."""
        return sum(found.total() for found in self.statuses.values())

    def line(self, name: str, who: str) -> str:
        """Answer how one operation answered one asker."""
        found = self.statuses[name, who]
        done = sum(times for status, times in found.items() if status < 300)
        return f"{name:28} {who:13} {found.total():5} asked {done:5} done  {dict(sorted(found.items()))}"

    def never_done(self) -> list[str]:
        """Answer the operations that were only ever refused: of what they do, nothing was tried."""
        done = {name for (name, _), found in self.statuses.items() if any(status < 300 for status in found)}
        return sorted({name for name, _ in self.statuses} - done - BEYOND.keys())


def _faults(ask: Ask, allowed: bool, made: Made, answer: httpx.Response) -> Iterator[str]:
    error = ask.world.error  # also of an answer that broke off after it had begun well
    if answer.status_code >= 500 or error is not None:
        yield f"{answer.status_code}: {type(error).__name__}: {str(error)[:300]}"
    if answer.status_code == 429:
        yield "429: a limit on tries that the run does not lift; what is behind it is not tried"
    if not allowed and answer.is_success:
        yield f"{answer.status_code} although not allowed"
    if ask.operation.path.startswith("/api/") and "Cache-Control" not in answer.headers:
        yield "says nothing about being kept"
    if "json" in answer.headers.get("Content-Type", ""):
        yield from (f"tells of the machine: {leak}" for leak in _LEAKS if leak in answer.text)
    if not made.moved:
        yield from _unlike_the_document(ask.operation, answer)


def _unlike_the_document(operation: APIOperation, answer: httpx.Response) -> Iterator[str]:
    answer.request = httpx.Request("GET", HOST)  # what was asked may be what no ordinary client would send
    try:
        operation.validate_response(answer)
    except (FailureGroup, AssertionError) as failure:
        for part in getattr(failure, "exceptions", (failure,)):
            yield str(part).replace("\n", " ")[:300]


def try_out(
    world: World,
    examples: int,
    with_seed: int,
    only: str = "",
    tell: Callable[[str], None] = lambda _: None,
    *,
    swept: bool = False,
) -> Run:
    """Ask every operation in order and so many times made up, as each asker: who may not ask gets a quarter of that.

    ``tell`` hears at once how that went. ``swept``: the first who may ask also asks all that is not left to chance.
    """
    document = schemathesis.openapi.from_dict(world.app.openapi())
    run = Run()
    for found in document.get_all_operations():
        operation = found.ok()
        ask = Ask(world, operation, str(operation.definition.raw["operationId"]))
        for who in WHO:
            if only in ask.name and not (ask.name == _ENDLESS and may(who, ask.name)):
                count = examples if may(who, ask.name) else max(1, examples // 4)
                before = len(run.faults)
                by_rote = sweep(ask) if swept and who == next(one for one in WHO if may(one, ask.name)) else ()
                _try(ask, who, count, with_seed, run, chain([ask.in_order()], by_rote))
                tell("\n".join([run.line(ask.name, who), *run.faults[before:]]))
    return run


def _try(ask: Ask, who: str, count: int, with_seed: int, run: Run, by_rote: Iterable[Made]) -> None:
    seen = run.statuses.setdefault((ask.name, who), Counter())
    proof = ask.world.headers(who)
    quiet = {"database": None, "deadline": None, "suppress_health_check": list(HealthCheck)}

    def once(made: Made) -> None:
        answer = ask.world.ask(made.by(proof))
        seen[answer.status_code] += 1
        found = _faults(ask, may(who, ask.name), made, answer)
        run.faults.extend(f"{ask.name} as {who}: {fault}\n    {made}" for fault in found)

    @seed(with_seed)
    @settings(max_examples=count, phases=[Phase.generate], **quiet)
    @given(ask.requests())
    def made_up(made: Made) -> None:
        once(made)

    for made in by_rote:
        once(made)
    made_up()
