"""Parts of the scene pour: its record, readings, words and picture."""
