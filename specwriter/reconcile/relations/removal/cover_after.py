"""Concrete above the steel after grinding and grooving."""

from __future__ import annotations

from specwriter.reconcile.cutting import left_after

RELATIONS = left_after(
    "cover-after",
    "removal.cover_after",
    "conditions.cover_to_steel",
    ("cover to steel after cutting", "cover to steel"),
    "geometry: the cover before, less the depth that is ground and grooved",
    "Cover keeps water and salt from the steel. Where the cuts that are allowed take more of "
    "it than may go, the bars rust and burst the surface years after the work was accepted.",
)
