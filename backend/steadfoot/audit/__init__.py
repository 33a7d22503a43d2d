"""Who saw and did what: a log that is only ever added to, each row chained to the one before (decision 0013).

It stands below every step of the workflow, so that each may write to it. It holds ids, never a name, a
text or a number of anybody's health.
"""
