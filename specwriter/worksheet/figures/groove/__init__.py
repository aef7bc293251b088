"""Figures of the cut: spacing, counts, kerf."""
