"""Every query of programs, each within a practice, and the templates that come with the program."""

from collections.abc import Sequence
from functools import cache
from importlib.resources import files

from sqlmodel import Session, col

from steadfoot.core.database import scoped
from steadfoot.programs.schemas import TemplateFile
from steadfoot.programs.tables import ProgramDraft, ProgramVersion, Template


def versions(session: Session, practice_id: str, client_id: str) -> Sequence[ProgramVersion]:
    """Answer a client's versions by number, oldest first."""
    query = scoped(ProgramVersion, practice_id).where(ProgramVersion.client_id == client_id)
    return session.exec(query.order_by(col(ProgramVersion.number))).all()


def practice_versions(session: Session, practice_id: str) -> Sequence[ProgramVersion]:
    """Answer the versions of all clients of the practice, oldest first."""
    return session.exec(scoped(ProgramVersion, practice_id).order_by(col(ProgramVersion.number))).all()


def version(session: Session, practice_id: str, client_id: str, number: int) -> ProgramVersion | None:
    """Answer one version of a client by its number."""
    query = scoped(ProgramVersion, practice_id).where(
        ProgramVersion.client_id == client_id, ProgramVersion.number == number
    )
    return session.exec(query).first()


def newest(session: Session, practice_id: str, client_id: str) -> ProgramVersion | None:
    """Answer a client's newest version."""
    query = scoped(ProgramVersion, practice_id).where(ProgramVersion.client_id == client_id)
    return session.exec(query.order_by(col(ProgramVersion.number).desc()).limit(1)).first()


def draft(session: Session, practice_id: str, client_id: str) -> ProgramDraft | None:
    """Answer a client's draft."""
    return session.exec(scoped(ProgramDraft, practice_id).where(ProgramDraft.client_id == client_id)).first()


def templates(session: Session, practice_id: str) -> Sequence[Template]:
    """Answer the practice's own templates by name."""
    return session.exec(scoped(Template, practice_id).order_by(col(Template.name), col(Template.id))).all()


def template(session: Session, practice_id: str, template_id: str) -> Template | None:
    """Answer one of the practice's own templates."""
    return session.exec(scoped(Template, practice_id).where(Template.id == template_id)).first()


@cache
def shipped_templates() -> dict[str, TemplateFile]:
    """Answer the templates that come with the program by their code."""
    folder = files("steadfoot.programs") / "templates"
    found = sorted((file for file in folder.iterdir() if file.name.endswith(".json")), key=lambda file: file.name)
    read = [TemplateFile.model_validate_json(file.read_bytes()) for file in found]
    return {one.code: one for one in read}
