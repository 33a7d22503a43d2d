"""What the measurements share with the tests in real browsers."""

from tests.e2e.conftest import playwright, served, server

__all__ = ["playwright", "served", "server"]
