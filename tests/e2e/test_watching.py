"""Guards the watch over the whole run: what must not happen, done on purpose, is seen."""

import pytest
from playwright.sync_api import BrowserContext, Page

from tests.e2e.conftest import Server
from tests.e2e.watching import SEEN

pytestmark = pytest.mark.browser


@pytest.fixture
def page(desk: BrowserContext, server: Server) -> Page:
    page = desk.new_page()
    page.goto(f"{server.address}/desk/")
    return page


def _seen(page: Page) -> list[str]:
    page.wait_for_timeout(50)
    found = SEEN.copy()
    SEEN.clear()
    return found


@pytest.mark.parametrize(
    "deed",
    [
        "const s = document.createElement('script'); s.textContent = 'document.title = 1'; document.body.append(s)",
        "document.body.innerHTML = '<b>x</b>'",
        "document.body.setAttribute('style', 'color: red')",
        "trustedTypes.createPolicy('another', {})",
        "const f = document.createElement('iframe'); f.src = '/app/'; document.body.append(f)",
        "fetch('http://127.0.0.1:1/').catch(() => 0)",
    ],
)
def test_what_the_policy_forbids_is_refused_and_seen(page: Page, deed: str) -> None:
    page.evaluate(f"() => {{ try {{ {deed} }} catch {{}} }}")
    assert any(found.startswith("policy breached:") for found in _seen(page))


def test_a_request_to_another_host_is_seen(desk: BrowserContext) -> None:
    page = desk.new_page()
    page.route("**/*", lambda route: route.fulfill(body="x"))
    page.goto("http://elsewhere.example/")
    assert _seen(page) == ["request to http://elsewhere.example/"]
