"""Figures of ride quality."""
