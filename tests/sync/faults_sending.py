"""The faults of sending, in the manner of ``faults.py``."""

from tests.sync.faults import Fault

_DATABASE = "frontend/src/outbox/database.test.ts"
_SENDER = "frontend/src/outbox/sender.test.ts"
_POISON = "frontend/src/outbox/sender.faults.test.ts"
_INDEX = "frontend/src/outbox/index.test.ts"
_BROWSER = "frontend/src/outbox/browser.test.ts"
_PARTS = "frontend/src/outbox/parts.test.ts"
_STORAGE = "tests/e2e/test_phone_storage_faults.py"
_OFFLINE = "tests/e2e/test_phone_offline.py"
_IDENTITY = "tests/features/checkins/test_event_identity.py"
_DISK = "tests/sync/test_disk.py"

SENDING = {
    "4.1": Fault(
        "no sending in the background, and a browser that is wrong about the network",
        (
            f"{_BROWSER}::are a network that comes back and a page that is seen again",
            f"{_BROWSER}::are not taken from what the browser believes of the network: it may lie both ways",
            f"{_BROWSER}::no line of the phone app asks whether there is a network",
            "tests/e2e/test_main_job.py::test_a_session_trained_offline_reaches_the_practice_and_its_answer_reaches_the_phone",
        ),
        "Only Chromium can be had here; nothing that other engines lack (background sync) is used.",
    ),
    "4.2": Fault(
        "the reply is lost, and the same entries are sent again",
        (
            f"{_SENDER}::sends an entry again after a lost reply, and it counts once",
            f"{_POISON}::a reply that %s acknowledges nothing that the practice did not say",
            f"{_POISON}::a reply that takes too long is given up and asked for again with less",
            "tests/sync/test_commit.py::test_one_event_from_fifty_connections_at_once_is_stored_once_and_acknowledged_to_each",
            "tests/sync/test_kills.py::test_a_server_killed_while_phones_send_loses_nothing_and_doubles_nothing",
        ),
    ),
    "4.3": Fault(
        "somebody else answers: the sign-in page of a network",
        (
            f"{_SENDER}::takes %s for no acknowledgement, and tries again later",
            f"{_OFFLINE}::test_the_sign_in_page_of_a_network_never_counts_as_received",
        ),
    ),
    "4.4": Fault(
        "a part of a batch fails, or the practice's disk is full",
        (
            "tests/features/checkins/test_refused.py::test_a_bad_item_between_good_ones_is_kept_whole_and_acknowledged_past",
            "tests/features/core/test_database_away.py::test_callers_are_told_to_try_again_and_the_phone_keeps_what_it_has",
            f"{_DISK}::test_a_disk_that_takes_nothing_is_said_nothing_is_acknowledged_and_later_everything_is_taken",
            f"{_DISK}::test_a_database_that_another_process_holds_is_waited_for_and_then_said_to_be_away",
            f"{_DISK}::test_a_commit_that_fails_holds_up_nobody_who_comes_after",
            f"{_DISK}::test_nothing_is_acknowledged_of_a_transaction_that_the_database_has_ended_by_itself",
        ),
    ),
    "4.5": Fault(
        "one entry can never be taken",
        (
            f"{_POISON}::an entry that makes every call fail (%s) is told of, kept, and stops nobody",
            f"{_POISON}::an entry that could not be sent goes with the others once it can, when a person asks",
            f"{_POISON}::an entry over which the practice itself fails is tried for ever",
            f"{_SENDER}::shows refused entries, counts them once, and goes on behind them",
            f"{_OFFLINE}::test_an_entry_that_is_not_understood_is_said_on_the_phone_and_kept_for_the_practice",
            "tests/features/checkins/test_refused.py::"
            "test_a_stand_in_for_an_entry_that_cannot_be_sent_holds_its_number_until_the_entry_comes",
            "tests/features/checkins/test_odd_input.py::"
            "test_a_call_that_names_a_field_twice_is_refused_whole_and_stores_nothing",
            "tests/e2e/test_phone_app.py::test_everything_on_the_phone_can_be_had_as_a_file_that_holds_no_key",
        ),
    ),
    "4.6": Fault(
        "entries arrive out of order",
        (
            "tests/sync/test_order.py::test_any_shuffle_split_and_repeat_gives_byte_equal_pages",
            "frontend/src/outbox/fold.test.ts::plays no part, nor does repetition",
        ),
    ),
    "4.7": Fault(
        "one person has two phones",
        (
            f"{_IDENTITY}::test_two_phones_of_one_client_may_use_the_same_numbers",
            "tests/sync/test_commit.py::test_phones_of_one_client_that_send_at_once_lose_nothing_to_each_other",
            "tests/features/identity/test_pairing.py::test_a_revoked_phone_is_not_heard_and_what_it_sent_stays",
        ),
        "Both facts are kept; the same set said on both counts once, so that nobody has to decide about a double.",
    ),
    "4.8": Fault(
        "the phone's clock is wrong, the time zone or summer time changes",
        (
            "tests/features/checkins/test_days.py::test_the_nights_when_clocks_change_keep_their_days",
            "tests/features/checkins/test_days.py::test_a_phone_whose_clock_stands_ten_years_off_is_heard_now",
            "tests/features/checkins/test_days.py::test_the_day_is_the_date_on_the_phones_own_clock",
            "frontend/src/shared/dates.test.ts::in %s %s is written %s",
            f"{_INDEX}::a clock that is off is told by both times of the same moment, and nothing is refused for it",
        ),
    ),
    "4.9": Fault(
        "the practice goes back to an older backup",
        (
            "tests/sync/test_restore.py::"
            "test_after_an_older_backup_is_restored_phones_send_the_rest_without_anyone_noticing",
            f"{_SENDER}::gets everything again that its older backup does not hold",
            f"{_SENDER}::is read again from the beginning when its epoch is new",
        ),
    ),
    "4.10": Fault(
        "weeks without a signal, a phone that was unpaired, another person on the phone",
        (
            f"{_DISK}::test_a_phone_that_was_silent_for_ninety_days_is_heard_without_pairing_it_again",
            f"{_SENDER}::keeps everything when the practice has unpaired the phone, and stops asking",
            f"{_SENDER}::as the same person offers the whole log, and each entry counts once",
            f"{_SENDER}::as another person sets the log aside: not sent, not shown, not thrown away",
        ),
    ),
    "4.11": Fault(
        "the practice or the app is upgraded while entries wait",
        (
            "tests/features/checkins/test_released_events.py::"
            "test_a_phone_whose_practice_was_upgraded_from_the_first_schema_meanwhile_is_refused_nothing",
            "tests/features/checkins/test_released_events.py::"
            "test_every_field_and_every_word_that_an_entry_may_have_was_recorded",
            "frontend/src/outbox/released.test.ts::keeps its queue word for word, counts on, and sends it",
            "tests/features/checkins/test_retries.py::"
            "test_a_retry_before_the_mend_changes_nothing_and_after_it_takes_the_entry",
        ),
    ),
    "4.12": Fault(
        "the program changed while the phone was offline",
        (
            "tests/features/monitoring/test_adherence_range.py::test_a_session_is_judged_under_the_version_its_entries_name",
        ),
    ),
    "4.13": Fault(
        "the person was archived, or the phone revoked, while it was offline",
        (
            "tests/features/identity/test_clients.py::test_the_phone_of_an_archived_client_is_still_heard",
            "tests/features/identity/test_pairing.py::test_a_revoked_phone_is_not_heard_and_what_it_sent_stays",
            f"{_SENDER}::keeps everything when the practice has unpaired the phone, and stops asking",
        ),
    ),
    "4.14": Fault(
        "many windows of one phone, one of them frozen",
        (
            f"{_SENDER}::comes back soon when another page of the phone is sending",
            f"{_BROWSER}::asks for the lock for one flush, and leaves it to another page that has it",
            f"{_BROWSER}::does not wait for ever for a page that was frozen while it had the lock",
            f"{_BROWSER}::sends where the browser has no locks: the practice knows each entry by its id",
            f"{_INDEX}::may write in between: this page takes over what it did not write itself",
            f"{_DATABASE}::numbers entries 1, 2, 3 without gaps, also when written at once",
        ),
    ),
    "4.15": Fault(
        "the practice comes back and every phone calls at once, or says that it is too much",
        (
            f"{_PARTS}::spreads 500 phones after ten minutes without a practice",
            f"{_SENDER}::waits longer each time, and at least as long as it is asked to",
            f'{_POISON}::a practice that says "too many" gets everything later, when it said',
        ),
    ),
    "4.16": Fault(
        "a log of months",
        (
            f"{_STORAGE}::"
            "test_months_without_a_signal_are_received_whole_once_and_while_they_are_sent_a_tap_is_still_saved",
            f"{_SENDER}::brings every entry once, in batches of at most 500, packed",
            f"{_SENDER}::halves a batch that is too large until it fits",
        ),
        "In the run with 1,000 entries; python -m tests.bench.long_silence does it with 5,000 and measures.",
    ),
}
