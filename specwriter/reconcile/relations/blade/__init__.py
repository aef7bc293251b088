"""Blades and spacers of the cutting head."""

from __future__ import annotations

WHY = (
    "One head cuts with one set of blades and spacers. Where the figures do not belong to one "
    "head, the contractor builds the cheapest one, and every reading against the others "
    "fails."
)
