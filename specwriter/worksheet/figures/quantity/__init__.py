"""Figures of areas, lots and tests."""
