"""Histories with a name: each known way to lose, double or betray an entry, short and the same every time.

Every seeded bug (tests/sync/seeded) is caught by one of them, and what the machine finds is kept here.
"""

from tests.sync.model.stories import of_phones, of_servers
from tests.sync.model.stories.book import STORIES

__all__ = ["STORIES", "of_phones", "of_servers"]
