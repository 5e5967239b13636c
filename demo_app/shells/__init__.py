"""Ways to show the same scenes."""
