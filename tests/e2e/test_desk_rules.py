"""The rules at work on the desk: a suggestion accepted, a clearance recorded, a test taken with the stop-watch."""

import re
from collections.abc import Iterator
from typing import Any

import pytest
from playwright.sync_api import BrowserContext, Locator, Page, Route, expect

from tests.e2e.conftest import Demo, Server, running_demo
from tests.e2e.looking import faults, violations
from tests.e2e.test_desk_program import SOON_MS, new_client, open_desk, plan

pytestmark = pytest.mark.browser
CLICKS_MOST = 3
TARGET_PX = 44
HEART = "Has a doctor told you of a disease of your heart or blood vessels?"


@pytest.fixture(scope="module")
def busy(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Demo]:
    """A demo of its own: these tests decide, and others only look."""
    with running_demo(tmp_path_factory.mktemp("rules")) as found:
        yield found


@pytest.fixture
def caseload(desk: BrowserContext, busy: Demo) -> Page:
    """The caseload of the demo, signed in."""
    page = desk.new_page()
    page.set_default_timeout(SOON_MS)
    page.goto(f"{busy.address}/desk/")
    page.get_by_label("Email").fill(busy.note["sign_in"]["email"])
    page.get_by_label("Password", exact=True).fill(busy.note["sign_in"]["password"])
    page.get_by_role("button", name="Sign in").click()
    page.get_by_role("table").wait_for()
    return page


def ready_person(busy: Demo, least: int = 1) -> dict[str, Any]:
    """Answer the first person on their way of whom so many movements are ready for more."""
    for row in busy.http.get("/api/v1/caseload").json()["items"]:
        if not row["suggestion"] or row["suggestion"]["action"] != "decide":
            continue
        items = busy.http.get(f"/api/v1/clients/{row['client']['id']}/suggestions").json()["items"]
        if len({one["exercise"] for one in items if one["can_accept"]}) >= least:
            return dict(row["client"])
    raise AssertionError(f"nobody in the demo has {least} changes to decide")


def version_of(busy: Demo, client_id: str) -> int:
    return int(busy.http.get(f"/api/v1/clients/{client_id}/programs/current").json()["number"])


class Clicks:
    """Clicks, counted."""

    def __init__(self) -> None:
        self.made = 0

    def on(self, target: Locator) -> None:
        """Click once."""
        target.click()
        self.made += 1


def to_decide(caseload: Page, name: str, clicks: Clicks) -> Locator:
    """Open the suggestions of somebody from their row; answer that part of the page."""
    clicks.on(caseload.get_by_role("row").filter(has_text=name).get_by_role("link", name=re.compile("^Decide")))
    part = caseload.locator("section.suggestions")
    expect(part.get_by_role("button", name=re.compile("^Accept")).first).to_be_visible()
    return part


def test_a_press_while_the_suggestions_are_fetched_again_waits_visibly(caseload: Page, busy: Demo) -> None:
    part = to_decide(caseload, ready_person(busy)["display_name"], Clicks())
    part.get_by_role("button", name=re.compile("^Decline")).first.click()
    part.get_by_label("Why not").fill("First the trip on Saturday.")
    sent: list[str | None] = []
    fetched: list[Route] = []

    def refuse(route: Route) -> None:
        sent.append(route.request.post_data)
        route.fulfill(status=412, json={"title": "Stale", "status": 412, "code": "stale"})

    caseload.route("**/progressions", refuse)
    caseload.route("**/suggestions", lambda route: fetched.append(route))
    caseload.route("**/overview", lambda route: None)  # the rest of the page answers late, and nobody waits for it
    decline = part.get_by_role("button", name="Decline with this reason")
    decline.click()
    expect(part.get_by_text("Fetching the suggestions again")).to_be_visible()
    expect(decline).to_be_disabled()
    expect(decline).to_be_focused()
    expect(part.get_by_text("the suggestions were fetched again")).to_be_hidden()
    assert violations(caseload) == []
    fetched.pop().continue_()
    expect(part.get_by_text("the suggestions were fetched again")).to_be_visible()
    with caseload.expect_response("**/progressions"):
        decline.click()
    assert len(sent) == 2
    assert "First the trip on Saturday." in (sent[1] or "")


def test_several_changes_are_published_as_one_version(caseload: Page, busy: Demo) -> None:
    person = ready_person(busy, least=2)
    before = version_of(busy, person["id"])
    part = to_decide(caseload, person["display_name"], Clicks())
    accepts = part.get_by_role("button", name=re.compile("^Accept"))
    marked = accepts.count()
    for n in range(marked):
        accepts.first.click()  # a marked one is called otherwise
        expect(part.get_by_role("button", name=f"Publish {n + 1} change")).to_be_visible()
    part.get_by_role("button", name=f"Publish {marked} changes").click()
    expect(part.get_by_text(f"Version {before + 1} published.")).to_be_visible()
    expect(part.locator(".decided li")).to_have_count(marked)
    assert version_of(busy, person["id"]) == before + 1


def test_from_the_caseload_to_an_accepted_progression_in_three_clicks(caseload: Page, busy: Demo) -> None:
    person, clicks = ready_person(busy), Clicks()
    before = version_of(busy, person["id"])
    part = to_decide(caseload, person["display_name"], clicks)
    expect(part.get_by_role("heading", level=2)).to_be_focused()
    assert faults(caseload, TARGET_PX) == []
    alone = part.get_by_role("button", name=re.compile("^Accept")).count() == 1
    clicks.on(part.get_by_role("button", name=re.compile("^Accept")).first)
    if not alone:
        clicks.on(part.get_by_role("button", name="Publish 1 change"))
    expect(part.get_by_text(f"Version {before + 1} published.")).to_be_visible()
    assert clicks.made <= CLICKS_MOST
    assert version_of(busy, person["id"]) == before + 1


def test_a_decline_outlives_a_change_elsewhere_and_can_be_accepted_after_all(caseload: Page, busy: Demo) -> None:
    person = ready_person(busy)
    part = to_decide(caseload, person["display_name"], Clicks())
    part.get_by_role("button", name=re.compile("^Decline")).first.click()
    part.get_by_role("button", name="Decline with this reason").click()
    expect(part.get_by_text("Please write in a sentence why not.")).to_be_visible()
    reason = part.get_by_label("Why not")
    reason.fill("First the trip on Saturday.")
    stale = {"title": "Stale", "status": 412, "code": "stale"}
    caseload.route("**/progressions", lambda route: route.fulfill(status=412, json=stale))
    part.get_by_role("button", name="Decline with this reason").click()
    expect(part.get_by_text("the suggestions were fetched again")).to_be_visible()
    expect(reason).to_have_value("First the trip on Saturday.")
    caseload.unroute("**/progressions")
    before = version_of(busy, person["id"])
    part.get_by_role("button", name="Decline with this reason").click()
    expect(part.get_by_text("Declined, with your reason.")).to_be_visible()
    declined = busy.http.get(f"/api/v1/clients/{person['id']}/suggestions").json()["declined"]
    assert "First the trip on Saturday." in [one["reason"] for one in declined]
    assert version_of(busy, person["id"]) == before
    part.get_by_text(re.compile(r"^\d+ declined suggestion")).click()
    part.get_by_role("button", name=re.compile("^Accept after all")).first.click()
    expect(part.get_by_text(f"Version {before + 1} published.")).to_be_visible()
    assert version_of(busy, person["id"]) == before + 1


@pytest.fixture
def page(desk: BrowserContext, server: Server) -> Page:
    return open_desk(desk, server)


def answer_all(page: Page, yes_to: str) -> None:
    """Answer every question of the screening with no but one."""
    for group in page.locator("fieldset").filter(has=page.locator("input[value=no]")).all():
        said = "Yes" if yes_to in group.locator("legend").inner_text() else "No"
        group.get_by_role("radio", name=said, exact=True).check(force=True)
    page.get_by_role("radio", name=re.compile("^Vigorous")).check(force=True)


def test_no_program_goes_out_before_the_clearance_is_recorded(page: Page, server: Server) -> None:
    client_id = str(server.call("POST", "/clients", {"display_name": "Lene Marrow"})["id"])
    page.goto(f"{server.address}/desk/clients/{client_id}/screening")
    page.get_by_role("button", name="Save the answers").click()
    expect(page.get_by_role("alert").filter(has_text="need a change")).to_be_visible()
    assert server.call("GET", f"/clients/{client_id}/screenings")["state"] == "not_screened"
    answer_all(page, HEART)
    page.get_by_role("button", name="Save the answers").click()
    expect(page.get_by_text("Clearance needed before a program is published").first).to_be_visible()

    refused = server.http.post(f"/api/v1/clients/{client_id}/programs", json={"content": plan()})
    assert (refused.status_code, refused.json()["code"]) == (409, "clearance-needed")
    draft = {"content": plan(), "base_number": None}
    kept = server.http.put(f"/api/v1/clients/{client_id}/programs/draft", json=draft, headers={"If-None-Match": "*"})
    assert kept.is_success, kept.text
    page.goto(f"{server.address}/desk/clients/{client_id}/program")
    page.get_by_role("button", name="Publish version 1").click()
    dialog = page.get_by_role("dialog")
    expect(dialog.get_by_text("Nothing was published; your draft is kept.")).to_be_visible()
    dialog.get_by_role("link", name="Record a clearance").click()

    page.get_by_role("button", name="Record the clearance").click()
    expect(page.get_by_text("Please write who gave the clearance.")).to_be_visible()
    page.get_by_label("Who gave it").fill("Dr. Hedda Quist, cardiologist")
    page.get_by_role("button", name="Record the clearance").click()
    expect(page.get_by_text("Cleared by someone licensed").first).to_be_visible()
    assert faults(page, TARGET_PX) == []
    server.call("POST", f"/clients/{client_id}/programs", {"content": plan()})


def test_a_test_taken_with_the_stop_watch_is_read_and_can_be_taken_back(page: Page, server: Server) -> None:
    client_id = new_client(server, "Walt Imhoff", birth_year=1966, sex="male")
    page.goto(f"{server.address}/desk/clients/{client_id}/tests")
    page.get_by_label("Which test").select_option("single-leg-stance-open")
    page.get_by_role("radio", name="left").check(force=True)
    page.get_by_role("heading", level=1).click()
    page.keyboard.press("Space")
    expect(page.get_by_role("button", name="Stop", exact=True)).to_be_visible()
    page.wait_for_timeout(1500)
    page.keyboard.press("Space")
    expect(page.get_by_role("button", name="Start", exact=True)).to_be_visible()
    timed = float(page.get_by_role("textbox", name="Result").input_value())
    assert 1.4 <= timed <= 4
    page.get_by_role("button", name="Save the result").click()
    expect(page.get_by_role("region", name="Single-leg stance")).to_be_visible()
    (item,) = server.call("GET", f"/clients/{client_id}/tests")["items"]
    (result,) = item["results"]
    assert (result["value"], result["side"]) == (timed, "left")
    expect(page.get_by_role("region", name="Single-leg stance").get_by_text(result["reading"])).to_be_visible()
    assert faults(page, TARGET_PX) == []

    page.get_by_role("button", name=re.compile("^Take back")).click()
    expect(page.get_by_text("No test yet.")).to_be_visible()
    page.get_by_role("button", name="Undo").click()
    expect(page.get_by_role("region", name="Single-leg stance")).to_be_visible()


def test_a_person_without_norms_is_told_why(page: Page, server: Server) -> None:
    client_id = new_client(server, "Greta Sommerfeld")
    page.goto(f"{server.address}/desk/clients/{client_id}/tests")
    page.get_by_label("Which test").select_option("chair-stand-30s")
    page.get_by_role("textbox", name="Result").fill("99")
    page.get_by_role("button", name="Save the result").click()
    expect(page.get_by_text("Please type a number from 0 to 60 repetitions.").first).to_be_visible()
    page.get_by_role("textbox", name="Result").fill("14")
    page.get_by_role("button", name="Save the result").click()
    expect(
        page.get_by_text("No norm for this person: the norm is by sex, and none is given.", exact=True)
    ).to_be_visible()


def test_what_is_hard_for_a_person_is_rated_again_and_compared(page: Page, server: Server) -> None:
    client_id = new_client(server, "Sanne Verhage")
    page.goto(f"{server.address}/desk/clients/{client_id}/tests")
    scale = page.get_by_role("region", name="What is hard for them")
    page.get_by_role("button", name="Save the rating").click()
    expect(scale.get_by_role("alert").filter(has_text="Please name at least one activity.")).to_be_visible()
    scale.get_by_label("Activity 1").fill("Down the cellar stairs")
    scale.get_by_label("Rating 1").fill("11")
    page.get_by_role("button", name="Save the rating").click()
    expect(scale.get_by_text("0 to 10").first).to_be_visible()
    scale.get_by_label("Rating 1").fill("3")
    page.get_by_role("button", name="Save the rating").click()
    expect(scale.get_by_text("Down the cellar stairs 3")).to_be_visible()
    scale.get_by_label("Rating 1").fill("7")
    page.get_by_role("button", name="Save the rating").click()
    expect(scale.get_by_text("Down the cellar stairs 7")).to_be_visible()
    compared = server.call("GET", f"/clients/{client_id}/tests")["functional_scale"]["change"]
    assert compared["is_real"] is True
    expect(scale.get_by_text(compared["words"])).to_be_visible()
    assert faults(page, TARGET_PX) == []
