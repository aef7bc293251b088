"""Acid-insoluble residue of blended sand: a screen for polish, not a proof of friction."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from specwriter.trade.formula import Formula

BLEND = Formula(
    text="residue of the blend = Σ share × residue of the part",
    source="arithmetic; the sum by mass of a Texas fine-aggregate polishing study, undated "
    "(second-hand)",
    validity="shares by mass that add up to 1; some sands below the limit performed as well as "
    "siliceous ones in the same study",
)

LEAST_SILICEOUS = Fraction(25, 100)
"""Siliceous share of the sand: ACI 325.6R-88, from memory, unverified."""

LEAST_RESIDUE = Fraction(60, 100)
"""Texas practice for sand (test as ASTM D3042): fine-aggregate study, undated (second-hand)."""


def blend(parts: Iterable[tuple[Fraction, Fraction]]) -> Fraction:
    """Residue of a blend of (share, residue) parts. ``ValueError`` unless the shares add to 1."""
    listed = tuple(parts)
    if sum(share for share, _ in listed) != 1:
        raise ValueError("the shares of a blend add up to 1")
    return sum((share * residue for share, residue in listed), Fraction(0))


def share_needed(target: Fraction, poor: Fraction, good: Fraction) -> Fraction:
    """Share of the good part that lifts a blend of two to the target; above 1: out of reach."""
    return (target - poor) / (good - poor)
