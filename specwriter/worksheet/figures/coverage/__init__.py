"""Figures of passes and coverage windows."""
