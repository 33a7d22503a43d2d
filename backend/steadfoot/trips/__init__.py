"""Trips: the goal that a program leads up to.

Step of the trade: knowing the way. A recorded way is read with care, and what is odd about it is said.
"""
