"""What an unattended screen in a gallery keeps: its site, its texts, its hours and its counts."""
