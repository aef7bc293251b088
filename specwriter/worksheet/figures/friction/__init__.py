"""Figures of friction."""
