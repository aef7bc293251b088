"""Thickness of the slab after grinding and grooving."""

from __future__ import annotations

from specwriter.reconcile.cutting import left_after
from specwriter.reconcile.relations.removal import WHY

RELATIONS = left_after(
    "thickness-after",
    "removal.thickness_after",
    "conditions.slab_thickness",
    ("slab thickness after cutting", "slab thickness"),
    "geometry: the thickness before, less what is cut, down to the bottom of the groove",
    WHY,
)
