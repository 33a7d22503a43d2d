"""What is asked of a sheet."""

from typing import Annotated

from pydantic import Field, StringConstraints

from steadfoot.core.texts import Code, Inward, JsonBool, Line, Name
from steadfoot.sheets.layout import Language, Paper

PICKS_MAX = 20


class PickBody(Inward):
    """One way of doing a movement; its dose is the library's usual one."""

    exercise: Code
    variant: Code


class ClassSheetBody(Inward):
    """A sheet for a group class or a public talk. It names no person but the practice."""

    title: Name
    about: Annotated[Line, StringConstraints(max_length=300)] = Field(default="", description="A line under the title.")
    movements: Annotated[list[PickBody], Field(min_length=1, max_length=PICKS_MAX)]
    paper: Paper = Paper.A4
    large: JsonBool = Field(default=False, description="Large print.")
    language: Language = Field(default=Language.EN, description="Of the sheet's own words.")
