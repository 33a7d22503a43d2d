"""Cells of a comma-separated file that no spreadsheet takes for a formula."""

import csv
import io
from collections.abc import Iterable

_BEGINS_FORMULA = ("=", "+", "-", "@", "\t", "\r", "\n", "\uff1d", "\uff0b", "\uff0d", "\uff20")
"""What spreadsheets take for the beginning of a formula, or skip before one; the last four are the wide forms."""


def harmless(cell: object) -> str:
    """Answer a cell's text; a quotation mark goes before what a spreadsheet could run."""
    text = "" if cell is None else str(cell)
    bare = text.lstrip(" \u00a0\ufeff")
    return f"'{text}" if text.startswith(_BEGINS_FORMULA) or bare.startswith(_BEGINS_FORMULA) else text


def line_of(cells: Iterable[object]) -> str:
    """Answer one line, every cell quoted, so that none can end early."""
    out = io.StringIO()
    csv.writer(out, quoting=csv.QUOTE_ALL).writerow([harmless(cell) for cell in cells])
    return out.getvalue()
