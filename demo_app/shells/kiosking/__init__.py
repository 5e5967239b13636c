"""Parts of the kiosk's window."""
