"""Seasons asked for at random, and every rule that a plan must keep: for the test and for the bench."""

from datetime import date, timedelta
from itertools import pairwise

from hypothesis import strategies as st

from steadfoot.rules.season import Phase, phases
from steadfoot.rules.season_request import Activity, Level, NotPossible, Pin, Request
from steadfoot.rules.season_walks import step

FIRST = date(2027, 1, 1)


@st.composite
def seasons(draw):
    """Answer what a request is made of, possible or not."""
    start = FIRST + timedelta(days=draw(st.integers(0, 30)))
    length = draw(st.integers(1, 180))
    inside = st.integers(-1, length).map(lambda n: start + timedelta(days=n))
    return {
        "start": start,
        "trip": start + timedelta(days=length),
        "weekdays": draw(st.frozensets(st.integers(0, 6), min_size=1)),
        "strength_a_week": draw(st.integers(0, 3)),
        "walking": draw(levels()),
        "goal": draw(levels()),
        "walks_a_week": draw(st.integers(0, 3)),
        "cardio_a_week": draw(st.none() | st.integers(0, 6)),
        "things_a_week": draw(st.integers(1, 3)),
        "pins": tuple(Pin(*one) for one in draw(st.lists(st.tuples(inside, st.sampled_from(Activity)), max_size=4))),
        "away": draw(st.frozensets(inside, max_size=20)),
    }


def levels():
    """Answer a walk."""
    return st.builds(Level, st.integers(1, 30), st.integers(0, 1800), st.integers(0, 20))


def request(parts):
    """Answer the request, or None and why it is refused."""
    try:
        return Request(**parts), None
    except NotPossible as refused:
        return None, refused


def broken(asked, season):
    """Answer the names of the rules that a season breaks; none should."""
    sessions = [one for week in season.weeks for one in week.sessions]
    checks = {
        "covers every day once": _covers(asked, season),
        "pins are kept": all(
            any((one.day, one.activity) == (p.day, p.activity) for one in sessions) for p in asked.pins
        ),
        "only open days": all(_may_lie(asked, one) for one in sessions),
        "strength is two days apart": _strength_apart(sessions),
        "strength ends five days before": all(
            (asked.trip - one.day).days >= 5 for one in sessions if one.activity is Activity.STRENGTH
        ),
        "not more than asked for": _counts(asked, season),
        "a day of rest": all(len({one.day for one in week.sessions}) <= 6 for week in season.weeks),
        "one session a day, or a walk beside strength": _shared(sessions),
        "phases": [week.phase for week in season.weeks] == phases(len(season.weeks)),
        "walks grow by steps": _grows(asked, season),
        "the taper is lighter": _taper(season),
        "a full open week has its strength": _has_its_strength(asked, season),
    }
    return [name for name, kept in checks.items() if not kept]


def _covers(asked, season):
    days = [
        week.starts_on + timedelta(n) for week in season.weeks for n in range((week.ends_on - week.starts_on).days + 1)
    ]
    return days == [asked.start + timedelta(n) for n in range((asked.trip - asked.start).days)]


def _may_lie(asked, one):
    if Pin(one.day, one.activity) in asked.pins:
        return True
    if one.activity is Activity.WALK and Pin(one.day, Activity.STRENGTH) in asked.pins:
        return True
    taken = one.day in {pin.day for pin in asked.pins}
    return (
        not taken
        and one.day.weekday() in asked.weekdays
        and one.day not in asked.away
        and one.day < asked.trip - timedelta(1)
    )


def _strength_apart(sessions):
    days = [one.day for one in sessions if one.activity is Activity.STRENGTH]
    return all((b - a).days >= 2 for a, b in pairwise(days))


def _counts(asked, season):
    wanted = {
        Activity.STRENGTH: asked.strength_a_week,
        Activity.WALK: asked.walks_a_week,
        Activity.CARDIO: asked.cardio_a_week,
    }
    for week in season.weeks:
        for activity, most in wanted.items():
            pinned = sum(p.activity is activity and week.starts_on <= p.day <= week.ends_on for p in asked.pins)
            have = sum(one.activity is activity for one in week.sessions)
            if most is not None and have > max(most, pinned):
                return False
    return True


def _shared(sessions):
    days = {}
    for one in sessions:
        days.setdefault(one.day, []).append(one.activity)
    return all(len(kinds) == 1 or sorted(kinds) == [Activity.STRENGTH, Activity.WALK] for kinds in days.values())


def _grows(asked, season):
    """The longest walk of each building week against the one before it."""
    before = None
    for week in season.weeks:
        walks = [one.walk for one in week.sessions if one.walk]
        if week.phase is not Phase.BUILD or not walks:
            before = before if week.phase is not Phase.BUILD else None
            continue
        now = max(walks, key=lambda walk: (walk.distance_km, walk.ascent_m))
        if before and not _step_kept(asked, before, now):
            return False
        before = now
    return True


def _step_kept(asked, before, now):
    grown = 0
    for name in ("distance_km", "ascent_m", "pack_kg"):
        more = getattr(now, name) - getattr(before, name)
        if more < 0 or more > step(before, name) + 1e-9:
            return False
        grown += more > 0
    return grown <= asked.things_a_week


def _taper(season):
    built = [week.planned_load for week in season.weeks if week.phase is Phase.BUILD]
    # Whole minutes and the shortest walk of a kilometre add a little.
    room = 0.59 * max(built, default=0) + 4 * 12 * 7
    return not any(built) or all(week.planned_load <= room for week in season.weeks if week.phase is Phase.TAPER)


def _has_its_strength(asked, season):
    """Far from pins, days away, the start and the trip nothing excuses a missing session."""
    special = {pin.day for pin in asked.pins} | asked.away
    for week in season.weeks[2:-1]:
        near = {week.starts_on + timedelta(n) for n in range(-14, 21)}
        if (
            not near & special
            and sum(one.activity is Activity.STRENGTH for one in week.sessions) != asked.strength_a_week
        ):
            return False
    return True
