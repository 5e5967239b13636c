"""A running show as data: where it is, what was counted, and the time it has."""
