"""What the words of the command line do; each imports only what it needs."""
