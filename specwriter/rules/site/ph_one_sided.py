"""A pH limit with one side only.

Looks at
    Whether the pH allowed for the residue has an upper and a lower limit.

Why it matters
    Concrete makes the liquid caustic, and a contractor who treats it with acid can go too far.
    A limit on one side leaves the other without a rule.

Conflict
    residue.ph: at least 6.0

Settled
    residue.ph: 6.0 to 12.0

How to settle it
    Give both limits, those of the local authority where it has any.

Sources
    40 CFR 261.22(a)(1), as reproduced (undated): liquid waste has a limit on each side
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the pH of the residue is limited on one side only",
    grade=Grade.CAUTION,
    basis="published",
    needs=("residue.ph",),
    quiet_after=("ph-reaches-corrosive",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a pH limit without an upper or without a lower end."""
    residue = given(job.residue)
    allowed = given(residue.ph).interval
    if allowed.low is not None and allowed.high is not None:
        return
    side = "upper" if allowed.high is None else "lower"
    says = f"The pH of the residue is {residue.ph}, with no {side} limit."
    settle = (f"an {side} limit as well" if side == "upper" else f"a {side} limit as well",)
    yield RULE.finding(None, says, [evidence(residue, "ph", "pH of the residue")], settle)
