"""Widgets of the prep bench."""
