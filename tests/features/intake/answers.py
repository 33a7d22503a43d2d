"""Screening answers by what they ask for."""

from typing import Any

from tests.builders import House


def answers(active: bool, disease: bool, symptoms: bool, intensity: str = "vigorous") -> dict[str, Any]:
    """The inputs of the table, by its columns."""
    return {
        "regular_activity": active,
        "known_disease": disease,
        "signs_or_symptoms": symptoms,
        "intensity": intensity,
    }


WELL = answers(active=True, disease=False, symptoms=False)
RECOMMENDED = answers(active=True, disease=True, symptoms=False)
REQUIRED = answers(active=False, disease=True, symptoms=False)


def screened(house: House, client_id: str, said: dict[str, Any]) -> dict[str, Any]:
    """Screen a client with the practitioner."""
    found: dict[str, Any] = house.post(f"/clients/{client_id}/screenings", {"answers": said})
    return found


def state(house: House, client_id: str) -> str:
    """Where the client stands."""
    return str(house.get(f"/clients/{client_id}/screenings")["state"])
