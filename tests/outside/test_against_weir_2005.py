"""Standard error of measurement and minimal detectable change, Weir 2005. Tolerance: the digits given."""

import pytest

from steadfoot.rules.change import Z_90, Z_95, minimal_detectable_change, standard_error


@pytest.mark.parametrize(
    ("deviation", "icc", "error", "mdc_95", "mdc_90"),
    [
        (10, 0.9, 3.1623, 8.7654, 7.3567),
        (4.2, 0.82, 1.7819, 4.9392, 4.1454),
        (34, 0.97, 5.889, 16.3234, 13.7),
    ],
)
def test_worked_values(deviation, icc, error, mdc_95, mdc_90):
    found = standard_error(deviation, icc)
    assert found == pytest.approx(error, abs=1e-3)
    assert minimal_detectable_change(found) == minimal_detectable_change(found, Z_95)
    assert minimal_detectable_change(found, Z_95) == pytest.approx(mdc_95, abs=1e-3)
    assert minimal_detectable_change(found, Z_90) == pytest.approx(mdc_90, abs=1e-3)
