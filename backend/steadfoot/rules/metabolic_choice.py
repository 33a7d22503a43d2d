"""Which model answers, why, and how far the models disagree: a band, not one number that pretends to know."""

from dataclasses import dataclass
from typing import Final

from steadfoot.rules.metabolic import (
    LCDA_ERROR_W_PER_KG,
    WATTS,
    Effort,
    Model,
    OutsideModel,
)

_WHY: Final = {
    Model.LCDA: "Chosen: lcda, because it covers pack and slope in one smooth curve and holds here.",
    Model.PANDOLF: "Chosen: pandolf, because lcda does not hold here",
    Model.MINETTI: "Chosen: minetti, because lcda and pandolf do not hold here",
}
SOURCES: Final = {
    Model.LCDA: ("looney-2022", "looney-2019"),
    Model.PANDOLF: ("pandolf-1977",),
    Model.MINETTI: ("minetti-2002",),
}
DOWNHILL_SOURCE: Final = "santee-2003"


class NoModelHolds(ValueError):
    """None of the models holds; the sentence says what each one's range is."""

    def __init__(self, refused: list[OutsideModel]) -> None:
        self.valid = False
        super().__init__("No model holds here: " + " ".join(str(one) for one in refused))


@dataclass(frozen=True, slots=True)
class Cost:
    """Watts by the model that answered, the band of all that hold, and what to know about it."""

    watts: float
    low_w: float
    high_w: float
    model: Model
    warnings: tuple[str, ...]


def cost(effort: Effort, model: Model | None = None) -> Cost:
    """Answer the cost of walking.

    The band runs from the lowest to the highest of all models that hold, and is never narrower than the
    published error of lcda to both sides of the answer.

    Parameters:
        effort: who walks how.
        model: the model asked for; None to choose the first that holds of lcda, pandolf, minetti.

    Raises:
        OutsideModel: the model asked for does not hold here.
        NoModelHolds: none does.
    """
    found, refused = _all(effort)
    if model is not None and model not in found:
        raise refused[model]
    if not found:
        raise NoModelHolds(list(refused.values()))
    chosen = model or next(iter(found))
    watts, error = found[chosen], LCDA_ERROR_W_PER_KG * effort.body_mass_kg
    low, high = min(*found.values(), watts - error), max(*found.values(), watts + error)
    why = () if model else (_why(chosen, refused),)
    return Cost(watts, max(low, 0.0), high, chosen, (*why, *_cautions(chosen, effort, found)))


def _all(effort: Effort) -> tuple[dict[Model, float], dict[Model, OutsideModel]]:
    found: dict[Model, float] = {}
    refused: dict[Model, OutsideModel] = {}
    for model, watts in WATTS.items():
        try:
            found[model] = watts(effort)
        except OutsideModel as error:
            refused[model] = error
    return found, refused


def _why(chosen: Model, refused: dict[Model, OutsideModel]) -> str:
    return _WHY[chosen] if not refused or chosen is Model.LCDA else f"{_WHY[chosen]}: {refused[Model.LCDA]}"


def _cautions(chosen: Model, effort: Effort, found: dict[Model, float]) -> list[str]:
    told = [f"The models that hold say: {', '.join(f'{name} {watts:.0f} W' for name, watts in found.items())}."]
    if chosen is Model.PANDOLF and effort.grade_percent < 0:
        told.append("Downhill with the correction of Santee, known from memory only.")
    if chosen is Model.PANDOLF and effort.pack_kg > 0:
        told.append("Pandolf is known to say too little for heavy packs.")
    if chosen is Model.MINETTI:
        told.append("Measured on elite mountain runners: most people need more.")
    if chosen is Model.MINETTI and effort.pack_kg > 0:
        told.append("Measured without a pack: the pack is counted here as body mass.")
    if chosen is Model.LCDA and effort.grade_percent:
        told.append("Pack and slope together were not studied: the two are joined as one public program does.")
    return told
