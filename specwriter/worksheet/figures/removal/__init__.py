"""Figures of what cutting takes away and leaves."""
