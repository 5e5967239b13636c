"""What happened: shows, votes, breakages, near misses, glass out and in, questions, faults."""
