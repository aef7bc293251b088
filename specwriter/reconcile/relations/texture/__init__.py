"""Texture depth: what grooves and lands give, on the scale of the method."""
