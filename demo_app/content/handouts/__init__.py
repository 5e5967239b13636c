"""Worksheets and answer keys of a lesson, drawn by a seed and computed by the model."""
