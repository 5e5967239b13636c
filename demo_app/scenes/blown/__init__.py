"""Parts of the scene bubble: its record, readings, words and picture."""
