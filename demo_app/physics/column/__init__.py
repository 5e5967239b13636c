"""Bodies: each brings its geometry, conduction and equilibrium; the material law is shared."""
