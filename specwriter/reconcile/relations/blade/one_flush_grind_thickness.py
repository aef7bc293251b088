"""One thickness given beside a spacer stands for core and cutting segment."""

from __future__ import annotations

from specwriter.reconcile.one_thickness import one_thickness

RELATIONS = one_thickness(
    "one-flush-grind-thickness", "flush_grind", "flush grind", "flush_grind.land"
)
