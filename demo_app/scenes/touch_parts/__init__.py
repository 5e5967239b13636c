"""What belongs to the scene `touch` and is too long for its file."""
