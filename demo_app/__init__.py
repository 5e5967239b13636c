"""Lehrlight: a teaching app that shows stress in glass as a polariscope would."""

__version__ = "0.1.0"
