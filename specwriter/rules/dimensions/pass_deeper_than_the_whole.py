"""One pass that may take more than all passes together.

Looks at
    The greatest removal in one pass against the greatest removal.

Why it matters
    The limit for the pass can never be reached, so it guides nobody; and a machine that is set to
    it goes through the limit that counts in its first pass.

Conflict
    areas.mainline.removal: {depth: at most 3/8 in, depth_per_pass: at most 1/2 in}

Settled
    areas.mainline.removal: {depth: at most 1/2 in, depth_per_pass: at most 1/4 in}

How to settle it
    Lower the limit for one pass, or raise that for the whole; mostly the two were interchanged.

Sources
    arithmetic: the removal of one pass is part of the whole
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import show_like
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="one pass may take more than the whole",
    grade=Grade.CAUTION,
    basis="arithmetic",
    needs=("removal.depth", "removal.depth_per_pass"),
    echo=True,
    quiet_after=("unit-slip", "requirement-unusual"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area whose pass may go deeper than its removal."""
    for area in job.areas.values():
        removal = given(area.removal)
        whole, one = given(removal.depth), given(removal.depth_per_pass)
        most, of_pass = whole.reading.high, one.interval.high
        if most is None or of_pass is None or of_pass <= most:
            continue
        says = f"One pass may take {one}, and all of them together {whole}."
        at = [
            evidence(removal, "depth_per_pass", "depth of removal in one pass"),
            evidence(removal, "depth", "depth of removal"),
        ]
        settle = (f"one pass of no more than {show_like(most, whole)}",)
        yield RULE.finding(area, says, at, settle)
