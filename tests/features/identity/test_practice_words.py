"""What a practice says to its clients in its own words: whom to call, when it answers."""

import threading
from typing import Any

import httpx
import pytest

from steadfoot.core.database import Database
from steadfoot.identity import feed, store
from steadfoot.identity.service import EMERGENCY_TEXT
from tests.builders import API, House, Phone

OWN = {"emergency_text": "In the valley dial 144.", "reply_time_text": "We answer on Tuesdays."}


def _say(house: House, **words: Any) -> httpx.Response:
    return house.http.put(f"{API}/practice/words", json={**OWN, **words})


def _heard(phone: Phone) -> list[dict[str, Any]]:
    """Answer what the practice's changes say that the phone takes now."""
    return [one["body"] for one in phone.sync()["changes"] if one["kind"] == "practice"]


def _kept(house: House) -> dict[str, str]:
    practice = house.get("/me")["practice"]
    return {name: practice[name] for name in OWN}


def test_a_phone_has_the_words_at_its_next_contact(house: House, other_house: House) -> None:
    phone, theirs = house.pair(house.new_client()), other_house.pair(other_house.new_client())
    assert [one["emergency_text"] for one in _heard(phone) + _heard(theirs)] == [EMERGENCY_TEXT] * 2
    answer = _say(house, emergency_text="  In the valley dial 144. ")
    assert (answer.status_code, answer.json(), _kept(house)) == (200, OWN, OWN)
    practice = {"name": "Thornwater Physical Therapy", "practitioner": "Maren Brandvold"}
    assert (_heard(phone), _heard(theirs)) == ([{**practice, **OWN}], [])


def test_whoever_is_taken_on_again_or_anew_has_them_too(house: House) -> None:
    client_id = house.new_client()
    phone = house.pair(client_id)
    phone.sync()
    for archived in (True, False):
        house.http.patch(f"{API}/clients/{client_id}", json={"archived": archived}).raise_for_status()
        if archived:
            _say(house)
    assert [one["emergency_text"] for one in _heard(phone)] == [OWN["emergency_text"]]
    assert _heard(house.pair(house.new_client("Ines Calloway")))[-1] | OWN == _heard(house.pair(client_id))[-1]


def test_the_same_words_again_are_announced_to_nobody(house: House) -> None:
    phone = house.pair(house.new_client())
    _say(house)
    assert len(_heard(phone)) == 2
    assert _say(house, reply_time_text="We answer on Tuesdays. ").status_code == 200
    assert _heard(phone) == []


@pytest.mark.parametrize("field", OWN)
@pytest.mark.parametrize(
    ("text", "problem"),
    [
        ("", "string_too_short"),
        (" \n\u00a0", "string_too_short"),
        ("a" * 301, "string_too_long"),
        (None, "string_type"),
    ],
)
def test_blank_and_long_words_are_refused_at_their_place(
    house: House, field: str, text: str | None, problem: str
) -> None:
    phone = house.pair(house.new_client())
    phone.sync()
    before = _kept(house)
    refused = _say(house, **{field: text})
    found = [(one["pointer"], one["code"]) for one in refused.json()["errors"]]
    assert (refused.status_code, found) == (422, [(f"/body/{field}", problem)])
    assert (_kept(house), _heard(phone)) == (before, [])


def test_one_without_the_other_is_refused_and_300_letters_are_taken(house: House) -> None:
    alone = house.http.put(f"{API}/practice/words", json={"emergency_text": "Dial 144."})
    assert alone.json()["errors"][0]["pointer"] == "/body/reply_time_text"
    assert _say(house, emergency_text="ä" * 300).status_code == 200


@pytest.mark.parametrize("role", ["practitioner", "read_only"])
def test_only_an_owner_changes_them(house: House, role: str) -> None:
    before = _kept(house)
    refused = _say(house.colleague(role))
    assert (refused.status_code, refused.json()["code"], _kept(house)) == (403, "owner-only", before)


def test_who_changed_them_stands_in_the_log(house: House) -> None:
    _say(house)
    row = house.get("/audit")["items"][0]
    assert (row["action"], row["actor_name"]) == ("changePracticeWords", "Maren Brandvold")


def test_while_they_change_entries_are_taken_and_nobody_new_misses_them(house: House, database: Database) -> None:
    if database.is_sqlite:
        pytest.skip("SQLite lets nobody else write meanwhile")
    phone, clients = house.pair(house.new_client()), [""]
    phone.log("note_written", {"text": "On the ridge."})
    entry = threading.Thread(target=phone.sync)
    newcomer = threading.Thread(target=lambda: clients.append(house.new_client("Ines Calloway")))
    with database.write() as session:
        practice = store.lock_practice(session, house.practice_id)
        practice.emergency_text = OWN["emergency_text"]
        session.flush()
        feed.announce_practice_to_all(session, practice, house.clock())
        newcomer.start()
        newcomer.join(1)
        entry.start()  # only now: whoever asks after an entry waits until it is settled
        entry.join(10)
        assert (phone.acknowledged, newcomer.is_alive()) == (1, True)
    newcomer.join(20)
    assert _heard(house.pair(clients[-1]))[-1]["emergency_text"] == OWN["emergency_text"]
