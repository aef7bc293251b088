"""Texture depth: what grooves and lands give, on the scale of the method."""

from __future__ import annotations

WHY = (
    "The grooves and the land between them make the texture depth; nothing else does. Where "
    "the dimensions pass and the texture fails, the contractor has cut what was ordered, and "
    "the owner pays for the second cut."
)
