"""Widths, spacings and depths of the grooves."""
