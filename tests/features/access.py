"""The policy: who may ask each operation of the OpenAPI document, and a practice whose walls are tested.

``POLICY`` has one row for each operation. A new operation without a row fails before it is ever asked.
"""

from dataclasses import dataclass
from typing import Any

import httpx
import pytest
from fastapi import FastAPI
from fastapi.testclient import TestClient

from tests.builders import API, HOST, PASSWORD, House, Phone, circuit, content, season_plan, trip
from tests.conftest import START
from tests.features.access_roles import security_ids
from tests.features.document import Operation, operations
from tests.features.exercises.own import STANDING, own_body

OPEN, BY_COOKIE, BY_PHONE, BY_EITHER = "open", "cookie", "phone", "either"
"""Nobody need sign in; a practitioner's session; a phone's token; one of the two."""
NONE, FOUND, OWN = "none", "not found", "own"
"""For another practice: no id in the path; this practice's id is not found there; only its own rows are answered."""
MARKER = "Marker-7f3a"
"""In every text of the practice whose walls are tested."""

POLICY: dict[str, tuple[str, str]] = {
    "signIn": (OPEN, NONE),
    "signOut": (OPEN, NONE),
    "signInWithPasskey": (OPEN, NONE),
    "challengeSignIn": (OPEN, NONE),
    "readWelcome": (OPEN, NONE),
    "joinPractice": (OPEN, NONE),
    "pairPhone": (OPEN, NONE),
    "isAlive": (OPEN, NONE),
    "isReady": (OPEN, NONE),
    "readMetrics": (OPEN, NONE),
    "readInstallation": (BY_COOKIE, OWN),
    "readMe": (BY_COOKIE, OWN),
    "readAccount": (BY_COOKIE, OWN),
    "confirmSession": (BY_COOKIE, NONE),
    "challengeConfirmation": (BY_COOKIE, NONE),
    "changePassword": (BY_COOKIE, NONE),
    "beginTotp": (BY_COOKIE, NONE),
    "activateTotp": (BY_COOKIE, NONE),
    "removeTotp": (BY_COOKIE, NONE),
    "renewRecoveryCodes": (BY_COOKIE, NONE),
    "beginPasskey": (BY_COOKIE, NONE),
    "addPasskey": (BY_COOKIE, NONE),
    "removePasskey": (BY_COOKIE, FOUND),
    "listSessions": (BY_COOKIE, OWN),
    "endSession": (BY_COOKIE, FOUND),
    "endSessions": (BY_COOKIE, NONE),
    "listPeople": (BY_COOKIE, OWN),
    "inviteColleague": (BY_COOKIE, NONE),
    "withdrawColleague": (BY_COOKIE, FOUND),
    "changeColleague": (BY_COOKIE, FOUND),
    "resetSecondFactor": (BY_COOKIE, FOUND),
    "welcomeBack": (BY_COOKIE, FOUND),
    "changePracticeSecurity": (BY_COOKIE, NONE),
    "changePracticeWords": (BY_COOKIE, NONE),
    "listen": (BY_COOKIE, NONE),
    "listClients": (BY_COOKIE, OWN),
    "createClient": (BY_COOKIE, NONE),
    "readClient": (BY_COOKIE, FOUND),
    "updateClient": (BY_COOKIE, FOUND),
    "inviteClient": (BY_COOKIE, FOUND),
    "listDevices": (BY_COOKIE, FOUND),
    "revokeDevice": (BY_COOKIE, FOUND),
    "listWaitingPairings": (BY_COOKIE, OWN),
    "confirmPairing": (BY_COOKIE, FOUND),
    "refusePairing": (BY_COOKIE, FOUND),
    "succeedDevice": (BY_PHONE, NONE),
    "listScreeningQuestions": (BY_EITHER, NONE),
    "listScreenings": (BY_COOKIE, FOUND),
    "screenClient": (BY_COOKIE, FOUND),
    "recordClearance": (BY_COOKIE, FOUND),
    "listTests": (BY_COOKIE, NONE),
    "readClientTests": (BY_COOKIE, FOUND),
    "recordTest": (BY_COOKIE, FOUND),
    "withdrawTest": (BY_COOKIE, FOUND),
    "rateActivities": (BY_COOKIE, FOUND),
    "withdrawRating": (BY_COOKIE, FOUND),
    "sync": (BY_PHONE, NONE),
    "listExercises": (BY_EITHER, OWN),
    "readExercise": (BY_EITHER, NONE),
    "drawExercise": (OPEN, NONE),
    "listDrawings": (OPEN, NONE),
    "createOwnExercise": (BY_COOKIE, NONE),
    "readOwnExercise": (BY_COOKIE, FOUND),
    "changeOwnExercise": (BY_COOKIE, FOUND),
    "archiveOwnExercise": (BY_COOKIE, FOUND),
    "previewExercise": (BY_COOKIE, NONE),
    "readPoses": (BY_COOKIE, NONE),
    "listTemplates": (BY_COOKIE, OWN),
    "createTemplate": (BY_COOKIE, NONE),
    "updateTemplate": (BY_COOKIE, FOUND),
    "deleteTemplate": (BY_COOKIE, FOUND),
    "layOutTemplate": (BY_COOKIE, FOUND),
    "readDraft": (BY_COOKIE, FOUND),
    "saveDraft": (BY_COOKIE, FOUND),
    "dropDraft": (BY_COOKIE, FOUND),
    "checkProgram": (BY_COOKIE, FOUND),
    "publishProgram": (BY_COOKIE, FOUND),
    "listPrograms": (BY_COOKIE, FOUND),
    "readCurrentProgram": (BY_COOKIE, FOUND),
    "readProgram": (BY_COOKIE, FOUND),
    "printSheet": (BY_COOKIE, FOUND),
    "printSheetWithInvitation": (BY_COOKIE, FOUND),
    "printClassSheet": (BY_COOKIE, NONE),
    "readSeasonStart": (BY_COOKIE, FOUND),
    "planSeason": (BY_COOKIE, FOUND),
    "resumeSeason": (BY_COOKIE, FOUND),
    "layOutSeason": (BY_COOKIE, FOUND),
    "readRoute": (BY_COOKIE, FOUND),
    "readTrip": (BY_COOKIE, FOUND),
    "saveTrip": (BY_COOKIE, FOUND),
    "removeTrip": (BY_COOKIE, FOUND),
    "readDemand": (BY_COOKIE, FOUND),
    "readTimeline": (BY_COOKIE, FOUND),
    "listRefusedEvents": (BY_COOKIE, FOUND),
    "retryRefusedEvent": (BY_COOKIE, FOUND),
    "readCaseload": (BY_COOKIE, OWN),
    "readAdherence": (BY_COOKIE, FOUND),
    "readOverview": (BY_COOKIE, FOUND),
    "readHistory": (BY_PHONE, NONE),
    "listSuggestions": (BY_COOKIE, FOUND),
    "decideProgressions": (BY_COOKIE, FOUND),
    "readLoad": (BY_COOKIE, FOUND),
    "readReadiness": (BY_COOKIE, FOUND),
    "signReadiness": (BY_COOKIE, FOUND),
    "listAlternatives": (BY_EITHER, NONE),
    "listSources": (BY_EITHER, NONE),
    "listFlags": (BY_COOKIE, OWN),
    "decideFlag": (BY_COOKIE, FOUND),
    "listMessages": (BY_COOKIE, FOUND),
    "sendMessage": (BY_COOKIE, FOUND),
    "readAudit": (BY_COOKIE, OWN),
    "verifyAudit": (BY_COOKIE, NONE),
    "exportAuditTable": (BY_COOKIE, OWN),
    "exportAuditChain": (BY_COOKIE, OWN),
    "exportRecord": (BY_COOKIE, FOUND),
    "exportOwnRecord": (BY_PHONE, NONE),
    "readErasure": (BY_COOKIE, FOUND),
    "eraseClient": (BY_COOKIE, FOUND),
    "keepClient": (BY_COOKIE, FOUND),
    "readRetention": (BY_COOKIE, OWN),
    "setRetention": (BY_COOKIE, NONE),
}

_NO_PASSKEY = {"id": "AAAA", "client_data": "AAAA", "authenticator_data": "AAAA", "signature": "AAAA"}

_WELL = {
    "regular_activity": True,
    "known_disease": False,
    "signs_or_symptoms": False,
    "intensity": "light_to_moderate",
}


def _template(name: str) -> dict[str, Any]:
    return {"name": name, "sessions": [circuit()], "weeks": [[{"weekday": "mon", "session": "s1"}]]}


def bodies() -> dict[str, Any]:
    """A body that is in order, where an operation reads one before it looks at the path."""
    program = content(START.date())
    season = season_plan()
    pause = {"reason": "illness", "since": "2026-06-20", "resume_on": "2026-07-01"}
    return {
        "planSeason": {"season": season},
        "resumeSeason": {"season": season, **pause},
        "layOutSeason": {"season": season, "content": program, "circuits": ["s1"], "trip_name": "Harrowcomb traverse"},
        "createClient": {"display_name": "Somebody"},
        "updateClient": {"note": "changed from outside"},
        "inviteClient": {"delivery": "link"},
        "createOwnExercise": own_body("Theirs"),
        "changeOwnExercise": own_body("Taken over"),
        "archiveOwnExercise": {"archived": True},
        "previewExercise": {"movement": STANDING, "key": "up", "view": "side"},
        "createTemplate": _template("Ours"),
        "updateTemplate": {"name": "Taken over"},
        "layOutTemplate": {"template": "descent-legs", "starts_on": "2026-06-15", "ends_on": "2026-07-26"},
        "saveDraft": {"content": program},
        "checkProgram": {"content": program},
        "publishProgram": {"content": program},
        "screenClient": {"answers": _WELL},
        "printClassSheet": {"title": "Steps", "movements": [{"exercise": "step-down", "variant": "rail"}]},
        "saveTrip": trip("Ours"),
        "signReadiness": {"verdict": "defer", "words": "from outside", "digest": "0" * 64},
        "recordClearance": {"given_by": "Somebody"},
        "recordTest": {"code": "chair-stand-30s", "value": 12},
        "rateActivities": {"activities": [{"name": "stairs", "rating": 4}]},
        "decideFlag": {"action": "acknowledge"},
        "decideProgressions": {
            "program_number": 1,
            "decisions": [{"suggestion_id": "0" * 32, "action": "decline", "reason": "from outside"}],
        },
        "sendMessage": {"text": "from outside"},
        "eraseClient": {"name": "Somebody", "when": "now"},
        "setRetention": {"years": 10},
        "signIn": {"email": "a@b.example", "password": "x"},
        "signInWithPasskey": {"passkey": _NO_PASSKEY},
        "readWelcome": {"code": "x"},
        "joinPractice": {"code": "x", "display_name": "Somebody", "password": PASSWORD},
        "confirmSession": {"password": PASSWORD},
        "changePassword": {"current": PASSWORD, "new": PASSWORD},
        "activateTotp": {"code": "000000"},
        "addPasskey": {"name": "Key", "id": "AAAA", "client_data": "AAAA", "attestation": "AAAA"},
        "inviteColleague": {"email": "new@thornwater.example", "display_name": "Somebody", "role": "practitioner"},
        "changeColleague": {"role": "read_only"},
        "changePracticeSecurity": {"requires_second_factor": False},
        "changePracticeWords": {"emergency_text": "from outside", "reply_time_text": "from outside"},
        "pairPhone": {"code": "x"},
    }


@dataclass
class Practice:
    """A practice whose every text is marked, with the ids that its paths need."""

    house: House
    phone: Phone
    ids: dict[str, str]

    def ask(self, http: httpx.Client, operation: Operation, **headers: str) -> httpx.Response:
        """Ask an operation about this practice's things, with whatever rights ``http`` has."""
        path = operation.path.format(**self.ids)
        body = None if operation.method == "GET" else bodies().get(operation.name)
        return http.request(operation.method, path, json=body, headers=headers)


@pytest.fixture
def practice(house: House) -> Practice:
    """A practice with a client, a program, a draft, a flag, messages and a phone that waits."""
    return furnished(house)


def furnished(house: House) -> Practice:
    """Give a practice one of everything that a path can name."""
    client_id = house.new_client(f"Emil {MARKER}", note=MARKER)
    program = {**content(START.date()), "title": MARKER}
    house.publish(client_id, program)
    house.http.put(f"{API}/clients/{client_id}/programs/draft", json={"content": program})
    template = house.post("/templates", _template(MARKER))
    own = house.post("/exercises/own", own_body(MARKER))
    house.post(f"/clients/{client_id}/messages", {"text": MARKER})
    house.post(f"/clients/{client_id}/screenings", {"answers": _WELL})
    house.post(f"/clients/{client_id}/clearances", {"given_by": MARKER, "note": MARKER})
    result = house.post(f"/clients/{client_id}/tests", {"code": "chair-stand-30s", "value": 14, "note": MARKER})
    rating = house.post(f"/clients/{client_id}/functional-scales", {"activities": [{"name": MARKER, "rating": 3}]})
    house.http.put(f"{API}/clients/{client_id}/trip", json=trip(MARKER))
    seen = house.get(f"/clients/{client_id}/readiness")["digest"]
    house.post(f"/clients/{client_id}/readiness-notes", {"verdict": "defer", "words": MARKER, "digest": seen})
    phone = house.pair(client_id)
    phone.log("note_written", {"text": MARKER})
    phone.log("symptom_reported", {"symptom": "chest_pain", "note": MARKER})
    bad = phone.log("dreamt", {"text": MARKER})
    phone.sync()
    visitor = TestClient(house.app, base_url=HOST)
    waiting = visitor.post(f"{API}/pairings", json={"code": house.invite(client_id, "link")["code"]}).json()
    flag = house.get("/flags")["items"][0]
    colleague = house.colleague("practitioner", f"lia@{MARKER.lower()}.{house.practice_id[-6:]}.example")
    owner = security_ids(house, colleague.practitioner_id, MARKER)
    ids = {
        "client_id": client_id,
        "device_id": phone.device_id,
        "pairing_id": waiting["pairing_id"],
        "event_id": bad["id"],
        "flag_id": flag["id"],
        "template_id": template["id"],
        "own_code": own["code"],
        "result_id": result["id"],
        "scale_id": rating["id"],
        "number": "1",
        "code": "step-down",
        **owner,
    }
    return Practice(house, phone, ids)


def named(app: FastAPI, *who: str) -> list[Operation]:
    return [operation for operation in operations(app) if POLICY[operation.name][0] in who]


def nobody(app: FastAPI) -> TestClient:
    return TestClient(app, base_url=HOST)
