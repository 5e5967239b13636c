"""Parts of the scene `dish`: its settings and making, what is seen, what is said."""
