"""The scene `cooling` in parts: its settings, its state, its picture and its words."""
