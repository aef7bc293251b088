"""Wet weather: the film of water and the speed from which a tyre may ride up on it."""
