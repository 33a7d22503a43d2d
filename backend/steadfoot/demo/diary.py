"""What an invented person's phone writes, day by day, from their program and their habits."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from random import Random
from typing import Any
from zoneinfo import ZoneInfo

from steadfoot.core.ids import uuid7
from steadfoot.demo.habits import Habit, Pain
from steadfoot.programs.content import Cardio, Circuit, Prescription, Rest, Walk
from steadfoot.programs.service import Planned

_LATELY = timedelta(days=14)
_SET_SECONDS = 75
_CARDIO_MINUTES = 30
_EXTRA_WEEKS = 3
_HIGHEST = 10


@dataclass(frozen=True, slots=True)
class Entry:
    """One event as the phone will send it, without its number."""

    at: datetime
    kind: str
    body: dict[str, Any]

    def event(self, seq: int) -> dict[str, Any]:
        """Answer the event with its number."""
        return {
            "id": uuid7(self.at),
            "seq": seq,
            "kind": self.kind,
            "recorded_at": self.at.isoformat(timespec="milliseconds"),
            "body": self.body,
        }


class Diary:
    """Writes one person's entries. All chance comes from the generator it is given."""

    def __init__(self, habit: Habit, first_day: date, today: date, zone: ZoneInfo, chance: Random) -> None:
        self._habit = habit
        self._first = first_day
        self._today = today
        self._zone = zone
        self._chance = chance

    def entries(self, planned: Sequence[Planned]) -> list[Entry]:
        """Answer everything the phone wrote, in order of time."""
        found = [entry for session in planned for entry in self._session(session)]
        found += list(self._extras())
        found += list(self._notes())
        found += list(self._symptom())
        return sorted(found, key=lambda entry: entry.at)

    def _at(self, day: date, hour: int, minute: int = 0) -> datetime:
        return datetime.combine(day, time(hour, minute), self._zone)

    def _week(self, day: date) -> int:
        return (day - self._first).days // 7

    def _lately(self, day: date) -> bool:
        return self._today - day < _LATELY

    def _is_kept(self, day: date) -> bool:
        pause = self._habit.pause
        if pause and pause[0] <= self._week(day) <= pause[1]:
            return False
        lately = self._habit.keeps_lately
        return self._chance.random() < (lately if lately is not None and self._lately(day) else self._habit.keeps)

    def _day_done(self, planned: Planned) -> date:
        if planned.fixed_day or self._chance.random() >= self._habit.moves:
            return planned.day
        return min(planned.day + timedelta(days=self._chance.randint(1, 2)), planned.window_to)

    def _session(self, planned: Planned) -> Iterator[Entry]:
        if isinstance(planned.session, Rest) or not self._is_kept(planned.day):
            return
        day = self._day_done(planned)
        if day >= self._today:
            return
        start = self._at(day, self._chance.choice((7, 12, 17, 18)), self._chance.randint(0, 50))
        yield from self._work(planned, start)
        yield from self._pains(planned, day, start)

    def _effort(self, planned: Planned) -> int:
        expected = int(getattr(planned.session, "expected_effort", 0))
        lately = self._habit.effort_lately
        shift = lately if lately is not None and self._lately(planned.day) else self._habit.effort_shift
        return max(
            0, min(_HIGHEST, expected + shift + self._chance.choice((-1, 0, 0, 0, 0, 1) if not lately else (0,)))
        )

    def _work(self, planned: Planned, start: datetime) -> Iterator[Entry]:
        named = {"planned_id": planned.planned_id, "program_version": planned.version}
        yield Entry(start, "session_started", dict(named))
        session = planned.session
        if isinstance(session, Circuit):
            yield from self._circuit(planned, session, start, named)
        elif isinstance(session, Walk):
            yield self._walk(planned, session, start, named)
        elif isinstance(session, Cardio):
            minutes = session.expected_minutes or _CARDIO_MINUTES
            body = named | {"minutes": minutes, "effort": self._effort(planned)}
            yield Entry(start + timedelta(minutes=minutes), "session_finished", body)

    def _circuit(self, planned: Planned, circuit: Circuit, start: datetime, named: dict[str, Any]) -> Iterator[Entry]:
        at = start
        for turn in range(1, circuit.rounds + 1):
            for one in circuit.prescriptions:
                at += timedelta(seconds=_SET_SECONDS + self._chance.randint(-15, 25))
                body = named | {"prescription": one.key, "round": turn}
                if self._chance.random() < self._habit.sets_share:
                    yield Entry(at, "set_ticked", body | {"variant": one.variant} | self._amount(one, planned.day))
                else:
                    yield Entry(at, "set_left_out", body | {"reason": self._chance.choice(("no_time", "too_hard"))})
        minutes = max(1, round((at - start).total_seconds() / 60))
        yield Entry(
            at + timedelta(minutes=1), "session_finished", named | {"minutes": minutes, "effort": self._effort(planned)}
        )

    def _amount(self, one: Prescription, day: date) -> dict[str, int]:
        over = self._habit.over_goal.get(one.exercise)
        if over is None or not self._lately(day):
            return {}
        return {"hold_s": one.hold_s + over} if one.hold_s else {"reps": (one.reps_high or 0) + over}

    def _walk(self, planned: Planned, walk: Walk, start: datetime, named: dict[str, Any]) -> Entry:
        pace = self._chance.uniform(0.95, 1.1)
        minutes = round(walk.distance_km * 14 * pace + walk.ascent_m / 10)
        body = named | {
            "distance_km": round(walk.distance_km * self._chance.uniform(0.9, 1.1), 1),
            "ascent_m": walk.ascent_m,
            "descent_m": walk.descent_m,
            "minutes": minutes,
            "pack_kg": walk.pack_kg,
            "effort": self._effort(planned),
        }
        return Entry(start + timedelta(minutes=minutes), "walk_logged", body)

    def _pains(self, planned: Planned, day: date, start: datetime) -> Iterator[Entry]:
        for pain in self._habit.pains:
            prescriptions = planned.session.prescriptions if isinstance(planned.session, Circuit) else []
            keys = [one for one in prescriptions if one.exercise == pain.exercise]
            week = self._week(planned.day)
            if not keys or week >= len(pain.during):
                continue
            named = {"planned_id": planned.planned_id, "prescription": keys[0].key, "exercise": pain.exercise}
            if pain.during[week]:
                body = _pain_body(pain, pain.during[week], "during") | named
                yield Entry(start + timedelta(minutes=20), "pain_reported", body)
            if pain.next_morning and pain.next_morning[week] and day + timedelta(days=1) <= self._today:
                body = _pain_body(pain, pain.next_morning[week], "next_morning") | named
                yield Entry(self._at(day + timedelta(days=1), 6, 40), "pain_reported", body)

    def _extras(self) -> Iterator[Entry]:
        if not self._habit.extra_walks:
            return
        for days in range(1, _EXTRA_WEEKS * 7, max(1, 7 // self._habit.extra_walks)):
            at = self._at(self._today - timedelta(days=days), 19, 15)
            body = {"distance_km": 9.5, "ascent_m": 420, "descent_m": 420, "minutes": 140, "pack_kg": 8, "effort": 7}
            yield Entry(at, "walk_logged", body)

    def _notes(self) -> Iterator[Entry]:
        for week, text in self._habit.notes.items():
            day = self._first + timedelta(days=7 * week + 2)
            if day < self._today:
                yield Entry(self._at(day, 20, 5), "note_written", {"text": text})

    def _symptom(self) -> Iterator[Entry]:
        if self._habit.symptom:
            at = self._at(self._today - timedelta(days=1), 19, 30)
            yield Entry(at, "symptom_reported", {"symptom": self._habit.symptom})


def _pain_body(pain: Pain, rating: int, when: str) -> dict[str, Any]:
    body = {"rating": rating, "region": pain.region, "side": pain.side, "when": when}
    return body | ({"aspect": pain.aspect} if pain.aspect else {})
