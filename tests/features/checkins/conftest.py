"""A client with a phone."""

import pytest

from tests.builders import House, Phone


@pytest.fixture
def client_id(house: House) -> str:
    """A client of the practice."""
    return house.new_client()


@pytest.fixture
def phone(house: House, client_id: str) -> Phone:
    """The client's phone, which has sent nothing yet."""
    return house.pair(client_id)
