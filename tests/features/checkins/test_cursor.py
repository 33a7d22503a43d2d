"""What the practice says reaches the phone once, in order, and again from the start when the phone is ahead."""

from tests.builders import House, Phone


def _kinds(answer: dict[str, object]) -> list[str]:
    changes = answer["changes"]
    assert isinstance(changes, list)
    return [change["kind"] for change in changes]


def test_a_new_phone_gets_the_practice_and_its_own_settings(phone: Phone) -> None:
    answer = phone.sync()
    assert _kinds(answer) == ["practice", "settings"]
    assert [change["number"] for change in answer["changes"]] == [1, 2]
    assert answer["cursor"] == 2
    assert answer["changes"][0]["body"]["practitioner"] == "Maren Brandvold"
    assert answer["changes"][1]["body"]["thresholds"] == {"pain_stop": 6, "usual_pain": 0}


def test_a_change_comes_once_and_again_if_the_reply_was_lost(house: House, client_id: str, phone: Phone) -> None:
    phone.sync()
    house.http.patch(f"/api/v1/clients/{client_id}", json={"thresholds": {"pain_stop": 4}})
    lost = phone.send([]).json()
    assert phone.send([]).json()["changes"] == lost["changes"]
    assert phone.sync()["changes"][0]["body"]["thresholds"]["pain_stop"] == 4
    answer = phone.sync()
    assert (answer["changes"], answer["cursor"]) == ([], 3)


def test_numbers_of_changes_have_no_gap(house: House, client_id: str, phone: Phone) -> None:
    for pain in range(5):
        house.http.patch(f"/api/v1/clients/{client_id}", json={"usual_pain": pain})
    assert [change["number"] for change in phone.sync()["changes"]] == [1, 2, 3, 4, 5, 6, 7]


def test_a_cursor_beyond_the_newest_number_gets_everything_again(phone: Phone) -> None:
    for cursor in (3, 1_000, 2**31, 2**53 - 1):
        answer = phone.send([], cursor=cursor).json()
        assert _kinds(answer) == ["practice", "settings"]
        assert answer["cursor"] == 2


def test_a_phone_that_sends_events_gets_changes_with_the_same_reply(phone: Phone) -> None:
    phone.log("note_written", {"text": "hello"})
    answer = phone.sync()
    assert answer["acknowledged_through"] == 1
    assert len(answer["changes"]) == 2


def test_the_epoch_stays_the_same_and_the_time_is_the_servers(phone: Phone) -> None:
    first, second = phone.sync(), phone.sync()
    assert first["server_epoch"] == second["server_epoch"]
    assert first["server_time"] == "2026-06-10T08:00:00Z"
