"""The jointed figure: draws every variant of a movement from joint angles and published body proportions.

A room of its own, and pure: no database, no web, no clock. Pose files go in, SVG comes out. The path through it is
``read`` (files to poses), ``motion`` (poses to solved samples of the skeleton), ``checks`` (what must hold for each
sample), and ``draw``, ``animate`` or ``strip`` (samples to SVG).

Units in the whole room: lengths in fractions of stature, angles in degrees, time from 0 to 1. Axes: x the way the
person faces, y to the person's left, z up; the floor is z = 0.
"""
