"""Bodies that are in order: those of the policy's tests, and those that need a secret or a state, which is made here.

No secret wears out: the clock stands, so that codes and challenges stay good, and each use of one is taken back.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from steadfoot.core.ids import uuid7
from tests.authenticator import Authenticator
from tests.builders import API, PASSWORD, House
from tests.conftest import START
from tests.features.access import Practice, bodies
from tests.features.checkins.bodies import FULLEST, LEAST
from tests.features.identity.second import add_passkey, add_totp, challenge, code_at, visitor

KINDS = [*LEAST.items(), *FULLEST.items()]
"""Kinds of entries with a body each."""
_ENTRIES = 3
"""What the furnished practice's phone has sent."""


@dataclass
class Ready:
    """What requests that are in order are made of."""

    bodies: dict[str, list[Any]]
    """For each operation that reads one."""
    clients: dict[str, str]
    """Whose things a body is about, where it fits one client only."""
    ids: dict[str, str]
    """What a path may name beside what the practice was furnished with."""


def batch(kinds: Sequence[tuple[str, Any]]) -> dict[str, Any]:
    """Answer the next entries of the practice's phone."""
    events = [
        {"id": uuid7(START), "seq": place, "kind": kind, "recorded_at": "2026-06-10T09:00:00+02:00", "body": body}
        for place, (kind, body) in enumerate(kinds, _ENTRIES + 1)
    ]
    return {"cursor": 0, "events": events}


def ready(practice: Practice, others: Sequence[str]) -> Ready:
    """Bring a furnished practice where every operation can be asked; ``others`` are ids of further clients."""
    house, found = practice.house, Ready({name: [body] for name, body in bodies().items()}, {}, {})
    found.bodies |= {
        "sync": [batch(KINDS[:1])],
        "pairPhone": [{"code": house.invite(practice.ids["client_id"])["code"]}],
    }
    _of_one_client(practice, found)
    _erasures(practice, found)
    _progression(house, others, found)
    _link(house, found)
    _second_factor(house, found)
    return found


def _of_one_client(practice: Practice, found: Ready) -> None:
    client_id = practice.ids["client_id"]
    digest = practice.house.get(f"/clients/{client_id}/readiness")["digest"]
    found.bodies["signReadiness"] = [{"verdict": "defer", "words": "w", "digest": digest}]
    found.clients["signReadiness"] = client_id


def _erasures(practice: Practice, found: Ready) -> None:
    """One client can be erased by their name; of another it is asked for, and can be taken back."""
    house, client_id = practice.house, practice.ids["client_id"]
    name, leaving = house.get(f"/clients/{client_id}")["display_name"], house.new_client("Vera Lindqvist")
    house.post(f"/clients/{leaving}/erasure", {"name": "Vera Lindqvist", "when": "later"})
    found.bodies["eraseClient"] = [{"name": name, "when": when} for when in ("now", "later")]
    found.clients |= {"eraseClient": client_id, "keepClient": leaving}


def _progression(house: House, others: Sequence[str], found: Ready) -> None:
    """A decision on what is suggested for a client; nothing is where no client has weeks behind them."""
    for client_id in others:
        shown = house.get(f"/clients/{client_id}/suggestions")
        able = [{"suggestion_id": one["id"], "action": "accept"} for one in shown["items"] if one["can_accept"]]
        if able:
            body = {"program_number": shown["program_number"], "decisions": able[:2]}
            found.bodies["decideProgressions"], found.clients["decideProgressions"] = [body], client_id
            return


def _link(house: House, found: Ready) -> None:
    invited = {"email": f"runa@{house.practice_id[-6:]}.example", "display_name": "Runa Moss", "role": "practitioner"}
    code = house.post("/practice/invitations", invited)["url"].partition("#join=")[2]
    found.bodies["readWelcome"] = [{"code": code}]
    found.bodies["joinPractice"] = [{"code": code, "display_name": "Runa Moss", "password": PASSWORD}]


def _second_factor(house: House, found: Ready) -> None:
    """Give the owner a passkey, an app for codes, one that waits for its first code, and recovery codes."""
    key = Authenticator()
    paper, secret = add_passkey(house, key), add_totp(house)[0]
    waiting = house.post("/account/totp")["secret"]
    right = {"email": house.get("/me")["practitioner"]["email"], "password": PASSWORD}
    shown = [{"code": code_at(house, secret, 1)}, {"recovery_code": paper[0]}]
    found.bodies |= {
        "challengeSignIn": [right],
        "signIn": [right | one for one in (*shown, {"passkey": key.answer(challenge(house.app, right))})],
        "signInWithPasskey": [{"passkey": key.answer(challenge(house.app))}],
        "activateTotp": [{"code": code_at(house, waiting)}],
    }
    _own_account(house, key, shown, found)
    _elsewhere(house, {**right, "recovery_code": paper[1]}, found)


def _own_account(house: House, key: Authenticator, shown: list[dict[str, Any]], found: Ready) -> None:
    options = house.post("/account/confirmation-challenges")["public_key"]
    alone = {"passkey": key.answer(options)}
    beside = [{"password": PASSWORD, **one} for one in (*shown, alone)]
    found.bodies["confirmSession"] = [alone, *beside]
    another = Authenticator().make(house.post("/account/passkey-challenges")["public_key"])
    found.bodies["addPasskey"] = [another]
    found.ids["passkey_id"] = house.get("/account")["passkeys"][0]["id"]


def _elsewhere(house: House, sign_in: dict[str, str], found: Ready) -> None:
    """Sign the owner in in another browser: the one there was ended as the second factor was set up."""
    visitor(house.app).post(f"{API}/sign-in", json=sign_in).raise_for_status()
    open_now = house.get("/account/sessions")["items"]
    found.ids["session_id"] = next(one["id"] for one in open_now if not one["here"])
