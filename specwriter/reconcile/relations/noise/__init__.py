"""Noise against what a texture has been seen to reach."""
