"""Ten thousand seasons asked for at random: no rule broken, pins kept, and how long a plan takes.

A plan is timed with the garbage collector off, as timeit does: the requests that once took seconds each held one full
collection of what ten thousand examples of this trial had piled up, and none of it was the planner's.

Run as ``python -m tests.bench.season_trial``; it prints what it counted and ends with 1 if a rule was broken.
"""

import gc
import sys
from statistics import quantiles
from time import perf_counter

from hypothesis import HealthCheck, Phase, given, seed, settings

from steadfoot.rules.season import plan
from tests.rules.season_requests import broken, request, seasons

ASKED = 10_000
LIMIT_MS = 200


def main():
    """Ask, plan, check and print."""
    took_ms, refused, rules = [], {}, {}

    @seed(7)
    @settings(
        max_examples=ASKED,
        deadline=None,
        database=None,
        phases=[Phase.generate],
        suppress_health_check=list(HealthCheck),
    )
    @given(seasons())
    def ask(parts):
        gc.disable()
        began = perf_counter()
        asked, why = request(parts)
        season = plan(asked) if asked else None
        took_ms.append((perf_counter() - began) * 1000)
        gc.enable()
        if why:
            refused[why.name] = refused.get(why.name, 0) + 1
        else:
            for name in broken(asked, season):
                rules[name] = rules.get(name, 0) + 1

    ask()
    p95 = quantiles(took_ms, n=20)[-1]
    print(f"{len(took_ms)} asked, {sum(refused.values())} refused by name {refused}, rules broken: {rules or 'none'}")
    print(f"planned in {p95:.1f} ms at the 95th percentile, {max(took_ms):.1f} ms at most; the limit is {LIMIT_MS} ms")
    return 1 if rules or p95 > LIMIT_MS else 0


if __name__ == "__main__":
    sys.exit(main())
