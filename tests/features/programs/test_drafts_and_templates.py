"""Programs in the making, and programs without dates."""

from datetime import date

import pytest
from sqlalchemy.exc import IntegrityError
from sqlmodel import Session

from steadfoot.exercises.service import library
from steadfoot.programs.checks import validate
from steadfoot.programs.content import ProgramContent
from steadfoot.programs.store import shipped_templates
from steadfoot.rules.vocabulary import Kit
from tests.builders import API, circuit, content

TODAY = date(2026, 6, 10)
SHIPPED = sorted(shipped_templates())


@pytest.fixture
def client_id(house):
    return house.new_client()


def save(house, client_id, whole, status=200, headers=None, **more):
    path = f"{API}/clients/{client_id}/programs/draft"
    answer = house.http.put(path, json={"content": whole, **more}, headers=headers)
    assert answer.status_code == status, answer.text
    return answer


def test_a_draft_with_problems_is_kept_as_it_was_written(house, client_id):
    half = content(TODAY) | {"title": "", "goal": None, "ends_on": None}
    half["days"].reverse()
    save(house, client_id, half, base_number=3)
    draft = house.get(f"/clients/{client_id}/programs/draft")
    assert draft["content"] == half
    assert (draft["base_number"], draft["version"]) == (3, 1)
    assert draft["saved_by"]["display_name"] == "Maren Brandvold"


def test_saving_again_replaces_it_and_a_colleagues_draft_is_guarded(house, client_id):
    tag = save(house, client_id, content(TODAY)).headers["ETag"]
    save(house, client_id, content(TODAY) | {"title": "Mine"}, headers={"If-Match": tag})
    refused = save(house, client_id, content(TODAY), status=412, headers={"If-Match": tag})
    draft = house.http.get(f"{API}/clients/{client_id}/programs/draft")
    assert draft.json()["content"]["title"] == "Mine"
    assert refused.headers["ETag"] == draft.headers["ETag"]


def test_a_tag_of_a_draft_that_was_thrown_away_does_not_fit_the_next_one(house, client_id, clock):
    tag = save(house, client_id, content(TODAY)).headers["ETag"]
    house.http.delete(f"{API}/clients/{client_id}/programs/draft")
    save(house, client_id, content(TODAY), status=412, headers={"If-Match": tag})
    clock.forward(seconds=1)
    save(house, client_id, content(TODAY))
    save(house, client_id, content(TODAY), status=412, headers={"If-Match": tag})


def test_of_two_first_drafts_at_once_one_is_told(house, client_id, monkeypatch):
    """Where several may write at once, the other's draft can appear between looking and storing."""
    save(house, client_id, content(TODAY))

    def taken(_session, _draft):
        raise IntegrityError("insert", {}, Exception("already there"))

    monkeypatch.setattr(Session, "merge", taken)
    save(house, client_id, content(TODAY) | {"title": "Mine"}, status=412)
    monkeypatch.undo()
    assert house.get(f"/clients/{client_id}/programs/draft")["content"]["title"] == "Legs for Harrowcomb"


def test_publishing_uses_the_draft_up(house, client_id):
    save(house, client_id, content(TODAY))
    house.publish(client_id, content(TODAY))
    house.get(f"/clients/{client_id}/programs/draft", status=404)


def test_a_refused_publishing_keeps_the_draft(house, client_id):
    save(house, client_id, content(TODAY))
    house.post(f"/clients/{client_id}/programs", {"content": content(TODAY) | {"title": ""}}, status=422)
    assert house.get(f"/clients/{client_id}/programs/draft")["version"] == 1


def test_throwing_away_nothing_is_no_error(house, client_id):
    for _ in range(2):
        assert house.http.delete(f"{API}/clients/{client_id}/programs/draft").status_code == 204


def lay_out(house, client_id, template, status=200, **more):
    body = {"template": template, "starts_on": "2026-06-10"} | more
    return house.post(f"/clients/{client_id}/programs/drafts/from-template", body, status=status)


def test_at_least_three_templates_come_with_the_program(house):
    items = house.get("/templates")["items"]
    assert len(items) >= 3
    assert {item["id"] for item in items} == set(SHIPPED)
    assert all(item["shipped"] and item["about"] for item in items)


@pytest.mark.parametrize("code", SHIPPED)
def test_a_shipped_template_makes_a_program_without_problems(house, client_id, code):
    goal = {"name": "Harrowcomb traverse", "date": "2026-08-20"}
    whole = lay_out(house, client_id, code, goal=goal)
    assert (whole["starts_on"], whole["ends_on"]) == ("2026-06-10", "2026-08-19")
    assert validate(ProgramContent.model_validate(whole), set(Kit), library(), TODAY) == []
    house.publish(client_id, whole)


def own(**more):
    weeks = [[{"weekday": "mon", "session": "s1", "fixed_day": False}], [{"weekday": "sat", "session": "s1"}]]
    return {"name": "Our own", "about": "", "sessions": [circuit()], "weeks": weeks} | more


def test_the_practices_own_template_is_kept_and_its_last_week_repeats(house, client_id):
    saved = house.post("/templates", own())
    assert saved["shipped"] is False
    assert house.get("/templates")["items"][0] == saved
    whole = lay_out(house, client_id, saved["id"], ends_on="2026-07-05")
    # The first week runs from Wednesday 10 June: its Monday is the 15th; then every Saturday from the 20th on.
    assert [day["date"] for day in whole["days"]] == ["2026-06-15", "2026-06-20", "2026-06-27", "2026-07-04"]


def test_sessions_that_no_date_takes_are_left_out(house, client_id):
    whole = lay_out(house, client_id, "pack-and-trunk", ends_on="2026-06-12")
    assert {session["key"] for session in whole["sessions"]} == {day["session"] for day in whole["days"]}


@pytest.mark.parametrize(
    ("more", "code"),
    [
        ({}, "no_end"),
        ({"ends_on": "2026-06-09"}, "end_before_start"),
        ({"ends_on": "2099-12-31"}, "too_long"),
        ({"goal": {"name": "Too soon", "date": "2026-06-10"}}, "end_before_start"),
    ],
)
def test_dates_that_make_no_program_are_refused(house, client_id, more, code):
    refused = lay_out(house, client_id, "descent-legs", status=422, **more)
    assert [(one["pointer"], one["code"]) for one in refused["errors"]] == [("/body/ends_on", code)]


def test_an_unknown_template_is_not_found(house, client_id):
    lay_out(house, client_id, "unheard-of", status=404, ends_on="2026-07-05")


def test_a_template_with_errors_is_refused_and_points_to_each(house):
    broken = own(sessions=[circuit(prescriptions=[{**circuit()["prescriptions"][0], "exercise": "unheard-of"}])])
    broken["weeks"][0][0]["session"] = "s9"
    refused = house.post("/templates", broken, status=422)
    assert {one["pointer"] for one in refused["errors"]} == {
        "/body/sessions/0/prescriptions/0/exercise",
        "/body/weeks/0/0/session",
    }
    assert house.get("/templates")["items"][0]["shipped"]


def test_another_practice_does_not_see_our_template(house, other_house):
    saved = house.post("/templates", own())
    assert saved["id"] not in {item["id"] for item in other_house.get("/templates")["items"]}
    theirs = other_house.new_client()
    lay_out(other_house, theirs, saved["id"], status=404, ends_on="2026-07-05")


def test_of_two_first_drafts_the_second_is_told_and_overwrites_nothing(house, client_id):
    first = save(house, client_id, content(TODAY) | {"title": "Theirs"}, headers={"If-None-Match": "*"})
    refused = save(house, client_id, content(TODAY), status=412, headers={"If-None-Match": "*"})
    assert refused.headers["ETag"] == first.headers["ETag"]
    assert house.get(f"/clients/{client_id}/programs/draft")["content"]["title"] == "Theirs"
    house.http.delete(f"{API}/clients/{client_id}/programs/draft")
    save(house, client_id, content(TODAY), headers={"If-None-Match": "*"})


def test_a_guard_that_is_no_asterisk_is_refused(house, client_id):
    save(house, client_id, content(TODAY), status=422, headers={"If-None-Match": '"d1-2"'})
    house.get(f"/clients/{client_id}/programs/draft", status=404)


def change(house, template_id, status=200, **more):
    answer = house.http.patch(f"{API}/templates/{template_id}", json=more)
    assert answer.status_code == status, answer.text
    return answer.json()


def remove(house, template_id):
    return house.http.delete(f"{API}/templates/{template_id}").status_code


def test_a_template_is_renamed_and_described_anew_and_keeps_its_weeks(house):
    saved = house.post("/templates", own(about="For knees."))
    assert change(house, saved["id"], name="  Spring legs ") == saved | {"name": "Spring legs"}
    assert change(house, saved["id"], about="") == saved | {"name": "Spring legs", "about": ""}
    assert house.get("/templates")["items"][0] == saved | {"name": "Spring legs", "about": ""}


def test_a_template_without_a_name_is_refused(house):
    saved = house.post("/templates", own())
    assert change(house, saved["id"], status=422, name=" ")["errors"][0]["pointer"] == "/body/name"
    assert house.get("/templates")["items"][0] == saved


def test_a_deleted_template_is_gone_and_can_be_kept_again(house):
    saved = house.post("/templates", own())
    assert remove(house, saved["id"]) == 204
    assert [item["id"] for item in house.get("/templates")["items"]] == SHIPPED
    assert remove(house, saved["id"]) == 404
    again = house.post("/templates", {name: saved[name] for name in ("name", "about", "sessions", "weeks")})
    assert again == saved | {"id": again["id"]}


def test_a_deleted_template_leaves_the_programs_that_began_from_it(house, client_id):
    saved = house.post("/templates", own())
    house.publish(client_id, lay_out(house, client_id, saved["id"], ends_on="2026-07-05"))
    remove(house, saved["id"])
    assert house.get(f"/clients/{client_id}/programs/current")["content"]["title"] == "Our own"


@pytest.mark.parametrize("name", ["Our own", "OUR OWN ", shipped_templates()[SHIPPED[0]].name])
def test_two_templates_never_have_one_name(house, name):
    first = house.post("/templates", own())
    refused = house.post("/templates", own(name=name), status=409)
    assert refused["code"] == "template-name-taken"
    assert name.strip() in refused["detail"]
    second = house.post("/templates", own(name="Another"))
    assert change(house, second["id"], status=409, name=name)["code"] == "template-name-taken"
    assert change(house, first["id"], name="Our OWN")["name"] == "Our OWN"


def test_another_practice_may_use_the_same_name_and_cannot_touch_ours(house, other_house):
    saved = house.post("/templates", own())
    other_house.post("/templates", own())
    change(other_house, saved["id"], status=404, name="Theirs")
    assert remove(other_house, saved["id"]) == 404
    assert house.get("/templates")["items"][0] == saved


def test_a_template_that_comes_with_the_program_stays(house):
    assert change(house, SHIPPED[0], status=409, name="Mine now")["code"] == "template-shipped"
    assert remove(house, SHIPPED[0]) == 409
    assert house.get("/templates")["items"][0]["id"] == SHIPPED[0]
