"""What can be shown: one file a scene."""
