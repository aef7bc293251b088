"""A tolerance finer than the rounding of its value.

Looks at
    Values with a tolerance: the last place of the value against the tolerance.

Why it matters
    3 mm can be anything from 2.5 to 3.5 mm once it is rounded. A tolerance of 0.2 mm on it is
    tighter than the number it belongs to, and nobody knows around what it lies.

Conflict
    project.governing_units: si
    areas.mainline.groove: {width: 3 mm ± 0.2 mm, depth: 1.6 mm}
    areas.mainline.land.width: 2.5 mm

Settled
    project.governing_units: si
    areas.mainline.groove: {width: 3.0 mm ± 0.2 mm, depth: 1.6 mm}
    areas.mainline.land.width: 2.5 mm

How to settle it
    Write the value to the place of its tolerance.

Sources
    arithmetic: half of the last written place against the tolerance
    common practice, no source: value and tolerance are written to the same place
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import Quantity, show
from specwriter.rules.measures import measures
from specwriter.rules.rule import Rule

RULE = Rule(
    title="the tolerance is finer than its value is written",
    grade=Grade.CAUTION,
    basis="arithmetic",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each value that is rounded more coarsely than its tolerance allows."""
    for area in job.areas.values():
        for each in measures(area):
            if each.value.form != "tolerance" or not _finer(each.value):
                continue
            first, plus = each.value.amounts[0], each.value.amounts[1]
            place = show(first.step * first.unit.factor, first.unit)
            says = (
                f"The {each.label} is written to {place}, and its tolerance is {plus.text} "
                f"{plus.unit.symbol}."
            )
            settle = ("write the value to the place of its tolerance",)
            yield RULE.finding(area, says, [each.evidence], settle)


def _finer(value: Quantity) -> bool:
    """Fractions of an inch and whole inches are taken as exact, as everywhere in a job."""
    nominal, *sides = value.amounts
    exact = nominal.is_fraction or (nominal.unit.system == "us" and "." not in nominal.text)
    sizes = [side.value * side.unit.factor for side in sides if side.value]
    return not exact and any(size < nominal.step * nominal.unit.factor / 2 for size in sizes)
