"""Parts of the scene `push-pull`: its settings, its pieces, what is seen, what is said."""
