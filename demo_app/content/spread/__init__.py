"""Spread: what stated tolerances do to readings, as ranges and probabilities."""
