"""Widths, spacings and depths of the grooves."""

from __future__ import annotations

WHY = (
    "All these figures describe one pattern of grooves. Where they describe two, the "
    "inspector measures one and the contractor has cut the other, and both have the contract "
    "on their side."
)
