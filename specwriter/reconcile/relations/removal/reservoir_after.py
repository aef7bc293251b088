"""Depth of the joint sealant reservoir that is left after grinding."""

from __future__ import annotations

from specwriter.reconcile.cutting import left_after

RELATIONS = left_after(
    "reservoir-after",
    "removal.reservoir_after",
    "conditions.joint_reservoir_depth",
    ("depth of the joint reservoir after cutting", "depth of the joint reservoir"),
    "geometry: grinding lowers the top of the reservoir, not its bottom",
    "The sealant needs its depth to hold. Where grinding takes more of the joint than may go, "
    "the new seal is too shallow, lets go early, and the joint takes in water.",
    grooves=False,
)
