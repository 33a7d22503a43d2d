"""Steadfoot: home programs for people who prepare for hiking, seen from the practice.

The packages follow the workflow of the trade: identity, exercises, programs, checkins, monitoring.
``rules`` holds the trade itself, pure; ``core`` holds what has no trade word in it.
"""

__version__ = "0.1.0"
