"""Glass, heat and stress; no light and no window."""
