"""Step five: what the practitioner sees from afar. Findings on check-ins, whom to call first, and what was
answered.

It decides nothing: each suggestion names its rule, its evidence and its source, and waits for a person.
"""
