"""Figures of water on the surface."""
