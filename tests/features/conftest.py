"""What every feature test shares: passwords that cost nothing to hash, and limits that begin anew."""

from tests.quick import fresh_limits, quick_passwords

__all__ = ["fresh_limits", "quick_passwords"]
