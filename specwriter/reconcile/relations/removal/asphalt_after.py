"""Thickness of the asphalt after grinding and grooving."""

from __future__ import annotations

from specwriter.reconcile.cutting import left_after
from specwriter.reconcile.relations.removal import WHY

RELATIONS = left_after(
    "asphalt-after",
    "removal.asphalt_after",
    "conditions.asphalt_thickness",
    ("asphalt thickness after cutting", "asphalt thickness"),
    "geometry: the thickness before, less what is cut, down to the bottom of the groove",
    WHY,
)
