"""The trade, pure: numbers, dates and frozen dataclasses in, findings with their reasons out.

Nothing here reads a clock, a file or a database, and nothing is imported beyond the standard library.
"""
