"""Every measurement that has a baseline, as one table of ratios.

Run as ``python -m tests.bench [--quick]`` with .venv/bin first on the path; the table "How fast, measured" in README.md
is its. Quick asks less often and copies less. It never fails on time: a busy machine is no fault.
"""

import re
import sys
from collections.abc import Iterator
from contextlib import redirect_stdout
from dataclasses import dataclass
from io import StringIO
from pathlib import Path
from statistics import median
from tempfile import TemporaryDirectory

from playwright.sync_api import sync_playwright

from tests.bench import caseload, ingest, test_phone_speed
from tests.bench.peer import theirs
from tests.bench.peer.measuring import compare, place
from tests.bench.peer.scenes import SCENES
from tests.bench.serving import practice_server

COPIES, QUICK_COPIES, PEER_ROUNDS, QUICK_PEER_ROUNDS = 100, 5, 5, 2
_RATES = re.compile(r"^(.+): ([\d,]+) events a second; raw database ([\d,]+); ratio ([\d.]+)", re.MULTILINE)


@dataclass(frozen=True)
class Row:
    """One line of the table."""

    what: str
    measured: str
    beside: str
    ratio: str


def _ingest() -> Iterator[Row]:
    """The lines of rates that its own command prints, in the order in which it prints them."""
    with redirect_stdout(StringIO()) as told:
        ingest.main()
    for what, rate, raw, ratio in _RATES.findall(told.getvalue()):
        yield Row(f"check-ins, {what}", f"{rate} a second", f"raw database: {raw}", ratio)


def _peer(rounds: int) -> Iterator[Row]:
    with place() as at:
        for scene in SCENES:
            found = compare(at, scene, [*theirs.TUNED, *theirs.FLUSHED], rounds)
            yield Row(
                f"1,000 waiting check-ins sent; {scene.name}",
                f"{found.mine.time:.0f} ms",
                f"replication peer: {found.best('time'):.0f}, disk flushed {found.best('time', flushed=True):.0f} ms",
                f"{found.ratio('time'):.1f}",
            )
    kilobytes = (found.mine.bytes / 1000, found.best("bytes") / 1000)
    mine, its = (f"{one:.0f} kB" for one in kilobytes)
    yield Row("bytes of that, both directions", mine, f"replication peer: {its}", f"{found.ratio('bytes'):.1f}")


def _caseload(copies: int) -> Iterator[Row]:
    found = caseload.measure(copies)
    for way, (alone, beside) in found.ms.items():
        what = f"caseload of {found.people}, {way}"
        yield Row(
            what, f"{beside:.1f} ms beside {copies} times as much", f"alone: {alone:.1f} ms", f"{beside / alone:.2f}"
        )


def _phone() -> Iterator[Row]:
    slower = f"{test_phone_speed.SLOWER_BY} times slower processor"
    with TemporaryDirectory(ignore_cleanup_errors=True) as name, sync_playwright() as driver:
        folder = Path(name)
        with practice_server(folder / "server") as server:
            taps, bare = test_phone_speed.taps_beside_bare_writes(server, driver, folder / "taps")
            starts = test_phone_speed.cold_starts(server, driver, folder / "cold", test_phone_speed.SLOWER_BY)
    (tap, tap95), (write, write95) = test_phone_speed.p50_p95(taps), test_phone_speed.p50_p95(bare)
    measured, beside = f"{tap:.0f} ms, p95 {tap95:.0f}", f"bare durable write: {write:.0f} ms, p95 {write95:.0f}"
    yield Row(f"tap to saved, {slower}", measured, beside, f"{tap / write:.1f}")
    goal = test_phone_speed.GOAL_START_MS
    start = median(starts)
    yield Row(f"cold start offline, {slower}", f"{start:.0f} ms", f"limit: {goal} ms", f"{start / goal:.2f}")


def _rows(*, quick: bool) -> Iterator[Row]:
    yield from _ingest()
    yield from _peer(QUICK_PEER_ROUNDS if quick else PEER_ROUNDS)
    yield from _caseload(QUICK_COPIES if quick else COPIES)
    yield from _phone()


def main() -> None:
    """Measure one after the other; print each line when it is known."""
    print("| what | measured | beside | ratio |\n| --- | --- | --- | --- |")
    for row in _rows(quick="--quick" in sys.argv):
        print(f"| {row.what} | {row.measured} | {row.beside} | {row.ratio} |", flush=True)


if __name__ == "__main__":
    main()
