"""Keeps finished drawings, in memory and in a folder, so that each is computed once for each content."""

import asyncio
import hashlib
import os
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import suppress
from functools import cache
from importlib.resources import files
from pathlib import Path

from steadfoot.exercises import drawings
from steadfoot.exercises.schemas import DrawingOut, DrawingsOut, Form

Wish = tuple[str, str, Form, str | None]
"""Exercise, variant, form, view."""
VERSION_LETTERS = 12
"""House: hexadecimal digits of a drawing's digest that a phone compares; 48 bits tell two apart for good."""


@cache
def _engine() -> bytes:
    """Answer a digest of the code that draws: with another engine every drawing is another one."""
    folder = files("steadfoot.exercises") / "figures"
    sources = sorted(file.read_bytes() for file in folder.iterdir() if file.is_file())
    return hashlib.sha256(b"\0".join(sources)).digest()


@cache
def _pose_file(code: str) -> bytes:
    return (files("steadfoot.exercises") / "poses" / f"{code}.json").read_bytes()


def name_of(wish: Wish) -> str:
    """Answer the file name of a drawing: a digest of the engine, the pose file and what is asked of them."""
    code, variant, form, view = wish
    return digest(_pose_file(code), f"{variant} {form} {view or ''}".encode())


def digest(poses: bytes, asked: bytes) -> str:
    """Answer a file name that is another one with another engine, other poses or another wish."""
    return hashlib.sha256(b"\0".join((_engine(), poses, asked))).hexdigest()[:40] + ".svg"


def shown() -> Iterator[Wish]:
    """Answer every drawing that pages and paper show: stills first, since lists show many at once."""
    for form in (Form.STILL, Form.MOVING, Form.STRIP):
        for code, variants in drawings.poses().items():
            yield from ((code, variant, form, None) for variant in variants)


class Gallery:
    """Drawings by wish. One thread of its own draws: never two at once, and other requests do not wait."""

    def __init__(self, folder: Path) -> None:
        """Keep files in ``folder``; in memory alone if the folder above is not there or it cannot be written."""
        self._folder = folder
        self._kept: dict[Wish, bytes] = {}
        self._thread = ThreadPoolExecutor(max_workers=1, thread_name_prefix="drawing")

    async def ask(self, *wish: *Wish) -> bytes:
        """Answer a drawing as SVG.

        Raises:
            NotFound: no such exercise, variant or view, or not drawn yet.
        """
        if wish in self._kept:
            return self._kept[wish]
        return await asyncio.get_running_loop().run_in_executor(self._thread, self.draw, wish)

    def strip_of(self, code: str, variant: str) -> str | None:
        """Answer a variant's key poses as a still SVG for paper; None where there is no drawing. Waits for it."""
        if variant not in drawings.poses().get(code, {}):
            return None
        return self._thread.submit(self.draw, (code, variant, Form.STRIP, None)).result().decode()

    def draw(self, wish: Wish) -> bytes:
        """Answer a drawing, from the folder if it is there. For one thread at a time.

        Raises:
            NotFound: as in ``ask``.
        """
        if wish not in self._kept:
            drawings.refuse_unknown(wish[0], wish[1], wish[3])
            self._kept[wish] = self._from_folder(name_of(wish), lambda: drawings.drawing(*wish))
        return self._kept[wish]

    def listed(self) -> DrawingsOut:
        """Answer every variant that can be drawn, with a version, and whether its moving drawing is finished."""
        wishes = [wish for wish in shown() if wish[2] is Form.MOVING]
        return DrawingsOut(items=[self._item(wish) for wish in wishes])

    async def ask_for(self, name: str, draw: Callable[[], bytes]) -> bytes:
        """Answer a drawing by the file name that its content gives it; memory does not keep it."""
        return await asyncio.get_running_loop().run_in_executor(self._thread, self._from_folder, name, draw)

    def wait_for(self, name: str, draw: Callable[[], bytes]) -> bytes:
        """Answer the same to a caller that waits in a thread."""
        return self._thread.submit(self._from_folder, name, draw).result()

    def draw_ahead(self, go_on: Callable[[], bool] = lambda: True) -> None:
        """Draw what is shown and not in the folder yet; then remove files of earlier engines and poses."""
        for wish in shown():
            if not go_on():
                return
            self.draw(wish)
        current = {name_of((code, v, form, view)) for code, v, view in drawings.views() for form in Form}
        for file in self._folder.glob("*.svg"):
            if file.name not in current:
                file.unlink(missing_ok=True)

    def close(self) -> None:
        """Begin no further drawing."""
        self._thread.shutdown(wait=False, cancel_futures=True)

    def _item(self, wish: Wish) -> DrawingOut:
        file = name_of(wish)
        ready = wish in self._kept or (self._folder / file).exists()
        return DrawingOut(exercise=wish[0], variant=wish[1], version=file[:VERSION_LETTERS], ready=ready)

    def _from_folder(self, name: str, draw: Callable[[], bytes]) -> bytes:
        file = self._folder / name
        try:
            return file.read_bytes()
        except OSError:
            drawn = draw()
        self._put(file, drawn)
        return drawn

    def _put(self, file: Path, drawn: bytes) -> None:
        part = file.with_suffix(f".{os.getpid()}")
        try:
            self._folder.mkdir(exist_ok=True)
            part.write_bytes(drawn)
            part.replace(file)  # at once: another process never reads half a drawing
        except OSError:
            with suppress(OSError):  # a full or read-only disk: memory keeps it
                part.unlink()
