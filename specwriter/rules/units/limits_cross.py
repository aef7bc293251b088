"""Two limits of one property that leave nothing between them.

Looks at
    Lower and upper limits of texture depth, and the limits of a mean against those of a single
    reading, also where they are written in two unit systems.

Why it matters
    1.5 mm at least and 0.05 in at most looks like a band and is none: 0.05 in is 1.27 mm. No
    surface passes, and the converted number hides it.

Conflict
    areas.mainline.texture_depth: {measure: MTD, at_least: 1.5 mm, at_most: 0.05 in}

Settled
    areas.mainline.texture_depth: {measure: MTD, at_least: 0.8 mm, at_most: 0.05 in}

How to settle it
    Write both limits in one unit, and set the lower one below the upper one.

Sources
    arithmetic: the limits are compared in one unit, as written
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import Quantity, show
from specwriter.rules.rule import Rule, evidence, given

_PAIRS = (
    ("at_least", "at_most"),
    ("single_at_least", "at_least"),
    ("end_of_life_at_least", "at_least"),
)
"""Keys of which the first must not be above the second."""

RULE = Rule(
    title="the limits cross",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=("texture_depth",),
    slip=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pair of limits of texture depth whose low end is above the high one."""
    for area in job.areas.values():
        depth = given(area.texture_depth)
        for low, high in _PAIRS:
            lower, upper = getattr(depth, low), getattr(depth, high)
            if lower is None or upper is None:
                continue
            least, most = lower.amounts[0], upper.amounts[-1]
            if least.base - least.slack <= most.base + most.slack:
                continue
            names = [each.replace("_", " ") for each in (low, high)]
            says = (
                f"The {names[0]} value {lower} is above the {names[1]} value {upper}"
                f"{_converted(lower, upper)}."
            )
            at = [evidence(depth, low, names[0]), evidence(depth, high, names[1])]
            yield RULE.finding(area, says, at, ("move one of the limits",))


def _converted(lower: Quantity, upper: Quantity) -> str:
    if lower.unit.system == upper.unit.system:
        return ""
    return f", which is {show(upper.amounts[-1].base, lower.unit)}"
