"""Classes of ride in which national reporting puts a roughness."""

from __future__ import annotations

from typing import Literal

from specwriter.trade.formula import Formula
from specwriter.trade.ride import INCH_PER_MILE

RideClass = Literal["good", "fair", "poor"]

CLASSES = Formula(
    text="good below 95 in/mi (1.50 m/km), fair to 170 in/mi (2.68 m/km), poor above",
    source="23 CFR 490.313 by FHWA HIF-18-022, 2018, as cited in public work (second-hand)",
    validity="IRI of national reporting, one of several measures there; no limit for a contract",
)

GOOD_BELOW, POOR_ABOVE = 95 * INCH_PER_MILE, 170 * INCH_PER_MILE


def ride_class(roughness: float) -> RideClass:
    """The class of a roughness given as a slope: ``CLASSES``."""
    if roughness < GOOD_BELOW:
        return "good"
    return "poor" if roughness > POOR_ABOVE else "fair"
