"""What could be done about a finding, worked out on the client's current program. Nothing is changed by
it."""

from collections.abc import Collection
from dataclasses import dataclass

from steadfoot.programs import service as programs
from steadfoot.programs.plan import Version
from steadfoot.rules.findings import CARDS, Action, Finding
from steadfoot.rules.vocabulary import Kit, Region

_EFFECTS = {
    Action.HOLD: "Your message goes to the phone. The program stays as it is.",
    Action.MESSAGE: "Your message goes to the phone. The program stays as it is.",
}


@dataclass(frozen=True, slots=True)
class Suggestion:
    """An action with its effect on the phone, and the prescriptions that easing off would change."""

    action: Action
    effect: str
    keys: tuple[str, ...]


def suggestion_for(
    finding: Finding, prescriptions: Collection[str], version: Version | None, kit: Collection[Kit]
) -> Suggestion:
    """Answer what the finding's rule suggests, as far as the client's program allows it.

    Easing off takes the prescriptions that hurt; where none is known, all that load the place. On the lowest
    rung, or without a program, what is left is to hold.
    """
    action = CARDS[finding.rule].action
    if action is Action.EASE_OFF and version is not None:
        eased = eased_off(version, finding.subject, prescriptions, kit)
        if eased.moved:
            effect = f"The phone then shows: {'; '.join(eased.sentences)}."
            return Suggestion(action, effect, eased.moved)
    return Suggestion(Action.HOLD, _EFFECTS[Action.HOLD], ())


def eased_off(
    version: Version, subject: str, prescriptions: Collection[str], kit: Collection[Kit]
) -> programs.Adjusted:
    """Answer the program with the named prescriptions, else all that load the subject's place, one step
    easier."""
    named = programs.ease_off_client(version.content, kit, version.library, keys=prescriptions)
    if named.moved or named.at_the_end:
        return named
    return programs.ease_off_region(version.content, kit, version.library, region=Region(subject.partition(".")[0]))
