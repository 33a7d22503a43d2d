"""What an operator sees: is it alive, is it ready, and how much it takes in. No number names a person."""

import pytest
from fastapi import FastAPI
from fastapi.testclient import TestClient
from pydantic import SecretStr

from steadfoot.core.waiting import Waiting
from tests.builders import House
from tests.conftest import START, StandingClock

HERE, ELSEWHERE = ("127.0.0.1", 50000), ("203.0.113.9", 50000)


def _text(app: FastAPI) -> str:
    return TestClient(app, client=HERE).get("/metrics").text


def _metrics(house: House) -> dict[str, float]:
    text = _text(house.app)
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
    house.get("/clients")
    text = _text(house.app).lower()
    assert "steadfoot_request_seconds" in text
    assert "marker" not in text
    for secret in (phone.device_id, phone.token, house.practice_id, "thornwater", "maren"):
        assert secret.lower() not in text


def test_the_age_of_what_a_phone_had_kept_is_counted(house: House, clock: StandingClock) -> None:
    phone = house.pair(house.new_client("Emil"))
    phone.log("note_written", {"text": "up there"})
    clock.forward(days=2)
    phone.log("note_written", {"text": "down again"})
    phone.log("note_written", {"text": "no time"}, at="yesterday")
    phone.sync()
    found = _metrics(house)
    assert found["steadfoot_sync_lag_seconds_sum"] == 2 * 86400
    assert found['steadfoot_sync_lag_seconds_bucket{le="86400.0"}'] == 0


def test_answers_are_timed_by_operation_and_never_by_path(house: House) -> None:
    client_id = house.new_client("Emil")
    house.get(f"/clients/{client_id}")
    house.http.get(f"/api/v1/clients/{client_id}x")
    house.http.get("/nothing/of/that/name")
    found = _metrics(house)
    assert found['steadfoot_request_seconds_count{operation="readClient",status="2xx"}'] == 1
    assert found['steadfoot_request_seconds_count{operation="readClient",status="4xx"}'] == 1
    assert found['steadfoot_request_seconds_count{operation="none",status="4xx"}'] == 1
    assert client_id not in _text(house.app)


def test_phones_disk_database_and_what_waits_are_read_when_asked(house: House, clock: StandingClock) -> None:
    phone = house.pair(house.new_client("Heard"))
    house.pair(house.new_client("Never heard"))
    phone.log("dreamt", {})
    phone.sync()
    clock.forward(hours=3)
    found = _metrics(house)
    assert found['steadfoot_clients_heard{within="1d"}'] == 1
    assert found['steadfoot_clients_heard{within="never"}'] == 1
    assert found['steadfoot_waiting{queue="kept_aside"}'] == 1
    assert found['steadfoot_waiting_oldest_seconds{queue="kept_aside"}'] == 3 * 3600
    assert found["steadfoot_database_bytes"] > 0
    assert found["steadfoot_disk_free_bytes"] > 0
    assert found["steadfoot_database_up"] == 1
    assert "steadfoot_backup_age_seconds" not in found, "no backup yet has no age"


def test_a_queue_that_another_step_names_is_read_with_the_others(house: House) -> None:
    queues = {"derived": lambda _session, _practice: Waiting(3, START)}
    house.app.state.installation.queues = queues
    house.app.state.installation.clock = lambda: START.replace(minute=2)
    assert _metrics(house)['steadfoot_waiting_oldest_seconds{queue="derived"}'] == 120


@pytest.mark.parametrize("header", ["X-Forwarded-For", "Forwarded", "Via"])
def test_counts_are_for_this_machine_and_not_for_what_comes_through_its_proxy(house: House, header: str) -> None:
    assert TestClient(house.app, client=HERE).get("/metrics").status_code == 200
    assert TestClient(house.app, client=HERE).get("/metrics", headers={header: "for=::1"}).status_code == 404
    assert TestClient(house.app, client=ELSEWHERE).get("/metrics").status_code == 404
    assert house.http.get("/metrics").status_code == 404, "a practitioner is no operator"


def test_a_scraper_elsewhere_needs_the_token(house: House) -> None:
    settings = house.app.state.settings
    house.app.state.settings = settings.model_copy(update={"metrics_token": SecretStr("scrape")})
    scraper = TestClient(house.app, client=ELSEWHERE)
    for given, status in (("Bearer scrape", 200), ("Bearer scrap", 404), ("scrape", 404), ("Bearer é", 404)):
        assert scraper.get("/metrics", headers={"Authorization": given.encode()}).status_code == status
    assert TestClient(house.app, client=HERE).get("/metrics").status_code == 404


def test_alive_and_ready_are_told_apart(house: House) -> None:
    visitor = TestClient(house.app, raise_server_exceptions=False)
    assert visitor.get("/healthz").json() == {"status": "alive"}
    assert visitor.get("/readyz").json() == {"status": "ready"}


def test_what_is_received_and_not_yet_worked_out_waits_until_somebody_asks(house: House) -> None:
    client_id = house.new_client("Emil")
    phone = house.pair(client_id)
    phone.log("note_written", {"text": "three stones"})
    phone.sync()
    assert _metrics(house)['steadfoot_waiting{queue="not_looked_at"}'] == 1
    assert _metrics(house)['steadfoot_waiting_oldest_seconds{queue="not_looked_at"}'] == 0
    house.get(f"/clients/{client_id}")
    assert _metrics(house)['steadfoot_waiting{queue="not_looked_at"}'] == 0
