"""Settings, database, clock, ids, problems: everything that has no word of the trade in it."""
