"""Passes, heads, overlaps, and the share of a window that is textured."""

from __future__ import annotations

WHY = (
    "The machine cuts strips, and the strips must make a lane. A strip that no pass reaches "
    "stays bare, or is cut by a pass that nobody has paid for."
)
