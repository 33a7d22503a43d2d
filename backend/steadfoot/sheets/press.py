"""Prints a sheet as PDF with typst.

The texts reach typst as data, not as source: whatever marks a title or a note has, they are printed as typed.
"""

import json
from dataclasses import asdict
from functools import cache
from pathlib import Path
from threading import Lock
from typing import Any, Final

import segno
import typst

from steadfoot.sheets.layout import Sheet, Style

_HERE: Final = Path(__file__).parent
_TEMPLATE: Final = "sheet.typ"
_TURN: Final = Lock()  # one compiler is kept, as reading fonts takes longer than a page; it serves one at a time


@cache
def _compiler() -> typst.Compiler:
    return typst.Compiler(str(_HERE / _TEMPLATE), root=str(_HERE), font_paths=[str(_HERE / "fonts")])


def _inputs(sheet: Sheet, style: Style) -> dict[str, str]:
    data: dict[str, Any] = asdict(sheet) | {"style": asdict(style)}
    return {"sheet": json.dumps(data, ensure_ascii=False)}


def to_pdf(sheet: Sheet, style: Style) -> bytes:
    """Answer the sheet as PDF, with tags for screen readers and text that can be selected."""
    with _TURN:
        pdf = _compiler().compile(format="pdf", sys_inputs=_inputs(sheet, style))
    assert isinstance(pdf, bytes), "a PDF is one file"
    return pdf


def qr_svg(address: str) -> str:
    """Answer a QR code (ISO/IEC 18004, error correction M) as SVG, black on white."""
    return str(segno.make(address, error="m").svg_inline(border=2, svgclass=None, lineclass=None))
