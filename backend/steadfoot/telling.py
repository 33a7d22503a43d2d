"""What went wrong with settings, database or disk, in a sentence for whoever typed the command."""

from pydantic import ValidationError
from sqlalchemy.exc import ArgumentError, OperationalError

from steadfoot.core.settings import Settings
from steadfoot.serving import NoDatabase


def _of_settings(error: ValidationError) -> str:
    """Name each setting and what is wrong with it, never its value: it may hold a password."""
    prefix = Settings.model_config["env_prefix"]
    found = []
    for one in error.errors(include_input=False):
        name = "".join(f"{prefix}{part}".upper() + ": " for part in one["loc"])
        found.append(name + one["msg"].removeprefix("Value error, "))
    return f"{'; '.join(found)}. DEVELOPERS.md says what each setting may be."


def sentence_for(error: Exception) -> str | None:
    """Answer a sentence for what an operator can mend; None for everything else."""
    if isinstance(error, NoDatabase):
        return str(error)
    if isinstance(error, ValidationError) and error.title == Settings.__name__:
        return _of_settings(error)
    if isinstance(error, ArgumentError):
        return "STEADFOOT_DATABASE_URL is no address of a database."
    if isinstance(error, OperationalError):
        return f"The database cannot be used: {' '.join(str(error.orig).split())}"
    if isinstance(error, OSError) and error.filename is not None:
        return f"{error.filename}: {error.strerror}."
    return None
