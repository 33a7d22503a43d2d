"""Real change, trend, symmetry and the functional scale: boundary pairs and refusals."""

from datetime import date
from math import inf

import pytest

from steadfoot.rules.change import (
    Change,
    Reality,
    Retest,
    Trend,
    change,
    minimal_detectable_change,
    pain_change,
    standard_error,
    trend,
)
from steadfoot.rules.functional_scale import OtherActivities, functional_change, functional_score
from steadfoot.rules.ranges import OutOfRange
from steadfoot.rules.symmetry import even_enough, reach_composite, symmetry_percent


@pytest.mark.parametrize(
    ("after", "reality", "better"),
    [
        (24, Reality.WITHIN_ERROR, None),
        (25, Reality.REAL, True),
        (12, Reality.WITHIN_ERROR, None),
        (11, Reality.REAL, False),
        (18, Reality.WITHIN_ERROR, None),
    ],
)
def test_a_change_is_real_from_the_smallest_real_change_on(after, reality, better):
    assert change(18, after, 7) == Change(after - 18, reality, better)


def test_where_less_is_better_less_is_a_gain():
    assert change(6, 3, 2, lower_is_better=True).better is True
    assert change(3, 6, 2, lower_is_better=True).better is False


def test_without_a_smallest_real_change_nothing_is_called_real():
    assert change(10, 40, None) == Change(30, Reality.UNKNOWN, None)


def test_no_change_is_never_real():
    assert change(5, 5, 0).reality is Reality.WITHIN_ERROR


@pytest.mark.parametrize(
    ("found", "words"),
    [
        (change(18, 25, 7), "7 repetitions more, a real gain"),
        (change(25, 18, 7), "7 repetitions less, a real loss"),
        (change(1, 1.5, 0.5), "0.5 repetitions more, a real gain"),
        (change(18, 20, 7), "2 repetitions more, no certain change"),
        (change(20, 18, None), "2 repetitions less; how much is certain is not known for this test"),
        (change(18, 18, 7), "no change"),
        (change(18, 18, None), "no change"),
    ],
)
def test_a_change_in_words(found, words):
    assert found.words("repetitions") == words


def results(*values):
    return [Retest(date(2026, 5, 1 + place), value) for place, value in enumerate(values)]


def test_a_trend_is_told_from_the_first_and_from_the_one_before():
    expected = Trend(change(10, 25, 7), change(20, 25, 7))
    assert trend(results(10, 20, 25), 7) == expected
    assert trend(list(reversed(results(10, 20, 25))), 7) == expected


def test_a_trend_knows_which_way_is_better():
    found = trend(results(6, 2), 2, lower_is_better=True)
    assert found.since_first.better is found.since_last.better is True


@pytest.mark.parametrize("values", [(), (10,)])
def test_one_result_is_no_trend(values):
    assert trend(results(*values), 7) is None


def test_a_perfect_test_has_no_error_and_a_useless_one_all_of_it():
    """ICC 1 leaves nothing under the root, ICC 0 all of the deviation."""
    assert standard_error(10, 1) == 0
    assert standard_error(10, 0) == 10
    assert minimal_detectable_change(0) == 0


@pytest.mark.parametrize(("deviation", "icc"), [(10, -0.01), (10, 1.01), (-1, 0.5)])
def test_reliability_that_cannot_be_is_refused(deviation, icc):
    with pytest.raises(OutOfRange):
        standard_error(deviation, icc)


def test_any_deviation_from_0_up_is_taken():
    assert standard_error(0, 0.5) == 0
    assert standard_error(inf, 0.5) == inf


@pytest.mark.parametrize(("base", "now"), [(-1, 0), (11, 0), (0, -1), (0, 11)])
def test_a_pain_off_the_scale_is_refused(base, now):
    with pytest.raises(OutOfRange, match="0 to 10"):
        pain_change(base, now)


def test_thirty_percent_itself_counts_and_more_pain_does_not():
    assert pain_change(10, 7).enough_percent
    assert not pain_change(7, 5).enough_percent
    assert pain_change(2, 6) == pain_change(2, 6).__class__(-4, -200.0, False, False)


@pytest.mark.parametrize(("value", "other", "percent"), [(18, 20, 90.0), (17, 20, 85.0), (22, 20, 110.0), (0, 20, 0)])
def test_symmetry_is_one_side_in_percent_of_the_other(value, other, percent):
    assert symmetry_percent(value, other) == pytest.approx(percent, abs=0.01)


def test_there_is_no_percentage_of_nothing():
    assert symmetry_percent(5, 0) is None
    assert even_enough(5, 0) is None
    assert even_enough(0, 5, lower_is_better=True) is None


@pytest.mark.parametrize(("value", "even"), [(18, True), (17, False), (22, True)])
def test_ninety_percent_itself_is_even_enough(value, even):
    assert even_enough(value, 20) is even


@pytest.mark.parametrize(("value", "even"), [(20, True), (21, False), (10, True)])
def test_where_less_is_better_the_ratio_is_turned_round(value, even):
    assert even_enough(value, 18, lower_is_better=True) is even


@pytest.mark.parametrize("limb", [39.9, 140.1])
def test_a_leg_of_no_such_length_is_refused(limb):
    with pytest.raises(OutOfRange, match="limb cm"):
        reach_composite(60, 90, 90, limb)


@pytest.mark.parametrize("limb", [40, 140])
def test_a_leg_at_the_edge_is_taken(limb):
    assert reach_composite(limb, limb, limb, limb) == 100


def test_the_functional_score_is_a_mean_of_one_to_five_activities():
    assert functional_score({"stairs": 4}) == 4
    assert functional_score({str(place): place for place in range(5)}) == 2
    for count in (0, 6):
        with pytest.raises(OutOfRange, match="activities"):
            functional_score({str(place): 1 for place in range(count)})


@pytest.mark.parametrize("score", [-1, 11])
def test_a_score_off_the_scale_is_refused(score):
    with pytest.raises(OutOfRange, match="score"):
        functional_score({"stairs": score})
    assert functional_score({"stairs": 0, "kneeling": 10}) == 5


def test_other_activities_cannot_be_compared():
    with pytest.raises(OtherActivities, match="same activities"):
        functional_change({"stairs": 3}, {"kneeling": 5})


@pytest.mark.parametrize(("after", "reality"), [(5, Reality.REAL), (4.9, Reality.WITHIN_ERROR)])
def test_two_points_of_the_mean_are_real(after, reality):
    assert functional_change({"stairs": 3}, {"stairs": after}).of_mean.reality is reality


def test_a_gain_of_less_than_one_is_a_gain():
    assert change(1, 1.5, 0.5).better is True
    assert change(1, 1.5, 0.5, lower_is_better=True).better is False


def test_the_refusal_of_other_activities_is_a_sentence():
    with pytest.raises(
        OtherActivities, match=r"^The activities differ: a change can only be told for the same activities\.$"
    ):
        functional_change({"stairs": 3}, {})
