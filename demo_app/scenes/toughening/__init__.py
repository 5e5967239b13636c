"""Parts of the scene toughen: what it holds, reads, shows and says."""
