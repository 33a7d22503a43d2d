"""The big counts, in one command: ``python -m tests.sync.nightly``; by default 100,000 histories and 2,000 kills.

All of it runs at the lowest priority and prints its seeds; each part stops at the first broken promise and prints the
steps that broke it.
"""

import argparse
import os
import subprocess
import sys
import threading
import time
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor, as_completed
from pathlib import Path

ROOT = Path(__file__).parents[2]
HISTORIES_A_RUN, KILLS_A_RUN = 1_000, 60
LOWEST_PRIORITY = 19
_PATIENT = ("-o", "faulthandler_timeout=3600")
"""A thousand histories are one test, and at the lowest priority a long one."""


def _pytest(test: str, **environment: object) -> bool:
    """Run one test in a process of its own; answer whether it passed."""
    words = [sys.executable, "-m", "pytest", "-q", "-p", "no:cacheprovider", "--tb=short", *_PATIENT, test]
    more = {f"STEADFOOT_TEST_{name.upper()}": str(value) for name, value in environment.items()}
    found = subprocess.run(words, cwd=ROOT, env={**os.environ, **more}, capture_output=True, text=True, check=False)
    if found.returncode:
        print(found.stdout[-20_000:], found.stderr[-2_000:], sep="\n")
    return found.returncode == 0


def _parts(total: int, at_once: int) -> Iterator[int]:
    while total > 0:
        yield min(total, at_once)
        total -= at_once


def _repeat(what: str, test: str, total: int, at_once: int, first_seed: int, jobs: int) -> bool:
    """Run a test with one seed after the other until its count is reached; answer whether nothing broke."""
    done, start, broken = 0, time.monotonic(), threading.Event()

    def part(seed: int, size: int) -> tuple[int, int]:
        """Answer the seed and how many held with it: none once anything broke."""
        return seed, size if not broken.is_set() and _pytest(test, seed=seed, **{what: size}) else 0

    with ThreadPoolExecutor(jobs) as pool:
        parts = [pool.submit(part, *one) for one in enumerate(_parts(total, at_once), first_seed)]
        for future in as_completed(parts):
            seed, held = future.result()
            if not held and not broken.is_set():
                broken.set()
                print(f"{what}: broken at seed {seed}", flush=True)
            done += held
            if held:
                print(f"{what}: {done} of {total}, seed {seed} held, {time.monotonic() - start:.0f} s", flush=True)
    return not broken.is_set()


def main() -> int:
    """Answer 0 when every promise held."""
    ask = argparse.ArgumentParser(description=__doc__)
    ask.add_argument("--histories", type=int, default=100_000)
    ask.add_argument("--kills", type=int, default=2_000)
    ask.add_argument("--seed", type=int, default=1, help="The first seed; each run of 1000 takes the next.")
    ask.add_argument("--jobs", type=int, default=os.cpu_count() or 1, help="How many runs at once.")
    given = ask.parse_args()
    os.nice(LOWEST_PRIORITY)
    more = (given.seed, given.jobs)
    held = [
        _pytest("tests/sync/test_seeded.py"),
        _repeat("histories", "tests/sync/test_model.py", given.histories, HISTORIES_A_RUN, *more),
        _repeat("kills", "tests/sync/test_kills.py", given.kills, KILLS_A_RUN, *more),
    ]
    print("seeded bugs caught: " + ("all" if held[0] else "not all"))
    print("lost, doubled or leaked: " + ("none" if all(held[1:]) else "see above"))
    return 0 if all(held) else 1


if __name__ == "__main__":
    sys.exit(main())
