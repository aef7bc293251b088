"""Blades and spacers of the cutting head."""
