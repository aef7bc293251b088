"""A runway groove of a quarter inch in a pattern that no document has.

Looks at
    Depth and spacing of square runway grooves about a quarter inch wide, against 3/16 to 5/16 in
    deep and 1-3/8 to 1-1/2 in apart, with 2 mm to either side.

Why it matters
    Width, depth and spacing of this pattern belong together. Shallower or wider apart it takes up
    less water than the published one; closer together the lands between are narrower.

Conflict
    areas.runway.groove: {width: 1/4 in, depth: 1/4 in, spacing: 1 in}

Settled
    areas.runway.groove: {width: 1/4 in, depth: 1/4 in, spacing: 1-1/2 in}

How to settle it
    Take the published spacing and depth, or accept the finding with the reason. A tolerance that
    runs the wrong way is a slip that is found here.

Sources
    UFC 3-260-02, ch. 21, 2001: 38 mm +0 -3 mm and 1-1/2 in; depth 1/4 in ± 1/16 in, 6 mm ± 2 mm
    AC 150/5320-12C, 1997 (memory, unverified): 1-3/8 to 1-1/2 in apart, 3/16 to 5/16 in deep
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Area, Job
from specwriter.quantity import Interval, parse
from specwriter.rules.rule import Rule, evidence, given

_WIDE = parse("5 mm to 8 mm").interval
"""Widths with a nominal value of 6 mm or 1/4 in."""

_SPACING, _DEPTH = parse("33 mm to 40 mm").interval, parse("4 mm to 8 mm").interval
"""UFC 3-260-02, ch. 21, 2001, both columns together, and AC 150/5320-12C, 1997 (memory).

The spacing has 2 mm to either side for tolerances that straddle it (common practice, no source).
"""

RULE = Rule(
    title="the runway groove is none of the published patterns",
    grade=Grade.CAUTION,
    basis="published",
    needs=("groove.width",),
    applies_to=("runway_grooving",),
    base="runway_grooving",
    quiet_after=("spacing-may-be-clear-gap", "unit-slip"),
    echo=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each quarter-inch groove with every dimension outside the pattern."""
    for area in job.areas.values():
        groove = given(area.groove)
        nominal = given(groove.width).amounts[0].base
        if groove.width_at_bottom is not None or Interval(nominal, nominal).meet(_WIDE).is_empty:
            continue
        at = list(_outside(area))
        if not at:
            continue
        at.append(evidence(groove, "width", "groove width"))
        says = (
            f"For grooves of {groove.width} documents have 3/16 to 5/16 in of depth and 1-3/8 to "
            f"1-1/2 in of spacing; the {at[0].label} is {at[0].written}."
        )
        yield RULE.finding(area, says, at, ("depth and spacing of a published pattern",))


def _outside(area: Area) -> Iterator[Evidence]:
    groove = given(area.groove)
    for key, usual in (("spacing", _SPACING), ("depth", _DEPTH)):
        value = getattr(groove, key)
        if value is not None and _beyond(value.interval, usual):
            yield evidence(groove, key, f"groove {key}")


def _beyond(stated: Interval, usual: Interval) -> bool:
    low, high = stated.low, stated.high
    below = low is not None and low < given(usual.low)
    return below or (high is not None and high > given(usual.high))
