"""Settings as the command line changes them."""

import os
from pathlib import Path
from typing import Any

from steadfoot.core.settings import Settings

_DEMO_DATA = Path("steadfoot-demo")


def settings_with(host: str | None, port: int | None) -> Settings:
    """Answer the environment's settings, with what the command line says on top."""
    given: dict[str, Any] = {name: value for name, value in (("host", host), ("port", port)) if value is not None}
    return Settings(**given)


def demo_settings(host: str | None, port: int | None) -> Settings:
    """Answer settings for the demo: a folder of its own and always its own SQLite file."""
    settings = settings_with(host, port)
    folder = settings.data_dir if os.environ.get("STEADFOOT_DATA_DIR") else _DEMO_DATA
    return settings.model_copy(update={"data_dir": folder, "database_url": f"sqlite:///{folder / 'demo.db'}"})
