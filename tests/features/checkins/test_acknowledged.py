"""``acknowledged_through`` is the end of the gapless run of numbers, whatever the order of arrival."""

import random

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from steadfoot.checkins.ingest import Held, decide
from steadfoot.checkins.reading import read
from tests.builders import House, Phone


def _fill(phone: Phone, count: int) -> None:
    for number in range(count):
        phone.log("note_written", {"text": str(number)})


def test_a_gap_holds_it_back_until_the_gap_is_filled(phone: Phone) -> None:
    _fill(phone, 6)
    sent = [[0, 1], [3], [5], [2], [4]]
    through = [phone.send([phone.events[place] for place in batch]).json()["acknowledged_through"] for batch in sent]
    assert through == [2, 2, 2, 4, 6]


def test_a_phone_that_begins_late_is_acknowledged_nothing(phone: Phone) -> None:
    _fill(phone, 3)
    assert phone.send(phone.events[1:]).json()["acknowledged_through"] == 0
    assert phone.send(phone.events[:1]).json()["acknowledged_through"] == 3


def test_refused_items_count_and_the_device_list_shows_the_same_number(
    house: House, client_id: str, phone: Phone
) -> None:
    _fill(phone, 4)
    phone.events[1]["kind"] = "dreamt"
    phone.events[3]["body"] = None
    assert phone.sync()["acknowledged_through"] == 4
    listed = house.get(f"/clients/{client_id}/devices")["items"]
    assert [device["acknowledged_through"] for device in listed] == [4]


def test_every_shuffle_of_single_events_ends_at_the_last(house: House, client_id: str) -> None:
    for seed in range(5):
        phone, rng = house.pair(client_id), random.Random(seed)
        _fill(phone, 12)
        order = rng.sample(phone.events, 12) + rng.choices(phone.events, k=5)
        held: set[int] = set()
        for event in order:
            held.add(event["seq"])
            end = next(number for number in range(14) if number + 1 not in held)
            assert phone.send([event]).json()["acknowledged_through"] == end


def test_an_empty_call_says_where_the_phone_stands(phone: Phone) -> None:
    _fill(phone, 2)
    phone.sync()
    assert phone.send([]).json()["acknowledged_through"] == 2


@settings(max_examples=200, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(
    st.lists(
        st.fixed_dictionaries(
            {
                "id": st.sampled_from([f"01977777-7777-7777-8777-77777777777{n}" for n in range(4)] + ["", 7]),
                "seq": st.sampled_from([1, 2, 3, 4, 0, None]),
                "kind": st.sampled_from(["note_written", "dreamt", []]),
                "recorded_at": st.just("2026-06-10T08:00:00+02:00"),
                "body": st.sampled_from([{"text": "a"}, {"text": "b"}, {}]),
            }
        ),
        max_size=12,
    )
)
def test_whatever_comes_each_readable_number_is_held_and_no_item_vanishes(batch: list[dict[str, object]]) -> None:
    items = [read(raw) for raw in batch]
    outcome = decide(items, Held("client", {}, {}, {}))
    assert set(outcome.receipts) == {item.seq for item in items if item.seq is not None}
    accepted = {(event.id, event.digest) for event in outcome.accepted}
    refused = {item.digest for item, _ in outcome.refused}
    assert len({event.id for event in outcome.accepted}) == len(outcome.accepted)
    for item in items:
        assert (item.event_id, item.digest) in accepted or item.digest in refused
