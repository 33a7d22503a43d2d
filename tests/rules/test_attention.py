"""Who is called first, and the sentence that says why."""

from dataclasses import replace
from datetime import date, timedelta
from itertools import pairwise

import pytest

from steadfoot.rules.attention import (
    ORDER,
    Group,
    OpenFlag,
    Person,
    ReasonRule,
    WeekSoFar,
    reason_of,
    sort_key,
)
from steadfoot.rules.findings import CARDS, Action, Rule

TODAY = date(2026, 10, 14)


def ago(days):
    return TODAY - timedelta(days=days)


FINE = Person(
    name="Ada",
    today=TODAY,
    has_program=True,
    flags=(),
    refused=0,
    missed_on=(),
    not_heard_on=(),
    heard_on=TODAY,
    paired_on=ago(60),
    weeks=(WeekSoFar(600, 300, 0), WeekSoFar(600, 600, 1)),
    done_7_days=2,
    prescribed_7_days=3,
    not_heard_7_days=0,
)


def flag(rule, since=1):
    return OpenFlag(rule, ago(since), f"{rule} sentence", f"{rule} suggestion", f"flag-{rule}", Action.HOLD)


CASES = {
    **{rule: {"flags": (flag(rule),)} for rule in Rule},
    ReasonRule.REFUSED_ENTRIES: {"refused": 2},
    ReasonRule.MISSED_SESSIONS: {"missed_on": (ago(3), ago(5))},
    ReasonRule.OVER_EAGER: {"weeks": (WeekSoFar(600, 900, 0),)},
    ReasonRule.SILENT: {"heard_on": ago(5), "not_heard_on": (ago(4),)},
    ReasonRule.NEVER_PAIRED: {"heard_on": None, "paired_on": None},
    ReasonRule.ON_THE_WAY: {},
    ReasonRule.NO_PROGRAM: {"has_program": False},
}


def told(**changes):
    return reason_of(replace(FINE, **changes))


@pytest.mark.parametrize("rule", ORDER)
def test_each_reason_holds_and_is_told(rule):
    reason = told(**CASES[rule])
    assert reason.rule is rule
    assert reason.sentence
    assert reason.cited.source


def test_every_reason_has_its_place_in_the_order():
    assert set(ORDER) == set(CASES)


def test_the_order_of_reasons_decides_between_two_clients():
    keys = [sort_key(told(**CASES[rule]), 90, "Ada") for rule in ORDER]
    for earlier, later in pairwise(keys):
        assert earlier < later


def test_the_most_urgent_of_several_reasons_is_told():
    flags = (flag(Rule.EFFORT_RISING, 9), flag(Rule.RED_FLAG_SYMPTOM), flag(Rule.PAIN_TOO_HIGH, 30))
    assert told(flags=flags, missed_on=(ago(1), ago(2))).rule is Rule.RED_FLAG_SYMPTOM


def test_a_flag_brings_its_sentence_its_source_and_its_answer():
    reason = told(flags=(flag(Rule.PAIN_TOO_HIGH),))
    assert reason.cited is CARDS[Rule.PAIN_TOO_HIGH].cited
    assert (reason.suggestion.flag_id, reason.suggestion.action) == ("flag-pain_too_high", Action.HOLD)
    assert reason.group is Group.NEEDS_YOU


@pytest.mark.parametrize(
    ("rule", "group"),
    [
        (ReasonRule.REFUSED_ENTRIES, Group.NEEDS_YOU),
        (ReasonRule.MISSED_SESSIONS, Group.NEEDS_YOU),
        (ReasonRule.OVER_EAGER, Group.NEEDS_YOU),
        (ReasonRule.SILENT, Group.SILENT),
        (ReasonRule.NEVER_PAIRED, Group.SILENT),
        (ReasonRule.ON_THE_WAY, Group.ON_THE_WAY),
        (ReasonRule.NO_PROGRAM, Group.NO_PROGRAM),
    ],
)
def test_group_of_a_reason(rule, group):
    assert told(**CASES[rule]).group is group


@pytest.mark.parametrize(
    ("missed", "rule"),
    [
        ((13, 12), ReasonRule.MISSED_SESSIONS),
        ((14, 12), ReasonRule.ON_THE_WAY),
        ((2,), ReasonRule.ON_THE_WAY),
    ],
)
def test_two_missed_within_fourteen_days_are_a_reason(missed, rule):
    assert told(missed_on=tuple(ago(day) for day in missed)).rule is rule


@pytest.mark.parametrize(("days", "rule"), [(4, ReasonRule.ON_THE_WAY), (5, ReasonRule.SILENT)])
def test_silence_begins_after_five_days(days, rule):
    assert told(heard_on=ago(days), not_heard_on=(ago(3),)).rule is rule


def test_silence_with_nothing_due_is_no_reason():
    assert told(heard_on=ago(30)).rule is ReasonRule.ON_THE_WAY


def test_a_paired_phone_that_never_spoke_is_silent_since_its_pairing():
    reason = told(heard_on=None, paired_on=ago(6), not_heard_on=(ago(5), ago(3)))
    assert reason.sentence == "Never heard since pairing on Thursday; 2 sessions not heard."
    assert reason.since == ago(6)


@pytest.mark.parametrize(
    ("week", "rule"),
    [
        (WeekSoFar(600, 899, 0), ReasonRule.ON_THE_WAY),
        (WeekSoFar(600, 900, 0), ReasonRule.OVER_EAGER),
        (WeekSoFar(600, 600, 1), ReasonRule.ON_THE_WAY),
        (WeekSoFar(600, 600, 2), ReasonRule.OVER_EAGER),
        (WeekSoFar(0, 200, 0), ReasonRule.ON_THE_WAY),
    ],
)
def test_over_eager_begins_at_half_as_much_again_or_two_extra_sessions(week, rule):
    assert told(weeks=(week,)).rule is rule


def test_within_a_reason_the_longest_waiting_comes_first_then_the_nearest_trip_then_the_name():
    longer, shorter = told(flags=(flag(Rule.PAIN_TOO_HIGH, 9),)), told(flags=(flag(Rule.PAIN_TOO_HIGH, 2),))
    keys = [
        sort_key(longer, None, "Zoe"),
        sort_key(shorter, 10, "Zoe"),
        sort_key(shorter, 90, "ada"),
        sort_key(shorter, 90, "Bo"),
        sort_key(shorter, None, "Ada"),
    ]
    assert keys == sorted(keys)


@pytest.mark.parametrize(
    ("changes", "sentence"),
    [
        ({}, "2 of 3 sessions done in the last 7 days."),
        ({"not_heard_7_days": 1}, "2 of 3 sessions done in the last 7 days, 1 not heard."),
        ({"done_7_days": 0, "prescribed_7_days": 0}, "Nothing was due in the last 7 days."),
        ({"refused": 1}, "1 entry kept aside, not understood."),
        ({"refused": 2}, "2 entries kept aside, not understood."),
        (
            {"heard_on": ago(9), "not_heard_on": (ago(4),)},
            "Last heard on Monday 5 October; 1 session not heard.",
        ),
    ],
)
def test_sentences_have_the_numbers_inside(changes, sentence):
    assert told(**changes).sentence == sentence


HOUSE_WORDS = {
    ReasonRule.REFUSED_ENTRIES: ("2 entries kept aside, not understood.", "Look at what was kept aside."),
    ReasonRule.MISSED_SESSIONS: ("2 sessions missed in the last 14 days.", "Ask what got in the way."),
    ReasonRule.OVER_EAGER: (
        "Did 150 percent of a week's planned load.",
        "Ask how it feels, and remind them of rest days.",
    ),
    ReasonRule.SILENT: ("Last heard on Friday; 1 session not heard.", "Ask by other means whether all is well."),
    ReasonRule.NEVER_PAIRED: ("No phone is paired.", "Invite their phone."),
    ReasonRule.NO_PROGRAM: ("No program yet.", "Write the first program."),
}


@pytest.mark.parametrize("rule", HOUSE_WORDS)
def test_every_reason_of_ours_says_what_is_and_what_could_be_done(rule):
    reason = told(**CASES[rule])
    assert (reason.sentence, reason.suggestion.sentence) == HOUSE_WORDS[rule]
    assert (reason.suggestion.flag_id, reason.suggestion.action) == (None, None)


def test_being_on_the_way_asks_for_nothing():
    assert told().suggestion is None


def test_sessions_of_their_own_are_counted_and_asked_about():
    reason = told(weeks=(WeekSoFar(600, 600, 3),))
    assert reason.sentence == "3 sessions of their own beside the plan within a week."
    assert reason.suggestion.sentence == "Ask how it feels, and whether the plan asks too little."


def test_a_small_plan_can_be_overdone_too():
    assert told(weeks=(WeekSoFar(1, 2, 0),)).sentence == "Did 200 percent of a week's planned load."


def test_a_flag_suggests_what_its_rule_suggests():
    assert told(flags=(flag(Rule.PAIN_RISING),)).suggestion.sentence == "pain_rising suggestion"


def test_of_two_flags_of_one_rule_the_longer_waiting_is_told():
    newer, older = flag(Rule.PAIN_RISING, 2), flag(Rule.PAIN_RISING, 9)
    for flags in ((newer, older), (older, newer)):
        assert told(flags=flags).since == ago(9)


def test_a_trip_today_goes_before_one_tomorrow():
    reason = told()
    assert sort_key(reason, 0, "Zoe") < sort_key(reason, 1, "Ada")
