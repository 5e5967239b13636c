"""Parts of the prep bench's window."""
