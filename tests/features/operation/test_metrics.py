"""What an operator sees: is it alive, is it ready, and how much it takes in. No number names a person."""

from fastapi.testclient import TestClient

from tests.builders import House


def _metrics(house: House) -> dict[str, float]:
    text = TestClient(house.app).get("/metrics").text
    lines = [line.rsplit(" ", 1) for line in text.splitlines() if line and not line.startswith("#")]
    return {name: float(value) for name, value in lines}


def test_sync_calls_and_what_became_of_events_are_counted(house: House) -> None:
    phone = house.pair(house.new_client("Marker Person"))
    phone.log("note_written", {"text": "marker"})
    phone.log("dreamt", {})
    phone.sync()
    phone.acknowledged = 0
    phone.sync()
    found = _metrics(house)
    assert found["steadfoot_sync_calls_total"] == 2
    assert found['steadfoot_events_total{outcome="taken"}'] == 2
    assert found['steadfoot_events_total{outcome="refused"}'] == 2
    assert found["steadfoot_sync_seconds_count"] == 2


def test_no_metric_names_a_person_or_carries_a_word_of_theirs(house: House) -> None:
    phone = house.pair(house.new_client("Marker Person"))
    phone.log("note_written", {"text": "marker"})
    phone.sync()
    text = TestClient(house.app).get("/metrics").text.lower()
    assert "marker" not in text
    assert phone.device_id not in text


def test_alive_and_ready_are_told_apart(house: House) -> None:
    visitor = TestClient(house.app, raise_server_exceptions=False)
    assert visitor.get("/healthz").json() == {"status": "alive"}
    assert visitor.get("/readyz").json() == {"status": "ready"}
