"""Trips: the goal that a program leads up to.

Step of the trade: knowing the way. A recorded way is read with care, what is odd about it is said, and what it asks of
the person is reckoned with a band.
"""
