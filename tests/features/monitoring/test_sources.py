"""Where our numbers come from, through HTTP."""

from steadfoot.rules.sources import BIBLIOGRAPHY
from tests.builders import API


def test_every_number_names_a_work_that_is_on_the_page(house):
    answer = house.get("/sources")
    assert [work["key"] for work in answer["works"]] == list(BIBLIOGRAPHY)
    numbers = {(one["where"], one["name"]): one for one in answer["numbers"]}
    stop = numbers["rules/pain.py", "PAIN_STOP"]
    assert (stop["value"], stop["kind"], stop["source"]) == (6, "published", "silbernagel-2007")
    assert numbers["rules/dose.py", "SPACING_DAYS"]["unit"] == "days"
    assert {one["source"] for one in answer["numbers"]} <= set(BIBLIOGRAPHY)
    assert all(work["population"] and work["read_as"] for work in answer["works"])


def test_a_phone_may_read_them_too_but_not_everybody(house):
    phone = house.pair(house.new_client())
    headers = {"Authorization": f"Bearer {phone.token}"}
    assert phone.http.get(f"{API}/sources", headers=headers).status_code == 200
    assert phone.http.get(f"{API}/sources").status_code == 401
