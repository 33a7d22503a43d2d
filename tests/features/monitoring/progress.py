"""What tests of progress begin with: someone who trained, their suggestions, and decisions on them."""

from datetime import timedelta

from tests.features.monitoring.scenes import MONDAY, scene

OVER = 12
"""Two above the goal of 8 to 10."""


def trained(here, *amounts, first=MONDAY, effort=4, prescription="p1", every=2, **more):
    """One session every second day, its last set with so many repetitions."""
    for step, amount in enumerate(amounts):
        day = first + timedelta(days=every * step)
        for turn in (1, 2, 3):
            body = {"planned_id": f"{day}.1", "prescription": prescription, "round": turn, "reps": amount, **more}
            here.phone.log("set_ticked", {name: value for name, value in body.items() if value}, here.at(day))
        here.finish(day, effort=effort)
    here.phone.sync()


def suggestions(here):
    return here.house.get(f"/clients/{here.client_id}/suggestions")


def first(here):
    return suggestions(here)["items"][0]


def decide(here, *decisions, number=1, status=201, **more):
    body = {"program_number": number, "decisions": list(decisions), **more}
    return here.house.post(f"/clients/{here.client_id}/progressions", body, status)


def accepting(item, **more):
    return {"suggestion_id": item["id"], "action": "accept", **more}


def declining(item, reason="Knee first."):
    return {"suggestion_id": item["id"], "action": "decline", "reason": reason}


def current(here):
    return here.house.get(f"/clients/{here.client_id}/programs/current")


def ready(house, **more):
    here = scene(house, **more)
    trained(here, OVER, OVER + 1)
    return here
