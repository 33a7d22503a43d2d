"""A trial of the rules on simulated people whose truth is known: ``python -m tests.bench.rules_trial``.

It judges rules and thresholds against each other, not against people: nobody real is in it, and what the simulator
leaves out the trial cannot see.
"""
