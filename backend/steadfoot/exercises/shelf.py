"""The movements that a practice can choose from: the library and its own, as they are or as they were."""

import json
from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from functools import lru_cache

from sqlmodel import Session

from steadfoot.exercises import own_store
from steadfoot.exercises.own_schemas import OwnOut
from steadfoot.exercises.schemas import Exercise, ExerciseText, OwnMark, Variant
from steadfoot.exercises.service import LIBRARY, Library
from steadfoot.exercises.tables import OwnExerciseVersion

OWN = "own-"
"""How the codes of practices' own movements begin, and the keys of their drawings."""
_KEPT = 512


def is_own(code: str) -> bool:
    """Answer whether a code is that of a practice's own movement, or a key of its drawings."""
    return code.startswith(OWN)


@lru_cache(maxsize=_KEPT)
def _read(text: str) -> ExerciseText:
    return ExerciseText.model_validate_json(text)


def drawn_variants(version: OwnExerciseVersion) -> set[str]:
    """Answer the variants with a drawing that has no findings."""
    findings = json.loads(version.findings)
    return {variant for variant in json.loads(version.poses) if not findings.get(variant)}


def entry_of(version: OwnExerciseVersion, *, archived: bool) -> Exercise:
    """Answer a version as the library tells its movements."""
    text, drawn = _read(version.text), drawn_variants(version)
    ladder = [Variant(**dict(rung), drawn=rung.variant in drawn) for rung in text.ladder]
    own = OwnMark(version=version.number, drawing=version.drawing, archived=archived)
    return Exercise(**dict(text) | {"ladder": ladder}, code=version.code, own=own)


def out_of(version: OwnExerciseVersion, *, archived: bool) -> OwnOut:
    """Answer a version to go on with."""
    return OwnOut.model_validate(
        {
            "code": version.code,
            "version": version.number,
            "saved_at": version.saved_at,
            "archived": archived,
            "text": _read(version.text),
            "poses": json.loads(version.poses),
            "findings": json.loads(version.findings),
        }
    )


@dataclass(frozen=True)
class Shelf:
    """A practice's own movements: every version of each, oldest first, and which are archived."""

    versions: Mapping[str, Sequence[OwnExerciseVersion]]
    archived: frozenset[str]

    def library(self, at: datetime | None = None) -> Library:
        """Answer the library with the practice's own movements, as they are or as they were at an instant.

        One that is younger than the instant is told by its first version: a program cannot be without words.
        """
        if not self.versions:
            return LIBRARY
        chosen = {code: self.version(code, at) for code in self.versions}
        own = {code: entry_of(one, archived=code in self.archived) for code, one in chosen.items()}
        return {**LIBRARY, **own}

    def version(self, code: str, at: datetime | None = None) -> OwnExerciseVersion:
        """Answer the version of a movement at an instant; the newest without one."""
        known = self.versions[code]
        then = [one for one in known if at is None or one.saved_at <= at]
        return then[-1] if then else known[0]


def shelf_of(session: Session, practice_id: str) -> Shelf:
    """Answer a practice's own movements."""
    found: dict[str, list[OwnExerciseVersion]] = defaultdict(list)
    for version in own_store.versions(session, practice_id):
        found[version.code].append(version)
    archived = {one.code for one in own_store.exercises(session, practice_id) if one.archived_at} if found else set()
    return Shelf(dict(found), frozenset(archived))


def library_of(session: Session, practice_id: str, at: datetime | None = None) -> Library:
    """Answer every movement that a practice has, the library's and its own, as now or as at an instant."""
    return shelf_of(session, practice_id).library(at)
