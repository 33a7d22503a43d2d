"""Every page of the whole run is watched: no breach of the content policy, no request to anybody else's host."""

from urllib.parse import urlsplit

from playwright.sync_api import Browser, BrowserContext, ConsoleMessage, Request

SEEN: list[str] = []
"""What was seen since the last test took it."""
_MARK = "policy breached:"
_LISTEN = f"""addEventListener('securitypolicyviolation', (e) =>
  console.error('{_MARK}', e.violatedDirective, e.blockedURI, e.sourceFile, e.lineNumber, e.sample))"""
_OWN_HOSTS = ("127.0.0.1", "localhost")


def _heard(message: ConsoleMessage) -> None:
    if message.text.startswith(_MARK):
        SEEN.append(message.text)


def _asked(request: Request) -> None:
    found = urlsplit(request.url)
    host = found.hostname or ""
    if found.scheme in ("http", "https", "ws", "wss") and not (host in _OWN_HOSTS or host.endswith(".localhost")):
        SEEN.append(f"request to {request.url}")


def watch(context: BrowserContext) -> BrowserContext:
    """Note every breach and every foreign request of a context's pages and workers."""
    context.add_init_script(_LISTEN)
    context.on("console", _heard)
    context.on("request", _asked)
    return context


def watch_all(browser: Browser) -> Browser:
    """Watch every context that the browser will open."""
    opened = browser.new_context
    browser.new_context = lambda **asked: watch(opened(**asked))  # type: ignore[method-assign]
    return browser
