"""A measuring rule that pays for overlaps.

Looks at
    Measuring rules of pay items that measure each pass of the machine or add the overlaps.

Why it matters
    The contractor chooses the width of the head and the number of passes. A rule that measures
    passes pays more for a narrower machine and for the same surface twice.

Conflict
    pay_items.grinding.measured_as: plan area of each pass of the machine, overlap included

Settled
    pay_items.grinding.measured_as: plan area, each area once without addition for overlaps

How to settle it
    Measure the area of the surface, each place once.

Sources
    common practice, no source: area is measured once, with no addition for overlap
    project calculation: four passes of 4 ft over a lane of 12 ft are a third more than the lane
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="overlaps are paid",
    grade=Grade.CAUTION,
    basis="practice",
    base="complete/diamond_grinding",
)

_PAID = re.compile(
    r"\b(each|every|per) (pass|run)\b|\boverlaps? (included|added|counted)"
    r"|\bincluding (the )?overlap",
    re.I,
)
_NOT = re.compile(r"\b(no|not|without(?! deduct\w*)|once)\b", re.I)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pay item that measures passes or adds overlaps."""
    for item in job.pay_items.values():
        rule = item.measured_as or ""
        if not _PAID.search(rule) or _NOT.search(rule):
            continue
        says = f"{item.name} is measured as {rule}: ground that is cut twice is paid twice."
        at = [evidence(item, "measured_as", "measured as")]
        yield RULE.finding(None, says, at, ("measure the surface, each area once",))
