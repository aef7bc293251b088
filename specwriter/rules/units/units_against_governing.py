"""A cut dimensioned in the system that does not govern.

Looks at
    The dimensions of the cut against the governing units of the job.

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
    Set the governing units to the system in which the values are written.

Sources
    AC 150/5370-10E, 2009: metric values may be inexact
    draft AC 150/5320-12D, 2016: inch units govern, metric is a soft conversion
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.measures import measures
from specwriter.rules.rule import Rule

RULE = Rule(
    title="the cut is not written in the governing units",
    grade=Grade.NOTE,
    basis="published",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area whose cut is written in the other system throughout."""
    governing = job.project.governing_units
    for area in job.areas.values():
        lengths = [
            each
            for each in measures(area)
            if each.name.split(".")[0] in ("groove", "land", "ridge", "blade")
            and each.value.dimension == "length"
        ]
        if not lengths or any(each.system == governing for each in lengths):
            continue
        system = "metric" if governing == "us" else "US customary"
        says = (
            f"The dimensions are written in {system} units, and project.governing_units is "
            f"{governing}."
        )
        settle = (f"governing_units: {'si' if governing == 'us' else 'us'}",)
        yield RULE.finding(area, says, [each.evidence for each in lengths], settle)
