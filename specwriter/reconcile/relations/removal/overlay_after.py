"""Thickness of an overlay after grinding and grooving."""

from __future__ import annotations

from specwriter.reconcile.cutting import left_after
from specwriter.reconcile.relations.removal import WHY

RELATIONS = left_after(
    "overlay-after",
    "removal.overlay_after",
    "conditions.overlay_thickness",
    ("overlay thickness after cutting", "overlay thickness"),
    "geometry: the thickness before, less what is cut, down to the bottom of the groove",
    WHY,
)
