"""Counts for an operator, in the text format that scrapers read. No label ever names a person."""

from collections.abc import Callable
from typing import TypeVar

from prometheus_client import CollectorRegistry, Counter, Histogram, generate_latest

T = TypeVar("T")
R = TypeVar("R")
CONTENT_TYPE = "text/plain; version=0.0.4; charset=utf-8"


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

    def count_sync(self, events: int, refused: int, took_s: float) -> None:
        """Count one call, what became of its events, and its seconds; a repeat counts as taken."""
        self.sync_calls.inc()
        self.sync_seconds.observe(took_s)
        self.events.labels("taken").inc(events - refused)
        self.events.labels("refused").inc(refused)

    def count_transaction(self, work: Callable[[T], R]) -> Callable[[T], R]:
        """Answer the same work, counted."""

        def counted(calls: T) -> R:
            self.sync_transactions.inc()
            return work(calls)

        return counted

    def text(self) -> bytes:
        """Answer all counts as text."""
        return generate_latest(self._registry)
