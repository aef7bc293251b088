"""No rule for a blade that fails.

Looks at
    Sawn grooves, and the number of failed blades with which a shift may be finished.

Why it matters
    Blades break while they cut. Without a rule the inspector must stop the machine for one
    missing groove, or has nothing to stop it with when ten are missing; and a second cut beside
    the first leaves two grooves where one was meant.

Conflict
    areas.mainline.blade: null

Settled
    areas.mainline.blade.failed_allowed: at most 1

How to settle it
    State the number of failed blades with which the shift may be finished, with the share of
    coverage and its window in mind.

Sources
    California DOT Standard Specifications, section 42-2, 2015: one may finish the shift
    Ohio DOT Construction and Material Specifications, section 511.20, 2010: one; two stop it
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import GROOVING
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="no rule for a blade that fails",
    grade=Grade.OPEN,
    basis="published",
    applies_to=(*GROOVING, "next_generation_concrete_surface"),
    gap=True,
    base="complete/longitudinal_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each sawn area that does not say what follows when a blade fails."""
    for area in job.areas.values():
        if area.blade is not None and area.blade.failed_allowed is not None:
            continue
        at = [evidence(area, "texture", "texture")]
        says = "Grooves are sawn, and the job does not say with how many failed blades to go on."
        if area.coverage is not None and area.coverage.share is not None:
            at.append(evidence(area.coverage, "share", "share to be textured"))
            says += f" The share of {area.coverage.share} must agree with that number."
        yield RULE.finding(area, says, at, ("state blade.failed_allowed, such as at most 1",))
