"""Levels of one lane: beside the tyre, at the roadside, and after years of traffic."""

from __future__ import annotations

WHY = (
    "A lane has one sound, however and whenever it is measured. A limit that the texture "
    "cannot keep fails without any fault of the contractor, and no blade mends it."
)
