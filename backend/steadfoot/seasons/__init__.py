"""Seasons: the weeks up to a trip, planned, shown, planned again after a pause, and laid into a program.

Step of the trade: planning. The rules propose days, walks and loads; a practitioner moves, pins and takes them into
a draft, which is looked over and published like any other program. What a season was planned from stays in the
program's content (decision 0009), so nothing here keeps a row of its own.
"""
