"""Screening: the table is whole, reasons are told, and the questions feed it."""

from itertools import product

import pytest

from steadfoot.rules import screening
from steadfoot.rules.screening import TABLE, Answers, Clearance, Intensity, screen
from steadfoot.rules.screening_questions import QUESTIONS, Feeds, Unanswered, answers_of
from steadfoot.rules.sources import citation

NOTHING = {question.code: False for question in QUESTIONS}


def test_the_table_has_a_row_for_every_answer():
    assert set(TABLE) == set(product((False, True), repeat=3))


@pytest.mark.parametrize(("active", "disease", "intensity"), list(product((False, True), (False, True), Intensity)))
def test_symptoms_always_ask_for_a_clearance(active, disease, intensity):
    assert screen(Answers(active, disease, True, intensity)).clearance is Clearance.REQUIRED


@pytest.mark.parametrize(("active", "symptoms"), list(product((False, True), repeat=2)))
def test_more_intensity_and_more_disease_never_ask_for_less(active, symptoms):
    order = list(Clearance)
    for disease in (False, True):
        light, hard = (order.index(screen(Answers(active, disease, symptoms, one)).clearance) for one in Intensity)
        assert light <= hard
    for one in Intensity:
        healthy, ill = (order.index(screen(Answers(active, d, symptoms, one)).clearance) for d in (False, True))
        assert healthy <= ill


def test_only_not_needed_asks_for_nothing():
    assert [one.asked_for for one in Clearance] == [False, True, True]


def test_every_answer_is_given_back_as_a_reason():
    yes = screen(Answers(True, True, True, Intensity.VIGOROUS)).reasons
    no = screen(Answers(False, False, False, Intensity.LIGHT_TO_MODERATE)).reasons
    assert yes == (
        "There are signs or symptoms that may come from heart, metabolism or kidneys.",
        "A disease of heart, vessels, metabolism or kidneys is known.",
        "There has been regular activity over the last three months.",
        "The plan is vigorous: most walking uphill with a pack is.",
        "Stop exercise and have a doctor's clearance; training may go on after it.",
    )
    assert no == (
        "There are no signs or symptoms.",
        "No disease of heart, vessels, metabolism or kidneys is known.",
        "There has been no regular activity over the last three months.",
        "The plan is light to moderate.",
        "No clearance is needed; begin light to moderate and build up to vigorous gradually.",
    )


def test_each_row_says_what_follows():
    meanings = {row: screen(Answers(*row, Intensity.VIGOROUS)).reasons[-1] for row in TABLE}
    first = "A doctor's clearance comes first; then begin light to moderate and build up as it is borne."
    assert {meanings[row] for row in ((False, False, True), (False, True, False), (False, True, True))} == {first}
    assert meanings[True, True, False] == (
        "Moderate exercise may go on; before vigorous exercise a clearance of the last 12 months is recommended, "
        "and a new one if anything has changed."
    )
    assert meanings[True, False, False].endswith("go on at moderate or vigorous intensity and build up gradually.")


def test_the_table_and_the_outcome_name_their_source():
    assert citation(screening, "TABLE").source == "riebe-2015"
    assert screen(Answers(True, False, False, Intensity.VIGOROUS)).source == "riebe-2015"


def test_all_no_is_an_inactive_healthy_person():
    assert answers_of(NOTHING, Intensity.VIGOROUS) == Answers(False, False, False, Intensity.VIGOROUS)


@pytest.mark.parametrize("question", QUESTIONS, ids=lambda question: question.code)
def test_one_yes_makes_its_input_true_and_no_other(question):
    said = answers_of(NOTHING | {question.code: True}, Intensity.LIGHT_TO_MODERATE)
    given = (said.regular_activity, said.known_disease, said.signs_or_symptoms)
    assert given == tuple(feeds is question.feeds for feeds in Feeds)


def test_a_question_left_open_is_not_a_no():
    with pytest.raises(Unanswered, match=r"^Not answered yet: active, chest\.$") as refused:
        answers_of({c: False for c in NOTHING if c not in ("active", "chest")}, Intensity.VIGOROUS)
    assert refused.value.codes == ("active", "chest")


def test_every_input_has_a_question_and_every_question_words_of_its_own():
    assert {question.feeds for question in QUESTIONS} == set(Feeds)
    for words in ("code", "text", "help"):
        assert len({getattr(question, words) for question in QUESTIONS}) == len(QUESTIONS)
    assert all(question.text.endswith("?") and question.help.endswith(".") for question in QUESTIONS)


def test_what_counts_as_regular_stands_in_the_question():
    active = QUESTIONS[0]
    assert "last 3 months" in active.text
    assert "3 or more days" in active.text
    assert "30 minutes" in active.help
