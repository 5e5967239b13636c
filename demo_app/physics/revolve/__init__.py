"""The Revolve body: a bottle or a bubble, axisymmetric finite elements in (r, z)."""
