"""Passes, heads, overlaps, and the share of a window that is textured."""
