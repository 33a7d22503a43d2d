"""What an installation's settings leave open that people's data should not go through."""

from urllib.parse import urlsplit

from sqlalchemy import make_url

from steadfoot.core.settings import Settings

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


def weaknesses(settings: Settings) -> list[str]:
    """Answer a sentence for each; the server writes them into its log when it starts."""
    found = []
    if database_unverified(settings):
        found.append("The database is on another machine and sslmode is not verify-full: anyone between could read it.")
    if address_insecure(settings):
        found.append("STEADFOOT_PUBLIC_URL is not https: phones cannot work offline, and anyone between could read.")
    return found
