"""Writes, checks and compares special provisions for saw-cut pavement textures."""

__version__ = "0.1.0"
