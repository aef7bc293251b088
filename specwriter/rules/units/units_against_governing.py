"""Dimensions in the system that does not govern.

Looks at
    The dimensions of the cut against the governing units of the job; and single limits on what
    is measured with the same tape and gauge, such as steps, strips and depth of removal.

Why it matters
    The governing value is the one that is measured and paid. When every dimension is written in
    the other system, the governing value is a converted and rounded one that nobody chose.

Conflict
    areas.mainline.groove: {width: 3.2 mm, depth: 1.6 mm}
    areas.mainline.land.width: 2.5 mm

Settled
    project.governing_units: si
    areas.mainline.groove: {width: 3.2 mm, depth: 1.6 mm}
    areas.mainline.land.width: 2.5 mm

How to settle it
    Set the governing units to the system in which the values are written, or write single limits
    in the governing one.

Sources
    AC 150/5370-10E, 2009: metric values may be inexact
    draft AC 150/5320-12D, 2016: inch units govern, metric is a soft conversion
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.measures import Measure, measures
from specwriter.rules.prose import listed
from specwriter.rules.rule import Rule

_BESIDE = ("removal", "coverage", "joint_match", "edge_ridge", "cross_slope", "straightedge")
"""What is measured with the same tape and gauge as the cut."""

RULE = Rule(
    title="the cut is not written in the governing units",
    grade=Grade.NOTE,
    basis="published",
    quiet_after=("unit-slip",),
    echo=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area with its whole cut, or single limits, in the other system."""
    governing = job.project.governing_units
    for area in job.areas.values():
        lengths = [
            each
            for each in measures(area)
            if each.name.split(".")[0] in ("groove", "land", "ridge", "blade")
            and each.value.dimension == "length"
        ]
        system = "metric" if governing == "us" else "US customary"
        if lengths and all(each.system != governing for each in lengths):
            says = (
                f"The dimensions are written in {system} units, and project.governing_units is "
                f"{governing}."
            )
            settle = (f"governing_units: {'si' if governing == 'us' else 'us'}",)
            yield RULE.finding(area, says, [each.evidence for each in lengths], settle)
        elif lone := [each for each in measures(area) if _is_foreign(each, governing)]:
            names = listed([f"{each.label} {each.value}" for each in lone])
            says = (
                f"The dimensions of the cut are in the governing units, and these are in {system} "
                f"units: {names}."
            )
            settle = ("write them in the governing units; the others are printed beside them",)
            yield RULE.finding(area, says, [each.evidence for each in lone], settle)


def _is_foreign(each: Measure, governing: str) -> bool:
    is_beside = each.name.split(".")[0] in _BESIDE and each.value.dimension == "length"
    return is_beside and each.system not in (governing, "both")
