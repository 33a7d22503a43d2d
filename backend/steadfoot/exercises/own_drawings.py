"""Drawings of practices' own movements, by the key of their version; the gallery keeps them like the library's."""

import json
from collections.abc import Callable

from sqlmodel import Session

from steadfoot.core.database import Database
from steadfoot.core.problems import not_found
from steadfoot.exercises import own_store
from steadfoot.exercises.drawings import drawn
from steadfoot.exercises.figures.motion import move
from steadfoot.exercises.figures.read import Figure, figure
from steadfoot.exercises.gallery import Gallery, digest
from steadfoot.exercises.schemas import Form
from steadfoot.exercises.shelf import drawn_variants, is_own


def own_figure(session: Session, key: str, variant: str, view: str | None = None) -> Figure:
    """Answer what is to be drawn.

    Raises:
        NotFound: no such key, variant or view, or its drawing has findings.
    """
    version = own_store.with_drawing(session, key)
    if version is None or variant not in drawn_variants(version):
        raise not_found("drawing")
    found = figure(version.code, variant, json.loads(version.poses)[variant])
    if view and view not in found.movement.views:
        raise not_found("drawing")
    return found


def _draw(found: Figure, form: Form, view: str | None) -> bytes:
    return drawn(found, move(found.task), form, view)


def _name(key: str, variant: str, form: Form, view: str | None) -> str:
    return digest(key.encode(), f"{variant} {form} {view or ''}".encode())


def own_drawing(database: Database, key: str, variant: str, view: str | None) -> Figure:
    """Answer what is to be drawn, with a session of its own that ends before the drawing begins.

    Raises:
        NotFound: as in ``own_figure``.
    """
    with database.read() as session:
        return own_figure(session, key, variant, view)


async def ask_own(gallery: Gallery, found: Figure, key: str, form: Form, view: str | None) -> bytes:
    """Answer a drawing as SVG."""
    name = _name(key, found.variant, form, view)
    return await gallery.ask_for(name, lambda: _draw(found, form, view))


def strips(gallery: Gallery, session: Session) -> Callable[[str, str], str | None]:
    """Answer what finds the key poses for paper: by the code of a library's movement, or by an own one's key."""

    def strip_of(code: str, variant: str) -> str | None:
        if not is_own(code):
            return gallery.strip_of(code, variant)
        version = own_store.with_drawing(session, code)
        if version is None or variant not in drawn_variants(version):
            return None
        found = own_figure(session, code, variant)
        name = _name(code, variant, Form.STRIP, None)
        return gallery.wait_for(name, lambda: _draw(found, Form.STRIP, None)).decode()

    return strip_of
