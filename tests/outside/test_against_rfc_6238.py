"""Codes of the moment against the test vectors of RFC 6238, appendix B: HMAC-SHA-1, the secret "12345678901234567890".

The appendix prints eight digits. A code of six is their last six: RFC 4226, 5.3, takes both from one number, modulo ten
to the count of digits.
"""

from base64 import b32encode
from datetime import UTC, datetime

import pytest

from steadfoot.identity.totp import DIGITS, STEP_S, matching_step

SECRET = b32encode(b"12345678901234567890").decode()
VECTORS = [
    (59, 0x1, "94287082"),
    (1111111109, 0x23523EC, "07081804"),
    (1111111111, 0x23523ED, "14050471"),
    (1234567890, 0x273EF07, "89005924"),
    (2000000000, 0x3F940AA, "69279037"),
    (20000000000, 0x27BC86AA, "65353130"),
]


@pytest.mark.parametrize(("seconds", "step", "code"), VECTORS)
def test_the_code_of_a_printed_moment_belongs_to_its_printed_step(seconds: int, step: int, code: str) -> None:
    now = datetime.fromtimestamp(seconds, UTC)
    assert (STEP_S, DIGITS) == (30, 6)
    assert matching_step(SECRET, code[-DIGITS:], now) == step
    assert matching_step(SECRET, str((int(code) + 1) % 10**DIGITS).zfill(DIGITS), now) is None
