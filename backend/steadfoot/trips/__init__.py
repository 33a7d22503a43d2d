"""Step five: the goal. The way that a person prepares for, read from a recording, and what is to be known of it."""
