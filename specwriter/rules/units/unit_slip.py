"""A value that is right in another unit than the one written.

Looks at
    The size of each dimension of the cut and of its limits, against the sizes that published
    documents use for it.

Why it matters
    An inch figure with mm behind it, or a metric one with in, is off by a factor of 25. Such slips
    survive every review that reads the number and not the unit.

Conflict
    areas.mainline.groove.width: 0.125 mm

Settled
    areas.mainline.groove.width: 0.125 in

How to settle it
    Correct the unit, or the number.

Sources
    UFC 3-260-02, ch. 21, 2001: a stored copy prints 3 in beside 6 mm where 1/4 in is meant
    California DOT Standard Specifications 42-2, 2015, and Ohio CMS 511.20, 2010: sizes of grooves
    common practice, no source: the other sizes, with a factor of 2 to either side
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import UNITS, show
from specwriter.rules.rule import Rule
from specwriter.rules.usual import other_unit, sizes

RULE = Rule(
    title="the value fits another unit",
    grade=Grade.CAUTION,
    basis="practice",
    quiet_after=("index-unit", "runway-edge-strip"),
    echo=True,
    slip=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each value far outside its usual size that fits in the other unit."""
    for area, each, size in sizes(job):
        amount = each.value.amounts[0]
        if size.holds(amount.base) or size.setting:
            continue
        other = other_unit(amount, size)
        if other is None:
            continue
        shown = show(amount.base, UNITS[other])
        says = (
            f"The {each.label} is {each.value}, which is {shown}; as {amount.text} {other} it "
            "would be of the usual size."
        )
        settle = (f"{amount.text} {other}, if that is meant",)
        yield RULE.finding(area, says, [each.evidence], settle)
