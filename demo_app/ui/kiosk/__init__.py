"""Parts of the kiosk: what one finger, two switches or a screen reader can work."""
