"""Passwords that are guessed first: a short list of our own, and the shapes that guessing programs try before others.

Common practice (NIST SP 800-63B, 5.1.1.2; OWASP ASVS 5.0, 6.2.4 and 6.2.11): words at the top of every published count
of stolen passwords, rows of keys, repetition, the product's and the person's own names; with digits or signs around
them, and with the usual digits in the place of letters. It stands for no list of all that was ever stolen.
"""

import re

_COMMON = """
 password passwort passwd passphrase kennwort geheim secret letmein welcome willkommen admin administrator root user
login changeme default master iloveyou ichliebedich sunshine princess dragon monkey football fussball baseball
superman batman shadow trustno hallo hello whatever freedom summer sommer winter spring autumn herbst berlin london
january february march april may june july august september october november december qwertz qwerty asdf yxcvb zxcvb
azerty test temp guest demo sample example office practice praxis clinic therapy physio physiotherapy therapist
steadfoot hiking hike mountain trail boots computer internet server abc abcd abcde
"""
_WORDS = frozenset(_COMMON.split())
_ROWS = (
    "01234567890123456789",
    "98765432109876543210",
    "abcdefghijklmnopqrstuvwxyz",
    "zyxwvutsrqponmlkjihgfedcba",
    "qwertyuiopasdfghjklzxcvbnm",
    "qwertzuiopasdfghjklyxcvbnm",
    "azertyuiopqsdfghjklmwxcvbn",
    "1qaz2wsx3edc4rfv5tgb6yhn7ujm",
    "1q2w3e4r5t6y7u8i9o0p",
)
_LONGEST_REPEATED = 4
_LETTERS_FOR = str.maketrans("013457@$!", "oieastasi")
_NAME_LENGTH = 3
"""Shorter parts of names are parts of too many words."""


def is_guessed_first(password: str, about: tuple[str, ...] = ()) -> bool:
    """Say whether a password is one of those, or nothing but ``about``: the practice's and the person's names."""
    plain = password.casefold()
    words = _WORDS | {part for text in about for part in re.split(r"\W+", text.casefold()) if len(part) >= _NAME_LENGTH}
    return _is_row(plain) or _is_repeated(plain) or any(_is_of(words, text) for text in (plain, _respelled(plain)))


def _respelled(plain: str) -> str:
    """Answer the text with letters again where digits or signs stand for them: between two letters."""
    return re.sub(r"(?<=[a-z])[013457@$!]+(?=[a-z])", lambda found: found[0].translate(_LETTERS_FOR), plain)


def _is_row(plain: str) -> bool:
    return any(plain in row for row in _ROWS)


def _is_repeated(plain: str) -> bool:
    return any(plain == (plain[:size] * len(plain))[: len(plain)] for size in range(1, _LONGEST_REPEATED + 1))


def _is_of(words: frozenset[str], text: str) -> bool:
    """Say whether nothing is left of a text but digits and signs once the words are taken out of it."""
    if not any(word in text for word in words):
        return False
    longest_first = sorted(words, key=len, reverse=True)
    left = re.sub("|".join(map(re.escape, longest_first)), "", text)
    return not any(letter.isalpha() for letter in left)
