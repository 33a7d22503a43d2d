"""What the last sessions suggest: each check by itself, its boundary pair, and who goes before whom."""

from datetime import date, timedelta

import pytest

from steadfoot.rules.adherence import ratio
from steadfoot.rules.pain import Zone
from steadfoot.rules.progression import Facts, Goal, SessionDone, decide, two_for_two
from steadfoot.rules.progression_words import ProgressionRule, Reason, Suggested

MONDAY = date(2026, 5, 4)
GOAL = Goal(8, 12)
R, S = ProgressionRule, Suggested


def session(*amounts, day=0, event="", **more):
    return SessionDone(amounts, (event,) if event else (), MONDAY + timedelta(days=day), **more)


OVER = (session(12, 14, day=0, event="a"), session(13, 15, day=3, event="b"))


def facts(*sessions, **more):
    return Facts(more.pop("goal", GOAL), sessions or OVER, **more)


def found(*sessions, **more):
    verdict = decide(facts(*sessions, **more))
    return verdict.rule, verdict.suggested


def test_twice_two_over_the_goal_is_time_for_more_with_both_sessions_as_evidence():
    verdict = decide(facts())
    assert (verdict.rule, verdict.suggested) == (R.TWO_FOR_TWO, S.PROGRESS)
    assert verdict.reasons == (
        Reason("The last set came to 14 repetitions; the goal is 12.", ("a",)),
        Reason("The last set came to 15 repetitions; the goal is 12.", ("b",)),
    )


@pytest.mark.parametrize(
    "run",
    [
        (session(12, 13, day=0), session(12, 15, day=3)),
        (session(12, 15, day=0), session(12, 13, day=3)),
        (session(15, 12, day=0), session(15, 12, day=3)),
        (session(12, 14, day=0),),
        (session(14, day=0, load_kg=4), session(14, day=3, load_kg=5)),
        (session(14, day=0, variant="low"), session(14, day=3, variant="high")),
        (session(14, day=0), session(14, day=15)),
    ],
    ids=[
        "the first one short",
        "the last one short",
        "over in the first set only",
        "once",
        "another load between",
        "another variant between",
        "more than two weeks between",
    ],
)
def test_less_than_that_is_no_reason_for_more(run):
    assert found(*run) == (R.NOT_YET, S.HOLD)


def test_two_weeks_between_two_sessions_are_still_a_run():
    assert found(session(14, day=0), session(14, day=14)) == (R.TWO_FOR_TWO, S.PROGRESS)


def test_a_session_without_a_set_does_not_break_the_run():
    assert found(session(14, day=0), session(day=2), session(14, day=4)) == (R.TWO_FOR_TWO, S.PROGRESS)


def test_only_the_last_two_sessions_count():
    assert found(session(3, day=0), *OVER) == (R.TWO_FOR_TWO, S.PROGRESS)
    assert found(*OVER, session(12, day=6)) == (R.NOT_YET, S.HOLD)


def test_without_days_the_rules_on_days_do_not_apply():
    undated = (SessionDone((14,), effort=9), SessionDone((14,), effort=9))
    assert found(*undated, next_day=MONDAY) == (R.TWO_FOR_TWO, S.PROGRESS)
    assert found(undated[0], session(14)) == (R.TWO_FOR_TWO, S.PROGRESS)
    assert found(session(14), undated[0]) == (R.TWO_FOR_TWO, S.PROGRESS)


@pytest.mark.parametrize(("seconds", "rule"), [(34, R.NOT_YET), (35, R.TWO_FOR_TWO)])
def test_a_hold_needs_five_seconds_over(seconds, rule):
    run = (session(30, seconds, day=0), session(30, seconds, day=3))
    assert found(*run, goal=Goal(30, 30, hold=True))[0] is rule
    assert decide(facts(*run, goal=Goal(30, 30, hold=True))).reasons[0].words == (
        f"The last set came to {seconds} seconds; the goal is 30."
    )


def test_two_for_two_alone():
    assert two_for_two(12, []) is False
    assert two_for_two(30, [35, 35], 5)
    assert not two_for_two(30, [34, 35], 5)


@pytest.mark.parametrize(
    ("zone", "settled", "expected"),
    [
        (Zone.HIGH, True, (R.PAIN_HIGH, S.REGRESS)),
        (Zone.SAFE, False, (R.PAIN_HIGH, S.REGRESS)),
        (Zone.ACCEPTABLE, True, (R.PAIN_ACCEPTABLE, S.HOLD)),
        (Zone.SAFE, True, (R.TWO_FOR_TWO, S.PROGRESS)),
        (None, True, (R.TWO_FOR_TWO, S.PROGRESS)),
    ],
)
def test_pain_goes_before_progress(zone, settled, expected):
    assert found(pain_zone=zone, settled=settled) == expected


@pytest.mark.parametrize(
    ("more", "words"),
    [
        ({"pain_zone": Zone.HIGH}, "Pain was too high."),
        ({"settled": False}, "Pain had not settled by the next morning."),
        ({"pain_zone": Zone.ACCEPTABLE}, "Pain was in the acceptable band: stay until it is in the safe one."),
    ],
)
def test_pain_is_shown_by_its_reports(more, words):
    assert decide(facts(pain_event_ids=("p",), **more)).reasons == (Reason(words, ("p",)),)


@pytest.mark.parametrize("sessions", [[], [session(day=0)]])
def test_nothing_reported_is_no_reason_for_anything(sessions):
    verdict = decide(Facts(GOAL, sessions))
    assert (verdict.rule, verdict.suggested) == (R.NOT_ENOUGH, S.HOLD)
    assert verdict.reasons == (Reason("No set has been reported yet."),)


def test_pain_counts_even_where_no_set_is_reported():
    assert decide(Facts(GOAL, [], pain_zone=Zone.HIGH)).rule is R.PAIN_HIGH


@pytest.mark.parametrize(("effort", "days", "rule"), [(5, 1, R.SPACING), (5, 2, R.TWO_FOR_TWO), (4, 1, R.TWO_FOR_TWO)])
def test_hard_sessions_need_a_day_between(effort, days, rule):
    run = (session(14, day=0), session(14, day=3, effort=effort, event="b"))
    assert found(*run, next_day=MONDAY + timedelta(days=3 + days))[0] is rule


def test_monday_and_wednesday_are_far_enough_apart_by_the_calendar():
    """48 hours are counted in days: Monday evening to Wednesday morning is fine, Tuesday is not."""
    monday = session(10, day=0, effort=7, event="m")
    assert found(monday, next_day=MONDAY + timedelta(days=2))[1] is S.HOLD
    verdict = decide(facts(monday, next_day=MONDAY + timedelta(days=1)))
    assert verdict.suggested is S.REST
    assert verdict.reasons == (Reason("The last hard session (effort 7) is 1 day before the next one.", ("m",)),)


def test_the_last_hard_session_counts_not_an_earlier_one_or_an_easy_one():
    run = (session(10, day=0, effort=9), session(10, day=4, effort=9, event="h"), session(10, day=5, effort=2))
    assert decide(facts(*run, next_day=MONDAY + timedelta(days=5))).reasons[0].event_ids == ("h",)
    assert found(*run, next_day=MONDAY + timedelta(days=6))[0] is R.NOT_YET


@pytest.mark.parametrize(
    ("run", "rule"),
    [
        ((session(7, 6, day=0, event="a"), session(7, 7, day=3, event="b")), R.SHORT_OF_GOAL),
        ((session(8, 6, day=0), session(7, 7, day=3)), R.NOT_YET),
        ((session(7, 6, day=0), session(6, 8, day=3)), R.NOT_YET),
        ((session(5, day=0),), R.NOT_YET),
    ],
)
def test_no_set_at_the_goals_low_end_twice_is_too_much(run, rule):
    assert found(*run)[0] is rule


def test_short_of_the_goal_shows_the_best_sets():
    verdict = decide(facts(session(7, 6, day=0, event="a"), session(5, 6, day=3, event="b")))
    assert verdict.suggested is S.REGRESS
    assert verdict.reasons == (
        Reason("The best set came to 7 of 8 repetitions.", ("a",)),
        Reason("The best set came to 6 of 8 repetitions.", ("b",)),
    )


@pytest.mark.parametrize(("weeks", "rule"), [(3, R.TWO_FOR_TWO), (4, R.DELOAD_DUE)])
def test_after_four_hard_weeks_an_easier_one(weeks, rule):
    assert found(hard_weeks=weeks)[0] is rule


def test_a_practice_can_set_the_number_of_hard_weeks():
    assert found(hard_weeks=4, deload_after_weeks=5)[0] is R.TWO_FOR_TWO
    assert found(deload_after_weeks=1)[0] is R.TWO_FOR_TWO
    verdict = decide(facts(hard_weeks=2, deload_after_weeks=2))
    assert verdict.suggested is S.DELOAD
    assert verdict.reasons == (Reason("2 hard weeks in a row."),)


@pytest.mark.parametrize(
    ("held", "expected"),
    [
        (ratio(12, 5), (R.ADHERENCE_LOW, S.HOLD)),
        (ratio(12, 6), (R.TWO_FOR_TWO, S.PROGRESS)),
        (ratio(12, 0, 6), (R.TWO_FOR_TWO, S.PROGRESS)),
        (ratio(0, 0), (R.TWO_FOR_TWO, S.PROGRESS)),
    ],
    ids=["below half", "half", "half may have been done", "nothing was due"],
)
def test_below_half_of_what_was_due_ask_first(held, expected):
    assert found(adherence=held) == expected


def test_below_half_is_told_in_numbers():
    assert decide(facts(adherence=ratio(12, 5))).reasons == (Reason("5 of 12 due were done."),)


@pytest.mark.parametrize(
    ("prescribed", "done", "a_word_more"),
    [(12, 9, True), (12, 10, False), (12, 12, False), (12, 14, False), (5, 4, False), (0, 0, False)],
)
def test_below_80_percent_progress_comes_with_a_word(prescribed, done, a_word_more):
    """80 percent of what was due is the usual line; it is habit, so it never decides."""
    reasons = decide(facts(adherence=ratio(prescribed, done))).reasons
    word = Reason(f"Only {done} of {prescribed} due were done: ask whether the weeks have room for more.")
    assert (word in reasons) is a_word_more
    assert len(reasons) == (3 if a_word_more else 2)


@pytest.mark.parametrize(
    ("effort", "target", "rule"),
    [
        (7, 5, R.EFFORT_ABOVE_TARGET),
        (6, 5, R.TWO_FOR_TWO),
        (None, 5, R.TWO_FOR_TWO),
        (7, None, R.TWO_FOR_TWO),
        (0, 5, R.TWO_FOR_TWO),
    ],
)
def test_two_above_the_planned_effort_holds(effort, target, rule):
    run = (session(14, day=0), session(14, day=3, effort=effort, event="b"))
    verdict = decide(facts(*run, target_effort=target))
    assert verdict.rule is rule
    if rule is R.EFFORT_ABOVE_TARGET:
        assert verdict.suggested is S.HOLD
        assert verdict.reasons == (Reason("The last session felt 7, planned was 5.", ("b",)),)


EVERYTHING = {
    R.PAIN_HIGH: {"pain_zone": Zone.HIGH},
    R.NOT_ENOUGH: {},
    R.SPACING: {"next_day": MONDAY + timedelta(days=4)},
    R.SHORT_OF_GOAL: {},
    R.DELOAD_DUE: {"hard_weeks": 4},
    R.ADHERENCE_LOW: {"adherence": ratio(12, 5)},
    R.EFFORT_ABOVE_TARGET: {"target_effort": 5},
    R.PAIN_ACCEPTABLE: {"pain_zone": Zone.ACCEPTABLE},
}


@pytest.mark.parametrize("first", [R.PAIN_HIGH, R.SPACING, R.DELOAD_DUE, R.ADHERENCE_LOW, R.EFFORT_ABOVE_TARGET])
def test_the_rules_speak_in_the_order_in_which_they_are_listed(first):
    """All that stand behind apply too: only the first is heard."""
    order = list(ProgressionRule)
    told = {}
    for rule in reversed(order[order.index(first) :]):
        told |= EVERYTHING.get(rule, {})
    run = (session(14, day=0, effort=8), session(14, day=3, effort=8))
    assert found(*run, **told)[0] is first


def test_too_much_goes_before_a_deload_and_a_day_between_before_both():
    run = (session(5, day=0, effort=8), session(5, day=3, effort=8))
    assert found(*run, hard_weeks=4)[0] is R.SHORT_OF_GOAL
    assert found(*run, hard_weeks=4, next_day=MONDAY + timedelta(days=4))[0] is R.SPACING


def test_an_open_flag_holds_the_dose_and_only_too_much_pain_goes_before_it():
    flag = Reason("Pain above what training may bring, since 4 May, waits for an answer.", ("p",))
    verdict = decide(facts(open_flag=flag))
    assert (verdict.rule, verdict.suggested, verdict.reasons) == (R.FLAG_OPEN, S.HOLD, (flag,))
    assert found(open_flag=flag, pain_zone=Zone.HIGH) == (R.PAIN_HIGH, S.REGRESS)
    assert decide(Facts(GOAL, (), open_flag=flag)).rule is R.FLAG_OPEN
