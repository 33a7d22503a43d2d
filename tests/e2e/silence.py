"""A phone that was silent for a long time: its log is written by the app's own outbox, at the clock of each day."""

import json
import subprocess
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

from playwright.sync_api import Page

_FRONTEND = Path(__file__).parents[2] / "frontend"
_BUNDLE = """
import { build } from 'vite';
const made = await build({ configFile: false, logLevel: 'error', build: { write: false, minify: false,
  lib: { entry: 'src/outbox/index.ts', formats: ['es'] } } });
process.stdout.write(made[0].output[0].code);
"""
OUTBOX = "/app/assets/outbox-of-the-test.js"
_LOAD = "async (path) => { window.outbox = await import(path); await window.outbox.start(); }"
_RECORD = """async (days) => {
  const clock = Date.now;
  try {
    for (const [now, entries] of days) {
      Date.now = () => now;
      await window.outbox.recordAll(entries);
    }
  } finally {
    Date.now = clock;
  }
  return window.outbox.savedCount.value;
}"""


def outbox_bundle() -> bytes:
    """Answer the app's outbox as one script, built from the same source as the app."""
    words = ["node", "--input-type=module", "--eval", _BUNDLE]
    return subprocess.run(words, cwd=_FRONTEND, capture_output=True, check=True, timeout=60).stdout


@dataclass(frozen=True)
class Silence:
    """So many days without a signal, so many entries in all, up to the day before today."""

    days: int
    entries: int
    today: date
    zone: ZoneInfo

    def _of_day(self, number: int) -> list[dict[str, Any]]:
        day = self.today - timedelta(days=self.days - number)
        about = {"planned_id": f"{day}.1", "program_version": 1}
        share = self.entries * (number + 1) // self.days - self.entries * number // self.days
        sets = [
            {"kind": "set_ticked", "body": {**about, "prescription": f"p{n % 5 + 1}", "round": n // 5 + 1}}
            for n in range(share - 3)
        ]
        pain = {"rating": 2, "region": "knee", "side": "left", "when": "after"}
        return [
            {"kind": "session_started", "body": about},
            *sets,
            {"kind": "pain_reported", "body": {**about, **pain}},
            {"kind": "session_finished", "body": {**about, "minutes": 40, "effort": 5}},
        ]

    def log(self, page: Page) -> int:
        """Write it all on the phone, each day at its own clock; answer how many entries the phone has then."""
        morning = [
            datetime.combine(self.today - timedelta(days=self.days - number), time(7), self.zone)
            for number in range(self.days)
        ]
        given = [[int(at.timestamp() * 1000), self._of_day(number)] for number, at in enumerate(morning)]
        return int(page.evaluate(_RECORD, json.loads(json.dumps(given))))


def load_outbox(page: Page) -> None:
    """Load the outbox beside the app, from the address that `OUTBOX` is served at."""
    page.evaluate(_LOAD, OUTBOX)
