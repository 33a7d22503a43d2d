"""A walk through every page of the desk as somebody with fewer rights: what is offered, and what is refused."""

import re
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import httpx
from playwright.sync_api import BrowserContext, Page, Response

from tests.e2e.conftest import PASSWORD, Demo

_DESK = Path(__file__).parents[2] / "frontend/src/practitioner"
_GO = """async (to) => {
  if (location.pathname !== to) document.querySelector('main')?.setAttribute('data-left', '');
  history.pushState(null, '', to);
  dispatchEvent(new PopStateEvent('popstate'));
  for (let waited = 0; waited < 8000; waited += 20) {
    await new Promise((resolve) => setTimeout(resolve, 20));
    const main = document.querySelector('main:not([data-left])');
    const told = [...(main?.querySelectorAll('h1, [role=status]') ?? [])].map((one) => one.innerText);
    const busy = told.some((text) => /Loading|Opening/.test(text));
    if (main?.querySelector('h1') && !busy) break;
  }
  await new Promise((resolve) => setTimeout(resolve, 60));
  document.querySelectorAll('#content details').forEach((one) => (one.open = true));
  await new Promise((resolve) => setTimeout(resolve, 30));
}"""
# A list's filters, named by what they are; day and week of a program, which only choose what is shown.
_OFFERED = """() => [...document.querySelectorAll('#content :is(button, input, select, textarea):enabled')]
  .filter((one) => one.checkVisibility() && !one.closest('search, [inert], .ed-weeks'))
  .map((one) => (one.ariaLabel || one.labels?.[0]?.firstChild?.textContent || one.innerText || one.name).trim())"""
_PRESS = """() => [...document.querySelectorAll('#content button:enabled')]
  .filter((one) => one.checkVisibility() && !one.closest('[inert]')).map((one) => one.click()).length"""
_NO_DRAWING = '<svg xmlns="http://www.w3.org/2000/svg"/>'
_LINKS = "() => [...document.querySelectorAll('a[href]')].map((one) => one.getAttribute('href'))"


def desk_paths(**ids: str) -> list[str]:
    """Answer the path of every page that the desk has, as its own lists of pages name them."""
    lists = [(_DESK / name).read_text() for name in ("routes.ts", "editor/routes.ts", "custody/routes.ts")]
    found = dict.fromkeys(path for text in lists for path in re.findall(r"path: '([^']+)'", text))
    return [re.sub(r":(\w+)", lambda part: ids[part[1]], path) for path in found]


@dataclass
class Walk:
    """Somebody's browser, and what it asked of the server beside reading: what was refused, what was written."""

    page: Page
    address: str
    refused: list[str] = field(default_factory=list)
    writes: set[str] = field(default_factory=set)

    def note(self, response: Response) -> None:
        """Note an answer of the server."""
        asked = f"{response.request.method} {response.url.partition('/api/v1')[2]}"
        if response.status == 403:
            self.refused.append(f"{asked} on {self.page.url}")
        elif response.request.method != "GET":
            self.writes.add(response.url.rpartition("/")[2])

    def go(self, path: str) -> str:
        """Go to a page and open what is folded; answer its heading."""
        self.page.evaluate(_GO, f"/desk{path}")
        return self.page.locator("main h1").first.inner_text()

    def offered(self) -> list[str]:
        """Answer the names of all controls of the page that can be used."""
        found: list[str] = self.page.evaluate(_OFFERED)
        return found

    def press_everything(self) -> int:
        """Press every button, and the keys that take a step back, forward, start or stop; answer how many buttons."""
        pressed: int = self.page.evaluate(_PRESS)
        for keys in ("Control+z", "Control+y", "Space"):
            self.page.keyboard.press(keys)
        return pressed

    def leads_to(self) -> set[str]:
        """Answer where the links of the page and its frame lead."""
        return {str(to).partition("?")[0] for to in self.page.evaluate(_LINKS)}


def colleague_of(demo: Demo, role: str) -> str:
    """Have a colleague join the demo; answer their address."""
    body: dict[str, Any] = {"email": f"{role}@thornwater.example", "display_name": "Lia Fenn", "role": role}
    link = demo.http.post("/api/v1/practice/invitations", json=body).json()["url"]
    joining = {"code": link.partition("#join=")[2], "display_name": "Lia Fenn", "password": PASSWORD}
    httpx.post(f"{demo.address}/api/v1/practice/people", json=joining, timeout=20).raise_for_status()
    return str(body["email"])


def walk_as(context: BrowserContext, demo: Demo, email: str) -> Walk:
    """Sign somebody in; answer their walk, which stands on the caseload."""
    page = context.new_page()
    page.set_default_timeout(15_000)
    walk = Walk(page, demo.address)
    page.add_init_script("window.print = () => undefined")
    # Drawings are seconds of computing, and nobody looks at them here.
    page.route("**/figure.svg?*", lambda route: route.fulfill(content_type="image/svg+xml", body=_NO_DRAWING))
    page.goto(f"{demo.address}/desk/")
    page.get_by_label("Email").fill(email)
    page.get_by_label("Password", exact=True).fill(PASSWORD)
    page.get_by_role("button", name="Sign in", exact=True).click()
    page.get_by_role("link", name="Emil Tarrow", exact=True).wait_for()
    page.on("response", walk.note)
    return walk
