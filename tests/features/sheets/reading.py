"""Reads printed sheets back, as a person selects text in them."""

import io

from pypdf import PdfReader


def pages(pdf: bytes) -> list[str]:
    """The text of each page, with white space as single spaces."""
    return [" ".join(page.extract_text().split()) for page in PdfReader(io.BytesIO(pdf)).pages]


def whole(pdf: bytes) -> str:
    return " ".join(pages(pdf))


def squeezed(text: str) -> str:
    """Without any white space: where a line breaks is not what was typed."""
    return "".join(text.split())


def size_pt(pdf: bytes) -> tuple[int, int]:
    box = PdfReader(io.BytesIO(pdf)).pages[0].mediabox
    return round(box.width), round(box.height)


def drawing_scale(pdf: bytes) -> float:
    """How large its largest drawing is, in points a drawing unit. Letters are at 1; a QR code's squares are larger."""
    found: list[float] = []
    for page in PdfReader(io.BytesIO(pdf)).pages:
        page.extract_text(visitor_operand_before=lambda _op, _args, matrix, _text: found.append(abs(matrix[3])))
    return max(scale for scale in found if scale < 1)
