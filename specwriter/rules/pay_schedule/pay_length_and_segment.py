"""A pay adjustment counted over another length than the segment that is judged.

Looks at
    The length that the pay adjustment applies to and the length of the segment.

Why it matters
    A sum for each tenth of a mile, applied to segments of 100 m, pays 1.6 times as often. The
    difference is not seen in the table and comes to light with the first payment.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.segment: 100 m
    areas.mainline.smoothness.pay_adjustment.applies_to: each segment of 0.1 mi in each lane

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.segment: 528 ft
    areas.mainline.smoothness.pay_adjustment.applies_to: each segment of 0.1 mi in each lane

How to settle it
    Make both lengths the same, or state how the sum is pro-rated.

Sources
    Iowa DOT Standard Specifications, section 2317, April 2008: 160 m stands for 0.1 mi
    arithmetic: 0.1 mi = 528 ft = 160.9 m, and 100 m = 0.062 mi
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import Quantity
from specwriter.rules.lengths import lengths_in
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="pay is counted over another length than the segment",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=("smoothness.segment", "smoothness.pay_adjustment.applies_to"),
)

_ROUNDING = Fraction(1, 100)
_PRO_RATED = re.compile(r"pro[- ]?rat|proportion", re.IGNORECASE)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each adjustment whose text names only lengths unlike the segment."""
    for area, ride in rides(job):
        pay, segment = given(ride.pay_adjustment), given(ride.segment)
        text = given(pay.applies_to)
        lengths = list(lengths_in(text))
        if not lengths or _PRO_RATED.search(text) or any(_same(each, segment) for each in lengths):
            continue
        says = f"Pay is counted for {text}, and the index is judged over {segment}."
        at = [
            evidence(pay, "applies_to", "what the pay adjustment applies to"),
            evidence(ride, "segment", "segment"),
        ]
        settle = (
            f"segment: {lengths[0]}",
            f"count pay over {segment}",
            "state how it is pro-rated",
        )
        yield RULE.finding(area, says, at, settle)


def _same(length: Quantity, segment: Quantity) -> bool:
    """Equal within the rounding of a conversion: Iowa DOT prints 160 m for 0.1 mi."""
    low, high = length.interval.low, segment.interval.low
    return low is not None and high is not None and abs(low - high) <= _ROUNDING * high
