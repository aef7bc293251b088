"""Figures of texture depth."""
