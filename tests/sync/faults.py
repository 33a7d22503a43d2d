"""What goes wrong with a phone that works offline, fault by fault: the tests that provoke it, or why it cannot be here.

``test_faults.py`` holds that every test named here exists. Numbers are those of our own list of faults: 3 storage of
the browser, 4 sending, 5 the app's shell.
"""

from dataclasses import dataclass

_DATABASE = "frontend/src/outbox/database.test.ts"
_SENDER = "frontend/src/outbox/sender.test.ts"
_INDEX = "frontend/src/outbox/index.test.ts"
_STORAGE = "tests/e2e/test_phone_storage_faults.py"
_OFFLINE = "tests/e2e/test_phone_offline.py"
_UPDATE = "tests/e2e/test_phone_update.py"
_IDENTITY = "tests/features/checkins/test_event_identity.py"


@dataclass(frozen=True)
class Fault:
    """One fault: what happens, the tests that provoke it, and what no test here can reach."""

    name: str
    tests: tuple[str, ...] = ()
    """``file::name`` of pytest, ``file::title`` of Vitest."""
    beyond: str = ""
    """What cannot be provoked here, why, and what was looked at instead."""


STORAGE_AND_SHELL = {
    "3.1": Fault(
        "the connection to the phone's database dies behind the app's back",
        (
            f"{_DATABASE}::once, at any call, the entry is stored all the same, once",
            f"{_DATABASE}::for good, at any call, it never answers as if it were saved",
            f"{_DATABASE}::takes a new connection after the old one was closed behind its back",
        ),
        "The real cause needs an iPhone under memory pressure; every storage call is made to fail in its place.",
    ),
    "3.2": Fault(
        "power is lost a moment after an entry was saved",
        (f"{_DATABASE}::asks for strict durability and answers only after complete",),
        "No test can cut a phone's power; what is held is that each write asks for strict durability.",
    ),
    "3.3": Fault(
        "the browser clears what the app kept between two visits",
        (
            f"{_STORAGE}::test_a_phone_whose_databases_were_cleared_says_what_is_lost_and_takes_up_again_with_a_new_code",
            f"{_INDEX}::is said at the next start, with how much had not been sent, until it is paired again",
            f"{_INDEX}::the browser is asked at pairing to keep what is here",
        ),
        "Where a browser clears everything of the site at once, the note about it goes too, and the first page looks "
        "like a first visit. What the browser answered to being asked stays on the phone; the practice is not told.",
    ),
    "3.4": Fault(
        "storage is refused, or the phone is full",
        (
            f"{_DATABASE}::the probe finds storage that refuses to be used",
            f"{_DATABASE}::says when the phone is full, and goes on when there is room",
            f"{_STORAGE}::test_a_full_phone_says_so_shows_nothing_as_saved_and_goes_on_when_there_is_room",
        ),
        "Chromium's own switch for a quota changes nothing in a headless shell: the error is thrown at the write. "
        "Without storage a phone cannot be paired, and says why; there is no sending without keeping.",
    ),
    "3.5": Fault(
        "an old window holds the database that a new build wants to change",
        (
            f"{_STORAGE}::test_a_window_held_up_by_an_old_one_says_so_and_goes_on_by_itself_when_that_is_closed",
            f"{_DATABASE}::the older page lets go and says that it is outdated",
            f"{_DATABASE}::a page that is blocked says so after a moment, and goes on by itself",
            f"{_DATABASE}::a connection that comes too late is let go, so that it holds up nobody",
        ),
    ),
    "3.6": Fault(
        "a transaction closes by itself in the middle",
        (
            f"{_DATABASE}::is one transaction, however much belongs together",
            f"{_DATABASE}::that waits for something else in the middle is told as not saved",
        ),
    ),
    "3.7": Fault(
        "the database's files are damaged",
        (f"{_STORAGE}::test_a_phone_whose_database_files_are_damaged_starts_says_what_it_can_and_can_be_paired",),
    ),
    "3.8": Fault(
        "a connection is closing while a long session writes",
        (f"{_DATABASE}::takes a new connection after the old one was closed behind its back",),
    ),
    "3.9": Fault(
        "the browser is killed a moment after a tap",
        (f"{_OFFLINE}::test_a_stone_that_shows_as_laid_is_there_after_the_browser_was_killed",),
    ),
    "3.10": Fault(
        "a phone is copied, or set back to an older copy of itself",
        (
            f"{_SENDER}::takes numbers of its own when one is taken, and loses nothing",
            f"{_SENDER}::notices when the practice holds numbers it has not reached itself",
            f"{_IDENTITY}::test_the_copy_of_a_phone_gets_numbers_of_its_own_and_its_entry_then_needs_nobody",
        ),
    ),
    "5.1": Fault(
        "an old shell after a new build",
        (
            f"{_UPDATE}::test_an_update_is_offered_between_sessions_only_and_loses_nothing",
            "frontend/src/sw/register.test.ts::a page that is seen again asks for a new version",
        ),
    ),
    "5.2": Fault(
        "two windows, and one takes the new version",
        (
            "frontend/src/sw/register.test.ts::"
            "a page beside it, whose person said nothing, is not loaded again under their hands",
            f"{_UPDATE}::test_an_update_is_offered_between_sessions_only_and_loses_nothing",
        ),
    ),
    "5.3": Fault(
        "a part of the app that is loaded late is gone after a new build",
        (),
        "Cannot happen: the build fails when the worker lacks a file of the app (frontend/tools/precached.mjs).",
    ),
    "5.4": Fault(
        "replies of other sites fill the phone",
        ("tests/features/core/test_edge.py::test_every_reply_carries_the_headers_that_protect_a_browser",),
        "Cannot happen: the content policy lets the app ask nobody but its own server.",
    ),
    "5.5": Fault(
        "the worker answers for pages that are not the app's",
        (f"{_UPDATE}::test_a_broken_worker_can_be_taken_off_every_phone_and_nothing_that_was_entered_goes_with_it",),
    ),
    "5.6": Fault(
        "replies about a person are kept in a cache",
        (f"{_UPDATE}::test_a_broken_worker_can_be_taken_off_every_phone_and_nothing_that_was_entered_goes_with_it",),
    ),
    "5.7": Fault(
        "the app on the home screen has storage of its own",
        ("tests/e2e/test_phone_app.py::test_a_typed_code_pairs_a_fresh_browser",),
    ),
    "5.8": Fault(
        "a broken worker locks everybody out",
        (f"{_UPDATE}::test_a_broken_worker_can_be_taken_off_every_phone_and_nothing_that_was_entered_goes_with_it",),
    ),
    "5.9": Fault(
        "the worker is registered for too much or too little",
        (f"{_UPDATE}::test_a_broken_worker_can_be_taken_off_every_phone_and_nothing_that_was_entered_goes_with_it",),
    ),
}
