"""Fitting: one unknown of a real piece, from readings of it, with an honest interval."""
