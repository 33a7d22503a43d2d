"""A new phone of the same client is told what the earlier ones said; nobody else is."""

from typing import Any

import httpx

from tests.builders import API, House, Phone
from tests.conftest import StandingClock

PLANNED = "2026-06-08.1"


def history(phone: Phone) -> Any:
    response = phone.http.get(f"{API}/history", headers={"Authorization": f"Bearer {phone.token}"})
    assert response.status_code == 200, response.text
    return response.json()


def train(phone: Phone, planned_id: str = PLANNED) -> None:
    about = {"planned_id": planned_id, "program_version": 2}
    phone.log("set_ticked", {**about, "prescription": "p1", "round": 1})
    phone.log("set_ticked", {**about, "prescription": "p1", "round": 2})
    phone.log("set_unticked", {**about, "prescription": "p1", "round": 2})
    phone.log("set_left_out", {**about, "prescription": "p2", "round": 1, "reason": "no_time"})
    phone.log("variant_swapped", {**about, "prescription": "p1", "to_variant": "step-10"})
    phone.log("session_finished", {**about, "minutes": 31, "effort": 6})
    phone.sync()


def test_a_second_phone_is_told_what_the_first_one_said(house: House, client_id: str, phone: Phone) -> None:
    train(phone)
    assert history(house.pair(client_id)) == {
        "since": "2025-12-12",
        "items": [
            {
                "planned_id": PLANNED,
                "day": "2026-06-10",
                "program_version": 2,
                "sets": [["p1", 1]],
                "left_out": [["p2", 1, "no_time"]],
                "swaps": {"p1": "step-10"},
                "minutes": 31,
                "effort": 6,
                "finished": True,
                "walk": None,
            }
        ],
    }


def test_walks_come_whole_also_those_outside_the_plan(house: House, client_id: str, phone: Phone) -> None:
    walk = {"distance_km": 8.5, "ascent_m": 300, "descent_m": 280, "minutes": 150, "pack_kg": 6}
    phone.log("walk_logged", walk)
    phone.sync()
    (item,) = history(house.pair(client_id))["items"]
    assert (item["planned_id"], item["walk"]) == ("extra.2026-06-10", walk)
    assert (item["effort"], item["program_version"], item["finished"]) == (None, None, True)


def test_it_reaches_back_180_days_and_not_one_more(
    house: House, client_id: str, phone: Phone, clock: StandingClock
) -> None:
    train(phone, "2026-06-10.1")
    second = house.pair(client_id)
    clock.forward(days=180)
    assert [item["planned_id"] for item in history(second)["items"]] == ["2026-06-10.1"]
    clock.forward(days=1)
    assert history(second)["items"] == []


def test_another_client_is_told_nothing_of_it(house: House, phone: Phone) -> None:
    train(phone)
    assert history(house.pair(house.new_client("Jonna Stroud")))["items"] == []


def test_nobody_is_told_without_a_phones_own_token(house: House, phone: Phone) -> None:
    def status(http: httpx.Client, token: str | None) -> int:
        headers = {"Authorization": f"Bearer {token}"} if token else {}
        return http.get(f"{API}/history", headers=headers).status_code

    assert status(phone.http, None) == status(phone.http, "made-up") == status(house.http, None) == 401
    house.post(f"/devices/{phone.device_id}/revocations")
    assert status(phone.http, phone.token) == 401
