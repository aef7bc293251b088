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
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import UNITS, Amount, Interval, parse, show
from specwriter.rules.measures import measures
from specwriter.rules.rule import Rule, given

_OTHERS = {
    "in": ("mm", "ft"),
    "mm": ("in",),
    "ft": ("in", "m"),
    "m": ("ft",),
    "in/mi": ("m/km",),
    "m/km": ("in/mi",),
}
"""The units that are mistaken for the written one."""

_USUAL: dict[str, Interval] = {
    name: parse(text).interval
    for name, text in {
        "groove.width": "2 mm to 13 mm",
        "groove.width_at_bottom": "2 mm to 10 mm",
        "groove.depth": "1 mm to 10 mm",
        "groove.depth_on_bridges": "1 mm to 10 mm",
        "groove.depth_over_loops": "1 mm to 6 mm",
        "groove.spacing": "4 mm to 150 mm",
        "groove.clear_gap": "1.5 mm to 146 mm",
        "land.width": "1.5 mm to 146 mm",
        "ridge.height": "0.5 mm to 5 mm",
        "blade.segment": "2 mm to 7 mm",
        "blade.core": "2 mm to 7 mm",
        "blade.spacer": "0.7 mm to 40 mm",
        "removal.depth": "1 mm to 25 mm",
        "coverage.overlap": "6 mm to 100 mm",
        "joint_match": "0.5 mm to 6 mm",
        "edge_ridge": "0.5 mm to 6 mm",
        "cross_slope.tolerance": "2 mm to 12 mm",
        "straightedge.tolerance": "1.5 mm to 12 mm",
        "straightedge.length": "8 ft to 25 ft",
        "equipment.head_width": "1 ft to 8 ft",
        "equipment.wheelbase": "8 ft to 30 ft",
        "removal.cover_after": "1 in to 6 in",
        "coverage.edge_offset": "1 in to 5.5 ft",
        "groove.alignment": "1/4 in to 3 in",
        "texture_depth.at_least": "0.2 mm to 3 mm",
        "texture_depth.at_most": "0.2 mm to 4 mm",
        "texture_depth.single_at_least": "0.2 mm to 3 mm",
        "smoothness.limit": "0.3 m/km to 5 m/km",
        "smoothness.localized.limit": "1 m/km to 6 m/km",
    }.items()
}
"""Sizes that documents use: published for grooves, common practice without source for the rest."""

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
    for area in job.areas.values():
        for each in measures(area):
            usual = _USUAL.get(each.name)
            amount = each.value.amounts[0]
            if usual is None or _fits(amount.base, usual):
                continue
            if each.name.startswith("smoothness") and given(area.smoothness).index == "PI":
                continue
            other = _fitting(amount, usual)
            if other is None:
                continue
            shown = show(amount.base, UNITS[other])
            says = (
                f"The {each.label} is {each.value}, which is {shown}; as {amount.text} {other} it "
                "would be of the usual size."
            )
            settle = (f"{amount.text} {other}, if that is meant",)
            yield RULE.finding(area, says, [each.evidence], settle)


def _fitting(amount: Amount, usual: Interval) -> str | None:
    """The other unit in which the number is of the usual size, if there is one."""
    others = _OTHERS.get(amount.unit.symbol, ())
    return next((each for each in others if _fits(UNITS[each].to_base(amount.value), usual)), None)


def _fits(base: Fraction, usual: Interval) -> bool:
    low, high = given(usual.low), given(usual.high)
    return low / 2 <= base <= high * 2 or base == 0
