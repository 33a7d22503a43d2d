"""Every query of a practice's own movements."""

from collections.abc import Sequence

from sqlmodel import Session, col, select

from steadfoot.core.database import scoped
from steadfoot.exercises.tables import OwnExercise, OwnExerciseVersion


def exercises(session: Session, practice_id: str) -> Sequence[OwnExercise]:
    """Answer the practice's own movements, oldest first."""
    return session.exec(scoped(OwnExercise, practice_id).order_by(col(OwnExercise.created_at))).all()


def exercise(session: Session, practice_id: str, code: str) -> OwnExercise | None:
    """Answer one of the practice's own movements."""
    return session.exec(scoped(OwnExercise, practice_id).where(OwnExercise.code == code)).first()


def versions(session: Session, practice_id: str) -> Sequence[OwnExerciseVersion]:
    """Answer all versions of the practice's own movements, oldest first."""
    return session.exec(scoped(OwnExerciseVersion, practice_id).order_by(col(OwnExerciseVersion.number))).all()


def newest(session: Session, practice_id: str, code: str) -> OwnExerciseVersion | None:
    """Answer the newest version of a movement."""
    query = scoped(OwnExerciseVersion, practice_id).where(OwnExerciseVersion.code == code)
    return session.exec(query.order_by(col(OwnExerciseVersion.number).desc()).limit(1)).first()


def with_drawing(session: Session, drawing: str) -> OwnExerciseVersion | None:
    """Answer the version whose drawings have this key: the key itself is the right to see them."""
    return session.exec(select(OwnExerciseVersion).where(OwnExerciseVersion.drawing == drawing)).first()
