"""Depth of the joint sealant reservoir that is left after grinding."""

from __future__ import annotations

from specwriter.reconcile.cutting import left_after

RELATIONS = left_after(
    "reservoir-after",
    "removal.reservoir_after",
    "conditions.joint_reservoir_depth",
    ("depth of the joint reservoir after cutting", "depth of the joint reservoir"),
    "geometry: grinding lowers the top of the reservoir, not its bottom",
    grooves=False,
)
