"""What the measurements share with the tests in real browsers."""

from tests.e2e.conftest import playwright, server

__all__ = ["playwright", "server"]
