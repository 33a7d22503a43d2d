"""The log as the practice reads it, and as files that are safe to open and can be checked by others."""

import csv
import hashlib
import io
import json
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from steadfoot.audit import service
from steadfoot.audit.service import Act, Actor, ActorKind
from steadfoot.core.database import Database
from steadfoot.custody.cells import harmless, line_of
from steadfoot.custody.log import PAGE_ROWS, span_of
from tests.builders import API, PASSWORD, House
from tests.conftest import START, StandingClock
from tests.features.audit.rows import rows


def test_the_page_says_names_and_can_be_asked_for_one_person_one_client_or_one_day(
    house: House, clock: StandingClock
) -> None:
    emil, ida = house.new_client("Emil Tarrow"), house.new_client("Ida Falk")
    house.get(f"/clients/{emil}/overview")
    about = house.get("/audit", client_id=emil)["items"]
    assert [(row["action"], row["subject_name"], row["actor_name"]) for row in about] == [
        ("readOverview", "Emil Tarrow", "Maren Brandvold"),
        ("createClient", "Emil Tarrow", "Maren Brandvold"),
    ]
    clock.forward(hours=14, minutes=30)  # half an hour into the next day, in Vienna
    house.http.post(f"{API}/sign-in", json={"email": "maren@thornwater.example", "password": PASSWORD})
    house.get(f"/clients/{ida}/overview")
    assert house.get("/audit", day="2026-06-12")["items"] == []
    assert {row["action"] for row in house.get("/audit", day="2026-06-11")["items"]} == {
        "signIn", "readOverview", "readAudit",
    }  # fmt: skip
    assert "createClient" in {row["action"] for row in house.get("/audit", day="2026-06-10")["items"]}
    mine = house.get("/audit", practitioner_id=house.practitioner_id)
    assert {row["actor_id"] for row in mine["items"]} == {house.practitioner_id}
    assert [one["name"] for one in mine["clients"]] == ["Emil Tarrow", "Ida Falk"]
    house.get("/audit", status=422, client_id="no id")
    house.get("/audit", status=422, day="soon")


def test_a_day_is_the_practices_own_also_where_the_clock_is_changed() -> None:
    begins, ends = span_of(date(2026, 3, 29), "Europe/Vienna") or (None, None)
    assert begins is not None
    assert ends is not None
    assert (ends - begins).total_seconds() == 23 * 3600


@pytest.mark.parametrize("day", ["0001-01-01", "9999-12-31"])
def test_a_day_at_the_calendars_end_has_no_rows_on_the_page_and_in_the_table(house: House, day: str) -> None:
    assert house.get("/audit", day=day)["items"] == []
    assert len(house.http.get(f"{API}/audit/rows.csv", params={"day": day}).text.splitlines()) == 1


def test_a_number_that_no_row_can_have_is_refused(house: House) -> None:
    for below in (0, 2**53, 2**63):
        house.get("/audit", status=422, below=below)


def test_pages_follow_one_another_without_a_gap(house: House, database: Database) -> None:
    actor = Actor(ActorKind.PRACTITIONER, house.practice_id, house.practitioner_id)
    with database.write() as session:
        service.record_all(session, [Act(actor, "readClient", START, str(n)) for n in range(2 * PAGE_ROWS + 5)])
    numbers, below = [], {}
    while below is not None:
        page = house.get("/audit", **below)
        numbers += [row["number"] for row in page["items"]]
        below = {"below": page["next"]} if page["next"] else None
    assert numbers == list(range(numbers[0], 0, -1))


def test_the_chain_is_walked_and_its_head_is_there_to_be_noted(house: House, database: Database) -> None:
    found = house.get("/audit/chain")
    assert (found["whole"], found["broken_at"], found["why"]) == (True, None, "")
    assert found["head"] == rows(database, house.practice_id)[found["rows"] - 1]["digest"]


def test_an_outsider_checks_the_lines_of_the_whole_chain(house: House) -> None:
    house.get(f"/clients/{house.new_client()}")
    answer = house.http.get(f"{API}/audit/rows.jsonl")
    assert answer.headers["Content-Disposition"] == 'attachment; filename="access-log.jsonl"'
    previous, lines = "0" * 64, answer.text.splitlines()
    assert len(lines) >= 3
    for line in lines:
        row = json.loads(line)
        digest = row.pop("digest")
        packed = json.dumps(row, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
        assert hashlib.sha256(packed.encode()).hexdigest() == digest
        assert row["previous"] == previous
        previous = digest


def test_the_table_has_the_wanted_rows_and_a_name_that_is_a_formula_is_a_text(house: House) -> None:
    emil = house.new_client('=HYPERLINK("http://evil.example","Emil")')
    house.new_client("Ida Falk")
    answer = house.http.get(f"{API}/audit/rows.csv", params={"client_id": emil})
    table = list(csv.reader(io.StringIO(answer.text)))
    assert answer.headers["Content-Type"] == "text/csv; charset=utf-8"
    assert [row[5] for row in table] == ["action", "exportAuditTable", "createClient"]
    assert table[2][6] == '\'=HYPERLINK("http://evil.example","Emil")'


@given(st.lists(st.text(), min_size=1, max_size=5))
def test_no_cell_begins_a_formula_and_what_it_says_is_still_there(cells: list[str]) -> None:
    line = line_of(cells)
    (read,) = list(csv.reader(io.StringIO(line, newline=""))) if "\x00" not in line else [[harmless(c) for c in cells]]
    for cell, found in zip(cells, read, strict=True):
        assert not found.lstrip(" \u00a0\ufeff").startswith(tuple("=+-@\t\r\n＝＋－＠"))
        assert found.removeprefix("'") in (cell, cell.removeprefix("'"))


def test_another_practice_sees_its_own_log_only(house: House, other_house: House) -> None:
    house.new_client("Emil Tarrow")
    theirs = other_house.http.get(f"{API}/audit/rows.jsonl").text + other_house.http.get(f"{API}/audit").text
    assert house.practice_id not in theirs
    assert "Tarrow" not in theirs
