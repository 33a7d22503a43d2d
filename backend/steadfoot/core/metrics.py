"""Counts for an operator, in the text format that scrapers read. No label ever names a person or a practice."""

from collections.abc import Callable, Iterable
from datetime import timedelta
from typing import TypeVar

from prometheus_client import CollectorRegistry, Counter, Histogram, generate_latest
from prometheus_client.metrics_core import Metric
from prometheus_client.registry import Collector

T = TypeVar("T")
R = TypeVar("R")
CONTENT_TYPE = "text/plain; version=0.0.4; charset=utf-8"
_REQUEST_SECONDS = (0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 30)
_LAG_SECONDS = (10, 60, 600, 3600, 21600, 86400, 3 * 86400, 7 * 86400, 30 * 86400, 90 * 86400)

Reading = Callable[[], Iterable[Metric]]
"""Answers what is true at the moment of asking."""


class _Asked(Collector):
    """Reads when a scraper asks."""

    def __init__(self, reading: Reading) -> None:
        self._reading = reading

    def collect(self) -> Iterable[Metric]:
        return self._reading()

    def describe(self) -> Iterable[Metric]:
        return []  # without this the registry would read once just to learn the names


class Metrics:
    """The counters of one app."""

    def __init__(self) -> None:
        self._registry = CollectorRegistry()
        self.sync_calls = Counter("steadfoot_sync_calls", "Sync calls answered", registry=self._registry)
        self.events = Counter("steadfoot_events", "Events by what became of them", ["outcome"], registry=self._registry)
        self.sync_transactions = Counter(
            "steadfoot_sync_transactions", "Transactions that took sync calls in, many at once", registry=self._registry
        )
        self.sync_seconds = Histogram(
            "steadfoot_sync_seconds", "Time from a batch to its commit, waiting included", registry=self._registry
        )
        self._lag = Histogram(
            "steadfoot_sync_lag_seconds",
            "Age of the oldest event of a call when it is received: how long phones were away",
            buckets=_LAG_SECONDS,
            registry=self._registry,
        )
        self._requests = Histogram(
            "steadfoot_request_seconds",
            "Time to answer, by operation and kind of status",
            ["operation", "status"],
            buckets=_REQUEST_SECONDS,
            registry=self._registry,
        )

    def count_sync(self, events: int, refused: int, took_s: float) -> None:
        """Count one call, what became of its events, and its seconds; a repeat counts as taken."""
        self.sync_calls.inc()
        self.sync_seconds.observe(took_s)
        self.events.labels("taken").inc(events - refused)
        self.events.labels("refused").inc(refused)

    def count_lag(self, lag: timedelta | None) -> None:
        """Count how old the oldest event of a call was; a phone whose clock is ahead counts as at once."""
        if lag is not None:
            self._lag.observe(max(0.0, lag.total_seconds()))

    def count_request(self, operation: str, status: int, seconds: float) -> None:
        """Count one answer."""
        self._requests.labels(operation, f"{status // 100}xx").observe(seconds)

    def watch(self, reading: Reading) -> None:
        """Have something read whenever a scraper asks."""
        self._registry.register(_Asked(reading))

    def count_transaction(self, work: Callable[[T], R]) -> Callable[[T], R]:
        """Answer the same work, counted."""

        def counted(calls: T) -> R:
            self.sync_transactions.inc()
            return work(calls)

        return counted

    def text(self) -> bytes:
        """Answer all counts as text."""
        return generate_latest(self._registry)
