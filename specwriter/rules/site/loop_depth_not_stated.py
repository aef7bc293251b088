"""Grooves over loop detectors without a depth of their own.

Looks at
    Grooving deeper than 1/8 in where detector loops lie in the pavement.

Why it matters
    Loop wire lies in a shallow saw cut. A groove of full depth that crosses it cuts the wire or
    opens its sealant to water, and the signal can fail weeks after the work is paid.

Conflict
    conditions.loop_detectors: true
    areas.mainline.groove.depth: 1/8 in to 1/4 in

Settled
    conditions.loop_detectors: true
    areas.mainline.groove.depth: 1/8 in to 1/4 in
    areas.mainline.groove.depth_over_loops: 1/16 in to 1/8 in

How to settle it
    Give a depth over loops, shallower than elsewhere, or have the loops replaced after the work.

Sources
    California DOT Standard Specifications 42-2, 2015: 1/16 to 1/8 in over loop detectors
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given

_SHALLOW = Fraction(1, 8) * Fraction("0.0254")
"""1/8 in, the greatest depth over loops in California DOT Standard Specifications 42-2, 2015."""

RULE = Rule(
    title="no groove depth is given over the loop detectors",
    grade=Grade.OPEN,
    basis="published",
    needs=("conditions.loop_detectors", "groove.depth"),
    applies_to=("longitudinal_grooving", "transverse_grooving"),
    base="longitudinal_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each grooved road with loops and no depth over them."""
    if not job.conditions.loop_detectors:
        return
    for area in job.areas.values():
        groove = given(area.groove)
        high = given(groove.depth).interval.high
        if area.place == "bridge_deck" or groove.depth_over_loops is not None:
            continue
        if high is not None and high <= _SHALLOW:
            continue
        says = (
            f"Loops lie in the pavement and the grooves are {groove.depth} deep; "
            "nothing says how deep they are over the loops."
        )
        at = [
            evidence(groove, "depth", "groove depth"),
            evidence(job.conditions, "loop_detectors", "loop detectors"),
        ]
        settle = ("a groove depth over loops, such as 1/16 in to 1/8 in",)
        yield RULE.finding(area, says, at, settle)
