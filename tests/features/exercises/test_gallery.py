"""Finished drawings are kept, each computed once."""

import asyncio
import threading

import pytest

from steadfoot.core.problems import Problem
from steadfoot.exercises import drawings, gallery
from steadfoot.exercises.gallery import Gallery, name_of
from steadfoot.exercises.schemas import Form

WISH = ("squat", "free", Form.STILL, None)


class Drawn(list):
    """What was computed, in order; each takes a while."""

    takes_s = 0.02


@pytest.fixture
def drawn(monkeypatch):
    """What was computed, in order, and never two at the same time."""
    calls, lock = Drawn(), threading.Lock()

    def draw(*wish):
        assert lock.acquire(blocking=False), "two drawings at once"
        calls.append(wish)
        threading.Event().wait(calls.takes_s)
        lock.release()
        return f"<svg>{wish}</svg>".encode()

    monkeypatch.setattr(drawings, "drawing", draw)
    return calls


def test_many_who_ask_at_once_get_one_computation(tmp_path, drawn):
    async def ask():
        kept = Gallery(tmp_path / "figures")
        other = ("squat", "load", Form.STILL, None)
        answers = await asyncio.gather(*(kept.ask(*wish) for wish in [WISH, other] * 5))
        kept.close()
        return answers

    assert len(set(asyncio.run(ask()))) == 2
    assert len(drawn) == 2


def test_the_event_loop_is_free_meanwhile(tmp_path, drawn):
    async def ask():
        kept = Gallery(tmp_path / "figures")
        task = asyncio.ensure_future(kept.ask(*WISH))
        turns = 0
        while not task.done():
            await asyncio.sleep(0.001)
            turns += 1
        kept.close()
        return turns

    assert asyncio.run(ask()) > 3


def test_the_next_start_finds_it_in_the_folder(tmp_path, drawn):
    first = Gallery(tmp_path / "figures").draw(WISH)
    assert Gallery(tmp_path / "figures").draw(WISH) == first
    assert len(drawn) == 1
    assert [file.name for file in (tmp_path / "figures").iterdir()] == [name_of(WISH)]


def test_another_pose_file_or_engine_is_another_drawing(monkeypatch):
    before = name_of(WISH)
    monkeypatch.setattr(gallery, "_pose_file", lambda code: b"{}")
    assert name_of(WISH) != before
    monkeypatch.undo()
    monkeypatch.setattr(gallery, "_engine", lambda: b"another")
    assert name_of(WISH) != before


@pytest.mark.parametrize("folder", ["absent/figures", "file/figures"])
def test_a_folder_that_cannot_be_written_leaves_memory(tmp_path, drawn, folder):
    (tmp_path / "file").write_text("not a folder")
    kept = Gallery(tmp_path / folder)
    assert kept.draw(WISH) == kept.draw(WISH)
    assert len(drawn) == 1
    assert not (tmp_path / "absent").exists()


def test_drawing_ahead_fills_the_folder_and_clears_out_old_files(tmp_path, drawn):
    drawn.takes_s = 0  # there are hundreds, and nobody asks meanwhile
    folder = tmp_path / "figures"
    folder.mkdir()
    (folder / "of-an-earlier-engine.svg").write_text("<svg/>")
    Gallery(folder).draw_ahead()
    wanted = {name_of(wish) for wish in gallery.shown()}
    assert {file.name for file in folder.iterdir()} == wanted
    Gallery(folder).draw_ahead()
    assert len(drawn) == len(wanted)


def test_what_cannot_be_drawn_is_refused_before_anything_is_computed(tmp_path, drawn):
    with pytest.raises(Problem):
        Gallery(tmp_path).draw(("squat", "../../etc", Form.STILL, None))
    assert drawn == []


def test_drawing_ahead_ends_with_the_server(tmp_path, drawn):
    answers = iter([True, True, False])
    Gallery(tmp_path / "figures").draw_ahead(lambda: next(answers))
    assert len(drawn) == 2


def test_the_list_says_what_is_finished_here_or_in_the_folder(tmp_path, drawn):
    folder = tmp_path / "figures"
    assert not any(one.ready for one in Gallery(folder).listed().items)
    Gallery(folder).draw(("squat", "free", Form.MOVING, None))
    Gallery(folder).draw(("squat", "load", Form.STILL, None))
    assert [(one.exercise, one.variant) for one in Gallery(folder).listed().items if one.ready] == [("squat", "free")]


def test_another_pose_file_is_another_version(tmp_path, monkeypatch):
    before = {one.version for one in Gallery(tmp_path).listed().items}
    monkeypatch.setattr(gallery, "_pose_file", lambda code: code.encode())
    after = {one.version for one in Gallery(tmp_path).listed().items}
    assert len(after) == len(before)
    assert not before & after
