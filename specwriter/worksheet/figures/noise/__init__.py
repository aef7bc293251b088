"""Figures of noise."""
