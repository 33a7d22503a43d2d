"""No step at home: another exercise out of the library, in the editor, in a real browser."""

import re

import pytest
from playwright.sync_api import BrowserContext, Page, Route, expect

from tests.e2e.conftest import Server
from tests.e2e.looking import faults
from tests.e2e.test_desk_program import current, draft_of, new_client, open_desk, open_program, publish, send

pytestmark = pytest.mark.browser
ASKED = re.compile(r"/exercises/[^/]+/alternatives")
DESK_TARGET_PX = 44
NARROW = {"width": 320, "height": 800}


@pytest.fixture
def page(desk: BrowserContext, server: Server) -> Page:
    return open_desk(desk, server)


def begin(page: Page, server: Server) -> str:
    """A client without a step, whose program asks for one; answer the id."""
    client_id = new_client(server, kit=["chair", "wall"])
    publish(server, client_id)
    open_program(page, server, client_id)
    return client_id


def ask(page: Page) -> None:
    page.get_by_role("button", name="Use something else: Step-down").press("Enter")
    expect(page.get_by_role("heading", name="Instead of Step-down")).to_be_focused()


def test_no_step_at_home_is_answered_with_reasons_taken_back_taken_again_and_published(
    page: Page, server: Server
) -> None:
    client_id = begin(page, server)
    row = page.get_by_role("list", name="Exercises in their order").get_by_role("listitem").first
    ask(page)
    offers = page.get_by_role("list", name="Instead of Step-down").get_by_role("listitem")
    expect(offers.first).to_contain_text("Trains descent control")
    expect(offers.first).to_contain_text("Take care:")
    expect(offers.filter(has_text="Step-up")).to_have_count(0)  # it needs the step that is not there
    page.get_by_role("button", name=re.compile("^Use this: Squat, .* instead of Step-down$")).press("Enter")
    expect(row.get_by_role("heading", level=3)).to_have_text("1. Squat")
    expect(row.get_by_role("heading", level=3)).to_be_focused()
    page.locator(".ed-said").get_by_role("button", name="Undo").click()
    expect(row.get_by_role("heading", level=3)).to_have_text("1. Step-down")
    assert current(server, client_id)[1]["exercise"] == "step-down"

    ask(page)
    page.get_by_role("button", name=re.compile("^Use this: Squat, ")).click()
    expect(page.get_by_role("region", name="Changes").get_by_role("listitem").first).to_contain_text("instead of")
    send(page, 2)
    expect(page.get_by_text("Version 2 published.")).to_be_visible()
    now = current(server, client_id)[1]
    assert (now["key"], now["exercise"], now["sides"], now["hold_s"]) == ("p1", "squat", "both", None)


def test_a_region_to_spare_narrows_the_list_and_nothing_left_is_explained(page: Page, server: Server) -> None:
    client_id = begin(page, server)
    ask(page)
    offers = page.get_by_role("list", name="Instead of Step-down").get_by_role("listitem")
    panel = page.get_by_role("region", name="Instead of Step-down")
    expect(offers.filter(has_text="Squat").first).to_be_visible()
    panel.get_by_label("Spares").select_option("knee")
    expect(offers.first).to_contain_text("Spares the knee")
    expect(offers.filter(has_text="Squat")).to_have_count(0)
    panel.get_by_label("Trains").select_option("carrying")
    expect(panel.get_by_role("status")).to_have_text(re.compile("^Nothing in the library fits: .*carrying"))
    page.keyboard.press("Escape")
    expect(page.get_by_role("button", name="Use something else: Step-down")).to_be_focused()
    assert draft_of(server, client_id) is None  # asking changes nothing


def test_without_a_network_it_says_so_and_asks_again_on_demand(page: Page, server: Server) -> None:
    begin(page, server)

    def cut(route: Route) -> None:
        route.abort()

    page.route(ASKED, cut)
    ask(page)
    panel = page.get_by_role("region", name="Instead of Step-down")
    again = panel.get_by_role("alert").get_by_role("button", name="Try again")
    expect(again).to_be_visible()
    page.unroute(ASKED, cut)
    again.click()
    expect(panel.get_by_role("listitem").first).to_be_visible()
    expect(again).to_have_count(0)


def test_the_list_can_be_read_by_everyone_and_on_a_narrow_window(page: Page, server: Server) -> None:
    begin(page, server)
    ask(page)
    expect(page.get_by_role("list", name="Instead of Step-down").get_by_role("listitem").first).to_be_visible()
    assert faults(page, DESK_TARGET_PX) == []
    page.set_viewport_size(NARROW)  # type: ignore[arg-type]
    assert faults(page, DESK_TARGET_PX) == []
