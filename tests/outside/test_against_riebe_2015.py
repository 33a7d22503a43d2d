"""Pre-participation screening, Riebe et al. 2015: the eight rows by activity, known disease, signs or symptoms.

Typed in from a public program and a guideline chapter that restate the table; that a clearance of the last 12
months will do is from memory. "Clearance" without limit is required here, "before vigorous" recommended.
"""

import pytest

from steadfoot.rules.screening import Answers, Clearance, Intensity, screen

NOT_NEEDED, RECOMMENDED, REQUIRED = Clearance.NOT_NEEDED, Clearance.RECOMMENDED, Clearance.REQUIRED


@pytest.mark.parametrize(
    ("active", "disease", "symptoms", "moderate", "vigorous"),
    [
        (False, False, False, NOT_NEEDED, NOT_NEEDED),
        (False, False, True, REQUIRED, REQUIRED),
        (False, True, False, REQUIRED, REQUIRED),
        (False, True, True, REQUIRED, REQUIRED),
        (True, False, False, NOT_NEEDED, NOT_NEEDED),
        (True, False, True, REQUIRED, REQUIRED),
        (True, True, False, NOT_NEEDED, RECOMMENDED),
        (True, True, True, REQUIRED, REQUIRED),
    ],
)
def test_eight_rows_at_both_intensities(active, disease, symptoms, moderate, vigorous):
    assert screen(Answers(active, disease, symptoms, Intensity.LIGHT_TO_MODERATE)).clearance is moderate
    assert screen(Answers(active, disease, symptoms, Intensity.VIGOROUS)).clearance is vigorous


def test_the_trap_an_active_person_with_known_disease_and_without_symptoms_who_goes_backpacking():
    outcome = screen(Answers(True, True, False, Intensity.VIGOROUS))
    assert outcome.clearance.asked_for
    assert any("last 12 months" in reason for reason in outcome.reasons)


@pytest.mark.parametrize("disease", [False, True])
def test_who_is_active_and_has_symptoms_is_told_to_stop(disease):
    outcome = screen(Answers(True, disease, True, Intensity.LIGHT_TO_MODERATE))
    assert outcome.reasons[-1].startswith("Stop exercise")
