"""The last step: the record as a whole. Who saw it, a copy of it, its end, how long it is kept (0013, 0014)."""
