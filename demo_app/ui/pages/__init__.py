"""Pages of the presenter's window for the time before, between and after shows."""
