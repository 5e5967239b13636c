"""Files that people write and read: checked, loaded, saved."""
