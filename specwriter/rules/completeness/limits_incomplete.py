"""An area without its limits.

Looks at
    The stretches of each area: station where it begins, station where it ends, width.

Why it matters
    The limits are what is bid, cut, measured and paid. Without them the quantity cannot be
    checked, and "full width" means the lane, the pavement or the pavement with its gutter.

Conflict
    areas.mainline.limits.0.width: null

Settled
    areas.mainline.limits.0.width: 24 ft

How to settle it
    Give beginning, end and width of every stretch.

Sources
    FHWA HIAM-20, attachment 3, 2010: what is measured, and where
    FHWA Federal Lands FP-14, section 109.01, 2014: nothing is measured outside the stated limits
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Area, Job
from specwriter.model.area import Limits
from specwriter.rules.prose import listed
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the limits of an area are not stated",
    grade=Grade.OPEN,
    basis="published",
    gap=True,
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area without stretches, or with stretches that are not whole."""
    for area in job.areas.values():
        if not area.limits:
            at = [evidence(area, "texture", "texture")]
            says = "The job does not say where this texture begins and ends, and how wide it is."
            yield RULE.finding(area, says, at, ("give from, to and width under limits",))
        elif missing := _missing(area):
            parts = [f"stretch {number} ({', '.join(keys)})" for number, keys in missing.items()]
            says = f"The limits are not whole: {listed(parts)}."
            at = [_stretch(area.limits[number - 1], number) for number in missing]
            yield RULE.finding(area, says, at, ("give what is missing under limits",))


def _missing(area: Area) -> dict[int, list[str]]:
    """Number of each stretch that is not whole → the keys that it lacks."""
    found = {number: _lacks(each) for number, each in enumerate(area.limits, start=1)}
    return {number: keys for number, keys in found.items() if keys}


def _lacks(stretch: Limits) -> list[str]:
    values = {"from": stretch.start, "to": stretch.end, "width": stretch.width}
    return [key for key, value in values.items() if value is None]


def _stretch(stretch: Limits, number: int) -> Evidence:
    return Evidence(path=stretch.path, label="stretch", written=stretch.roadway or str(number))
