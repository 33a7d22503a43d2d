"""Settings from the environment; each name begins with STEADFOOT_."""

from pathlib import Path
from typing import Literal

from pydantic_settings import BaseSettings, SettingsConfigDict


class Settings(BaseSettings):
    """What an installation may choose. ``DEVELOPERS.md`` lists every name."""

    model_config = SettingsConfigDict(env_prefix="STEADFOOT_", extra="ignore")

    data_dir: Path = Path("steadfoot-data")
    database_url: str = ""
    host: str = "127.0.0.1"
    port: int = 8000
    public_url: str = ""
    openapi: Literal["on", "off"] = "on"
    draw_ahead: Literal["on", "off"] = "on"
    figures_dir: Path | None = None
    key_file: Path | None = None

    def database(self) -> str:
        """Answer the database's URL: the one set, else an SQLite file in the data folder."""
        return self.database_url or f"sqlite:///{self.data_dir / 'steadfoot.db'}"

    def figures(self) -> Path:
        """Answer the folder in which finished drawings are kept; it may be deleted at any time."""
        return self.figures_dir or self.data_dir / "figures"

    def key(self) -> Path:
        """Answer the file of the installation's key. Servers that share a database share it; backups do not hold it."""
        return self.key_file or self.data_dir / "secret.key"

    def address(self) -> str:
        """Answer the address that links and QR codes carry, without a trailing slash.

        It comes from the setting, never from a request's Host header, which a stranger can write.
        """
        return (self.public_url or f"http://{self.host}:{self.port}").rstrip("/")
