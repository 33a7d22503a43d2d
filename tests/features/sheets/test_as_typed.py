"""What people type is printed as typed, whatever typst would make of it as source."""

from hypothesis import example, given, settings
from hypothesis import strategies as st

from steadfoot.sheets.layout import Language, Movement, Section, Sheet, Style
from steadfoot.sheets.press import to_pdf
from steadfoot.sheets.wording import Wording
from tests.features.sheets.reading import squeezed, whole

# Letters that the shipped typeface has, to compare what is read back; marks of typst oftener than by chance.
MARKS = st.sampled_from(
    list("#*_`$\\\"'@<>=[]{}()~-/+.:;\n") + ["//", "/*", "*/", "#panic()", "--", "{n}", "\\u{1F600}"]
)
TYPED = st.lists(st.characters(min_codepoint=32, max_codepoint=126) | MARKS, max_size=40).map("".join)


def _sheet(title: str, note: str) -> Sheet:
    movement = Movement(note, "variant", "dose", "", ("Do it.",), ("Slowly.",), ("Take care.",), note, "")
    section = Section(title, "", note, "", "", (movement,), (), "")
    return Sheet(title, "Practice", (note,), (section,), ("Care.",), "Urgent.", "", None, Wording(Language.EN).labels)


@given(title=TYPED, note=TYPED)
@example(title='#let x = "a"', note="a \\ b\n= c\n#panic(1) $x$ <y> @z // end")
@settings(max_examples=60, deadline=None)
def test_texts_with_marks_are_printed_as_typed(title: str, note: str) -> None:
    text = squeezed(whole(to_pdf(_sheet(title, note), Style())))
    assert squeezed(title) in text
    assert text.count(squeezed(note)) >= 3


def test_a_letter_that_no_typeface_has_stops_no_sheet() -> None:
    assert to_pdf(_sheet("山田 \U0001f97e \u200f\u0301", "\u0000\u0007 \ue000"), Style()).startswith(b"%PDF-")


def test_a_long_word_and_a_long_note_lose_nothing() -> None:
    note = "knee " * 700 + "end-of-note"
    assert "end-of-note" in whole(to_pdf(_sheet("T", note), Style()))
