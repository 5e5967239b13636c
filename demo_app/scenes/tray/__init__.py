"""Parts of the scene `light-table`: samples, their places, the light around them, the words."""
