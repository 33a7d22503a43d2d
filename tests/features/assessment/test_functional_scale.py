"""Ratings of what is hard for one person, and what may be called a change."""

import pytest


@pytest.fixture
def client_id(house):
    return house.new_client()


def rate(house, client_id, status=201, taken_on=None, **scores):
    activities = [{"name": name, "rating": rating} for name, rating in scores.items()]
    more = {} if taken_on is None else {"taken_on": taken_on}
    return house.post(f"/clients/{client_id}/functional-scales", {"activities": activities, **more}, status)


def scale(house, client_id):
    return house.get(f"/clients/{client_id}/tests")["functional_scale"]


def test_it_begins_empty_and_names_its_work(house, client_id):
    found = scale(house, client_id)
    assert (found["items"], found["change"], found["why_not_compared"]) == ([], None, None)
    assert found["source_work"]["key"] == "stratford-1995"


def test_a_rating_is_kept_with_its_mean(house, client_id):
    found = rate(house, client_id, stairs=3, kneeling=4, descent=2)
    assert (found["mean"], found["taken_on"], found["taken_by"]) == (3, "2026-06-10", "Maren Brandvold")
    assert found["activities"][0] == {"name": "stairs", "rating": 3}
    assert scale(house, client_id)["items"] == [found]


@pytest.mark.parametrize(
    ("after", "is_real"), [({"stairs": 4, "descent": 3}, False), ({"stairs": 5, "descent": 4}, True)]
)
def test_a_change_is_real_from_two_points_of_the_mean_on(house, client_id, after, is_real):
    rate(house, client_id, taken_on="2026-03-03", stairs=3, descent=2)
    rate(house, client_id, **after)
    found = scale(house, client_id)["change"]
    assert (found["is_real"], found["mdc"]) == (is_real, 2)
    assert [part["of"] for part in found["parts"]] == ["stairs", "descent"]
    told = "a real gain" if is_real else "no certain change"
    assert found["words"] == f"Mean: {2 if is_real else 1} points more, {told} since 3 March 2026."


def test_thirds_of_a_point_are_told_in_tenths(house, client_id):
    rate(house, client_id, taken_on="2026-03-03", stairs=3, kneeling=3, descent=3)
    rate(house, client_id, stairs=4, kneeling=4, descent=3)
    assert scale(house, client_id)["change"]["words"].startswith("Mean: 0.7 points more, no certain change")


def test_other_activities_are_not_compared_and_it_is_said_why(house, client_id):
    rate(house, client_id, taken_on="2026-03-03", stairs=3)
    rate(house, client_id, kneeling=9)
    found = scale(house, client_id)
    assert found["change"] is None
    assert found["why_not_compared"].startswith("The activities differ")


@pytest.mark.parametrize(
    ("activities", "pointer"),
    [
        ([], "/body/activities"),
        ([{"name": f"a{place}", "rating": 1} for place in range(6)], "/body/activities"),
        ([{"name": "stairs", "rating": 11}], "/body/activities/0/rating"),
        ([{"name": "stairs", "rating": -1}], "/body/activities/0/rating"),
        ([{"name": " ", "rating": 1}], "/body/activities/0/name"),
        ([{"name": "stairs", "rating": 1}, {"name": "stairs", "rating": 2}], "/body/activities"),
    ],
)
def test_what_cannot_be_is_refused_by_its_field(house, client_id, activities, pointer):
    problem = house.post(f"/clients/{client_id}/functional-scales", {"activities": activities}, 422)
    assert problem["errors"][0]["pointer"] == pointer
    assert scale(house, client_id)["items"] == []


def test_a_rating_of_a_day_to_come_is_refused_and_a_slip_is_taken_back(house, client_id, other_house):
    assert rate(house, client_id, 422, "2026-06-11", stairs=3)["code"] == "in-the-future"
    slip = rate(house, client_id, stairs=3)
    other_house.post(f"/functional-scales/{slip['id']}/withdrawals", None, 404)
    house.post(f"/functional-scales/{slip['id']}/withdrawals")
    assert scale(house, client_id)["items"] == []
