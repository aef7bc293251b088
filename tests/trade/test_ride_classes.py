"""Ride classes against 23 CFR 490.313 by FHWA HIF-18-022, 2018, as cited (second-hand)."""

from __future__ import annotations

import pytest

from specwriter.trade.ride import INCH_PER_MILE
from specwriter.trade.ride.classes import ride_class


@pytest.mark.parametrize(
    ("in_mi", "expected"),
    [(94.9, "good"), (95.1, "fair"), (169.9, "fair"), (170.1, "poor")],
)
def test_a_roughness_has_the_class_of_the_regulation(in_mi: float, expected: str) -> None:
    assert ride_class(in_mi * INCH_PER_MILE) == expected
