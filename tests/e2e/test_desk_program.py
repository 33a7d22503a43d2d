"""The program editor in a real browser: by keyboard, beside a colleague, without a network."""

import re
from dataclasses import replace
from datetime import date, datetime
from typing import Any

import httpx
import pytest
from playwright.sync_api import BrowserContext, Page, expect

from tests.builders import circuit, content, step_down
from tests.e2e.conftest import PASSWORD, Server
from tests.e2e.looking import faults
from tests.e2e.test_main_job import ZONE

pytestmark = pytest.mark.browser
SOON_MS = 12_000
TARGET_PX = 44
KIT = ["step", "stairs", "rail", "wall", "mat", "chair", "band", "pack", "dumbbell", "towel"]
_NAME_OF_FOCUS = """() => {
  const one = document.activeElement;
  return (one.getAttribute('aria-label') ?? one.labels?.[0]?.innerText ?? one.innerText ?? '').trim();
}"""


def open_desk(context: BrowserContext, server: Server) -> Page:
    """Sign the practitioner in and show the caseload."""
    page = context.new_page()
    page.set_default_timeout(SOON_MS)
    page.goto(f"{server.address}/desk/")
    fill_sign_in(page, server)
    page.get_by_role("navigation", name="Pages").wait_for()
    return page


def fill_sign_in(page: Page, server: Server) -> None:
    """Type address and password and send them."""
    page.get_by_label("Email").fill(server.email)
    page.get_by_label("Password", exact=True).fill(PASSWORD)
    page.get_by_role("button", name="Sign in", exact=True).click()


def reader_of(server: Server) -> Server:
    """Have somebody join the practice who may only read; answer it with their address."""
    body = {"email": f"lia.{server.email}", "display_name": "Lia Fenn", "role": "read_only"}
    code = server.call("POST", "/practice/invitations", body)["url"].partition("#join=")[2]
    joining = {"code": code, "display_name": "Lia Fenn", "password": PASSWORD}
    httpx.post(f"{server.address}/api/v1/practice/people", json=joining, timeout=20).raise_for_status()
    return replace(server, email=body["email"])


def new_client(server: Server, name: str = "Emil Tarrow", **more: Any) -> str:
    """Take on a client; answer the id."""
    return server.take_on(name, **{"kit": KIT, **more})


def plan(**prescription: Any) -> dict[str, Any]:
    """A program with one exercise on every day from today on."""
    today: date = datetime.now(ZONE).date()
    session = circuit(prescriptions=[step_down("p1", **{"variant": "step-15", **prescription})])
    return content(today, sessions=[session], weekdays=(0, 1, 2, 3, 4, 5, 6))


def publish(server: Server, client_id: str, **prescription: Any) -> None:
    """Publish a version as a colleague would, past the page."""
    server.call("POST", f"/clients/{client_id}/programs", {"content": plan(**prescription)})


def current(server: Server, client_id: str) -> tuple[int, dict[str, Any]]:
    """Answer the number of the current version and its one prescription."""
    version = server.call("GET", f"/clients/{client_id}/programs/current")
    return version["number"], version["content"]["sessions"][0]["prescriptions"][0]


def draft_of(server: Server, client_id: str) -> dict[str, Any] | None:
    """Answer the prescription in the draft that the server keeps."""
    answer = server.http.get(f"/api/v1/clients/{client_id}/programs/draft")
    if answer.status_code == 404:
        return None
    found: dict[str, Any] = answer.json()["content"]["sessions"][0]["prescriptions"][0]
    return found


@pytest.fixture
def page(desk: BrowserContext, server: Server) -> Page:
    return open_desk(desk, server)


def open_program(page: Page, server: Server, client_id: str) -> None:
    page.goto(f"{server.address}/desk/clients/{client_id}/program")
    page.get_by_role("heading", level=1, name=re.compile("Emil Tarrow")).wait_for()


def most_times(page: Page) -> Any:
    """The field that says up to how many times."""
    return page.get_by_role("textbox", name=re.compile("Step-down, to"))


def send(page: Page, number: int) -> None:
    """Press the button of the head, then the one in the dialog."""
    page.get_by_role("button", name=f"Publish version {number}").click()
    page.get_by_role("dialog").get_by_role("button", name=f"Publish version {number}").click()


def tab_to(page: Page, name: str, most: int = 40) -> None:
    """Press Tab until the part with that name has the focus."""
    seen = []
    for _ in range(most):
        page.keyboard.press("Tab")
        seen.append(page.evaluate(_NAME_OF_FOCUS))
        if seen[-1].startswith(name):
            return
    raise AssertionError(f"{name} was not reached: {seen}")


def test_a_first_program_is_written_and_published_by_keyboard_alone(page: Page, server: Server) -> None:
    client_id = new_client(server)
    open_program(page, server, client_id)
    tab_to(page, "An empty program")
    page.keyboard.press("ArrowDown")
    template = page.evaluate("document.activeElement.value")
    tab_to(page, "Lay it out")
    page.keyboard.press("Enter")
    expect(page.get_by_role("heading", level=1)).to_have_text(re.compile("program version 1 draft"))
    expect(page.get_by_role("status").filter(has_text="The first program")).to_be_visible()
    tab_to(page, "Publish version 1")
    page.keyboard.press("Enter")
    tab_to(page, "Publish version 1")
    page.keyboard.press("Enter")
    expect(page.get_by_text("Version 1 published. The phone takes it at its next contact.")).to_be_visible()
    version = server.call("GET", f"/clients/{client_id}/programs/current")
    shipped = next(one for one in server.call("GET", "/templates")["items"] if one["id"] == template)
    assert (version["number"], version["content"]["title"]) == (1, shipped["name"])


def test_a_changed_dose_is_said_in_words_and_published_on_what_it_was_made_from(page: Page, server: Server) -> None:
    client_id = new_client(server)
    publish(server, client_id)
    open_program(page, server, client_id)
    most_times(page).fill("12")
    expect(page.get_by_role("status").filter(has_text="1 change against version 1")).to_be_visible()
    expect(page.get_by_role("region", name="Changes").get_by_role("listitem")).to_contain_text("12")
    with page.expect_request(lambda one: one.method == "POST" and one.url.endswith("/programs")) as sent:
        send(page, 2)
    assert sent.value.headers["if-match"] == '"1"'
    expect(page.get_by_text("Version 2 published.")).to_be_visible()
    assert current(server, client_id)[1]["reps_high"] == 12
    assert draft_of(server, client_id) is None


def test_a_colleagues_version_is_compared_and_neither_is_lost(page: Page, server: Server) -> None:
    client_id = new_client(server)
    publish(server, client_id)
    open_program(page, server, client_id)
    most_times(page).fill("12")
    publish(server, client_id, reps_high=14)
    expect(page.get_by_role("heading", name=re.compile("Version 2 was published by Maren Brandvold"))).to_be_visible()

    send(page, 2)
    expect(page.get_by_role("heading", name="Your draft beside version 2")).to_be_visible()
    row = page.get_by_role("row").filter(has_text="Changed")
    expect(row).to_contain_text("8 to 12")
    expect(row).to_contain_text("8 to 14")
    page.get_by_role("button", name="Go on with version 2").click()
    expect(most_times(page)).to_have_value("14")
    page.locator(".ed-said").get_by_role("button", name="Undo").click()
    expect(most_times(page)).to_have_value("12")

    send(page, 3)
    expect(page.get_by_text("Version 3 published.")).to_be_visible()
    assert current(server, client_id)[1]["reps_high"] == 12
    theirs = server.call("GET", f"/clients/{client_id}/programs/2")
    assert theirs["content"]["sessions"][0]["prescriptions"][0]["reps_high"] == 14


def test_one_may_go_on_with_ones_own_on_top_of_a_colleagues(page: Page, server: Server) -> None:
    client_id = new_client(server)
    publish(server, client_id)
    open_program(page, server, client_id)
    most_times(page).fill("12")
    publish(server, client_id, reps_high=14)
    page.get_by_role("button", name="Compare the two").click()
    page.get_by_role("button", name="Go on with mine, on top of version 2").click()
    expect(most_times(page)).to_have_value("12")
    expect(page.get_by_role("status").filter(has_text="1 change against version 2")).to_be_visible()
    send(page, 3)
    expect(page.get_by_text("Version 3 published.")).to_be_visible()


def test_who_only_reads_is_offered_each_newer_version_where_they_look(desk: BrowserContext, server: Server) -> None:
    client_id = new_client(server)
    page = open_desk(desk, reader_of(server))
    written: list[str] = []
    page.on("request", lambda one: None if one.method in ("GET", "POST") else written.append(one.url))
    open_program(page, server, client_id)
    expect(page.get_by_text("There is no program yet.")).to_be_visible()
    for number, most in enumerate((12, 14), start=1):
        publish(server, client_id, reps_high=most)
        news = page.get_by_role("status").filter(has_text=f"Version {number} was published by Maren Brandvold")
        expect(news).to_be_visible()
        assert faults(page, TARGET_PX) == []
        page.get_by_role("button", name=f"Show version {number}").click()
        heading = page.get_by_role("heading", level=1, name=f"Emil Tarrow, program version {number}", exact=True)
        expect(heading).to_be_focused()
        expect(news).to_be_hidden()
        expect(page.get_by_text(f"8 to {most}").first).to_be_visible()
    assert written == []


def test_missing_kit_is_explained_and_mended_or_noted_and_either_taken_back(page: Page, server: Server) -> None:
    client_id = new_client(server, kit=["stairs"])
    publish(server, client_id, variant="rail")
    open_program(page, server, client_id)
    problems = page.get_by_role("region", name="Problems")
    problem = problems.get_by_role("listitem").filter(has_text="which the client does not have")
    expect(problem).to_contain_text("This would do:")

    problem.get_by_role("button", name=re.compile("^Use ")).click()
    expect(problem).to_have_count(0)
    page.locator(".ed-said").get_by_role("button", name="Undo").click()
    expect(problem).to_have_count(1)

    problem.get_by_role("button", name="They have it: rail").click()
    expect(problem).to_have_count(0)
    assert sorted(server.call("GET", f"/clients/{client_id}")["kit"]) == ["rail", "stairs"]
    page.locator(".ed-said").get_by_role("button", name="Undo").click()
    expect(problem).to_have_count(1)
    assert server.call("GET", f"/clients/{client_id}")["kit"] == ["stairs"]


def test_a_draft_survives_a_reload_and_a_spell_without_a_network(
    page: Page, desk: BrowserContext, server: Server
) -> None:
    client_id = new_client(server)
    publish(server, client_id)
    open_program(page, server, client_id)
    most_times(page).fill("12")
    expect(page.locator("#draft-status")).to_contain_text("Draft kept")
    page.reload()
    expect(most_times(page)).to_have_value("12")

    desk.set_offline(True)
    most_times(page).fill("13")
    expect(page.locator("#draft-status")).to_contain_text("Draft kept in this browser")
    found = draft_of(server, client_id)
    assert found is not None
    assert found["reps_high"] == 12
    page.close()
    desk.set_offline(False)
    again = desk.new_page()
    open_program(again, server, client_id)
    expect(most_times(again)).to_have_value("13")
    expect(again.locator("#draft-status")).to_have_text(re.compile(r"^Draft kept \d"))
    found = draft_of(server, client_id)
    assert found is not None
    assert found["reps_high"] == 13


def test_of_two_first_drafts_the_second_is_told_and_decides(page: Page, server: Server) -> None:
    client_id = new_client(server)
    publish(server, client_id)
    open_program(page, server, client_id)
    server.call("PUT", f"/clients/{client_id}/programs/draft", {"content": plan(reps_high=14), "base_number": 1})
    most_times(page).fill("12")
    expect(page.get_by_role("heading", name=re.compile("Maren Brandvold saved another draft"))).to_be_visible()
    found = draft_of(server, client_id)
    assert found is not None
    assert found["reps_high"] == 14
    page.get_by_role("button", name="Take theirs").click()
    expect(most_times(page)).to_have_value("14")
    page.locator(".ed-said").get_by_role("button", name="Undo").click()
    expect(most_times(page)).to_have_value("12")


def test_a_template_is_renamed_and_a_deleted_one_comes_back(page: Page, server: Server) -> None:
    weeks = [[{"weekday": "mon", "session": "s1"}]]
    for name in ("Spring legs", "Autumn legs"):
        server.call("POST", "/templates", {"name": name, "sessions": [circuit()], "weeks": weeks})
    page.goto(f"{server.address}/desk/templates")
    page.get_by_role("button", name="Rename: Spring legs").click()
    name = page.get_by_role("dialog").get_by_label("Name of the template")
    name.fill("autumn legs")
    page.get_by_role("button", name="Save the name").click()
    expect(page.get_by_role("alert").filter(has_text="There is already a template named autumn legs.")).to_be_visible()
    name.fill("Descent legs, ours")
    page.get_by_role("button", name="Save the name").click()
    expect(page.get_by_role("heading", name="Descent legs, ours")).to_be_visible()

    page.get_by_role("button", name="Delete: Autumn legs").click()
    expect(page.get_by_role("heading", name="Autumn legs")).to_have_count(0)
    page.get_by_role("status").get_by_role("button", name="Undo").click()
    expect(page.get_by_role("heading", name="Autumn legs")).to_be_visible()
    own = [one["name"] for one in server.call("GET", "/templates")["items"] if not one["shipped"]]
    assert own == ["Autumn legs", "Descent legs, ours"]
