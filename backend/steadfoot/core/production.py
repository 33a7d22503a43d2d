"""What an installation's settings leave open that people's data should not go through."""

from collections.abc import Iterable
from difflib import get_close_matches
from urllib.parse import urlsplit

from sqlalchemy import make_url

from steadfoot.core.settings import Settings

_PREFIX = Settings.model_config["env_prefix"]
_NEAR = 0.85
"""How like a setting's name another must be to be taken for a slip: one or two letters of it. House value."""
_HERE = frozenset({"localhost", "127.0.0.1", "::1"})


def _hosts(url: str) -> list[str]:
    parsed = make_url(url)
    named = parsed.query.get("host", parsed.host or "")
    texts = [named] if isinstance(named, str) else list(named)
    return [host for text in texts for host in text.split(",")]


def _is_elsewhere(host: str) -> bool:
    """A socket's folder begins with a slash; no host at all is a socket too."""
    return bool(host) and not host.startswith(("/", "@")) and host not in _HERE


def database_unverified(settings: Settings) -> bool:
    """Answer whether the way to the database leaves this machine without its certificate and name being checked."""
    parsed = make_url(settings.database())
    if parsed.get_backend_name() == "sqlite" or not any(map(_is_elsewhere, _hosts(settings.database()))):
        return False
    return parsed.query.get("sslmode") != "verify-full"


def address_here(settings: Settings) -> bool:
    """Answer whether phones are told an address that means this machine, which no other machine can reach."""
    return urlsplit(settings.address()).hostname in _HERE


def address_insecure(settings: Settings) -> bool:
    """Answer whether phones are told an address without TLS: their browsers then keep nothing for a day offline."""
    return not settings.address().startswith("https://") and not address_here(settings)


def mistyped(names: Iterable[str]) -> list[str]:
    """Answer a sentence for each name of an environment that is nearly a setting's: it would count for nothing."""
    known = [*(name.upper() for name in Settings.model_fields), "SECRETS_DIR"]
    ours = [name.upper().removeprefix(_PREFIX) for name in names if name.upper().startswith(_PREFIX)]
    near = {name: get_close_matches(name, known, 1, _NEAR) for name in ours if name not in known}
    return [f"{_PREFIX}{name} is no setting. {_PREFIX}{found[0]} is meant?" for name, found in near.items() if found]


def weaknesses(settings: Settings) -> list[str]:
    """Answer a sentence for each; the server writes them into its log when it starts."""
    found = []
    if database_unverified(settings):
        found.append("The database is on another machine and sslmode is not verify-full: anyone between could read it.")
    if address_insecure(settings):
        found.append("STEADFOOT_PUBLIC_URL is not https: phones cannot work offline, and anyone between could read.")
    return found
