"""What every layer may use: errors and the place of files."""
