"""What every layer may use: errors, the place of files, and how files are written."""
