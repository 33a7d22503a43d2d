"""Made-up requests for every operation, lawful and not: no fault of the server, no answer unlike the document.

``python -m tests.made_up`` asks far more of them, of a practice with years behind it.
"""

import os
from datetime import date

import pytest
from fastapi.responses import JSONResponse

from steadfoot.core.problems import not_found
from steadfoot.identity import service as identity_service
from steadfoot.identity import sign_in_routes
from tests.features.access import Practice, practice
from tests.made_up.judging import try_out
from tests.made_up.world import world_of

__all__ = ["practice"]
EXAMPLES = 5


def _seed() -> int:
    """Another each day, and the one that is set to repeat a run."""
    return int(os.environ.get("STEADFOOT_SEED", date.today().toordinal()))


def test_no_made_up_request_fells_the_server(practice: Practice) -> None:
    world = world_of(practice)
    run = try_out(world, EXAMPLES, _seed())
    world.close()
    assert not run.faults, f"STEADFOOT_SEED={_seed()}\n" + "\n".join(run.faults[:40])
    assert run.never_done() == ["decideProgressions"], "nothing is suggested where nobody has weeks behind them"


@pytest.mark.parametrize("said", [{"id": 1}, {}])
def test_a_run_names_an_answer_that_is_not_what_the_document_says(
    practice: Practice, monkeypatch: pytest.MonkeyPatch, said: dict[str, object]
) -> None:
    """Guards the test above: a run that sees nothing would pass it."""
    world = world_of(practice)
    monkeypatch.setattr(sign_in_routes, "me_of", lambda _access: JSONResponse(said))
    run = try_out(world, 1, 1, only="readMe")
    world.close()
    assert [line for line in run.faults if line.startswith("readMe as practitioner: ")]


def test_a_run_names_what_was_only_ever_refused(practice: Practice, monkeypatch: pytest.MonkeyPatch) -> None:
    def refuse(_access: object) -> None:
        raise not_found("me")

    world = world_of(practice)
    monkeypatch.setattr(sign_in_routes, "me_of", refuse)
    run = try_out(world, 1, 1, only="readM")
    world.close()
    assert run.never_done() == ["readMe"]


def test_a_run_names_the_request_that_felled_the_server(practice: Practice, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(identity_service, "clients_of", lambda *_given: 1 / 0)
    world = world_of(practice)
    run = try_out(world, 1, 1, only="listClients")
    world.close()
    assert "500: ZeroDivisionError" in run.faults[0]
    assert "GET https://testserver/api/v1/clients" in run.faults[0]
