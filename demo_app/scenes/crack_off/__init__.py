"""Parts of the scene `ring`: its record, its picture, its words."""
