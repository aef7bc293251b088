"""A requirement of a size that nobody asks for.

Looks at
    The size of each requirement on the cut, the machine, the tests, the residue and the trial
    section, against the sizes that documents use for it.

Why it matters
    A digit too few or a figure from another line reads like any other number. A machine of 35 lb
    or a skid number of 80 is found by the first bidder who knows the work, and asked about.

Conflict
    areas.mainline.equipment.mass: at least 350 lb

Settled
    areas.mainline.equipment.mass: at least 35,000 lb

How to settle it
    Correct the number, say in the settings of the house what it calls usual (settings.usual), or
    accept the finding with the reason.

Sources
    Maryland Standard Specifications 509, undated: a machine of 35,000 lb
    California DOT Standard Specifications 42-2, 2015, and Ohio CMS 511.20, 2010: sizes of grooves
    memory, unverified: NCHRP 37 asks for skid numbers of 31 to 51
    common practice, no source: the other sizes, with lengths and the like with a factor of 2
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import UNITS, show
from specwriter.rules.measures import Measure
from specwriter.rules.rule import Rule
from specwriter.rules.usual import Size, bounds_of, other_unit, sizes

RULE = Rule(
    title="the size is unusual",
    grade=Grade.CAUTION,
    basis="practice",
    quiet_after=(
        *("index-unit", "runway-edge-strip", "limits-cross", "friction-scale"),
        "localized-below-segment-limit",
    ),
    echo=True,
    slip=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each value outside its usual size that no other unit explains."""
    for area, each, size in sizes(job):
        if all(size.holds(base) for base in bounds_of(each.value)):
            continue
        first = each.value.amounts[0]
        if not size.holds(first.base) and not size.setting and other_unit(first, size):
            continue
        says = f"The {each.label} is {each.value}; usual is {_shown(each, size)}."
        at = [each.evidence, *([size.setting] if size.setting else [])]
        yield RULE.finding(area, says, at, ("correct the number", "accept it with the reason"))


def _shown(measure: Measure, size: Size) -> str:
    """The usual size as the house writes it, or in the unit of the value."""
    if size.setting:
        return f"{size.setting.written} in this house"
    unit = UNITS.get(measure.value.unit.symbol)
    ends = [base for base in (size.bounds.low, size.bounds.high) if base is not None]
    return " to ".join(show(each, unit) if unit else f"{float(each):g}" for each in ends)
