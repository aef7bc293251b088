"""A bonus by a profile index that the blanking band makes zero.

Looks at
    Profile indexes with a blanking band of 0.2 in, and pay tables with a bonus.

Why it matters
    A band of 0.2 in hides nearly everything on a smooth pavement: up to an IRI of 60 in/mi the
    index is zero. The bonus is earned without effort, and better work earns no more.

Conflict
    areas.mainline.smoothness.index: PI
    areas.mainline.smoothness.blanking_band: 0.2 in
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 2.0 in/mi, pay: 103 percent}
        - {index: at least 2.1 in/mi, pay: 100 percent}

Settled
    areas.mainline.smoothness.index: PI
    areas.mainline.smoothness.blanking_band: 0.0 in
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 18.0 in/mi, pay: 103 percent}
        - {index: at least 18.1 in/mi, pay: 100 percent}

How to settle it
    Pay the bonus by a profile index without a band or by MRI, with rows set for it.

Sources
    project calculation: with a band of 0.2 in the index is 0.0 at IRI 40, 0.25 at 60, 1.6 at 80
    agency pay tables, compiled by a third party, undated, second-hand: bands of 0.2 in
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import parse
from specwriter.rules.places import INCH_PER_MILE, rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the blanking band hides what the bonus is paid for",
    grade=Grade.NOTE,
    basis="practice",
    needs=("smoothness.blanking_band", "smoothness.pay_adjustment.bands"),
    quiet_after=("blanking-band-with-roughness-index", "index-instrument"),
)

_WIDE = parse("0.2 in").interval.high or 0
_HIDDEN = 2 * INCH_PER_MILE
"""A profile index up to which a band of 0.2 in cannot tell surfaces apart."""


def check(job: Job) -> Iterator[Finding]:
    """One finding for each bonus row at a profile index near zero under a wide band."""
    for area, ride in rides(job):
        first = given(ride.pay_adjustment).bands[0]
        band = given(ride.blanking_band)
        if ride.index != "PI" or (band.interval.low or 0) < _WIDE or first.index is None:
            continue
        high = first.index.interval.high
        if high is None or high > _HIDDEN:
            continue
        says = (
            f"With a band of {band} the index is about zero up to an IRI of 60 in/mi, so the row "
            f"{first.index} does not tell smooth from very smooth."
        )
        at = [
            evidence(ride, "blanking_band", "blanking band"),
            evidence(first, "index", "index of row 1"),
        ]
        settle = ("pay by MRI, with rows set for it", "blanking_band: 0.0 in, with rows set for it")
        yield RULE.finding(area, says, at, settle)
