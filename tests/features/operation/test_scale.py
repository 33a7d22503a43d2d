"""What is computed on paper follows from its named numbers, and its script still finds what it measures with."""

from deploy.scale import CASELOAD_CPU_MS, CASELOAD_PEOPLE, Cost, _needs

COST = Cost(bytes_an_event=1000, single_ms=2.0, batched_ms=0.1)


def test_a_practice_of_one_needs_what_its_thirty_clients_send() -> None:
    clients, events, calls, _, storage, taking_in, _ = _needs(1, 1, COST)
    assert (clients, events) == ("30", "360")
    assert float(calls) == round(30 * 10 * 0.15 * 3 / 3600, 2)
    assert storage == f"{360 * 365 * 1000 / 1e9:.1f} GB"
    assert float(taking_in) == 0.0


def test_news_in_quick_succession_is_asked_about_together() -> None:
    """A practice with two syncs a second: a page asks once a minute and once in ten seconds, not twice a second."""
    practitioners, practices = 533, 1
    *_, reads, _storage, _taking_in, showing = _needs(practitioners, practices, COST)
    asked = practitioners * 0.5 * (1 / 60 + 1 / 10)
    assert float(reads.replace(",", "")) == round(asked, 2)
    cores = asked * CASELOAD_CPU_MS * practitioners * 30 / CASELOAD_PEOPLE / 1000 / 0.5
    assert abs(float(showing.replace(",", "")) - cores) < 0.01
