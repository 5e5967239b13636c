"""Cue sheets: what a museum writes down of a show, one step after the other."""
