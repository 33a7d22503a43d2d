"""What people type is printed as typed, whatever typst would make of it as source."""

import io

from hypothesis import example, given, settings
from hypothesis import strategies as st
from pypdf import PageObject, PdfReader

from steadfoot.sheets.layout import Language, Movement, Section, Sheet, Style
from steadfoot.sheets.press import to_pdf
from steadfoot.sheets.wording import Wording
from tests.features.sheets.reading import squeezed, whole

# Letters that the shipped typeface has, to compare what is read back; marks of typst oftener than by chance.
MARKS = st.sampled_from(
    list("#*_`$\\\"'@<>=[]{}()~-/+.:;\n") + ["//", "/*", "*/", "#panic()", "--", "{n}", "\\u{1F600}"]
)
MARGIN_PT = 36  # of these the footer may take half
TYPED = st.lists(st.characters(min_codepoint=32, max_codepoint=126) | MARKS, max_size=40).map("".join)


def _sheet(title: str, note: str, name: str) -> Sheet:
    movement = Movement(name, "variant", "dose", "", ("Do it.",), ("Slowly.",), ("Take care.",), note, (name,), "")
    section = Section(title, "", note, "", "", (movement,), (), "")
    return Sheet(title, "Practice", (note,), (section,), ("Care.",), "Urgent.", "", None, Wording(Language.EN).labels)


@given(title=TYPED, note=TYPED)
@example(title='#let x = "a"', note="a \\ b\n= c\n#panic(1) $x$ <y> @z // end")
@settings(max_examples=60, deadline=None)
def test_texts_with_marks_are_printed_as_typed(title: str, note: str) -> None:
    text = squeezed(whole(to_pdf(_sheet(title, note, name=note), Style())))
    assert squeezed(title) in text
    assert text.count(squeezed(note)) >= 5


def test_a_letter_that_no_typeface_has_stops_no_sheet() -> None:
    assert to_pdf(_sheet("山田 \U0001f97e \u200f\u0301", "\u0000\u0007 \ue000", "\ue000"), Style()).startswith(b"%PDF-")


def test_a_long_word_and_a_long_note_stay_on_the_paper() -> None:
    note = "knee " * 790 + "x" * 300 + "."
    for large in (False, True):
        pdf = to_pdf(_sheet("T" * 120, note, "Step-down"), Style(large=large))
        for page in PdfReader(io.BytesIO(pdf)).pages:
            width, height = page.mediabox.right, page.mediabox.top
            for left, bottom in _places(page):
                assert 0 <= left <= width - MARGIN_PT
                assert MARGIN_PT / 2 <= bottom <= height - MARGIN_PT / 2
        text = squeezed(whole(pdf))  # footers stand between the parts of a note that turns the page
        assert (text.count("knee"), text.count("x")) == (3 * 790, 3 * 300)


def _places(page: PageObject) -> list[tuple[float, float]]:
    """Where each run of text begins, points from the lower left corner."""
    found: list[tuple[float, float]] = []

    def note_place(text: str, around: list[float], matrix: list[float], font: object, size: float) -> None:
        if text.strip():
            x, y = matrix[4], matrix[5]
            found.append(
                (around[0] * x + around[2] * y + around[4], around[1] * x + around[3] * y + around[5]),
            )

    page.extract_text(visitor_text=note_place)
    return found
