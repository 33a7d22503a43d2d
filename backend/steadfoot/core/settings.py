"""Settings from the environment; each name begins with STEADFOOT_."""

from pathlib import Path
from typing import Annotated, Literal, Self
from urllib.parse import urlsplit

from pydantic import Field, SecretStr, field_validator, model_validator
from pydantic_settings import BaseSettings, SettingsConfigDict


class Settings(BaseSettings):
    """What an installation may choose. ``DEVELOPERS.md`` lists every name."""

    model_config = SettingsConfigDict(env_prefix="STEADFOOT_", extra="ignore")

    data_dir: Path = Path("steadfoot-data")
    database_url: str = ""
    host: str = "127.0.0.1"
    port: int = 8000
    public_url: str = ""
    practice_url: str = ""
    openapi: Literal["on", "off"] = "on"
    draw_ahead: Literal["on", "off"] = "on"
    figures_dir: Path | None = None
    trusted_proxies: str = ""
    pool_size: Annotated[int, Field(ge=2, le=500)] = 20
    backup_at: Annotated[str, Field(pattern=r"^([01]\d|2[0-3]):[0-5]\d$|^off$")] = "02:30"
    backup_dir: Path | None = None
    backup_encrypt: str = ""
    metrics_token: SecretStr = SecretStr("")
    log_level: Literal["debug", "info", "warning", "error"] = "info"
    erasures_file: Path | None = None
    key_file: Path | None = None

    def database(self) -> str:
        """Answer the database's URL: the one set, else an SQLite file in the data folder."""
        return self.database_url or f"sqlite:///{self.data_dir / 'steadfoot.db'}"

    def figures(self) -> Path:
        """Answer the folder in which finished drawings are kept; it may be deleted at any time."""
        return self.figures_dir or self.data_dir / "figures"

    def backups(self) -> Path:
        """Answer the folder of the backups that are made by themselves."""
        return self.backup_dir or self.data_dir / "backups"

    def erasures(self) -> Path:
        """Answer the file that says who was erased; it must outlive the database, and is no part of its backup."""
        return self.erasures_file or self.data_dir / "erasures.jsonl"

    def key(self) -> Path:
        """Answer the file of the installation's key. Servers that share a database share it; backups do not hold it."""
        return self.key_file or self.data_dir / "secret.key"

    def address(self) -> str:
        """Answer the address that links and QR codes carry, without a trailing slash.

        It comes from the setting, never from a request's Host header, which a stranger can write.
        """
        return (self.public_url or f"http://{self.host}:{self.port}").rstrip("/")

    def practice_address(self) -> str:
        """Answer the address of the practitioners' pages, without a trailing slash; the phones' own, if none is set."""
        return self.practice_url.rstrip("/") or self.address()

    @field_validator("public_url", "practice_url")
    @classmethod
    def _address_is_whole(cls, address: str) -> str:
        """A phone given ``practice.example/app/`` by a link opens nothing."""
        if address and (urlsplit(address).scheme not in {"http", "https"} or not urlsplit(address).hostname):
            raise ValueError("an address begins with https://, as https://practice.example does")
        return address

    @model_validator(mode="after")
    def _two_hosts_differ(self) -> Self:
        """A cookie goes to every port of its host, so two addresses of one host would part nothing."""
        if not self.practice_url or self.practice_address() == self.address():
            return self
        names = [urlsplit(address).hostname for address in (self.public_url, self.practice_url)]
        if None in names or names[0] == names[1]:
            raise ValueError("STEADFOOT_PUBLIC_URL and STEADFOOT_PRACTICE_URL must be addresses of two different hosts")
        return self
