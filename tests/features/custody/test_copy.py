"""A copy of a record is complete: every table and column that is a person's is in it, or on a list with a reason."""

import io
import json
import zipfile
from typing import Any

from fastapi.testclient import TestClient

from steadfoot.custody import person
from steadfoot.custody.copy_words import TITLES
from steadfoot.schema import METADATA
from tests.builders import API, House
from tests.features.audit.rows import rows as log_rows
from tests.features.custody.marked import MARKER, marked_person, text


def _linked() -> set[str]:
    """Every table that a foreign key leads from to a client, over any others, or that names one without a key."""
    found = {"client"}
    while True:
        more = {
            table.name
            for table in METADATA.tables.values()
            if any(key.column.table.name in found for key in table.foreign_keys)
            or {"client_id", "subject_id"} & set(table.c.keys())
        }
        if more <= found:
            return found
        found |= more


def _read(answer: Any) -> tuple[dict[str, Any], str]:
    assert answer.status_code == 200, answer.text
    assert answer.headers["Content-Type"] == "application/zip"
    with zipfile.ZipFile(io.BytesIO(answer.content)) as file:
        assert sorted(file.namelist()) == ["index.html", "record.json"]
        return json.loads(file.read("record.json")), file.read("index.html").decode()


def test_a_table_that_is_linked_to_a_person_is_named_and_has_a_title_in_both_languages() -> None:
    assert _linked() == set(person.LINKED) | set(person.NOT_LINKED), "name the new table in custody/person.py"
    assert set(TITLES) == set(person.LINKED)
    assert set(person.KEPT) <= set(person.LINKED)
    for table, column in person.LINKED.items():
        assert {column, "practice_id"} <= set(METADATA.tables[table].c.keys()), table
    for table, column in person.WITHHELD:
        assert column in METADATA.tables[table].c
    reasons = (*person.WITHHELD.values(), *person.KEPT.values(), *person.NOT_LINKED.values())
    assert all(len(why) > 20 for why in reasons)


def test_every_column_of_every_linked_table_is_in_the_copy(house: House) -> None:
    client_id, _ = marked_person(house)
    house.post(f"/clients/{client_id}/erasure", {"name": f"Emil {MARKER}", "when": "later"})
    record, page = _read(house.http.get(f"{API}/clients/{client_id}/record.zip"))
    may_be_empty = {"progression_decision", "due"}
    assert {name for name, rows in record["tables"].items() if not rows} <= may_be_empty
    for name, rows in record["tables"].items():
        for row in rows:
            wanted = set(METADATA.tables[name].c.keys()) - {c for t, c in person.WITHHELD if t == name}
            assert set(row) == wanted, name
    whole = json.dumps(record, ensure_ascii=False)
    for number in range(1, 13):
        assert text(number) in whole, number
        assert text(number) in page, number
    assert record["people"] == {house.practitioner_id: "Maren Brandvold"}
    noted = [row["body"]["text"] for row in record["tables"]["event"] if row["kind"] == "note_written"]
    assert text(100) in noted, "JSON is put in as such"


def test_the_copy_has_nothing_of_anybody_else(house: House, other_house: House) -> None:
    ours, _ = marked_person(house)
    theirs = house.new_client("Ida Falk")
    record, page = _read(house.http.get(f"{API}/clients/{theirs}/record.zip"))
    assert MARKER not in json.dumps(record) + page
    assert other_house.http.get(f"{API}/clients/{ours}/record.zip").status_code == 404


def test_the_page_of_the_copy_says_texts_as_texts_and_speaks_german(house: House) -> None:
    client_id = house.new_client("<script>alert(1)</script>", note="</table><img src=x>")
    _, page = _read(house.http.get(f"{API}/clients/{client_id}/record.zip", params={"language": "de"}))
    assert "<script" not in page
    assert "<img" not in page
    assert '<html lang="de">' in page
    assert "Wer was sah und tat" in page
    assert house.http.get(f"{API}/clients/{client_id}/record.zip", params={"language": "xx"}).status_code == 422


def test_a_phone_takes_its_own_record_out_and_that_is_a_row_of_the_log(house: House) -> None:
    client_id, phone = marked_person(house, entries=1)
    headers = {"Authorization": f"Bearer {phone.token}"}
    record, _ = _read(phone.http.get(f"{API}/record.zip", headers=headers))
    assert record["client_id"] == client_id
    last = log_rows(house.app.state.database, house.practice_id)[-1]
    assert (last["action"], last["actor_id"], last["subject_id"]) == ("exportOwnRecord", phone.device_id, client_id)
    stranger = TestClient(house.app, base_url="https://testserver")
    assert stranger.get(f"{API}/record.zip").status_code == 401
