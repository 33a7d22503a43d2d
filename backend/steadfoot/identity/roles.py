"""Roles, and which operations each may ask: decided here for the whole API, by the names in the OpenAPI document."""

from enum import StrEnum

from steadfoot.core.problems import Forbidden


class Role(StrEnum):
    """What a person of the practice may do."""

    OWNER = "owner"
    PRACTITIONER = "practitioner"
    READ_ONLY = "read_only"


_SAFE_METHODS = frozenset({"GET", "HEAD", "OPTIONS"})
OWN_ACCOUNT = frozenset(
    {
        "signOut",
        "confirmSession",
        "challengeConfirmation",
        "changePassword",
        "endSession",
        "endSessions",
        "beginTotp",
        "activateTotp",
        "removeTotp",
        "renewRecoveryCodes",
        "beginPasskey",
        "addPasskey",
        "removePasskey",
    }
)
"""How someone signs in is their own, whatever their role."""
STORES_NOTHING = frozenset(
    {
        "checkProgram",
        "layOutSeason",
        "layOutTemplate",
        "planSeason",
        "previewExercise",
        "printClassSheet",
        "readRoute",
        "resumeSeason",
    }
)
"""Posted because the question is long: the answer is computed and nothing is written."""
OWNER_ONLY = frozenset(
    {
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
)
SETTING_UP = OWN_ACCOUNT | {"readMe", "readAccount", "listSessions"}
"""All that someone may ask who still lacks the second factor that their practice requires."""


def refuse_beyond(role: Role, method: str, operation: str) -> None:
    """Let pass what the role may ask.

    Raises:
        Forbidden: ``read-only`` or ``owner-only``.
    """
    if operation in OWNER_ONLY and role is not Role.OWNER:
        raise Forbidden("owner-only", "Only an owner of the practice can do this.")
    may_write = role is not Role.READ_ONLY or operation in OWN_ACCOUNT | STORES_NOTHING
    if method not in _SAFE_METHODS and not may_write:
        raise Forbidden(
            "read-only", "You can see everything here and change nothing. An owner can give you more rights."
        )


def refuse_until_set_up(operation: str) -> None:
    """Let pass what someone may ask who has no second factor although the practice requires one.

    Raises:
        Forbidden: ``second-factor-required``.
    """
    if operation not in SETTING_UP:
        detail = "Your practice requires a second factor. Set one up under Account and security first."
        raise Forbidden("second-factor-required", detail)
