"""Contents that Hypothesis makes: valid programs from the library, and single edits of them."""

from copy import deepcopy
from datetime import date, timedelta
from functools import cache
from typing import Any

from hypothesis import HealthCheck, settings
from hypothesis import strategies as st

from steadfoot.exercises.schemas import HoldDose
from steadfoot.exercises.service import library
from steadfoot.programs.content import ProgramContent, normalise, to_json

START = date(2026, 10, 5)
CALM = settings(max_examples=50, deadline=None, suppress_health_check=[HealthCheck.too_slow])
"""A whole program is much to make, and a busy machine must not fail a test."""
WORDS = st.sampled_from(["Legs", "Hips and knees", "Über den Grat", "一", "x" * 120])
VARIANTS = [(entry.code, rung.variant, rung.dose) for entry in library().values() for rung in entry.ladder]
FIELDS: dict[str, st.SearchStrategy[Any]] = {
    "title": WORDS,
    "name": WORDS,
    "note": st.just("") | WORDS,
    "activity": WORDS,
    "starts_on": st.dates(date(2026, 9, 1), START).map(date.isoformat),
    "ends_on": st.dates(date(2027, 3, 1), date(2027, 6, 1)).map(date.isoformat),
    "date": st.dates(START, date(2027, 2, 1)).map(date.isoformat),
    "fixed_day": st.booleans(),
    "rounds": st.integers(1, 10),
    "expected_effort": st.integers(0, 10),
    "expected_minutes": st.none() | st.integers(1, 300),
    "distance_km": st.sampled_from([0.5, 1, 7.25, 9, 12.5, 40]),
    "ascent_m": st.integers(0, 3000),
    "descent_m": st.integers(0, 3000),
    "pack_kg": st.integers(0, 30),
    "reps_low": st.integers(1, 10),
    "reps_high": st.integers(10, 50),
    "hold_s": st.integers(1, 300),
    "load_kg": st.none() | st.integers(1, 40),
    "tempo_down_s": st.none() | st.integers(1, 10),
    "rest_s": st.integers(0, 600),
    "sides": st.sampled_from(["each", "both"]),
    "exercise": st.sampled_from(sorted(library())),
    "variant": st.sampled_from(sorted({variant for _, variant, _ in VARIANTS})),
}


@cache
def fields(*names: str) -> st.SearchStrategy[dict[str, Any]]:
    return st.fixed_dictionaries({name: FIELDS[name] for name in names})


@st.composite
def prescriptions(draw: st.DrawFn, key: str) -> dict[str, Any]:
    exercise, variant, dose = draw(st.sampled_from(VARIANTS))
    amount = {"reps_low": None, "reps_high": None, "hold_s": draw(FIELDS["hold_s"])}
    if not isinstance(dose, HoldDose):
        amount = draw(fields("reps_low", "reps_high")) | {"hold_s": None}
    more = draw(fields("sides", "load_kg", "tempo_down_s", "rest_s", "note"))
    return {"key": key, "exercise": exercise, "variant": variant, **amount, **more}


@st.composite
def sessions(draw: st.DrawFn, key: str) -> dict[str, Any]:
    kind = draw(st.sampled_from(["circuit", "circuit", "walk", "cardio", "rest"]))
    base = {"key": key, "kind": kind} | draw(fields("name", "note"))
    if kind == "rest":
        return base
    base |= draw(fields("expected_effort", "expected_minutes"))
    if kind == "walk":
        return base | draw(fields("distance_km", "ascent_m", "descent_m", "pack_kg"))
    if kind == "cardio":
        return base | draw(fields("activity"))
    count = draw(st.integers(1, 3))
    made = [draw(prescriptions(f"{key}-p{place}")) for place in range(count)]
    return base | draw(fields("rounds")) | {"prescriptions": made}


@st.composite
def contents(draw: st.DrawFn) -> ProgramContent:
    """A normalised content without errors."""
    made = [draw(sessions(f"s{place}")) for place in range(draw(st.integers(1, 3)))]
    keys = [session["key"] for session in made]
    dates = draw(st.lists(st.dates(START, START + timedelta(days=90)), max_size=8, unique=True))
    days = [
        {"date": day.isoformat(), "session": draw(st.sampled_from(keys)), "fixed_day": draw(st.booleans())}
        for day in dates
        for _ in range(draw(st.integers(1, 2)))
    ]
    goal = draw(st.none() | st.fixed_dictionaries({"name": WORDS, "date": st.just("2027-03-06")}))
    ends_on = "2027-02-28" if goal is None else draw(st.sampled_from([None, "2027-02-28"]))
    whole = {
        "title": draw(WORDS),
        "goal": goal,
        "starts_on": START.isoformat(),
        "ends_on": ends_on,
        "sessions": made,
        "days": days,
    }
    return normalise(ProgramContent.model_validate(whole))


def leaves(value: Any, path: tuple[Any, ...] = ()) -> list[tuple[Any, ...]]:
    """Answer the paths of all values that an editor can change by themselves."""
    if isinstance(value, dict):
        return [leaf for name, inner in value.items() for leaf in leaves(inner, (*path, name))]
    if isinstance(value, list):
        return [leaf for place, inner in enumerate(value) for leaf in leaves(inner, (*path, place))]
    dose_not_given = value is None and path[-1] in ("reps_low", "reps_high", "hold_s")
    return [path] if path[-1] in FIELDS and not dose_not_given else []


@st.composite
def edits(draw: st.DrawFn, content: ProgramContent) -> ProgramContent:
    """One edit of a content: a value changed, a part taken out, put in twice or moved."""
    whole = deepcopy(to_json(content))
    lists = [whole["sessions"], whole["days"], *(s["prescriptions"] for s in whole["sessions"] if "prescriptions" in s)]
    how = draw(st.sampled_from(["value", "value", "value", "take out", "turn round", "add a day"]))
    if how == "value":
        path = draw(st.sampled_from(leaves(whole)))
        at = whole
        for step in path[:-1]:
            at = at[step]
        at[path[-1]] = draw(FIELDS[path[-1]])
    elif how == "add a day":
        key = draw(st.sampled_from(whole["sessions"]))["key"]
        whole["days"].append({"date": draw(FIELDS["date"]), "session": key, "fixed_day": False})
    else:
        part = draw(st.sampled_from([one for one in lists if one] or [whole["sessions"]]))
        part.pop(draw(st.integers(0, len(part) - 1))) if how == "take out" else part.reverse()
    return normalise(ProgramContent.model_validate(whole))
