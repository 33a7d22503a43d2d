"""The printed sheet: a client's program, or a class's movements, on paper to pin up at home.

Paper needs no phone. ``compose`` turns a program into plain layout data, ``press`` prints it; neither knows HTTP or
the database.
"""
