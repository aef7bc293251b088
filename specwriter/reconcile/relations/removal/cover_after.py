"""Concrete above the steel after grinding and grooving."""

from __future__ import annotations

from specwriter.reconcile.cutting import left_after

RELATIONS = left_after(
    "cover-after",
    "removal.cover_after",
    "conditions.cover_to_steel",
    ("cover to steel after cutting", "cover to steel"),
    "geometry: the cover before, less the depth that is ground and grooved",
)
