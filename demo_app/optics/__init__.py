"""From stress to the picture between the polarizers."""
