"""The teacher's window: its lesson, its acts, what the class sees."""
