"""Step two: where someone starts. Baseline tests and re-tests, read beside norms, the other
side and the time before."""
