"""A dimension that is tested and has no tolerance.

Looks at
    Width, depth and spacing of the grooves, width of the land and height of the ridge, where
    they are tested and written as one bare number.

Why it matters
    No saw cuts to the last thousandth. With a bare number the inspector decides how near is
    near enough, and the contractor prices the strictest reading.

Conflict
    areas.mainline.groove.width: 0.110 in

Settled
    areas.mainline.groove.width: 0.110 in ± 0.020 in

How to settle it
    Write a tolerance, or the smallest and the largest value that pass.
    A dimension that only describes the blades needs no test.

Sources
    common practice, no source: a value is written with its tolerance or as a range
    California DOT Standard Specifications, section 42-2, 2015: a width with a tolerance
    UFC 3-260-02, chapter 21, 2001: each dimension of a runway groove has its tolerance
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Area, Job
from specwriter.quantity import Quantity
from specwriter.rules.completeness._properties import GROUND, SAWN, read
from specwriter.rules.prose import listed
from specwriter.rules.rule import Rule

RULE = Rule(
    title="a tested dimension has no tolerance",
    grade=Grade.OPEN,
    basis="practice",
    gap=True,
    base="complete/diamond_grinding",
    quiet_after=("random-pattern-incomplete",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area with every bare dimension that a test is to judge."""
    for area in job.areas.values():
        bare = list(_bare(area))
        if not bare:
            continue
        values = listed([f"{each.label} {each.written}" for each in bare])
        says = f"The job tests without saying how far the result may be off: {values}."
        ways = (
            "write a tolerance or a range for each",
            "take out the test of what need not be held",
        )
        yield RULE.finding(area, says, bare, ways)


def _bare(area: Area) -> Iterator[Evidence]:
    ground = area.texture == "diamond_grinding"
    for each in (GROUND,) if ground else SAWN:
        if read(area, each.test) is None:
            continue
        for keys, name in each.limits:
            value = read(area, keys)
            if isinstance(value, Quantity) and value.form == "value":
                yield Evidence(path=f"{area.path}.{keys}", label=name, written=value.text)
