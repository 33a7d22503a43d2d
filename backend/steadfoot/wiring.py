"""Settings as the command line changes them."""

import os
from pathlib import Path
from typing import Any

from steadfoot.core.settings import Settings

_DEMO_DATA = Path("steadfoot-demo")


def settings_with(host: str | None, port: int | None) -> Settings:
    """Answer the environment's settings, with what the command line says on top and the secrets' files below.

    A secret's file is named like its setting, in small letters, in the folder that ``STEADFOOT_SECRETS_DIR`` names;
    systemd names one by itself for a service with ``LoadCredential=``.
    """
    given: dict[str, Any] = {name: value for name, value in (("host", host), ("port", port)) if value is not None}
    secrets = os.environ.get("STEADFOOT_SECRETS_DIR") or os.environ.get("CREDENTIALS_DIRECTORY")
    return Settings(**given, _secrets_dir=secrets)


def demo_settings(host: str | None, port: int | None) -> Settings:
    """Answer settings for the demo: a folder of its own and always its own SQLite file."""
    settings = settings_with(host, port)
    folder = settings.data_dir if os.environ.get("STEADFOOT_DATA_DIR") else _DEMO_DATA
    own = {"data_dir": folder, "database_url": f"sqlite:///{folder / 'demo.db'}", "backup_at": "off"}
    if "STEADFOOT_LOG_LEVEL" not in os.environ:
        own["log_level"] = "warning"  # a person reads the window in which the demo runs
    return settings.model_copy(update=own)
