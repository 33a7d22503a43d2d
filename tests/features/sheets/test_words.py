"""Two languages with the same keys and placeholders."""

import string

from steadfoot.rules.vocabulary import Kit
from steadfoot.sheets import words_de, words_en


def _slots(text: str) -> set[str]:
    return {name for _, name, _, _ in string.Formatter().parse(text) if name}


def test_both_languages_say_the_same_things() -> None:
    assert {key: _slots(text) for key, text in words_en.WORDS.items()} == {
        key: _slots(text) for key, text in words_de.WORDS.items()
    }


def test_every_kind_of_kit_has_a_name() -> None:
    assert {key for key in words_en.WORDS if key.startswith("kit_")} == {f"kit_{one.value}" for one in Kit}
