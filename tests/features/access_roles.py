"""The policy of roles: what is an owner's, what is everyone's own account, what who only reads may ask by POST."""

from fastapi.testclient import TestClient

from steadfoot.core.ids import uuid7
from steadfoot.identity.tables import Passkey
from tests.builders import API, PASSWORD, House

OWNERS_ONLY = {
    "listPeople",
    "inviteColleague",
    "withdrawColleague",
    "changeColleague",
    "resetSecondFactor",
    "welcomeBack",
    "changePracticeSecurity",
    "changePracticeWords",
    "readAudit",
    "verifyAudit",
    "exportAuditTable",
    "exportAuditChain",
    "eraseClient",
    "keepClient",
    "setRetention",
    "readInstallation",
}
OWN_ACCOUNT = {
    "confirmSession",
    "challengeConfirmation",
    "changePassword",
    "beginTotp",
    "activateTotp",
    "removeTotp",
    "renewRecoveryCodes",
    "beginPasskey",
    "addPasskey",
    "removePasskey",
    "endSession",
    "endSessions",
}
"""What everyone may do to their own account, in whatever role."""
STORES_NOTHING = {
    "checkProgram",
    "layOutSeason",
    "layOutTemplate",
    "planSeason",
    "previewExercise",
    "printClassSheet",
    "readRoute",
    "resumeSeason",
}
"""Asked by POST, but only computed: a person who may only read may ask."""


def _other_session(house: House) -> str:
    """Answer a session of the owner in another browser: whoever walks the document must not sign themselves out."""
    visitor = TestClient(house.app, base_url=str(house.http.base_url))
    visitor.post(f"{API}/sign-in", json={"email": house.get("/account")["email"], "password": PASSWORD})
    return str(next(one["id"] for one in house.get("/account/sessions")["items"] if not one["here"]))


def security_ids(house: House, colleague_id: str, marker: str) -> dict[str, str]:
    """Answer ids of a session, a link, a colleague, and of a passkey of that colleague."""
    link = {
        "email": f"ada@{marker.lower()}.{house.practice_id[-6:]}.example",
        "display_name": marker,
        "role": "practitioner",
    }
    row = Passkey(
        id=uuid7(house.clock()),
        practice_id=house.practice_id,
        practitioner_id=colleague_id,
        credential_id=colleague_id,
        public_key="",
        sign_count=0,
        name=marker,
        created_at=house.clock(),
        last_used_at=None,
    )
    with house.app.state.database.write() as session:
        session.add(row)
    return {
        "session_id": _other_session(house),
        "colleague_invitation_id": house.post("/practice/invitations", link)["id"],
        "practitioner_id": colleague_id,
        "passkey_id": row.id,
    }
