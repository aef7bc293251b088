"""A pH limit that lets corrosive liquid through.

Looks at
    The pH allowed for the residue, against the limits at which a liquid waste is corrosive.

Why it matters
    Liquid waste at pH 12.5 and above, or at 2 and below, is corrosive and so hazardous waste in
    federal law. A limit of the job that reaches there lets such liquid through. The test is on the
    liquid alone: dried residue is not corrosive by its pH.

Conflict
    residue.ph: 6.0 to 13.0

Settled
    residue.ph: 6.0 to 12.0

How to settle it
    Keep both limits inside 2 and 12.5, with a margin, or use those of the local authority.

Sources
    40 CFR 261.22(a)(1), as reproduced (undated): aqueous waste of pH 2 or less, or 12.5 or more
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given

_ACID, _CAUSTIC = Fraction(2), Fraction("12.5")
"""40 CFR 261.22(a)(1), as reproduced (undated)."""

RULE = Rule(
    title="the pH limit allows corrosive liquid",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("residue.ph",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a pH limit that reaches a corrosive value."""
    residue = given(job.residue)
    allowed = given(residue.ph).interval
    ends = [end for end in (allowed.low, allowed.high) if end is not None]
    if all(_ACID < end < _CAUSTIC for end in ends):
        return
    says = (
        f"The job allows a pH of {residue.ph}; liquid waste is corrosive at 2 and below and at "
        "12.5 and above."
    )
    settle = ("a pH from above 2 to below 12.5, such as 6.0 to 12.0",)
    yield RULE.finding(None, says, [evidence(residue, "ph", "pH of the residue")], settle)
